"""Dot plots and line plots."""

from __future__ import annotations

from sympy import Rational

from mathgen.asks.expression import Stated, Tally, Value
from mathgen.sheets.figures.dot_plot import counts_plotted, dot_plot, line_plot, plot_to_complete
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
