"""Parts of one whole: a color among all pins, a color among the pins knocked down, and such parts added and taken away."""

from __future__ import annotations

from itertools import combinations
from math import lcm

from mathgen.asks.expression import Ask, Expr, Listing, Op, Stated, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.models.written_fractions import two_of_one_whole, unlike
from mathgen.problems.draft import Draft, Role

_ANY = Demand("any")
_PERCENT = Demand("percent")
_JOINED = frozenset({"joined_parts"})
_PLAIN: frozenset[str] = frozenset()
_FEW = 3  # colors that a question lists
_MOST_SPLIT = 7  # parts of a fraction that is split in every way

_Colors = tuple[str, ...]


def _ways(view: TableView) -> tuple[_Colors, ...]:
    """One color, or two of three or more: two of two would be the whole set."""
    colors = view.table.colors
    if len(colors) < 2:
        return ()
    return (*((color,) for color in colors), *(combinations(colors, 2) if len(colors) > 2 else ()))


@problem_model(skill="fraction of all")
def fraction_of_all(view: TableView) -> AskSpace:
    """The pins of one color, or of two, that were knocked down, as a fraction of all pins set up: one whole for every color."""

    def build(spot: Spot, way: _Colors) -> Draft | None:
        parts = tuple(view.quantity("down", spot, color) for color in way)
        owns = tuple(view.quantity("set_up", spot, color) for color in way)
        whole = view.quantity("set_up", spot)
        counts, sizes = list(map(view.number, parts)), list(map(view.number, owns))
        k, n = sum(counts), view.number(whole)
        down = view.count("down", spot)
        # "3 of 3 blue pins" is not said aloud.
        if 0 in counts or 2 * k == n or n < 4 or any(one == own for one, own in zip(counts, sizes, strict=True)):
            return None
        roles: dict[str, Role] = {"part": parts[0], "own": owns[0], "whole": whole}
        if len(way) == 1:
            return Draft(
                ask=Ask(Value(Op("/", (parts[0], whole))), (), _ANY),
                roles=roles,
                structure="what fraction",
                slips=(("A18", (k, sizes[0])), ("A17", (down, n)), ("A05", (k,)), ("A03", (k, n))),
                sets=(n,),
                over=n,
                unit=False,
                wanted=frozenset({"one"}),
            )
        # Of one and the same set, the sum of the two fractions would be right.
        return Draft(
            ask=Ask(Value(Op("/", (Op("+", parts), whole))), (), _ANY),
            roles=roles | {"parts": parts, "owns": owns},
            structure="what fraction",
            slips=(
                ("C07", (counts[0], sizes[0], counts[1], sizes[1])),
                ("A18", (k, sum(sizes))),
                ("C13", (counts[0], n)),
                ("A17", (down, n)),
                ("A05", (k,)),
            ),
            features=_JOINED,
            sets=(n,),
            over=n,
            unit=False,
            wanted=frozenset({"two"}),
        )

    return AskSpace((view.spots, _ways(view)), build)


@problem_model(skill="share of a part")
def share_of_down(view: TableView) -> AskSpace:
    """What part of the pins knocked down was of one color, or of two: the whole is not the pins set up."""

    def build(spot: Spot, way: _Colors, demand: Demand) -> Draft | None:
        parts = tuple(view.quantity("down", spot, color) for color in way)
        whole = view.quantity("down", spot)
        counts, n = list(map(view.number, parts)), view.number(whole)
        k, own = sum(counts), view.count("set_up", spot, way)
        set_up = view.count("set_up", spot)
        if 0 in counts or k in (n, own) or 2 * k == n or n < 3 or own == n or set_up == n:
            return None
        percent = demand is _PERCENT
        if percent and (len(way) > 1 or 1000 * k % n or n == 100):
            return None
        roles: dict[str, Role] = {
            "part": parts[0],
            "whole": whole,
            "own": view.quantity("set_up", spot, way[0]),
            "all": view.quantity("set_up", spot),
        }
        top: Expr = parts[0] if len(way) == 1 else Op("+", parts)
        mark = "percent" if percent else "one" if len(way) == 1 else "two"
        return Draft(
            ask=Ask(Value(Op("/", (top, whole))), (), demand),
            roles=roles if len(way) == 1 else roles | {"parts": parts},
            structure="what fraction",
            slips=(
                # 1 of 3 is a percent that no pupil would write.
                *((("A19", (k, own)),) if not percent or 1000 * k % own == 0 else ()),
                ("A03", (k, n)),
                *((("C13", (counts[0], n)),) if len(way) > 1 else ()),
                *((("D07", (k,)),) if percent else (("A22", (k, set_up)), ("A05", (k,)))),
            ),
            features=frozenset({"percent"}) if percent else _PLAIN if len(way) == 1 else _JOINED,
            sets=(n,),
            over=n,
            unit=False,
            wanted=frozenset({mark}),
        )

    return AskSpace((view.spots, _ways(view), (_ANY, _PERCENT)), build)


@problem_model(skill="add parts of one whole")
def add_parts_of_one_whole(view: TableView) -> AskSpace:
    """The sum of two colors' fractions of one rack."""

    def build(spot: Spot, colors: _Colors, like: bool) -> Draft | None:
        first, second = (view.quantity("down", spot, color) for color in colors)
        whole = view.quantity("set_up", spot)
        k, k2, n = view.number(first), view.number(second), view.number(whole)
        forms = two_of_one_whole(k, k2, n, like) if k and k2 and k + k2 < n and n > 4 else None
        if forms is None:
            return None
        a, b, c, d = forms
        rate, rate2 = Op("/", (first, whole)), Op("/", (second, whole))
        return Draft(
            ask=Ask(Value(Op("+", (rate, rate2))), (), _ANY),
            roles={"first": first, "second": second, "parts": (first, second), "whole": whole, "rate": rate, "rate2": rate2},
            structure="whole unknown",
            slips=(
                ("C01", forms),
                ("C12", forms),
                *((("A05", (a + c,)),) if like else (("C02", forms), ("C03", forms), ("C04", forms))),
                ("C13", (a, b)),
            ),
            rates=((rate, f"{a}/{b}"), (rate2, f"{c}/{d}")),
            sets=(n,),
            over=lcm(b, d),
            unit=False,
            unlike=unlike(b, d),
            must_not_show=(view.scope(spot, colors),),
        )

    return AskSpace((view.spots, tuple(combinations(view.table.colors, 2)), (True, False)), build)


@problem_model(skill="subtract parts of one whole")
def subtract_parts_of_one_whole(view: TableView) -> AskSpace:
    """The fraction of a rack that was knocked down, less one color's fraction: that of the other colors."""
    colors = view.table.colors

    def build(spot: Spot, color: str, like: bool) -> Draft | None:
        others = tuple(one for one in colors if one != color)
        if not 0 < len(others) <= _FEW:
            return None
        every, part, whole = view.quantity("down", spot), view.quantity("down", spot, color), view.quantity("set_up", spot)
        k, k2, n = view.number(every), view.number(part), view.number(whole)
        # Where the rest is the part, the answer stands in the text; where it is what was left standing, a slip gives the key.
        if not 0 < k2 < k < n or n < 5 or 2 * k2 == k or k - k2 == n - k:
            return None
        if any(view.count("down", spot, one) == 0 for one in others):
            return None
        forms = two_of_one_whole(k, k2, n, like)
        if forms is None:
            return None
        a, b, c, d = forms
        rate, rate2 = Op("/", (every, whole)), Op("/", (part, whole))
        rest = tuple(view.quantity("down", spot, one) for one in others)
        return Draft(
            ask=Ask(Value(Op("-", (rate, rate2))), (), _ANY),
            roles={"all": every, "part": part, "rest": rest[0] if len(rest) == 1 else rest, "whole": whole, "rate": rate, "rate2": rate2},
            structure="part unknown",
            slips=(
                ("A03", (k, n)),
                ("C11", forms),
                *((("A05", (a - c,)),) if like else (("C05", forms), ("C14", forms))),
            ),
            rates=((rate, f"{a}/{b}"), (rate2, f"{c}/{d}")),
            sets=(n,),
            over=lcm(b, d),
            unit=False,
            unlike=unlike(b, d),
            must_not_show=(view.scope(spot, others),),
        )

    return AskSpace((view.spots, colors, (True, False)), build)


@problem_model(skill="split a fraction")
def split_into_two(view: TableView) -> AskSpace:
    """Every way to split the fraction of a set that was knocked down into two fractions with the same bottom number."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(part), view.number(whole)
        # Three parts split in one way only.
        if not _FEW < k < n or k > _MOST_SPLIT or len(spot.trials or view.table.trials) > 1:
            return None
        rate = Op("/", (part, whole))
        return Draft(
            ask=Ask(Listing(rate, "+", whole), (), Demand("list")),
            roles={"part": part, "whole": whole, "rate": rate},
            structure="list",
            slips=(("C53", (k, n)), ("C54", (k, n)), ("C55", (k, n))),
            rates=((rate, f"{k}/{n}"),),
            sets=(n,),
            unit=False,
        )

    return AskSpace((view.spots, view.colors_or_all), build)


@problem_model(skill="split a fraction")
def is_that_a_split(view: TableView) -> AskSpace:
    """Whether three fractions with the same bottom number make the fraction of a set that was knocked down."""

    def build(spot: Spot, color: str | None, one: int, two: int, right: bool) -> Draft | None:
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(part), view.number(whole)
        three = k - one - two + (not right)
        if not _FEW < k < n - 1 or not two <= three < k or len(spot.trials or view.table.trials) > 1:
            return None
        rate = Op("/", (part, whole))
        claimed = tuple(Op("/", (Stated(top, "claimed"), whole)) for top in (one, two, three))
        texts = tuple(f"{top}/{n}" for top in (one, two, three))
        return Draft(
            ask=Ask(Truth(rate, "=", Op("+", claimed)), (), Demand("truth")),
            roles={"part": part, "whole": whole, "rate": rate, "one": claimed[0], "two": claimed[1], "three": claimed[2]},
            structure="is it so",
            slips=(("C56", ()), ("C57", (one + two + three, k))),
            rates=((rate, f"{k}/{n}"), *zip(claimed, texts, strict=True)),
            sets=(n,),
        )

    return AskSpace((view.spots, view.colors_or_all, (1, 2), (1, 2, 3), (True, False)), build)
