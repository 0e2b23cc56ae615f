"""A shadow of a table: the same labels with other counts, on which an answer that was equal by luck falls apart."""

from __future__ import annotations

from dataclasses import replace
from random import Random

from sympy import Rational

from mathgen.trials.scope import Label
from mathgen.trials.table import TrialTable


def shadow(table: TrialTable, rng: Random, aimed: bool = False) -> TrialTable:
    """The same groups, trials, colors and missing results; counts of thousands, all of them apart; other spaces, other prices.

    Only where a group set up as many pins of a color in several trials does it so here: "for each trial" stays true. On a small
    table a swapped color leaves the count unchanged about one time in five; here hardly ever.

    ``aimed``: in about half of the trials all that falls is of the target color, for questions about successes.
    """
    racks = dict.fromkeys((row.group, row.color, row.set_up) for row in table.rows)
    fresh = dict(zip(racks, rng.sample(range(10_000, 40_000), len(racks)), strict=True))
    down = rng.sample(range(1000, 10_000), len(table.rows))
    gaps = _gaps(table, rng)
    spots = dict.fromkeys((row.group, row.trial) for row in table.rows)
    hits = {spot for spot in spots if rng.randrange(2)} if aimed else set()
    rows = (
        replace(
            row,
            set_up=fresh[row.group, row.color, row.set_up],
            down=0 if (row.group, row.trial) in hits and row.color != row.target else number,
            gap_inches=gaps.get((row.group, row.trial, row.gap_inches)),
        )
        for row, number in zip(table.rows, down, strict=True)
    )
    cents = rng.sample(range(1000, 10_000), len(table.prices))
    prices = (replace(one, cents=number) for one, number in zip(table.prices, cents, strict=True))
    return replace(table, rows=tuple(rows), prices=tuple(prices))


def _gaps(table: TrialTable, rng: Random) -> dict[tuple[str, Label, Rational | None], Rational]:
    """A new space for each that was measured in a trial of a group: about half of them eighths of an inch that no class has.

    The others are spaces of the table, dealt anew: of how many are 2 inches, the answer is not 0 here for every number.
    """
    spots = list(dict.fromkeys((row.group, row.trial, row.gap_inches) for row in table.rows if row.gap_inches is not None))
    fresh = rng.sample(range(1000, 30_000), len(spots))
    return {spot: rng.choice(spots)[2] if rng.randrange(2) else Rational(number, 8) for spot, number in zip(spots, fresh, strict=True)}
