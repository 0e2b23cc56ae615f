"""Histograms."""

from __future__ import annotations

from mathgen.sheets.figures.histogram import histogram


def test_every_value_falls_in_one_interval_and_empty_ones_stay() -> None:
    """0-3: 2 of them; 4-7: none; 8-11: 1, its first number in its own interval."""
    made = histogram("Pins", "Pins in a trial", "Number of trials", [0, 3, 8], 0, 4)
    assert [(one["label"], one["value"]) for one in made["bars"]] == [("0-3", 2), ("4-7", 0), ("8-11", 1)]
    assert made["alt"] == "Histogram. Pins. Pins in a trial, and number of trials: 0-3: 2, 4-7: 0, 8-11: 1."
    assert made["top"] > 2
