"""Histograms."""

from __future__ import annotations

from mathgen.asks.expression import Stated, Tally, Value
from mathgen.sheets.figures.histogram import counts_in_bars, histogram, histogram_to_complete
from tests.sheets.figures.scenes import down, scene


def test_every_value_falls_in_one_interval_and_empty_ones_stay() -> None:
    """0-3: 2 of them; 4-7: none; 8-11: 1, its first number in its own interval."""
    made = histogram("Pins", "Pins in a trial", "Number of trials", [0, 3, 8], 0, 4)
    assert [(one["label"], one["value"]) for one in made["bars"]] == [("0-3", 2), ("4-7", 0), ("8-11", 1)]
    assert made["alt"] == "Histogram. Pins. Pins in a trial, and number of trials: 0-3: 2, 4-7: 0, 8-11: 1."
    assert made["top"] > 2


def test_a_histogram_to_complete_keeps_its_intervals_and_tells_no_count() -> None:
    made = histogram_to_complete(histogram("Pins", "Pins in a trial", "Number of trials", [1, 2, 4, 5], 0, 4))
    assert [(one["label"], one["value"]) for one in made["bars"]] == [("0-3", 0), ("4-7", 0)]
    assert made["alt"] == ("Histogram to complete. Pins. Pins in a trial: 0-3, 4-7. The scale goes from 0 to 3 by 1; no bar is drawn.")


def test_the_bars_are_as_wide_as_the_one_that_is_asked_for() -> None:
    """9, 8 and 6 pins in Trial 1; a bar from 5 to 9, so that another goes from 0 to 4."""
    series = tuple(down(group) for group in ("Owls", "Herons", "Swifts"))
    made = counts_in_bars(scene(Value(Tally(series, "from", Stated(5, "from"), Stated(9, "to"))), grade=6, skill="histogram to make"))
    assert made is not None
    assert made.worked is not None
    assert [(one["label"], one["value"]) for one in made.worked["bars"]] == [("0-4", 0), ("5-9", 3)]
    assert counts_in_bars(scene(Value(Tally(series, ">", Stated(5, "number on the line"))))) is None
