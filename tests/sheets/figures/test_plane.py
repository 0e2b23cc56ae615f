"""Scales of a grid, and positions on it."""

from __future__ import annotations

from sympy import Integer, Rational

from mathgen.sheets.figures.plane import Point, places, plane


def test_both_scales_hold_the_greatest_numbers_with_a_line_to_spare() -> None:
    """4 1/2 across, 17 up: by ones to 6, by twos to 18 with a fine line for each whole number."""
    made = plane("Inches", "Pins", (Rational(9, 2), Integer(17)))
    assert (made["steps"], made["tops"], made["fine"]) == ([1, 2], [6, 18], [False, True])


def test_many_whole_numbers_have_no_fine_lines() -> None:
    """They would run into one another."""
    assert plane("Inches", "Pins", (Integer(3), Integer(90)))["fine"] == [False, False]


def test_positions_are_pairs_of_whole_numbers() -> None:
    """Nothing is rounded on the way to the page."""
    assert places([Point(Rational(21, 8), Integer(5), "Trial 2")]) == [{"x": [21, 8], "y": [5, 1], "label": "Trial 2"}]
