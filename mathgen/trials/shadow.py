"""A shadow of a table: the same labels with other counts, on which an answer that was equal by luck falls apart."""

from __future__ import annotations

from dataclasses import replace
from random import Random

from mathgen.trials.table import TrialTable


def shadow(table: TrialTable, rng: Random) -> TrialTable:
    """The same groups, trials, colors and gaps in the table; counts of thousands, all set-up counts and all downs apart.

    On a small table a swapped color leaves the count unchanged about one time in five; here hardly ever.
    """
    set_up = rng.sample(range(6000, 9000), len(table.rows))
    down = rng.sample(range(1000, 5000), len(table.rows))
    rows = tuple(replace(row, set_up=s, down=d) for row, s, d in zip(table.rows, set_up, down, strict=True))
    return replace(table, rows=rows)
