"""Small tables that several tests share, written out whole."""

from __future__ import annotations

from mathgen.trials.table import Row, TrialTable


def table(set_up: dict[str, int], counts: dict[tuple[str, int], tuple[int, ...]]) -> TrialTable:
    """A table from set-up counts by color, and counts knocked down by group and trial in the same order of colors."""
    rows = [
        Row(group, trial, color, set_up[color], down)
        for (group, trial), downs in counts.items()
        for color, down in zip(set_up, downs, strict=True)
    ]
    return TrialTable(tuple(rows))


TWO_GROUPS = table(
    {"red": 4, "blue": 3, "gold": 5},
    {("Owls", 1): (3, 2, 4), ("Owls", 2): (1, 3, 2), ("Herons", 1): (4, 1, 3), ("Herons", 2): (2, 2, 5)},
)
