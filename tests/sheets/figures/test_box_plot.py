"""Box plots."""

from __future__ import annotations

from sympy import Rational

from mathgen.asks.expression import Stat, Value
from mathgen.sheets.figures.box_plot import FiveNumbers, box_plot, counts_boxed, plot_to_complete
from tests.sheets.figures.scenes import down, scene

FIVE = FiveNumbers(*map(Rational, ("1", "5/2", "4", "6", "9")))


def test_five_numbers_are_drawn_and_told_exactly() -> None:
    """Quartiles may be halves."""
    made = box_plot("Pins", "Pins in a trial", [("Owls", FIVE)])
    assert made["boxes"] == [{"label": "Owls", "at": [[1, 1], [5, 2], [4, 1], [6, 1], [9, 1]]}]
    assert made["alt"] == ("Box plot. Pins. Pins in a trial. Owls: least 1, lower quartile 2 1/2, median 4, upper quartile 6, greatest 9.")
    assert made["top"] == 10
    assert made["between"] == 2  # a mark for each half
    assert box_plot("Pins", "Pins", [("", FIVE._replace(lower=Rational(2)))])["between"] == 1
    assert box_plot("Pins", "Pins", [("", FIVE._replace(greatest=Rational(22)))])["between"] == 5  # numbered by 5, marked by 1


def test_a_box_alone_needs_no_name() -> None:
    """The title says whose it is."""
    assert ". Least 1, lower quartile" in box_plot("Pins", "Pins", [("", FIVE)])["alt"]


def test_a_plot_to_complete_keeps_its_scale_and_tells_none_of_the_five_numbers() -> None:
    """Nor does its drawing hold them."""
    made = plot_to_complete(box_plot("Pins", "Pins in a trial", [("Owls", FIVE)]))
    assert made["boxes"] == [{"label": "Owls", "at": []}]
    assert made["alt"] == "Box plot to complete. Pins. Pins in a trial. The scale goes from 0 to 10 by 1; no box is drawn."


def test_the_counts_that_a_problem_lists_are_boxed_in_the_key() -> None:
    """1, 2, 3, 4: halves of 1, 2 and of 3, 4. By hand: lower quartile 1 1/2, median 2 1/2, upper quartile 3 1/2."""
    series = tuple(down(group, trial, "red") for group, trial in (("Owls", 1), ("Owls", 2), ("Herons", 1), ("Herons", 2)))
    made = counts_boxed(scene(Value(Stat("upper quartile", series)), grade=6, skill="box plot"))
    assert made is not None
    assert made.worked is not None
    assert made.worked["boxes"] == [{"label": "", "at": [[1, 1], [3, 2], [5, 2], [7, 2], [4, 1]]}]
    assert made.blank["boxes"] == [{"label": "", "at": []}]
    assert counts_boxed(scene(down())) is None
