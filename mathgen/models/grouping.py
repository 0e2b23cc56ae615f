"""Grouping: pairs."""

from __future__ import annotations

from itertools import combinations, pairwise

from mathgen.asks.expression import PAIR, Ask, Op, Quantity, Test, Truth
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace, joined
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_TRUTH = Demand("truth")
_SEEN_AT_ONCE = 5  # so few pins are paired at a glance
_TESTS: tuple[Test, ...] = ("multiple", "no multiple")


@problem_model(skill="odd and even")
def odd_or_even(view: TableView) -> AskSpace:
    """Whether pins knocked down can be put in pairs with none over (or with one over): one count, or two together."""
    colors = view.table.colors

    def build(parts: tuple[Quantity, ...], whole: Quantity, test: Test) -> Draft | None:
        numbers = tuple(map(view.number, parts))
        total = sum(numbers)
        # Two alike: the sum is its own double.
        if min(numbers) == 0 or len(set(numbers)) < len(numbers) or total <= _SEEN_AT_ONCE or not view.totals.complete(whole.scope):
            return None
        several, even = len(parts) > 1, int(test == "multiple")
        return Draft(
            ask=Ask(Truth(Op("+", parts) if several else whole, test, PAIR), (), _TRUTH),
            roles={"parts": parts, "whole": whole} if several else {"whole": whole},
            structure="is it so",
            slips=(
                *((("P01", (even, *numbers)),) if several else ()),
                ("P02", (even, total)),
                ("P03", (even, view.number(Quantity("standing", whole.scope)))),
                ("P04", (even, total)),
            ),
            wanted=frozenset({"several" if several else "one", "even" if even else "odd"}),
        )

    def of_one(spot: Spot, color: str | None, test: Test) -> Draft | None:
        whole = view.quantity("down", spot, color)
        return build((whole,), whole, test)

    def of_colors(spot: Spot, two: tuple[str, str], test: Test) -> Draft | None:
        return build(tuple(view.quantity("down", spot, color) for color in two), view.quantity("down", spot, two), test)

    def of_groups(spot: Spot, color: str | None, test: Test) -> Draft | None:
        parts = tuple(view.quantity("down", Spot((group,), spot.trials), color) for group in spot.groups or view.table.groups)
        return build(parts, view.quantity("down", spot, color), test)

    # One trial only: the same pins stand again in the next, and no pin can be its own partner.
    at_once = [spot for spot in view.spots if len(spot.trials or view.table.trials) == 1]
    twos = [Spot(two, (trial,)) for two in pairwise(view.table.groups) for trial in view.table.trials]
    return joined(
        AskSpace((at_once, view.colors_or_all, _TESTS), of_one),
        AskSpace((view.group_trials, tuple(combinations(colors, 2)), _TESTS), of_colors),
        AskSpace((twos, view.colors_or_all, _TESTS), of_groups),
    )
