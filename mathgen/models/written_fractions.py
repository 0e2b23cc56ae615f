"""Fractions as they are printed: in lowest terms, and two of one whole side by side."""

from __future__ import annotations

from math import gcd, lcm
from typing import Literal

COMMON = 48  # the largest bottom number that fractions of one whole may be brought to


def lowest(top: int, bottom: int) -> tuple[int, int]:
    """A fraction in lowest terms.

    >>> lowest(9, 12)
    (3, 4)
    """
    shared = gcd(top, bottom)
    return top // shared, bottom // shared


def two_of_one_whole(k: int, k2: int, n: int, like: bool) -> tuple[int, int, int, int] | None:
    """k of n and k2 of n: both over n, or each in lowest terms over two bottom numbers; None where there are no such forms.

    >>> two_of_one_whole(3, 8, 12, like=True), two_of_one_whole(3, 8, 12, like=False)
    ((3, 12, 8, 12), (1, 4, 2, 3))
    """
    if like:
        return k, n, k2, n
    a, b = lowest(k, n)
    c, d = lowest(k2, n)
    return (a, b, c, d) if b != d and lcm(b, d) <= COMMON else None


def unlike(b: int, d: int) -> Literal["one divides", "neither"] | None:
    """How two bottom numbers differ; None for equal ones.

    >>> unlike(4, 12), unlike(4, 6), unlike(6, 6)
    ('one divides', 'neither', None)
    """
    return None if b == d else "one divides" if max(b, d) % min(b, d) == 0 else "neither"
