"""Printed words cut into parts."""

from __future__ import annotations

import pytest

from mathgen.sheets.parts import Part, names_like_fractions, parts, running_parts, working


def joined(cut: list[Part]) -> str:
    """The parts as plain text again."""
    return "".join(
        str(
            part.get("text")
            or part.get("kept")
            or part.get("bold")
            or f"{part['whole'] + ' ' if part['whole'] else ''}{part['top']}/{part['bottom']}"
        )
        for part in cut
    )


@pytest.mark.parametrize(
    ("text", "fractions"),
    [
        ("The Owls knocked down 9/12 of the 12 pins.", [(None, "9", "12")]),
        ("about 2 1/4 inches and 62 1/2%", [("2", "1", "4"), ("62", "1", "2")]),
        ("12 pins and/or 3 pins", []),
        ("3 / 4 = 0.75", []),
        ("on 3/4/2025", []),
        ("It is 7/8.", [(None, "7", "8")]),
        ("version 1/2.5", []),
        ("<b>#1/2</b>", [(None, "1", "2")]),
    ],
)
def test_fractions_are_found_and_nothing_else_is(text: str, fractions: list[tuple[str | None, str, str]]) -> None:
    """Written by hand."""
    cut = parts(text)
    assert [(part["whole"], part["top"], part["bottom"]) for part in cut if "top" in part] == fractions


@pytest.mark.parametrize(
    "text", ["The Owls set up 12 pins for Trial 1. Which were not red?", "2 1/4 of 9/12", "", "#panic() $x$ 5 pins 3/4"]
)
def test_no_character_is_lost(text: str) -> None:
    """Joined again, the parts are the text."""
    assert joined(running_parts(text, stress_not=True)) == joined(parts(text)) == text


def test_alt_text_says_a_fraction_as_a_teacher_does() -> None:
    """Common practice, no source."""
    assert [part["alt"] for part in parts("3/4, 2 1/2 and 1/0") if "alt" in part] == ["three fourths", "two and one half", "1 over 0"]


def test_a_count_stays_with_its_noun_and_not_is_stressed_on_demand_only() -> None:
    """Rules of print: no number alone at a line's end; "not" in bold where it is the point."""
    text = "The 12 pins in Trial 2 were not red."
    assert [part for part in running_parts(text, stress_not=True) if "text" not in part] == [
        {"kept": "12 pins"},
        {"kept": "Trial 2"},
        {"bold": "not"},
    ]
    assert {"bold": "not"} not in running_parts(text)


def test_names_of_the_table_are_left_as_typed() -> None:
    """The longer name first, and only where it stands alone."""
    names = names_like_fractions(["Owls", "1/2", "Room 1/2"])
    cut = running_parts("Room 1/2 beat 1/2 by 1/2 of 3 pins, not 11/2.", names=names)
    assert [part["top"] for part in cut if "top" in part] == ["11"]
    assert joined(cut) == "Room 1/2 beat 1/2 by 1/2 of 3 pins, not 11/2."


def test_steps_are_set_in_school_signs() -> None:
    """A minus sign, a times sign and a division sign, never the keyboard's."""
    assert working("12 - 9 / 3 * 2 = 6") == [{"text": "12 − 9 ÷ 3 × 2 = 6"}]
    assert [part.get("top") for part in working("12/12 - 9/12 = 3/12")] == ["12", None, "9", None, "3"]


@pytest.mark.parametrize(
    "held",
    ["5 − n", "n + 5", "(12 + 13) × 9", "2 + 5 × 9", "3 × n = 24", "8 > n", "y = 23 − 2x", "12 − __ = 7", "0.25 + 0.5 = 0.75", "−3 + 5"],
)
def test_an_expression_stays_on_one_line(held: str) -> None:
    """A line that ends in a sign hides what is worked first."""
    assert {"kept": held} in running_parts(f"Read this: {held}, and think.".replace("−", "-"))


def test_a_sign_beside_a_fraction_stays_with_it() -> None:
    held = "\N{NO-BREAK SPACE}"
    assert [part.get("text") for part in running_parts("Find 1/2 + 1/4.")] == ["Find ", None, f"{held}+{held}", None, "."]
    assert running_parts("Find 1/2 × 10 pins.")[2:4] == [{"text": f"{held}×{held}"}, {"kept": "10 pins"}]


def test_what_is_longer_than_a_card_may_break() -> None:
    long = "100 + 200 + 300 + 400 + 500 = 1500"
    assert running_parts(f"Is {long} true?") == [{"text": "Is "}, {"text": long}, {"text": " true?"}]
