"""Scatter plots, and lines that are close to their points."""

from __future__ import annotations

from sympy import Rational

from mathgen.asks.expression import Expr, Measured, Op, Stated
from mathgen.problems.record import Given
from mathgen.sheets.figures.scatter_plot import Line, points_told, scatter_plot, spaces_and_pins
from mathgen.sheets.figures.scene import Scene, Support
from mathgen.trials.table import Row, TrialTable
from tests.sheets.figures.scenes import down, scene

# Inches between the pins and pins knocked down of one trial each.
PAIRS = ((Rational(2), 9), (Rational(7, 2), 8), (Rational(6), 3))
TABLE = TrialTable(tuple(Row("Owls", trial, "red", 12, pins, gap_inches=gap) for trial, (gap, pins) in enumerate(PAIRS, start=1)))
START, SLOPE = Stated(12, "start of the line"), Stated(1, "pins for each inch")


def told(goal: Expr, line: str = "y = 12 - 1x") -> Scene:
    made = scene(goal, table=TABLE, grade=8, skill="prediction by a line")
    return made._replace(problem=made.problem._replace(facts=f"The line {line} is close to the points."))


def test_points_are_told_in_order_and_both_scales_hold_them() -> None:
    """Two pairs, up to 9 across and 14 up."""
    made = scatter_plot("Pins", "Trial 1", "Trial 2", [(9, 6), (5, 14)])
    assert (made["steps"], made["tops"]) == ([1, 2], [10, 16])
    assert made["alt"] == "Scatter plot. Pins. Across: Trial 1. Up: Trial 2. Points: (5, 14), (9, 6)."


def test_a_line_runs_through_the_whole_grid_and_not_beyond() -> None:
    """y = 12 - 2x meets the axis at 6; y = 2 + 3x reaches a top of 20 at 6; a flat one ends at the right."""
    assert Line(12, -2, "").ends(10, 20) == [[[0, 1], [12, 1]], [[6, 1], [0, 1]]]
    assert Line(2, 3, "").ends(10, 20) == [[[0, 1], [2, 1]], [[6, 1], [20, 1]]]
    assert Line(12, -1, "").ends(10, 20) == [[[0, 1], [12, 1]], [[10, 1], [2, 1]]]


def made_of(goal: Expr) -> Support:
    made = spaces_and_pins(told(goal))
    assert made is not None
    return made


def test_the_class_sees_its_own_results_and_the_printed_line() -> None:
    """Spaces in halves stay exact; the pupil's plot does not show what the line predicts."""
    predicted = Op("-", (START, Op("*", (SLOPE, Stated(4, "inches")))))
    made = made_of(predicted)
    assert made.blank["alt"] == (
        "Scatter plot. All groups, all 3 trials. Across: Space between pins in inches. Up: Pins knocked down. "
        "Points: (2, 9), (3 1/2, 8), (6, 3). A line: y = 12 - 1x."
    )
    assert made.blank["path"] == []
    assert made.worked is not None
    assert [(one["x"], one["y"]) for one in made.worked["path"]] == [([4, 1], [0, 1]), ([4, 1], [8, 1]), ([0, 1], [8, 1])]


def test_a_result_beside_the_line_is_joined_to_it_in_the_key() -> None:
    """3 pins at 6 inches, where the line has 6."""
    made = made_of(Op("-", (Op("-", (START, Op("*", (SLOPE, Measured("gap", "Owls", 3))))), down("Owls", 3))))
    assert made.worked is not None
    assert made.worked["alt"].endswith("A line: y = 12 - 1x. Dashed: from (6, 3), to (6, 6).")


def test_the_slope_alone_needs_nothing_more_in_the_key() -> None:
    assert made_of(Op("*", (SLOPE, Stated(4, "inches wider")))).worked is None


def test_without_a_line_in_the_words_there_is_no_plot() -> None:
    assert spaces_and_pins(scene(Op("*", (SLOPE, Stated(4, "inches"))), table=TABLE, grade=8)) is None


def test_points_that_the_words_tell_are_plotted_in_the_key_alone() -> None:
    """(2, 9) and (7/2, 8) of red pins."""
    made = scene(Op("-", (down(), down(trial=2))), table=TABLE, grade=8, skill="association")
    spaces = Measured("gap", "Owls", 1), Measured("gap", "Owls", 2)
    numbers = (
        (Rational(2), spaces[0]),
        (Rational(9), down(color="red")),
        (Rational(7, 2), spaces[1]),
        (Rational(8), down(trial=2, color="red")),
    )
    givens = tuple(Given(str(number), number, expr, "", None, "words") for number, expr in numbers)
    told_points = points_told(made._replace(problem=made.problem._replace(givens=givens)))
    assert told_points is not None
    assert told_points.worked is not None
    assert told_points.blank["points"] == []
    assert (told_points.blank["across"], told_points.blank["up"]) == ("Space between pins in inches", "Red pins knocked down")
    assert told_points.worked["alt"].startswith("Scatter plot. Owls, all 3 trials.")
    assert told_points.worked["alt"].endswith("Points: (2, 9), (3 1/2, 8).")
    assert points_told(made._replace(problem=made.problem._replace(givens=givens[1:]))) is None
