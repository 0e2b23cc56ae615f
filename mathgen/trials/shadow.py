"""A shadow of a table: the same labels with other counts, on which an answer that was equal by luck falls apart."""

from __future__ import annotations

from dataclasses import replace
from random import Random

from mathgen.trials.table import TrialTable


def shadow(table: TrialTable, rng: Random) -> TrialTable:
    """The same groups, trials, colors and gaps in the table; counts of thousands, all of them apart.

    Only where a group set up as many pins of a color in several trials does it so here: "for each trial" stays true. On a small
    table a swapped color leaves the count unchanged about one time in five; here hardly ever.
    """
    racks = dict.fromkeys((row.group, row.color, row.set_up) for row in table.rows)
    fresh = dict(zip(racks, rng.sample(range(10_000, 40_000), len(racks)), strict=True))
    down = rng.sample(range(1000, 10_000), len(table.rows))
    rows = (replace(row, set_up=fresh[row.group, row.color, row.set_up], down=number) for row, number in zip(table.rows, down, strict=True))
    return replace(table, rows=tuple(rows))
