"""Rounding whole numbers to tens, hundreds and thousands: a total as it is told, or what is worked out first."""

from __future__ import annotations

from sympy import Integer

from mathgen.asks.expression import Ask, Expr, Op, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.exact.rounding import ties
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role
from mathgen.trials.scope import Measure

_NAMES = {-1: "ten", -2: "hundred", -3: "thousand"}
_SEEN = 20  # 12 is near 10 at a glance
_TO_TENS = (-1, -2)
_TO_THOUSANDS = (-1, -2, -3)
_POINTS = (4, 6, 7, 8, 9, 12, 15, 18, 24, 27, 35, 48, 64, 75, 125)
_CLASSES = (6, 8, 9, 12, 13, 14, 16, 17, 18, 19, 23, 24, 26, 27, 32, 34, 36, 43)


@problem_model(skill="round a total")
def round_total(view: TableView) -> AskSpace:
    """A number of pins that the words tell, to the nearest ten or hundred."""

    def build(spot: Spot, color: str | None, measure: Measure, places: int) -> Draft | None:
        total = view.quantity(measure, spot, color)
        number = view.number(total)
        return None if number <= _SEEN else _rounded(total, number, places, {"total": total}, True)

    return AskSpace((view.spots, view.colors_or_all, ("down", "set_up"), _TO_TENS), build)


@problem_model(skill="round a product")
def round_points(view: TableView) -> AskSpace:
    """How many points, to the nearest ten, hundred or thousand, at so many points for each pin knocked down."""

    def build(spot: Spot, color: str | None, each: int, places: int) -> Draft | None:
        down = view.quantity("down", spot, color)
        number = view.number(down)
        points = Stated(each, "points for each")
        return _rounded(Op("*", (down, points)), number * each, places, {"down": down, "points": points}, "points") if number > 1 else None

    return AskSpace((view.spots, view.colors_or_all, _POINTS, _TO_THOUSANDS), build)


@problem_model(skill="round a product")
def round_classes(view: TableView) -> AskSpace:
    """How many pins, to the nearest ten, hundred or thousand, would be set up by so many classes like this one."""

    def build(color: str | None, classes: int, places: int) -> Draft | None:
        one = view.quantity("set_up", Spot(None, None), color)
        number = view.number(one)
        if number < 2 or not view.totals.complete(one.scope):
            return None
        count = Stated(classes, "classes")
        return _rounded(Op("*", (count, one)), number * classes, places, {"one": one, "count": count}, True)

    # Of all trials: racks are equal from trial to trial, so that other trials would give the same.
    return AskSpace((() if len(view.table.groups) < 2 else view.colors_or_all, _CLASSES, _TO_THOUSANDS), build)


def _rounded(expr: Expr, number: int, places: int, roles: dict[str, Role], unit: bool | str) -> Draft | None:
    """The draft, where there is something to round: no tie, no number of that place already, and none that would become 0."""
    size = 10**-places
    if number < size or number % size == 0 or ties(Integer(number), places):
        return None
    roles = {**roles, "place": _NAMES[places]}
    return Draft(
        ask=Ask(Value(expr), (), Demand("whole", places)),
        roles=roles,
        structure="whole unknown",
        slips=tuple((name, (number, size)) for name in ("R01", "R02", "R03", "R04")),
        unit=unit,
    )
