"""Dot plots and line plots."""

from __future__ import annotations

from sympy import Rational

from mathgen.sheets.figures.dot_plot import dot_plot, line_plot, plot_to_complete


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
