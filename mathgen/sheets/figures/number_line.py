"""A number line from 0 to 1: in tenths, on which pupils place decimals, or in as many parts as a set has, for its fraction."""

from __future__ import annotations

import re

from sympy import Rational

from mathgen.asks.expression import Choice, Op, Quantity, Value
from mathgen.scenario.naming import listed
from mathgen.sheets.figures.scene import FigureData, Scene, Support

_DECIMAL = re.compile(r"0?\.\d{1,3}")
_TENTHS = 10


def number_line(scene: Scene) -> Support | None:
    """The line for a problem whose words print decimals between 0 and 1 that are compared or rounded, or that takes a part from its set."""
    goal = scene.problem.ask.goal
    if isinstance(goal, Value) and isinstance(goal.expr, Op):
        rest, *over = (goal.expr,) if goal.expr.symbol == "-" else goal.expr.args
        if isinstance(rest, Op) and rest.symbol == "-":
            return _cut_as_the_set(scene, rest, bool(over))
    exprs = goal.exprs if isinstance(goal, Choice) else (goal.expr,) if isinstance(goal, Value) else ()
    printed = [
        next((given.number for given in scene.problem.givens if given.expr == expr and _DECIMAL.fullmatch(given.number)), None)
        for expr in exprs
    ]
    numbers = list(dict.fromkeys(number for number in printed if number is not None))
    if None in printed or len(numbers) != len(exprs) or not numbers:
        return None
    line = f"from 0 to 1 in {_TENTHS} equal parts"
    return Support(
        _line(_TENTHS, [], f"Number line {line}, only 0 and 1 named, to mark {listed(numbers)} on."),
        _line(_TENTHS, numbers, f"Number line {line}, with points at {listed(sorted(numbers, key=Rational))}."),
    )


def _cut_as_the_set(scene: Scene, rest: Op, asked: bool) -> Support | None:
    """``asked``: the fraction is what is left of the set, else what is taken from it."""
    whole, part = rest.args
    if not isinstance(whole, Quantity) or not isinstance(part, Quantity) or whole.scope != part.scope:
        return None
    bottom = scene.count(whole)
    top = bottom - scene.count(part) if asked else scene.count(part)
    line = f"Number line from 0 to 1 in {bottom} equal parts"
    return Support(
        _line(bottom, [], f"{line}, only 0 and 1 named, to mark the fraction on."),
        _line(bottom, [f"{top}/{bottom}"], f"{line}, with a point at {top}/{bottom}."),
    )


def _line(cut: int, numbers: list[str], alt: str) -> FigureData:
    points = [{"top": Rational(number).p, "bottom": Rational(number).q, "label": number} for number in numbers]
    return {"kind": "number-line", "cut": cut, "points": points, "alt": alt}
