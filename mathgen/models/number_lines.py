"""Fractions on a number line from 0 to 1, and whole numbers as fractions."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Op, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_WHOLE = Demand("whole")


@problem_model(skill="fraction on a number line")
def parts_from_one(view: TableView) -> AskSpace:
    """How many equal parts of the line lie between the fraction knocked down and 1."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(part), view.number(whole)
        # From 0 it is as far as from 1: a pupil who counts from the wrong end would be right.
        if not 0 < k < n - 1 or 2 * k == n or len(spot.trials or view.table.trials) > 1:
            return None
        return Draft(
            ask=Ask(Value(Op("-", (whole, part))), (), _WHOLE),
            roles={"part": part, "whole": whole},
            structure="part unknown",
            slips=(("B40", (k,)), ("B41", (k, n)), ("B42", (k, n))),
            sets=(n,),
            unit="parts",
        )

    return AskSpace((view.spots, view.colors_or_all), build)


@problem_model(skill="whole number as a fraction")
def sets_as_a_fraction(view: TableView) -> AskSpace:
    """So many whole sets as a fraction whose bottom number is the size of a set: its top number."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        trials = view.table.trials
        each = [view.quantity("set_up", Spot(spot.groups, (trial,)), color) for trial in trials]
        size, count = view.number(each[0]), len(trials)
        if count < 2 or len(set(map(view.number, each))) != 1 or size < 2 or size == count:
            return None
        sets = Stated(count, "trials")
        return Draft(
            ask=Ask(Value(Op("*", (sets, each[0]))), (), _WHOLE, view.quantity("set_up", spot, color)),
            roles={"whole": view.quantity("set_up", spot, color), "each": each[0], "count": sets},
            structure="whole unknown",
            slips=(("B43", (count,)), ("B44", (count, size)), ("B45", (size,))),
            features=frozenset({"multiply_divide", "fraction_notation"}),
            sets=(size,),
            unit=False,
        )

    return AskSpace(([spot for spot in view.spots if spot.trials is None], view.colors_or_all), build)
