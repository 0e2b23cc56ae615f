"""Feedback names what the problem's things are put in."""

from __future__ import annotations

import pytest

from mathgen.bank.holders import with_holder

LINE = "First say how many boxes, bags or rows are full."


@pytest.mark.parametrize(
    ("text", "line"),
    [
        ("Each box holds 5 pins. How many boxes are full?", "First say how many boxes are full."),
        ("Put all the pins in a row.", "First say how many rows are full."),
        ("How many are full?", LINE),  # nothing is named
        ("The Bags put these pins in rows of 5.", "First say how many rows are full."),  # a group's name is no bag
        ("Put the boxes in rows.", LINE),
    ],
)
def test_the_one_holder_of_the_text_is_named(text: str, line: str) -> None:
    assert with_holder(LINE, text) == line


def test_one_of_them_is_said_as_one() -> None:
    assert with_holder("The last box, bag or row is not full.", "How many bags are full?") == "The last bag is not full."


def test_other_lines_stay_as_they_are() -> None:
    assert with_holder("Count the pins in each box.", "How many bags are full?") == "Count the pins in each box."
