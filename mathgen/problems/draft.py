"""A draft: an ask with its roles, as a problem model proposes it, before it has words, key or proof."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.asks.expression import Ask, Expr, Measured, Op, Price, Quantity, Stat, Stated, Tally, Value
from mathgen.exact.demand import Demand
from mathgen.trials.scope import Scope

Role = Quantity | Measured | Price | Stated | Op | str | tuple[Quantity, ...] | tuple[Measured, ...] | tuple[Op, ...] | tuple[Stated, ...]


class Draft(NamedTuple):
    """What a problem model hands on. Wording templates name the roles and nothing else."""

    ask: Ask
    roles: dict[str, Role]
    structure: str  # the unknown's position, in the words of the difficulty weights
    slips: tuple[tuple[str, tuple[int | str, ...]], ...] = ()  # slip id, and the numbers it is worked out from
    features: frozenset[str] = frozenset()  # what the grade has to allow, in the words of the gate
    rates: tuple[tuple[Op, str], ...] = ()  # how the words print a rate: (down / set up, "9/12")
    sets: tuple[int, ...] = ()  # sizes of the sets that fractions name
    over: int | None = None  # bottom number of the answer as counted
    shown_as: Demand | None = None  # the form in which the key prints a number that any form is right for: 8.5, not 17/2
    # Whether the answer counts items ("9 pins"), or what else it counts, more than one of them: "points"; "asked" is what the question
    # asks how many there are of, if anything.
    unit: bool | str = True
    wanted: frozenset[str] = frozenset()  # marks that a wording frame must carry: "more", "fewer", "increase" ...
    clash: bool = False  # a word points to the wrong operation
    fewer: bool = False
    unlike: str | None = None  # bottom numbers: "one divides", "neither"
    at_sight: bool = False  # whether a pupil can tell it without working anything out
    must_not_show: tuple[Scope, ...] = ()
    drawn: tuple[Quantity, ...] = ()  # what a graph or a table that pupils make shows, though the ask needs less

    def leaves(self) -> tuple[Expr, ...]:
        """Every leaf of the ask, once each, in order: what a pupil has to know, but for the asked quantity."""
        goal = self.ask.goal
        if not self.ask.given and type(goal) is Value:
            return tuple(dict.fromkeys(leaves_of(goal.expr)))
        exprs: list[Expr] = list(goal.exprs)
        exprs += [side for fact in self.ask.given for side in fact]
        return tuple(dict.fromkeys([leaf for expr in exprs for leaf in leaves_of(expr)]))


def leaves_of(expr: Expr) -> tuple[Expr, ...]:
    """The leaves of one expression, left to right."""
    kind = type(expr)
    if kind is Op:
        found: list[Expr] = []
        for arg in expr.args:  # type: ignore[union-attr]
            if type(arg) is Op or type(arg) is Stat or type(arg) is Tally:
                found.extend(leaves_of(arg))
            else:
                found.append(arg)
        return tuple(found)
    if kind is Stat:
        return expr.series  # type: ignore[union-attr]
    if kind is Tally:
        return (*expr.series, *expr.bounds)  # type: ignore[union-attr]
    return (expr,)
