"""Whether a number is the statistic of a list that it is said to be: whole numbers only, nothing divided."""

from __future__ import annotations

from math import prod

from mathgen.asks.expression import StatName

Pair = tuple[int, int]


def is_statistic(name: StatName, end: Pair, listed: tuple[Pair, ...]) -> bool:
    """Whether ``end`` is the statistic of the listed numbers, each a pair of top and bottom."""
    bottom = prod(one[1] for one in listed)
    tops = [one[0] * (bottom // one[1]) for one in listed]
    size = len(tops)
    if name == "mean":
        return end[0] * bottom * size == sum(tops) * end[1]
    if name == "mean absolute deviation":
        apart = sum(abs(size * top - sum(tops)) for top in tops)
        return end[0] * bottom * size * size == apart * end[1]
    rising = sorted(tops)
    half = size // 2
    if name == "median":
        twice = _twice_the_middle(rising)
    else:
        lower, upper = _twice_the_middle(rising[:half]), _twice_the_middle(rising[size - half :])
        twice = lower if name == "lower quartile" else upper if name == "upper quartile" else upper - lower
    return 2 * end[0] * bottom == twice * end[1]


def _twice_the_middle(rising: list[int]) -> int:
    """The two in the middle together, or the one in the middle twice: what is left when both ends are taken off, pair by pair."""
    while len(rising) > 2:
        rising = rising[1:-1]
    return rising[0] + rising[-1]
