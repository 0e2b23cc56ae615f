"""A number line from 0 to 1 in tenths, on which pupils place decimals."""

from __future__ import annotations

import re

from sympy import Rational

from mathgen.asks.expression import Choice, Value
from mathgen.scenario.naming import listed
from mathgen.sheets.figures.scene import FigureData, Scene, Support

_DECIMAL = re.compile(r"0?\.\d{1,3}")
_TENTHS = 10


def number_line(scene: Scene) -> Support | None:
    """The line for a problem whose words print decimals between 0 and 1 that are compared or rounded."""
    goal = scene.problem.ask.goal
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


def _line(cut: int, numbers: list[str], alt: str) -> FigureData:
    points = [{"top": Rational(number).p, "bottom": Rational(number).q, "label": number} for number in numbers]
    return {"kind": "number-line", "cut": cut, "points": points, "alt": alt}
