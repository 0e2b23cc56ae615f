"""Bar models: two bars under one another, to compare by how many more or by how many times as many."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.asks.expression import Op, Quantity, Stated, Value
from mathgen.sheets.figures.scene import FigureData, Scene, Support

_MOST_TIMES = 10


class Compared(NamedTuple):
    """Two quantities, the bigger one first; ``times`` is how often it holds the smaller, None where a gap is meant."""

    bigger: Quantity
    smaller: Quantity
    times: int | None


def compared(scene: Scene) -> Compared | None:
    """How a problem compares two counts; None where it does not, or where the number of times is what it asks for."""
    ask = scene.problem.ask
    if not isinstance(ask.goal, Value):
        return None
    goal = ask.goal.expr
    if isinstance(goal, Op) and goal.symbol == "-" and len(goal.args) == 2 and not ask.given:
        first, second = goal.args
        if isinstance(first, Quantity) and isinstance(second, Quantity) and first.measure == second.measure:
            return Compared(first, second, None)
    if isinstance(goal, Quantity) and len(ask.given) == 1:
        bigger, right = ask.given[0]
        if not (isinstance(bigger, Quantity) and isinstance(right, Op) and len(right.args) == 2):
            return None
        smaller = next((arg for arg in right.args if isinstance(arg, Quantity)), None)
        stated = next((arg for arg in right.args if isinstance(arg, Stated)), None)
        if smaller is None or stated is None or goal not in (bigger, smaller):
            return None
        if right.symbol == "+":
            return Compared(bigger, smaller, None)
        if right.symbol == "*" and 2 <= stated.number <= _MOST_TIMES:
            return Compared(bigger, smaller, stated.number)
    return None


def bar_model(scene: Scene) -> Support | None:
    """The bars of a problem that compares two counts; not drawn to scale, so that nothing can be measured off."""
    found = compared(scene)
    if found is None:
        return None
    names = scene.names((found.bigger, found.smaller))
    more, fewer = scene.count(found.bigger), scene.count(found.smaller)
    if not all(names) or not more > fewer > 0:
        return None
    big, small = names
    if found.times is None:
        empty = f"Bar model to fill in. Longer bar: {big}. Shorter bar: {small}. Dashed part beside it: how many more."
        told = f"Longer bar: {big} {more}. Shorter bar: {small} {fewer}. Dashed part beside it: {more - fewer} more."
    else:
        empty = f"Bar model to fill in. {big}: {found.times} equal boxes. {small}: 1 box of the same size."
        told = f"{big}: {found.times} equal boxes of {fewer}, {more} in all. {small}: 1 box of {fewer}."
    times = found.times or 1
    numbers = (str(more), str(fewer), str(more - fewer) if found.times is None else "")
    return Support(_model(names, ("", "", ""), times, empty), _model(names, numbers, times, f"Bar model, filled in. {told}"))


def _model(names: list[str], numbers: tuple[str, str, str], times: int, alt: str) -> FigureData:
    return {
        "kind": "bar-model",
        "bigger": {"label": names[0], "number": numbers[0]},
        "smaller": {"label": names[1], "number": numbers[1]},
        "gap": numbers[2],
        "times": times,
        "alt": alt,
    }
