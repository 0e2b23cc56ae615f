"""What a statistic of a list is, by whole numbers only: tops over one bottom number, nothing divided out."""

from __future__ import annotations

from math import prod

from mathgen.asks.expression import StatName
from mathgen.proof.step_numbers import Pair, lowest


def statistic(name: StatName, listed: tuple[Pair, ...]) -> Pair:
    """The statistic of the listed numbers, each a pair of top and bottom, as a pair that is not in lowest terms."""
    bottom = prod(one[1] for one in listed)
    tops = [one[0] * (bottom // one[1]) for one in listed]
    size = len(tops)
    if name == "mean":
        return sum(tops), bottom * size
    if name == "mean absolute deviation":
        return sum(abs(size * top - sum(tops)) for top in tops), bottom * size * size
    rising = sorted(tops)
    if name == "range":
        return rising[-1] - rising[0], bottom
    half = size // 2
    if name == "median":
        twice = _twice_the_middle(rising)
    else:
        lower, upper = _twice_the_middle(rising[:half]), _twice_the_middle(rising[size - half :])
        twice = lower if name == "lower quartile" else upper if name == "upper quartile" else upper - lower
    return twice, 2 * bottom


def is_statistic(name: StatName, end: Pair, listed: tuple[Pair, ...]) -> bool:
    """Whether ``end`` is the statistic of the listed numbers."""
    top, bottom = statistic(name, listed)
    return end[0] * bottom == top * end[1]


def _twice_the_middle(rising: list[int]) -> int:
    """The two in the middle together, or the one in the middle twice: what is left when both ends are taken off, pair by pair."""
    while len(rising) > 2:
        rising = rising[1:-1]
    return rising[0] + rising[-1]


def distances(listed: tuple[Pair, ...]) -> tuple[Pair, ...]:
    """How far each number of a list is from the mean of the list, in lowest terms."""
    top, bottom = statistic("mean", listed)
    return tuple(lowest(abs(a * bottom - top * b), b * bottom) for a, b in listed)
