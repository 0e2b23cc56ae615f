"""Unit rates of two lengths, at least one of them in parts of an inch: a drawing to scale, and two spaces that were measured."""

from __future__ import annotations

from sympy import Rational

from mathgen.asks.expression import Ask, Expr, Measured, Op, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import TableView
from mathgen.problems.draft import Draft, Role

_ANY, _MIXED = Demand("any"), Demand("mixed")
_DRAWN = ((1, 2), (1, 4), (3, 4), (1, 8), (3, 8), (5, 8), (3, 2), (5, 4))  # inches on a drawing
_LARGEST = 12  # of the bottom number that the answer may have
_MOST = 24  # inches for one inch


def _for_each_inch(first: Expr, second: Expr, one: Rational, other: Rational, roles: dict[str, Role]) -> Draft | None:
    """How many inches of the first go with one inch of the second."""
    rate = one / other
    # At least one is no whole number, and neither the answer nor its opposite way round stands in the words.
    if one.q == other.q == 1 or rate in (1, one, other) or rate.q > _LARGEST or not Rational(1, 4) <= rate <= _MOST:
        return None
    pair = (int(one.p), int(one.q), int(other.p), int(other.q))
    return Draft(
        ask=Ask(Value(Op("/", (first, second))), (), _ANY),
        roles=roles,
        structure="what fraction",
        slips=(("W71", pair), ("W72", pair), ("W73", pair)),
        shown_as=_MIXED,
        unit="inches",
    )


@problem_model(skill="unit rate of fractions")
def inches_for_drawn_inch(view: TableView) -> AskSpace:
    """How many inches of space each inch on a drawing stands for."""

    def build(space: Measured, drawn: tuple[int, int]) -> Draft | None:
        length, told = view.length(space), Stated(drawn[0], "inches on the drawing", drawn[1])
        if length.q == 1 or length <= Rational(*drawn):  # whole inches by a fraction are divided a grade before
            return None
        return _for_each_inch(space, told, length, Rational(*drawn), {"space": space, "drawn": told})

    return AskSpace((view.lengths, _DRAWN), build)


@problem_model(skill="unit rate of fractions")
def inches_for_each_inch(view: TableView) -> AskSpace:
    """How many inches of one group's space go with each inch of another group's space, in the same trial."""

    def build(one: Measured, other: Measured) -> Draft | None:
        if one.trial != other.trial or one.group == other.group:
            return None
        first, second = (one, other) if view.lengths.index(one) < view.lengths.index(other) else (other, one)
        roles: dict[str, Role] = {"first": first, "second": second, "asked": one, "base": other}
        return _for_each_inch(one, other, view.length(one), view.length(other), roles)

    return AskSpace((view.lengths, view.lengths), build)
