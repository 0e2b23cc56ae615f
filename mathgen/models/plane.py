"""Points on a grid: inches between pins and pins knocked down as the two coordinates of a trial."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.asks.expression import Ask, Measured, Op, Quantity, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role

_ANY = Demand("any")
_WHOLE = Demand("whole")


class Point(NamedTuple):
    """One trial of one group: how far apart the pins were, in whole inches, and how many fell."""

    space: Measured
    down: Quantity
    inches: int
    pins: int


def _points(view: TableView) -> list[Point]:
    found = []
    for space in view.lengths:
        spot, length = Spot((space.group,), (space.trial,)), view.length(space)
        if length.q == 1 and view.totals.complete(view.scope(spot)):
            found.append(Point(space, view.quantity("down", spot), int(length), view.count("down", spot)))
    return found


def _two(one: Point, other: Point) -> bool:
    """Whether two points are of one group, in table order, and differ in both coordinates."""
    return one.space.group == other.space.group and one.inches != other.inches and one.pins != other.pins


@problem_model(skill="points in the first quadrant")
def pins_by_coordinates(view: TableView) -> AskSpace:
    """How many more pins one trial brought than another: the difference of one coordinate of two points."""
    points = _points(view)

    def build(one: Point, other: Point, order: str) -> Draft | None:
        if not _two(one, other) or one.pins <= other.pins or one.pins == 2 * other.pins:
            return None
        gap = abs(one.inches - other.inches)
        if gap == one.pins - other.pins:
            return None  # the wrong coordinates would give the right answer
        return Draft(
            ask=Ask(Value(Op("-", (one.down, other.down))), (), _WHOLE),
            roles=_roles(points, one, other, order),
            structure="difference unknown",
            slips=(("W20", (gap,)), ("H02", (one.pins, other.pins)), ("H01", (one.pins, other.pins))),
        )

    return AskSpace((points, points, ("inches first", "pins first")), build)


@problem_model(skill="points in the first quadrant")
def inches_by_coordinates(view: TableView) -> AskSpace:
    """How many inches farther apart the pins were in one trial than in another."""
    points = _points(view)

    def build(one: Point, other: Point, order: str) -> Draft | None:
        if not _two(one, other) or one.inches <= other.inches or one.inches == 2 * other.inches:
            return None
        gap = abs(one.pins - other.pins)
        if gap == one.inches - other.inches:
            return None
        return Draft(
            ask=Ask(Value(Op("-", (one.space, other.space))), (), _ANY),
            roles=_roles(points, one, other, order),
            structure="difference unknown",
            slips=(("W20", (gap,)), ("H02", (one.inches, other.inches)), ("H01", (one.inches, other.inches))),
            unit="inches",
        )

    return AskSpace((points, points, ("inches first", "pins first")), build)


def _roles(points: list[Point], one: Point, other: Point, order: str) -> dict[str, Role]:
    first, second = (one, other) if points.index(one) < points.index(other) else (other, one)
    return {
        "first": first.space,
        "first_down": first.down,
        "second": second.space,
        "second_down": second.down,
        "more": one.space,
        "less": other.space,
        "down": one.down,
        "order": order,
    }
