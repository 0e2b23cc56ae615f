"""Feet and inches: spaces between pins beside lengths that are told in feet."""

from __future__ import annotations

from sympy import Rational

from mathgen.asks.expression import Ask, Expr, Measured, Op, Stated, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import TableView
from mathgen.problems.draft import Draft

_ANY = Demand("any")
_WHOLE = Demand("whole")
_MIXED = Demand("mixed")
_LONGEST = 8  # feet of one row
_FOOT = Stated(12, "inches in a foot")


def _whole_spaces(view: TableView) -> list[Measured]:
    return [one for one in view.lengths if view.length(one).q == 1 and view.length(one) > 1]


@problem_model(skill="feet to inches")
def feet_next_time(view: TableView) -> AskSpace:
    """How many inches wider a space told in feet is than one that was measured in inches."""

    def build(space: Measured, feet: int) -> Draft | None:
        inches = int(view.length(space))
        gap = 12 * feet - inches
        if gap in (inches, 1, feet, 12) or gap < 1:
            return None
        told = Stated(feet, "feet next time")
        return Draft(
            ask=Ask(Value(Op("-", (Op("*", (told, _FOOT)), space))), (), _ANY),
            roles={"space": space, "feet": told, "foot": _FOOT},
            structure="difference unknown",
            slips=(("H07", (12 * feet,)), ("W13", (feet, inches)), ("W14", (12 * feet, inches))),
            unit="inches",
        )

    return AskSpace((_whole_spaces(view), (2, 3)), build)


@problem_model(skill="inches to feet")
def row_in_feet(view: TableView) -> AskSpace:
    """How many feet some equal spaces make, end to end."""

    def build(space: Measured, number: int) -> Draft | None:
        inches = number * view.length(space)
        feet = inches / 12
        # Whole inches make a number of feet that a ruler shows, and at least one.
        if inches.q != 1 or not 1 < feet <= _LONGEST or 4 % feet.q or feet in (number, view.length(space)):
            return None
        count = Stated(number, "spaces")
        made: Expr = Op("/", (Op("*", (count, space)), _FOOT))
        return Draft(
            ask=Ask(Value(made), (), _ANY),
            roles={"space": space, "count": count, "foot": _FOOT},
            structure="whole unknown",
            slips=(("W15", (int(inches), 1)), ("W16", (int(inches),)), ("W17", (int(inches),))),
            shown_as=_MIXED,
            unit="feet",
        )

    return AskSpace((view.lengths, range(4, 17)), build)


@problem_model(skill="inches to feet")
def spaces_in_feet(view: TableView) -> AskSpace:
    """How many equal spaces a length in feet holds."""

    def build(space: Measured, feet: int) -> Draft | None:
        length = view.length(space)
        number = Rational(12 * feet) / length
        if number.q != 1 or length.q != 1 or number in (12, feet, length) or number < 3:
            return None
        told = Stated(feet, "feet in all")
        inches = int(length)
        return Draft(
            ask=Ask(Value(Op("/", (Op("*", (told, _FOOT)), space))), (), _WHOLE),
            roles={"space": space, "feet": told, "foot": _FOOT},
            structure="whole unknown",
            slips=(("H07", (12 * feet,)), ("W18", (feet, inches)), ("W19", (12, inches))),
            unit="spaces",
        )

    return AskSpace((_whole_spaces(view), range(2, _LONGEST + 1)), build)


@problem_model(skill="feet to inches")
def longer_than_feet(view: TableView) -> AskSpace:
    """Whether some equal spaces, end to end, are longer than a length in feet."""

    def build(space: Measured, number: int, feet: int) -> Draft | None:
        inches = int(view.length(space))
        total, apart = number * inches, abs(number * inches - 12 * feet)
        # Near enough that the feet have to be written in inches.
        if not 0 < apart < inches or len({number, inches, feet}) < 3:
            return None
        count, told = Stated(number, "spaces"), Stated(feet, "feet in all")
        return Draft(
            ask=Ask(Truth(Op("*", (count, space)), ">", Op("*", (told, _FOOT))), (), Demand("truth")),
            roles={"space": space, "count": count, "feet": told, "foot": _FOOT},
            structure="is it so",
            slips=(("W45", (total, feet)), ("W46", ()), ("W47", ((number - 1) * inches, feet))),
        )

    return AskSpace((_whole_spaces(view), range(3, 13), (2, 3)), build)
