"""Multiplying and dividing equal groups: points for each pin knocked down, and equal racks over several trials.

Each with every number unknown in turn: the product, the size of a group, the number of groups.
"""

from __future__ import annotations

from typing import NamedTuple

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_WHOLE = Demand("whole")
_POINTS = (2, 3, 4, 5, 6, 7, 8, 9, 10, 20, 30, 40, 50, 12, 15, 25, 35, 48, 75, 125)  # each a value that a game might give a pin
_CLASSES = (3, 4, 5, 6, 7, 8, 9, 12, 14, 15, 16, 18, 21, 24, 25, 27, 32, 36, 45)
_MOST_EARNED = 9999  # four digits: what grades 4 and 5 divide
_AT_A_GLANCE = 10  # products below are known before there is a story


class Earning(NamedTuple):
    """Pins knocked down, the points for each, and the points in all."""

    down: Quantity
    points: Stated
    earned: Stated
    number: int  # of pins


def earning(view: TableView, spot: Spot, color: str | None, each: int) -> Earning | None:
    """What so many points for each pin come to; None where one of the numbers would stand in the words, or is too plain or too large."""
    down = view.quantity("down", spot, color)
    number = view.number(down)
    total = number * each
    # As many points as pins: the answer would stand in the words.
    if number in (0, 1, each) or not _AT_A_GLANCE <= total <= _MOST_EARNED:
        return None
    return Earning(down, Stated(each, "points for each"), Stated(total, "points in all"), number)


@problem_model(skill="equal groups, product unknown")
def points_earned(view: TableView) -> AskSpace:
    """How many points in all, at so many points for each pin knocked down."""

    def build(spot: Spot, color: str | None, each: int) -> Draft | None:
        down = view.quantity("down", spot, color)
        number = view.number(down)
        if number < 2 or number * each < _AT_A_GLANCE:
            return None
        points = Stated(each, "points for each")
        return Draft(
            ask=Ask(Value(Op("*", (down, points))), (), _WHOLE),
            roles={"down": down, "points": points},
            structure="whole unknown",
            slips=_product_slips(number, each),
            unit="points",
        )

    return AskSpace((view.spots, view.colors_or_all, _POINTS), build)


@problem_model(skill="equal groups, group size unknown")
def one_pins_points(view: TableView) -> AskSpace:
    """How many points one pin earned, from the points in all and the pins knocked down."""

    def build(spot: Spot, color: str | None, each: int) -> Draft | None:
        found = earning(view, spot, color, each)
        if found is None:
            return None
        down, _, earned, number = found
        return Draft(
            ask=Ask(Value(Op("/", (earned, down))), (), _WHOLE),
            roles={"down": down, "earned": earned},
            structure="part unknown",
            slips=_quotient_slips(earned.number, number),
            unit="points",
        )

    return AskSpace((view.spots, view.colors_or_all, _POINTS), build)


@problem_model(skill="equal groups, number of groups unknown")
def pins_from_points(view: TableView) -> AskSpace:
    """How many pins were knocked down, from the points in all and the points for each."""

    def build(spot: Spot, color: str | None, each: int) -> Draft | None:
        found = earning(view, spot, color, each)
        if found is None or view.is_cell(found.down):
            return None
        down, points, earned, _ = found
        return Draft(
            ask=Ask(Value(down), (Equation(Op("*", (down, points)), earned),), _WHOLE),
            roles={"down": down, "points": points, "earned": earned},
            structure="part unknown",
            slips=_quotient_slips(earned.number, each),
            must_not_show=(down.scope,),
        )

    return AskSpace((view.spots, view.colors_or_all, _POINTS), build)


@problem_model(skill="equal groups, product unknown")
def equal_racks(view: TableView) -> AskSpace:
    """How many pins were set up in all, where each of several trials had as many."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        racks = _racks(view, spot, color)
        if racks is None:
            return None
        whole, each, count = racks
        size = view.number(each)
        if size * count.number < _AT_A_GLANCE:
            return None
        return Draft(
            ask=Ask(Value(Op("*", (count, each))), (), _WHOLE, whole),
            roles={"whole": whole, "each": each, "count": count},
            structure="whole unknown",
            slips=_product_slips(count.number, size),
        )

    return AskSpace((_several(view), view.colors_or_all), build)


@problem_model(skill="equal groups, group size unknown")
def one_rack(view: TableView) -> AskSpace:
    """How many pins were set up for each trial, from all that were set up in several trials with as many each."""

    def build(spot: Spot, colors: tuple[str, ...] | None) -> Draft | None:
        racks = _racks(view, spot, colors)
        if racks is None:
            return None
        whole, each, count = racks
        size = view.number(each)
        # A rack of one color stands in the head of the table; as many trials as pins would stand in the words.
        if view.is_cell(each) or size in (1, count.number) or size * count.number < _AT_A_GLANCE:
            return None
        return Draft(
            ask=Ask(Value(Op("/", (whole, count))), (), _WHOLE, each),
            roles={"whole": whole, "each": each, "count": count},
            structure="part unknown",
            slips=_quotient_slips(size * count.number, count.number),
            must_not_show=(each.scope,),
        )

    sets = [None, *(colors for colors in view.color_sets if colors != view.table.colors)]
    return AskSpace((_several(view), sets), build)


@problem_model(skill="equal groups, product unknown")
def many_classes(view: TableView) -> AskSpace:
    """How many pins would be set up in all, were there so many classes that each set up as many as this one."""

    def build(color: str | None, classes: int) -> Draft | None:
        one = view.quantity("set_up", Spot(None, None), color)
        number = view.number(one)
        # So many classes that the product is beyond the facts: a few are asked about as points are.
        if number < _AT_A_GLANCE or not view.totals.complete(one.scope):
            return None
        count = Stated(classes, "classes")
        return Draft(
            ask=Ask(Value(Op("*", (count, one))), (), _WHOLE),
            roles={"one": one, "count": count},
            structure="whole unknown",
            slips=_product_slips(classes, number),
        )

    # Of all trials: racks are equal from trial to trial, so that other trials would give the same.
    return AskSpace((() if len(view.table.groups) < 2 else view.colors_or_all, _CLASSES), build)


def _several(view: TableView) -> list[Spot]:
    """Every spot of more than one trial."""
    return [spot for spot in view.spots if len(spot.trials or view.table.trials) > 1]


def _racks(view: TableView, spot: Spot, colors: str | tuple[str, ...] | None) -> tuple[Quantity, Quantity, Stated] | None:
    """All that was set up, one rack and the number of racks; None where the racks are not equal."""
    trials = spot.trials or view.table.trials
    each = [view.quantity("set_up", Spot(spot.groups, (trial,)), colors) for trial in trials]
    if len(set(map(view.number, each))) != 1:
        return None
    return view.quantity("set_up", spot, colors), each[0], Stated(len(trials), "trials")


def _product_slips(groups: int, size: int) -> tuple[tuple[str, tuple[int, ...]], ...]:
    return (
        ("M01", (groups, size)),
        ("M07", (groups, size)),
        ("M08", (groups, size)),
        *((("M06", (groups * size,)),) if groups % 10 == 0 or size % 10 == 0 else ()),
        ("M02", (groups, size)),
    )


def _quotient_slips(total: int, known: int) -> tuple[tuple[str, tuple[int, ...]], ...]:
    return ("M03", (total, known)), ("M09", (total // known,)), ("M04", (total, known)), ("M05", (total // known, known))
