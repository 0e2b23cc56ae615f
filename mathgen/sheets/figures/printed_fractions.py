"""The fractions that a problem is about, as printed or as counts out of a set, for figures that show one whole."""

from __future__ import annotations

import re
from typing import NamedTuple

from mathgen.asks.expression import Choice, Expr, Op, Quantity, Stated, Value
from mathgen.sheets.figures.scene import Scene, summed

_FRACTION = re.compile(r"(\d+)/(\d+)")
_WHOLE = Stated(1, "whole")


class Part(NamedTuple):
    """A fraction of one whole and what it is a fraction of, in its printed or counted denominator."""

    top: int
    bottom: int
    expr: Op  # what is divided by what


def part_of(scene: Scene, expr: Expr) -> Part | None:
    """The fraction that an expression stands for: as the words print it, else as counts of the table."""
    if not (isinstance(expr, Op) and expr.symbol == "/" and len(expr.args) == 2):
        return None
    for given in scene.problem.givens:
        printed = _FRACTION.fullmatch(given.number)
        if printed and given.where == "words" and given.expr == expr:
            return Part(int(printed[1]), int(printed[2]), expr)
    counted, whole = summed(expr.args[0]), expr.args[1]
    if counted is None or not isinstance(whole, Quantity) or whole.measure not in ("set_up", "trials"):
        return None
    return Part(sum(map(scene.count, counted)), scene.count(whole), expr)


class Parts(NamedTuple):
    """The fractions of a problem, in its order, and how it puts them together."""

    way: str  # "one", "together", "rest", "gap", "compared"
    parts: tuple[Part, ...]


def parts_of(scene: Scene) -> Parts | None:
    """One fraction asked for; two of one whole put together; the rest of a whole; a part taken from a part; or fractions compared."""
    goal = scene.problem.ask.goal
    if isinstance(goal, Choice):
        return _all(scene, "compared", goal.exprs)
    if not isinstance(goal, Value) or scene.problem.ask.given or not isinstance(goal.expr, Op):
        return None
    expr = goal.expr
    if expr.symbol == "/":
        return _all(scene, "one", (expr,))
    if expr.symbol == "+":
        return _all(scene, "together", expr.args)
    if expr.symbol == "-" and len(expr.args) == 2:
        return _all(scene, "rest", expr.args[1:]) if expr.args[0] == _WHOLE else _all(scene, "gap", expr.args)
    return None


def _all(scene: Scene, way: str, exprs: tuple[Expr, ...]) -> Parts | None:
    found = tuple(part for part in (part_of(scene, expr) for expr in exprs) if part is not None)
    return Parts(way, found) if found and len(found) == len(exprs) else None
