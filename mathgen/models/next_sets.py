"""Sets that a class may set up next time, once it knows how the last one went."""

from __future__ import annotations

NEXT_SETS = (12, 15, 16, 18, 20, 24, 25, 28, 30, 32, 36, 40, 48, 50, 60, 80)  # that a class could really set up
_TIMES = 10  # no group with 4 red pins sets up 80


def may_be_next(number: int, last: int) -> bool:
    """Whether a set is larger than the last one, and not out of all proportion.

    >>> may_be_next(40, 4), may_be_next(48, 4), may_be_next(4, 4)
    (True, False, False)
    """
    return last < number <= _TIMES * last
