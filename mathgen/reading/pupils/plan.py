"""What a pupil's question comes to: a plan of what to work out, and what it comes to on a table."""

from __future__ import annotations

import operator
from collections.abc import Callable
from typing import NamedTuple

from sympy import Rational

from mathgen.asks.expression import Expr, Goal, Quantity
from mathgen.exact.demand import Demand
from mathgen.reading.evaluate import Cell, Counts, Tie, answer, evaluate, quantities


class Picked(NamedTuple):
    """Those labels whose count passes a test."""

    labels: tuple[str, ...]
    exprs: tuple[Expr, ...]
    test: str  # "at least", "more", "fewer" or "equal"
    number: int
    counted: bool = False  # how many there are, and not which


class Plan(NamedTuple):
    """What has to be worked out, and in which form."""

    goal: Goal | Picked
    demand: Demand
    kind: str
    by: str = ""  # what the names are names of
    missed: tuple[Cell, ...] = ()  # results never taken, which the answer leaves out and says so


def quantities_of(goal: Goal | Picked) -> list[Quantity]:
    """Every quantity of the table that a goal names, in order."""
    return [q for expr in goal.exprs for q in quantities(expr)]


_TESTS: dict[str, Callable[[Rational, int], bool]] = {
    "at least": operator.ge,
    "more": operator.gt,
    "fewer": operator.lt,
    "equal": operator.eq,
}


def value_of(goal: Goal | Picked, counts: Counts) -> Rational | tuple[str, ...]:
    """A number, or the names that the question asks for.

    Raises:
        NotRead: the table cannot say.
    """
    if isinstance(goal, Picked):
        passed = tuple(
            label for label, expr in zip(goal.labels, goal.exprs, strict=True) if _TESTS[goal.test](evaluate(expr, counts), goal.number)
        )
        return Rational(len(passed)) if goal.counted else passed
    try:
        found = answer(goal, counts)
    except Tie as tie:
        return tie.labels
    return (found,) if isinstance(found, str) else found
