"""Multiplying as scaling: whether a product is greater or less than one of its factors."""

from __future__ import annotations

from itertools import pairwise
from math import gcd

from mathgen.asks.expression import Ask, Choice, Op, Quantity, Truth
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft
from mathgen.trials.scope import Label

_WORDS = ("more", "fewer")
_LARGEST_BOTTOM = 12


@problem_model(skill="product against a factor")
def product_against_factor(view: TableView) -> AskSpace:
    """One trial's count told as a fraction times another's: more or fewer, without multiplying?"""

    def build(trials: tuple[Label, Label], groups: tuple[str, ...] | None, color: str | None, word: str) -> Draft | None:
        found = _scaled(view, trials, groups, color)
        if found is None:
            return None
        first, later, rate, text = found
        asks_more = int(word == "more")
        return Draft(
            ask=Ask(Truth(Op("*", (rate, first)), ">" if asks_more else "<", first), (), Demand("truth")),
            roles={"first": first, "later": later, "both": (first, later), "rate": rate, "word": word},
            structure="is it so",
            slips=(("S01", (asks_more,)), ("S02", (asks_more,))),
            rates=((rate, text),),
            features=frozenset({"fraction_of_quantity"}),
            at_sight=True,
        )

    return AskSpace((tuple(pairwise(view.table.trials)), view.groups_or_class, view.colors_or_all, _WORDS), build)


@problem_model(skill="product against a factor")
def product_or_factor(view: TableView) -> AskSpace:
    """Which is the greater or the less, without multiplying: the product that tells one trial's count, or the other trial's."""

    def build(trials: tuple[Label, Label], groups: tuple[str, ...] | None, color: str | None, most: bool) -> Draft | None:
        found = _scaled(view, trials, groups, color)
        if found is None:
            return None
        first, later, rate, text = found
        named = ("product", "factor") if most else ("factor", "product")  # who takes every product for the greater, or for the less
        return Draft(
            ask=Ask(Choice(("product", "factor"), (Op("*", (rate, first)), first), most), (), Demand("name")),
            roles={"first": first, "later": later, "both": (first, later), "rate": rate, "greater": "greater" if most else "less"},
            structure="which is greater",
            slips=(("S03", named[:1]), ("S04", named[1:])),
            rates=((rate, text),),
            features=frozenset({"fraction_of_quantity"}),
            unit=False,
            at_sight=True,
        )

    return AskSpace((tuple(pairwise(view.table.trials)), view.groups_or_class, view.colors_or_all, (True, False)), build)


def _scaled(
    view: TableView, trials: tuple[Label, Label], groups: tuple[str, ...] | None, color: str | None
) -> tuple[Quantity, Quantity, Op, str] | None:
    """Both counts, the later one over the first, and that as a fraction; None where it is none that tells anything."""
    first, later = (view.quantity("down", Spot(groups, (trial,)), color) for trial in trials)
    if not (view.totals.complete(first.scope) and view.totals.complete(later.scope)):
        return None
    before, after = view.number(first), view.number(later)
    shared = gcd(before, after)
    # 3/5 × 5 would hold the fraction's bottom number against itself.
    if 0 in (before, after) or shared < 2 or after % before == 0 or not 2 <= before // shared <= _LARGEST_BOTTOM:
        return None
    return first, later, Op("/", (later, first)), f"{after // shared}/{before // shared}"
