"""Association in scatter plots: which way the points go, and the one that does not go along."""

from __future__ import annotations

from itertools import combinations, pairwise
from typing import NamedTuple

from sympy import Rational

from mathgen.asks.expression import ASSOCIATIONS, Ask, Choice, Measured, Op, Quantity
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role
from mathgen.trials.scope import Measure

_NAME = Demand("name")
_POINTS = (8, 9)  # fewer show no association, more are too many to be read
_CLEAR = 4  # so many pairs of points at least go one way for each that goes the other
_MEASURES: tuple[Measure, ...] = ("down", "standing")


class _Point(NamedTuple):
    space: Measured
    pins: Quantity
    x: Rational
    y: int


def _points(view: TableView, group: str, color: str | None, measure: Measure) -> list[_Point]:
    """The points of one group, in trial order; none where a trial lacks a space or a result."""
    spaces = {space.trial: space for space in view.lengths if space.group == group}
    found = []
    for trial in view.table.trials:
        spot, space = Spot((group,), (trial,)), spaces.get(trial)
        if space is None or not view.totals.complete(view.scope(spot)):
            return []
        count = view.quantity(measure, spot, color)
        found.append(_Point(space, count, view.length(space), view.number(count)))
    return found


def _one_way(points: list[_Point]) -> str:
    """ "positive" or "negative" where nearly every two points show it, else nothing."""
    ways = [(one.x - other.x) * (one.y - other.y) for one, other in combinations(points, 2)]
    up, down = sum(1 for way in ways if way > 0), sum(1 for way in ways if way < 0)
    return "" if min(up, down) * _CLEAR > max(up, down) or max(up, down) * 3 < 2 * len(ways) else "positive" if up > down else "negative"


@problem_model(skill="association")
def positive_or_negative(view: TableView) -> AskSpace:
    """Whether the association of spaces and pins is positive or negative: the widest spaces are held against the narrowest."""
    trials = max(len(view.table.trials), 1)
    size = -(-_POINTS[0] // trials)
    sets = list(combinations(view.table.groups, size)) if size * trials in _POINTS and view.lengths else []

    def build(groups: tuple[str, ...], color: str | None, measure: Measure) -> Draft | None:
        rows = [_points(view, group, color, measure) for group in groups]
        points = sorted((one for row in rows for one in row), key=lambda one: one.x)
        half = len(points) // 2
        way = _one_way(points)
        if not all(rows) or not way or points[half - 1].x == points[half].x or points[-half - 1].x == points[-half].x:
            return None
        near, wide = (tuple(one.pins for one in some) for some in (points[:half], points[-half:]))
        roles: dict[str, Role] = {f"spaces{n}": tuple(one.space for one in row) for n, row in enumerate(rows, 1)}
        roles |= {f"counts{n}": tuple(one.pins for one in row) for n, row in enumerate(rows, 1)}
        return Draft(
            ask=Ask(Choice(ASSOCIATIONS, (Op("+", wide), Op("+", near))), (), _NAME),
            roles={**roles, "whole": view.quantity(measure, Spot((groups[0],), None), color), "sets": str(size)},
            structure="statistic",
            slips=(("W61", ("negative" if way == "positive" else "positive",)),),
            unit=False,
        )

    return AskSpace((sets, view.colors_or_all, _MEASURES), build)


@problem_model(skill="association")
def point_against_the_rest(view: TableView) -> AskSpace:
    """In which trial the count rises (or falls) from the next narrower space, though it falls (or rises) for every other one."""
    groups = view.table.groups if view.lengths and 4 <= len(view.table.trials) <= 6 else ()

    def build(group: str, color: str | None, measure: Measure) -> Draft | None:
        points = _points(view, group, color, measure)
        order = sorted(points, key=lambda one: one.x)
        steps = {new.space.trial: new.y - old.y for old, new in pairwise(order)}
        rises = [trial for trial, step in steps.items() if step > 0]
        falls = [trial for trial, step in steps.items() if step < 0]
        level = len(rises) + len(falls) < len(steps) or len({one.x for one in points}) < len(points)
        if not points or level or 1 not in (len(rises), len(falls)):
            return None
        falling = len(rises) == 1
        [odd] = rises if falling else falls
        before = {new.space.trial: old for old, new in pairwise(order)}
        chosen = [one for one in points if one.space.trial in steps]
        top = (max if falling else min)(points, key=lambda one: one.y)
        return Draft(
            ask=Ask(
                Choice(
                    tuple(str(one.space.trial) for one in chosen),
                    tuple(Op("-", (one.pins, before[one.space.trial].pins)) for one in chosen),
                    falling,
                ),
                (),
                _NAME,
            ),
            roles={
                "spaces": tuple(one.space for one in points),
                "counts": tuple(one.pins for one in points),
                "whole": view.quantity(measure, Spot((group,), None), color),
                "way": "down" if falling else "up",
            },
            structure="statistic",
            slips=(
                ("W62" if falling else "W67", (str(top.space.trial),)),
                ("W63", (str(order[-1].space.trial),)),
                ("W64", (str(before[odd].space.trial),)),
            ),
            features=frozenset({"negative"}),
            unit=False,
            wanted=frozenset({"trials"}),
        )

    return AskSpace((groups, view.colors_or_all, _MEASURES), build)
