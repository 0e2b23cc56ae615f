"""Equal fractions with the bottom number unknown."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Op, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_BOTTOMS = (2, 3, 4, 5, 6, 8, 10, 12, 100)  # footnote 4.NF


@problem_model(skill="equal fractions, bottom number unknown")
def equal_fraction_bottom(view: TableView) -> AskSpace:
    """The bottom number of an equal fraction, its top number given: found by the step from one top number to the other."""

    def build(spot: Spot, color: str | None, new: int) -> Draft | None:
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(part), view.number(whole)
        if k in (0, n) or n < 3 or n == new or k * new % n:
            return None
        number = k * new // n
        top = Stated(number, "top number")
        if number % k == 0:
            factor, goal = number // k, Op("*", (whole, Op("/", (top, part))))
        elif k % number == 0:
            factor, goal = k // number, Op("/", (whole, Op("/", (part, top))))
        else:
            return None
        return Draft(
            ask=Ask(Value(goal), (), Demand("whole")),
            roles={"part": part, "whole": whole, "top": top},
            structure="part unknown",
            slips=(("B31", (k, n, number)), ("B32", (n,)), ("B33", (factor,))),
            features=frozenset({"fraction_notation"}),
            sets=(n,),
            unit=False,
        )

    return AskSpace(((*view.spots, *view.group_pairs), view.colors_or_all, _BOTTOMS), build)
