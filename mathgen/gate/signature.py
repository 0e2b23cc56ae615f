"""What the gate sees of a problem, and what it says when it stops one."""

from __future__ import annotations

from typing import NamedTuple


class Signature(NamedTuple):
    """The arithmetic of a problem without its labels: many problems share one, and the gate rules on each once.

    Steps are equalities in ASCII, blanks around + - * and a division's /; ``9/12`` without blanks is a written fraction.
    """

    skill: str
    features: frozenset[str] = frozenset()  # names of the curriculum's first grades: "percent", "unequal_sets", "graph" ...
    givens: tuple[str, ...] = ()  # as printed, or as counted from the table: "3", "9/12", "75%"
    steps: tuple[str, ...] = ()
    answer: str = ""  # as shown: "3/12", "62.5%", or a name
    sets: tuple[int, ...] = ()  # pins in each set that a fraction, decimal or percent of the problem is a part of
    cells: int = 0  # table cells that a pupil must read
    categories: int = 0  # bars of the graph that a pupil must read, 0 without one


class Stop(NamedTuple):
    """One limit that stops a problem.

    >>> str(Stop("denominator", "ninths", "one of 2, 3, 4, 6, 8 in Grade 3"))
    'denominator: found ninths, expected one of 2, 3, 4, 6, 8 in Grade 3'
    """

    limit: str  # a short name that stays the same
    found: str
    expected: str

    def __str__(self) -> str:
        return f"{self.limit}: found {self.found}, expected {self.expected}"
