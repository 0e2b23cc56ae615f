"""Counts that a problem lists."""

from __future__ import annotations

from mathgen.asks.expression import Measured
from mathgen.sheets.figures.counts_listed import counts_listed
from tests.sheets.figures.scenes import down, scene

SCENE = scene(down())


def test_counts_of_each_group_in_one_trial_are_named_by_the_trial() -> None:
    """In Trial 1 the Owls knocked down 9 pins, the Herons 8, the Swifts 6."""
    found = counts_listed(SCENE, tuple(down(group) for group in ("Owls", "Herons", "Swifts")))
    assert found == ("Pins knocked down, Trial 1, each group", "Number of pins", [9, 8, 6])
    some = counts_listed(SCENE, tuple(down(group) for group in ("Owls", "Swifts")))
    assert some == ("Pins knocked down, Trial 1, 2 groups", "Number of pins", [9, 6])


def test_counts_of_each_trial_are_named_by_the_group_and_the_color() -> None:
    """3 and 1 red pins."""
    found = counts_listed(SCENE, tuple(down("Owls", trial, "red") for trial in (1, 2)))
    assert found == ("Red pins knocked down, Owls, each trial", "Number of pins", [3, 1])
    whole = counts_listed(SCENE, tuple(down(None, trial) for trial in (1, 2)))
    assert whole is not None
    assert whole.title == "Pins knocked down, all groups, each trial"


def test_lengths_are_no_counts() -> None:
    assert counts_listed(SCENE, (Measured("gap", "Owls", 1), Measured("gap", "Owls", 2))) is None
