"""Proportional scores: the constant of proportionality, and how much one of two related numbers grows with the other."""

from __future__ import annotations

from itertools import combinations

from mathgen.asks.expression import Ask, Op, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.expressions import earned
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_WHOLE = Demand("whole")
_POINTS = (2, 3, 4, 5, 6, 8, 10)


@problem_model(skill="constant of proportionality")
def constant_of_score(view: TableView) -> AskSpace:
    """k of y = kx: what a score is divided by the pins that earned it."""

    def build(spot: Spot, color: str | None, points: int) -> Draft | None:
        down = view.quantity("down", spot, color)
        k = view.number(down)
        if k < 3 or k == points:
            return None
        total = Stated(points * k, "points in all")
        return Draft(
            ask=Ask(Value(Op("/", (total, down))), (), _WHOLE),
            roles={"down": down, "total": total},
            structure="times",
            slips=(("L08", (k, total.number)), ("L28", (total.number,)), ("L09", (k, total.number))),
            unit=False,
        )

    return AskSpace((view.spots, view.colors_or_all, _POINTS), build)


@problem_model(skill="two related quantities")
def growth_of_score(view: TableView) -> AskSpace:
    """How much p of p = 5d grows when d grows from one trial to another."""
    trials = tuple(combinations(view.table.trials, 2))
    whose = tuple(dict.fromkeys(spot.groups for spot in view.spots))

    def build(groups: tuple[str, ...] | None, two: tuple[object, object], color: str | None, points: int) -> Draft | None:
        spots = [Spot(groups, (trial,)) for trial in two]  # type: ignore[arg-type]
        if not all(view.totals.complete(view.scope(spot)) for spot in spots):
            return None
        before, after = (view.quantity("down", spot, color) for spot in spots)
        a, b = view.number(before), view.number(after)
        if a < 2 or b - a < 2 or b - a == points or len({a, b, points}) < 3:
            return None
        p = earned(points)
        return Draft(
            ask=Ask(Value(Op("*", (p, Op("-", (after, before))))), (), _WHOLE),
            roles={"parts": (before, after), "first": before, "last": after, "p": p},
            structure="difference unknown",
            slips=(("L29", (b - a,)), ("L30", (points * b,)), ("L31", (points * (a + b),))),
            unit=False,
        )

    return AskSpace((whose, trials, view.colors_or_all, _POINTS), build)
