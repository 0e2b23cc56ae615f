"""Fractions on a number line from 0 to 1, and whole numbers as fractions."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_ANY = Demand("any")
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


@problem_model(skill="fraction on a number line")
def fraction_from_one(view: TableView) -> AskSpace:
    """The fraction knocked down, from how many equal parts of the line lie between it and 1."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        part, whole, rest = (view.quantity(measure, spot, color) for measure in ("down", "set_up", "standing"))
        k, n = view.number(part), view.number(whole)
        if not 0 < k < n - 1 or 2 * k == n or len(spot.trials or view.table.trials) > 1:
            return None
        return Draft(
            ask=Ask(Value(Op("/", (Op("-", (whole, rest)), whole))), (), _ANY),
            roles={"part": part, "whole": whole, "left": rest},
            structure="part unknown",
            slips=(("B46", (n - k, n)), ("B47", (k, n)), ("A05", (k,))),
            features=frozenset({"fraction_notation"}),
            sets=(n,),
            over=n,
            unit=False,
            must_not_show=(part.scope,),
        )

    return AskSpace((view.spots, view.colors_or_all), build)


@problem_model(skill="whole number as a fraction")
def fraction_as_sets(view: TableView) -> AskSpace:
    """The whole number that a fraction equals: all that was set up, over the size of one set."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        found = _sets_alike(view, spot, color)
        if found is None:
            return None
        _, whole, count, size = found
        each = Op("/", (whole, Stated(count, "trials")))
        return Draft(
            ask=Ask(Value(Op("/", (whole, each))), (), _WHOLE),
            roles={"whole": whole, "each": each},
            structure="whole unknown",
            slips=(("B48", (count * size,)), ("B49", (count, size)), ("B45", (size,))),
            features=frozenset({"multiply_divide", "fraction_notation"}),
            rates=((each, str(size)),),
            sets=(size,),
            unit=False,
        )

    return AskSpace(([spot for spot in view.spots if spot.trials is None], view.colors_or_all), build)


def _sets_alike(view: TableView, spot: Spot, color: str | None) -> tuple[Quantity, Quantity, int, int] | None:
    """The set of the first trial, all sets, how many there are and how large each is; None where they differ or are too few."""
    each = [view.quantity("set_up", Spot(spot.groups, (trial,)), color) for trial in view.table.trials]
    size, count = view.number(each[0]), len(each)
    if count < 2 or len(set(map(view.number, each))) != 1 or size < 2 or size == count:
        return None
    return each[0], view.quantity("set_up", spot, color), count, size


@problem_model(skill="whole number as a fraction")
def sets_as_a_fraction(view: TableView) -> AskSpace:
    """So many whole sets as a fraction whose bottom number is the size of a set: its top number."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        found = _sets_alike(view, spot, color)
        if found is None:
            return None
        each, whole, count, size = found
        sets = Stated(count, "trials")
        return Draft(
            ask=Ask(Value(Op("*", (sets, each))), (), _WHOLE, whole),
            roles={"whole": whole, "each": each, "count": sets},
            structure="whole unknown",
            slips=(("B43", (count,)), ("B44", (count, size)), ("B45", (size,))),
            features=frozenset({"multiply_divide", "fraction_notation"}),
            sets=(size,),
            unit=False,
        )

    return AskSpace(([spot for spot in view.spots if spot.trials is None], view.colors_or_all), build)
