"""The lists that a board has to show: in order for a median, as distances from a mean, and what a tally counts."""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from mathgen.asks.expression import StatName
from mathgen.proof.list_statistics import distances, statistic
from mathgen.proof.step_numbers import Pair, compared, lowest


class Lists(NamedTuple):
    """The lists that a goal has statistics of: those to be put in order, and the distances of each number from a mean."""

    rising: tuple[tuple[Pair, ...], ...]
    distances: tuple[tuple[Pair, ...], ...]  # the mean first
    counted: tuple[tuple[Pair, ...], ...]  # the numbers that a tally means, where they are more than one


def lists_of(statistics: Iterable[tuple[StatName, tuple[Pair, ...]]], counted: Iterable[tuple[Pair, ...]]) -> Lists:
    """What a board has to list of each statistic, its name first, and of what is counted."""
    rising, apart = [], []
    for name, numbers in statistics:
        if name == "mean absolute deviation":
            apart.append((lowest(*statistic("mean", numbers)), *distances(numbers)))
        elif name not in ("mean", "range"):
            rising.append(_rising(numbers))
    return Lists(tuple(rising), tuple(apart), tuple(one for one in counted if len(one) > 1))


def _rising(numbers: tuple[Pair, ...]) -> tuple[Pair, ...]:
    """The numbers in order: the least is taken out, again and again."""
    left, rising = list(numbers), []
    while left:
        least = next(one for one in left if all(compared(one, other) != ">" for other in left))
        left.remove(least)
        rising.append(least)
    return tuple(rising)
