"""Parts of parts: what stays of one whole after two parts, a part of a part, and a part's share of another part."""

from __future__ import annotations

from math import lcm
from typing import NamedTuple

from mathgen.asks.expression import Ask, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.models.written_fractions import COMMON, lowest, two_of_one_whole, unlike
from mathgen.problems.draft import Draft, Role

_ANY = Demand("any")
_ONE = Stated(1, "whole")
_FRIENDLY = (2, 3, 4, 5, 6, 8, 9, 10, 12)  # bottom numbers that pupils multiply and divide with
_FEW = 3  # colors that a question lists
_LEAST = 5  # pins in a rack whose fractions are taken away


class Rest(NamedTuple):
    """A rack in three parts: what was left standing, one color that was knocked down, and the others."""

    standing: Quantity
    part: Quantity
    others: tuple[Quantity, ...]
    whole: Quantity

    @property
    def rates(self) -> tuple[Op, Op]:
        """The fractions that are told: left standing, and of the one color."""
        return Op("/", (self.standing, self.whole)), Op("/", (self.part, self.whole))

    def ask(self, demand: Demand) -> Ask:
        """How much of the whole the others are."""
        return Ask(Value(Op("-", (_ONE, *self.rates))), (), demand)

    @property
    def roles(self) -> dict[str, Role]:
        """What the words may name."""
        rest: Role = self.others[0] if len(self.others) == 1 else self.others
        rate, rate2 = self.rates
        return {"standing": self.standing, "part": self.part, "rest": rest, "whole": self.whole, "rate": rate, "rate2": rate2}


def rest_of(view: TableView, spot: Spot, color: str) -> Rest | None:
    """A rack in three parts; None where one is empty, or where the rest is as much as a part that is told: it would stand in the text."""
    others = tuple(one for one in view.table.colors if one != color)
    if not 0 < len(others) <= _FEW:
        return None
    found = Rest(
        view.quantity("standing", spot),
        view.quantity("down", spot, color),
        tuple(view.quantity("down", spot, one) for one in others),
        view.quantity("set_up", spot),
    )
    s, k, n = map(view.number, (found.standing, found.part, found.whole))
    plain = not (s and k) or n - s - k in (0, s, k, s + k) or not all(map(view.number, found.others))
    return None if plain else found


@problem_model(skill="rest after two parts")
def rest_after_two_parts(view: TableView) -> AskSpace:
    """The fraction of a rack that two parts leave: some pins were left standing, one color was knocked down, the rest were the others."""
    colors = view.table.colors

    def build(spot: Spot, color: str, like: bool) -> Draft | None:
        found = rest_of(view, spot, color)
        if found is None or view.number(found.whole) < _LEAST:
            return None
        s, k, n = map(view.number, (found.standing, found.part, found.whole))
        forms = two_of_one_whole(s, k, n, like)
        if forms is None:
            return None
        a, b, c, d = forms
        rate, rate2 = found.rates
        return Draft(
            ask=found.ask(_ANY),
            roles=found.roles,
            structure="part unknown",
            slips=(
                ("C31", (a, b, c, d)),
                ("C32", (a, b)),
                ("C33", (c, d)),
                *((("A05", (n - s - k,)),) if like else (("C34", (a, b, c, d)),)),
            ),
            rates=((rate, f"{a}/{b}"), (rate2, f"{c}/{d}")),
            sets=(n,),
            over=lcm(b, d),
            unit=False,
            unlike=unlike(b, d),
            must_not_show=(view.scope(spot, tuple(one for one in colors if one != color)),),
        )

    return AskSpace((view.spots, colors, (True, False)), build)


def _nested(view: TableView, spot: Spot, color: str) -> tuple[int, int, int] | None:
    """How many of one color were knocked down, of how many knocked down, of how many set up; None where the parts are too plain."""
    if len(view.table.colors) < 2:
        return None
    k, down, n = view.count("down", spot, color), view.count("down", spot), view.count("set_up", spot)
    if not 0 < k < down < n or 2 * down == n:
        return None
    bottoms = [lowest(k, down)[1], lowest(down, n)[1], lowest(k, n)[1]]
    return (k, down, n) if all(bottom in _FRIENDLY for bottom in bottoms[:2]) and bottoms[2] <= COMMON else None


@problem_model(skill="part of a part")
def part_of_a_part(view: TableView) -> AskSpace:
    """One color's fraction of the pins knocked down, which are a fraction of the pins set up: the product of the two."""

    def build(spot: Spot, color: str) -> Draft | None:
        found = _nested(view, spot, color)
        if found is None:
            return None
        k, down, n = found
        part, middle, whole = view.quantity("down", spot, color), view.quantity("down", spot), view.quantity("set_up", spot)
        outer, inner = Op("/", (middle, whole)), Op("/", (part, middle))
        a, b, c, d = (*lowest(k, down), *lowest(down, n))
        return Draft(
            ask=Ask(Value(Op("*", (inner, outer))), (), _ANY),
            roles={"part": part, "down": middle, "whole": whole, "rate": outer, "rate2": inner},
            structure="part of a part",
            slips=(("A31", (a, b)), ("C35", (a, b, c, d)), ("C36", (a, b, c, d)), ("C37", (a, b, c, d))),
            features=frozenset({"fraction_times_fraction"}),
            rates=((outer, f"{c}/{d}"), (inner, f"{a}/{b}")),
            sets=(n, n),
            unit=False,
            must_not_show=(view.scope(spot, (color,)),),
        )

    return AskSpace((view.spots, view.table.colors), build)


@problem_model(skill="one part as a share of another")
def share_from_two_parts(view: TableView) -> AskSpace:
    """Two fractions of one rack, that of one color inside that of all colors knocked down: how much of the one the other is."""

    def build(spot: Spot, color: str) -> Draft | None:
        found = _nested(view, spot, color)
        if found is None:
            return None
        k, down, n = found
        part, middle, whole = view.quantity("down", spot, color), view.quantity("down", spot), view.quantity("set_up", spot)
        outer, inner = Op("/", (middle, whole)), Op("/", (part, whole))
        a, b, c, d = (*lowest(k, n), *lowest(down, n))
        if b not in _FRIENDLY or k * n == down * down:  # 1/9 of the whole in 1/3 of it: the answer, 1/3, would stand in the text
            return None
        return Draft(
            ask=Ask(Value(Op("/", (inner, outer))), (), _ANY),
            roles={"part": part, "down": middle, "whole": whole, "rate": outer, "rate2": inner},
            structure="what fraction",
            slips=(("C38", (a, b, c, d)), ("C37", (a, b, c, d)), ("A22", (a, b)), ("C39", (a, b, c, d))),
            features=frozenset({"fraction_division"}),
            rates=((outer, f"{c}/{d}"), (inner, f"{a}/{b}")),
            sets=(n, n),
            unit=False,
            must_not_show=(view.scope(spot, (color,)),),
        )

    return AskSpace((view.spots, view.table.colors), build)
