"""Results with the spaces between pins, for models of points and lines."""

from __future__ import annotations

from sympy import Rational

from mathgen.trials.table import Row, TrialTable


def fallen(points: dict[tuple[str, int], tuple[str, int]]) -> TrialTable:
    """One color, 30 pins set up; for each trial of a group the space in inches and how many pins fell."""
    return TrialTable(tuple(Row(group, trial, "red", 30, down, gap_inches=Rational(gap)) for (group, trial), (gap, down) in points.items()))


# Near y = 25 - 2x: off by 1, 0, 1, 0, 2, 1, 0 and 2.
SPACED = fallen(
    {
        ("Owls", 1): ("1", 24),
        ("Owls", 2): ("3", 19),
        ("Wrens", 1): ("4", 16),
        ("Wrens", 2): ("6", 13),
        ("Kites", 1): ("7", 13),
        ("Kites", 2): ("9", 6),
        ("Terns", 1): ("2", 21),
        ("Terns", 2): ("8", 7),
    }
)
