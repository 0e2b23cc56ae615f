"""Coordinate grids."""

from __future__ import annotations

from sympy import Integer

from mathgen.asks.expression import Ask, Expr, Measured, Op, Value
from mathgen.exact.demand import Demand
from mathgen.problems.record import Given
from mathgen.sheets.figures.coordinate_grid import points_plotted
from mathgen.sheets.figures.scene import Scene
from tests.sheets.figures.scenes import down, scene


def plotted(*numbers: tuple[int, Expr]) -> Scene:
    """A problem that prints the numbers in this order."""
    made = scene(Op("-", (down(), down(trial=2))), grade=5, skill="points in the first quadrant")
    givens = tuple(Given(str(number), Integer(number), expr, "", None, "words") for number, expr in numbers)
    asked = Ask(Value(Op("-", (down(), down(trial=2)))), (), Demand("whole"))
    return made._replace(problem=made.problem._replace(ask=asked, givens=givens))


ONE, OTHER = (Measured("gap", "Owls", trial) for trial in (1, 2))


def test_the_points_that_the_words_print_are_plotted_in_the_key_alone() -> None:
    """(4, 9) and (7, 6): inches first, as the words have them."""
    made = points_plotted(plotted((4, ONE), (9, down()), (7, OTHER), (6, down(trial=2))))
    assert made is not None
    assert made.worked is not None
    assert made.blank["points"] == []
    assert made.blank["alt"] == (
        "Coordinate grid to plot points on. Across: Inches between pins, from 0 to 8 by 1. "
        "Up: Pins knocked down, from 0 to 10 by 1. No point is plotted."
    )
    assert [(one["x"], one["y"]) for one in made.worked["points"]] == [([4, 1], [9, 1]), ([7, 1], [6, 1])]
    assert made.worked["alt"].endswith("Points: Trial 1 (4, 9), Trial 2 (7, 6).")


def test_the_first_coordinate_goes_across_whatever_it_counts() -> None:
    made = points_plotted(plotted((9, down()), (4, ONE), (6, down(trial=2)), (7, OTHER)))
    assert made is not None
    assert (made.blank["across"], made.blank["up"]) == ("Pins knocked down", "Inches between pins")


def test_other_numbers_make_no_grid() -> None:
    """Two counts are no point of inches and pins, and half a point is none."""
    assert points_plotted(plotted((9, down()), (6, down(trial=2)), (4, ONE), (7, OTHER))) is None
    assert points_plotted(plotted((4, ONE), (9, down()))) is None
