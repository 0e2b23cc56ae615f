"""What a title says was counted."""

from __future__ import annotations

import pytest

from mathgen.trials.titles import speaks_of_seeds, title_measures


@pytest.mark.parametrize(
    ("text", "measures"),
    [
        ("Pins knocked down", {"down"}),
        ("KNOCKED OVER!", {"down"}),
        ("How many pins fell?", {"down"}),
        ("How many did you knock down?", {"down"}),
        ("Pins down, room with the long hall", {"down"}),
        ("Fallen pins", {"down"}),
        ("Number of pins hit", {"down"}),
        ("Hits by group", {"down"}),
        ("Down", {"down"}),
        ("Seeds sprouted", {"down"}),
        ("Standing", {"standing"}),
        ("Pins left standing", {"standing"}),
        ("Tubes still standing after each roll", {"standing"}),
        ("Pins NOT knocked down", {"standing"}),
        ("Pins that didn't fall", {"standing"}),
        ("Not sprouted", {"standing"}),
        ("Knocked down or left standing", {"down", "standing"}),
    ],
)
def test_a_phrase_about_counting_says_what_was_counted(text: str, measures: set[str]) -> None:
    """Common practice, from memory; no published list."""
    assert set(title_measures(text)) == measures


@pytest.mark.parametrize(
    "text",
    [
        "Sock ball down the cardboard ramp",
        "Ball rolls standing around",
        "Rolling pins down the ramp",
        "Pins standing around",
        "Pins standing at the start",
        "To the left",
        "Up and down",
        "Our class hits the lanes",
        "How many rolls did the ball fall off",
        "Ball fell down the ramp",
        "Knocking down pins",
        "Sock ball results",
        "",
    ],
)
def test_a_word_in_running_text_says_nothing(text: str) -> None:
    assert title_measures(text) == {}


def test_the_words_that_say_so_are_kept() -> None:
    assert title_measures("Seeds sprouted by May") == {"down": "sprouted"}


def test_seeds_are_spoken_of_by_name_or_by_what_they_do() -> None:
    assert [speaks_of_seeds([text]) for text in ("Seeds planted", "What sprouted", "Seedless grapes", "Pins")] == [True, True, False, False]
