"""Greatest common factors and least common multiples: equal boxes of two colors, totals that two groups both reach."""

from __future__ import annotations

from itertools import combinations
from math import gcd, lcm

from mathgen.asks.expression import Ask, Op, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft
from mathgen.trials.scope import Label

_WHOLE = Demand("whole")
_MOST_SHARED, _MOST_COUNTED = 100, 12  # 6.NS.B.4: factors of numbers to 100, multiples of numbers to 12


@problem_model(skill="greatest common factor")
def equal_boxes(view: TableView) -> AskSpace:
    """The greatest number of boxes that all hold as many pins of one color, and as many of another, with none over."""

    def build(spot: Spot, two: tuple[str, str]) -> Draft | None:
        one, other = (view.quantity("down", spot, color) for color in two)
        a, b = view.number(one), view.number(other)
        shared = gcd(a, b)
        # One color must not go into the other: then the smaller count would be the answer, and stand in the words.
        if shared < 2 or shared in (a, b) or max(a, b) > _MOST_SHARED:
            return None
        return Draft(
            ask=Ask(Value(Op("gcf", (one, other))), (), _WHOLE),
            roles={"pair": (one, other), "one": one, "other": other},
            structure="part unknown",
            slips=(("Z01", (a, b)), ("Z02", (a, b)), ("Z03", (a, b))),
            unit="boxes",
        )

    return AskSpace((view.spots, list(combinations(view.table.colors, 2))), build)


@problem_model(skill="least common multiple")
def total_both_reach(view: TableView) -> AskSpace:
    """The least total that two groups both reach, where each goes on as in one trial."""

    def build(two: tuple[str, str], trial: Label, color: str | None) -> Draft | None:
        spots = [Spot((group,), (trial,)) for group in two]
        if not all(view.totals.complete(view.scope(spot)) for spot in spots):
            return None
        one, other = (view.quantity("down", spot, color) for spot in spots)
        a, b = view.number(one), view.number(other)
        # Numbers without a common factor: their product is the answer, and nothing is to be thought over.
        if min(a, b) < 2 or max(a, b) > _MOST_COUNTED or gcd(a, b) == 1 or lcm(a, b) in (a, b):
            return None
        return Draft(
            ask=Ask(Value(Op("lcm", (one, other))), (), _WHOLE),
            roles={"pair": (one, other), "one": one, "other": other},
            structure="whole unknown",
            slips=(("Z04", (a, b)), ("Z05", (a, b)), ("Z06", (a, b))),
        )

    return AskSpace((list(combinations(view.table.groups, 2)), view.table.trials, view.colors_or_all), build)
