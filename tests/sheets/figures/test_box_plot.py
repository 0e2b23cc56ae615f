"""Box plots."""

from __future__ import annotations

from sympy import Rational

from mathgen.sheets.figures.box_plot import FiveNumbers, box_plot

FIVE = FiveNumbers(*map(Rational, ("1", "5/2", "4", "6", "9")))


def test_five_numbers_are_drawn_and_told_exactly() -> None:
    """Quartiles may be halves."""
    made = box_plot("Pins", "Pins in a trial", [("Owls", FIVE)])
    assert made["boxes"] == [{"label": "Owls", "at": [[1, 1], [5, 2], [4, 1], [6, 1], [9, 1]]}]
    assert made["alt"] == (
        "Box plot. Pins. Pins in a trial. Owls: least 1, lower quartile 2 1/2, median 4, upper quartile 6, greatest 9."
    )
    assert made["top"] == 10


def test_a_box_alone_needs_no_name() -> None:
    """The title says whose it is."""
    assert ". Least 1, lower quartile" in box_plot("Pins", "Pins", [("", FIVE)])["alt"]
