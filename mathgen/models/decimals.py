"""Decimals: a part of a set as a decimal that ends, or that repeats; compared, and rounded."""

from __future__ import annotations

from math import gcd

from mathgen.asks.expression import Ask, Op, Value
from mathgen.exact.demand import Demand
from mathgen.exact.forms import period
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_DECIMAL = Demand("decimal")
_TENTHS = Demand("decimal", 1)
_NAME = Demand("name")
_REPEATS = frozenset({"repeating"})
_ENDS: frozenset[str] = frozenset()
_MOST_DIGITS = 3  # before a decimal ends or begins to repeat


@problem_model(skill="part of a set as a decimal")
def part_as_decimal(view: TableView) -> AskSpace:
    """The part of a set that was knocked down, as an exact decimal."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(part), view.number(whole)
        # Of a half, the part is the rest as well, and a slip would give the key. Sets of 4 leave little choice; "1 of 2" is no work.
        if k in (0, n) or n < 3 or (2 * k == n and n > 4):
            return None
        before, block = period(n // gcd(k, n))
        if before > _MOST_DIGITS:
            return None
        return Draft(
            ask=Ask(Value(Op("/", (part, whole))), (), _DECIMAL),
            roles={"part": part, "whole": whole},
            structure="what fraction",
            slips=(
                ("D01", (k, n)),
                ("D02", (k, n)),
                ("D04", (k,)),
                ("A03", (k, n)),
                ("D18", (k, n)),
                *((("D05", (k, n)),) if _short(n, k, bool(block)) else ()),
            ),
            features=frozenset({"decimal_notation"}),
            sets=(n,),
            unit=False,
            wanted=_REPEATS if block else _ENDS,
        )

    return AskSpace(((*view.spots, *view.group_pairs), view.colors_or_all), build)


def _short(top: int, bottom: int, repeats: bool) -> bool:
    """Whether the quotient turned round is a decimal of a few digits, which repeats only where pupils write such decimals."""
    before, block = period(bottom // gcd(top, bottom))
    return before <= 2 and block <= (2 if repeats else 0)
