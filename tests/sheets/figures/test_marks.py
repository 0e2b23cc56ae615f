"""A mark for each color."""

from __future__ import annotations

import pytest

from mathgen.sheets.figures.marks import marks

TWELVE = ["red", "blue", "gold", "black", "brown", "green", "gray", "pink", "purple", "white", "orange", "yellow"]


@pytest.mark.parametrize("colors", [TWELVE, ["red", "Red", "RED"], ["a", "ab", "abc", "aa"], ["1", "2", "11"], ["b b", "b-b"]])
def test_no_two_colors_share_a_mark(colors: list[str]) -> None:
    """On a copy the mark is all that names a pin's color; upper and lower case look too much alike."""
    found = marks(colors)
    assert list(found) == colors
    assert len({mark.lower() for mark in found.values()}) == len(colors)


def test_blue_black_and_brown_differ() -> None:
    """The three that a first letter cannot tell apart."""
    assert marks(["blue", "black", "brown"]) == {"blue": "Bu", "black": "Ba", "brown": "Br"}


def test_a_first_letter_of_its_own_is_enough() -> None:
    """The shorter, the larger it can be drawn."""
    assert marks(["red", "blue", "gold"]) == {"red": "R", "blue": "B", "gold": "G"}
