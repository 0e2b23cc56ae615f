"""Scatter plots."""

from __future__ import annotations

from mathgen.sheets.figures.scatter_plot import scatter_plot


def test_points_are_told_in_order_and_both_scales_hold_them() -> None:
    """Two pairs, up to 9 across and 14 up."""
    made = scatter_plot("Pins", "Trial 1", "Trial 2", [(9, 6), (5, 14)])
    assert (made["steps"], made["tops"]) == ([1, 2], [10, 16])
    assert made["alt"] == "Scatter plot. Pins. Across: Trial 1. Up: Trial 2. Points: (5, 14), (9, 6)."
