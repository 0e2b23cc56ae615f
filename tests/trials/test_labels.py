"""Names of groups, trials and colors."""

from __future__ import annotations

import pytest

from mathgen.trials.labels import is_trial_label, read_color, read_trial, respelled, spelling_key, total_label, total_of


@pytest.mark.parametrize(
    ("text", "label"),
    [
        ("1", 1),
        ("Trial 1", 1),
        ("T1", 1),
        ("#2", 2),
        ("2.0", 2),
        ("3rd", 3),
        ("second", 2),
        ("Attempt 4", 4),
        ("three", 3),
        ("practice", "practice"),
        ("A", "A"),
        ("1b", "1b"),
        ("II", "II"),
        ("x²", "x²"),
    ],
)
def test_a_trial_is_a_number_where_it_was_typed_as_one(text: str, label: int | str) -> None:
    assert read_trial(text) == label


@pytest.mark.parametrize(
    ("text", "color"),
    [
        ("Red", ("red", None)),
        ("DARK  blue", ("dark blue", None)),
        ("Red pins", ("red", None)),
        ("gold (5)", ("gold", 5)),
        ("Cone", ("cone", None)),
        ("Glow-in-the-dark", ("glow-in-the-dark", None)),
        ("Glow-in-the-dark (3)", ("glow-in-the-dark", 3)),
        ("Blue/green pins knocked down", ("blue/green", None)),
        ("Red & White", ("red & white", None)),
        ("X²", ("x²", None)),
    ],
)
def test_a_color_is_in_lower_case_with_its_set(text: str, color: tuple[str, int | None]) -> None:
    assert read_color(text) == color


def test_spellings_that_differ_in_case_and_spaces_share_a_key_and_others_do_not() -> None:
    assert len({spelling_key(name) for name in ("The Owls", " the  owls", "THE OWLS", "The_Owls")}) == 1
    assert spelling_key("Owls") != spelling_key("Owl")


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("Total", "total"),
        ("TOTALS:", "total"),
        ("Grand total", "total"),
        ("Class Total", "total"),
        ("Sum", "total"),
        ("Subtotal", "total"),
        ("All groups", "total"),
        ("Average", "derived"),
        ("Class mean", "derived"),
        ("Percent", "derived"),
        ("Total Chaos", None),
        ("Owls", None),
        ("The Mean Machines", None),
    ],
)
def test_summing_up_rows_are_told_from_groups(text: str, kind: str | None) -> None:
    assert total_label(text) == kind


def test_a_total_names_its_group() -> None:
    assert [total_of(text) for text in ("Owls total", "Owls' total", "Total for the Owls", "Total: Owls", "Owls")] == ["Owls"] * 4 + [None]


def test_a_trial_label_says_nothing_else() -> None:
    assert [is_trial_label(text) for text in ("Trial 1", "T2", "1", "Trial 1 red", "Owls")] == [True, True, False, False, False]


def test_a_color_that_is_more_than_the_text_in_lower_case_is_respelled() -> None:
    assert [respelled(color, typed) for color, typed in (("dark blue", "Dark Blue (4)"), ("sky blue", "Sky_Blue"))] == [False, True]
