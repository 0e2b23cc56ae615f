"""Dot plots and line plots."""

from __future__ import annotations

from sympy import Rational

from mathgen.asks.expression import Measured, Op, Stated, Tally, Value
from mathgen.sheets.figures.dot_plot import counts_plotted, dot_plot, line_plot, plot_to_complete, spaces_plotted
from mathgen.trials.table import Row, TrialTable
from tests.sheets.figures.scenes import down, scene


def test_every_number_from_least_to_greatest_has_its_place() -> None:
    """5, 6, 6, 8: nothing at 7."""
    made = dot_plot("Pins", "Pins in a trial", [6, 8, 5, 6])
    assert [(one["label"], one["count"]) for one in made["places"]] == [("5", 1), ("6", 2), ("7", 0), ("8", 1)]
    assert made["alt"] == "Dot plot. Pins. Pins in a trial, and how many dots: 5: 1, 6: 2, 7: 0, 8: 1."


def test_a_line_plot_is_cut_as_its_values_need() -> None:
    """Halves and fourths: a place for each fourth."""
    made = line_plot("Roll", "Feet", [Rational(1, 2), Rational(5, 4), Rational(1, 2)])
    assert [one["label"] for one in made["places"]] == ["1/2", "3/4", "1", "1 1/4"]
    assert [one["count"] for one in made["places"]] == [2, 0, 0, 1]


def test_a_plot_to_complete_keeps_its_line_and_shows_no_cross() -> None:
    """Room for the two crosses of the highest place; nothing told of how many there are."""
    made = plot_to_complete(line_plot("Space between pins, Trial 1", "Inches", [Rational(1, 2), Rational(5, 4), Rational(1, 2)]))
    assert [one["count"] for one in made["places"]] == [0, 0, 0, 0]
    assert made["most"] == 2
    assert made["alt"] == ("Line plot to complete. Space between pins, Trial 1. Inches: 1/2, 3/4, 1, 1 1/4; no cross is drawn.")


def test_the_counts_that_a_problem_lists_are_plotted_in_the_key() -> None:
    """In Trial 1 the Owls knocked down 9 pins, the Herons 8, the Swifts 6."""
    series = tuple(down(group) for group in ("Owls", "Herons", "Swifts"))
    made = counts_plotted(scene(Value(Tally(series, ">", Stated(6, "number on the line"))), grade=6, skill="dot plot to make"))
    assert made is not None
    assert made.worked is not None
    assert [(one["label"], one["count"]) for one in made.worked["places"]] == [("6", 1), ("7", 0), ("8", 1), ("9", 1)]
    assert made.blank["alt"] == (
        "Dot plot to complete. Pins knocked down, Trial 1, each group. Number of pins: 6, 7, 8, 9; no dot is drawn."
    )
    assert counts_plotted(scene(down())) is None


def test_all_the_spaces_of_a_plot_are_plotted_where_the_words_ask_for_it() -> None:
    """3/4, 1 and 3/4 of an inch: two crosses over 3/4, one over 1."""
    gaps = {"Owls": Rational(3, 4), "Herons": Rational(1), "Swifts": Rational(3, 4)}
    table = TrialTable(tuple(Row(group, 1, "red", 4, 2, gap_inches=gap) for group, gap in gaps.items()))
    together = scene(Op("+", tuple(Measured("gap", group, 1) for group in gaps)), table=table, grade=5)
    assert spaces_plotted(together) is None  # nothing is said of a plot
    made = spaces_plotted(together._replace(problem=together.problem._replace(facts="Make a line plot of the spaces.")))
    assert made is not None
    assert made.worked is not None
    assert [(one["label"], one["count"]) for one in made.worked["places"]] == [("3/4", 2), ("1", 1)]
    assert {one["count"] for one in made.blank["places"]} == {0}
