"""Decimals that are worked with: parts of one whole added and taken away, a part of a number, and a whole from its part."""

from __future__ import annotations

from itertools import combinations
from math import lcm

from mathgen.asks.expression import Ask, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.next_sets import NEXT_SETS, may_be_next
from mathgen.models.parts_of_parts import rest_of
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.models.written_decimals import MOST_PLACES, decimal_features, decimals, places
from mathgen.problems.draft import Draft, Role

_DECIMAL = Demand("decimal")
_TENTHS = Demand("decimal", 1)
_WHOLE = Demand("whole")


@problem_model(skill="joined parts as a decimal")
def joined_parts_as_decimal(view: TableView) -> AskSpace:
    """The pins of two colors that were knocked down, as a decimal part of all pins set up."""
    colors = view.table.colors

    def build(spot: Spot, pair: tuple[str, str]) -> Draft | None:
        parts = tuple(view.quantity("down", spot, color) for color in pair)
        whole = view.quantity("set_up", spot)
        counts, n = list(map(view.number, parts)), view.number(whole)
        k = sum(counts)
        if 0 in counts or 2 * k == n or n < 4 or decimals((k, n)) is None:
            return None
        return Draft(
            ask=Ask(Value(Op("/", (Op("+", parts), whole))), (), _DECIMAL),
            roles={"parts": parts, "whole": whole},
            structure="what fraction",
            slips=(("D31", (counts[0], n)), ("A03", (k, n)), ("D18", (k, n)), ("D01", (k, n))),
            features=frozenset({"decimal_notation", "joined_parts"}),
            sets=(n,),
            over=n,
            unit=False,
        )

    return AskSpace((view.spots, tuple(combinations(colors, 2)) if len(colors) > 2 else ()), build)


def _two_parts(view: TableView, spot: Spot, pair: tuple[str, str]) -> tuple[Quantity, Quantity, Quantity, tuple[str, ...]] | None:
    """Two colors' counts, the rack, and both parts of it as decimals; None where a color has none down, or the two are the rack."""
    first, second = (view.quantity("down", spot, color) for color in pair)
    whole = view.quantity("set_up", spot)
    k, k2, n = map(view.number, (first, second, whole))
    texts = decimals((k, n), (k2, n)) if k and k2 and k + k2 < n else None
    return None if texts is None else (first, second, whole, texts)


@problem_model(skill="add decimal parts")
def add_decimal_parts(view: TableView) -> AskSpace:
    """The sum of two colors' decimal parts of one rack."""

    def build(spot: Spot, pair: tuple[str, str]) -> Draft | None:
        found = _two_parts(view, spot, pair)
        if found is None:
            return None
        first, second, whole, texts = found
        k, k2, n = map(view.number, (first, second, whole))
        rate, rate2 = Op("/", (first, whole)), Op("/", (second, whole))
        return Draft(
            ask=Ask(Value(Op("+", (rate, rate2))), (), _DECIMAL),
            roles={"first": first, "second": second, "parts": (first, second), "whole": whole, "rate": rate, "rate2": rate2},
            structure="whole unknown",
            slips=(("E31", texts), ("E32", texts), ("D31", (k, n)), *((("D18", (k + k2, n)),) if 10 * k % n == 10 * k2 % n == 0 else ())),
            features=decimal_features("decimal_compute", *texts),
            rates=((rate, texts[0]), (rate2, texts[1])),
            sets=(n,),
            unit=False,
            must_not_show=(view.scope(spot, pair),),
        )

    return AskSpace((view.spots, tuple(combinations(view.table.colors, 2))), build)


@problem_model(skill="rest after decimal parts")
def rest_after_decimal_parts(view: TableView) -> AskSpace:
    """The decimal part of a rack that two parts leave: what was left standing, and one color that was knocked down."""
    colors = view.table.colors

    def build(spot: Spot, color: str) -> Draft | None:
        found = rest_of(view, spot, color)
        if found is None:
            return None
        s, k, n = map(view.number, (found.standing, found.part, found.whole))
        texts = decimals((s, n), (k, n))
        if texts is None:
            return None
        rate, rate2 = found.rates
        return Draft(
            ask=found.ask(_DECIMAL),
            roles=found.roles,
            structure="part unknown",
            slips=(("C31", (s, n, k, n)), ("C32", (s, n)), ("C33", (k, n)), ("E33", texts)),
            features=decimal_features("decimal_compute", *texts),
            rates=((rate, texts[0]), (rate2, texts[1])),
            sets=(n,),
            unit=False,
            must_not_show=(view.scope(spot, tuple(one for one in colors if one != color)),),
        )

    return AskSpace((view.spots, colors), build)


def _rate(view: TableView, spot: Spot, color: str | None, number: int) -> tuple[int, int, str] | None:
    """How many of a set were knocked down, and the decimal; None where the next set makes no whole number of it."""
    k, n = view.count("down", spot, color), view.count("set_up", spot, color)
    texts = decimals((k, n)) if 0 < k < n and 2 * k != n and may_be_next(number, n) and k * number % n == 0 else None
    return None if texts is None else (k, n, texts[0])


def _roles(view: TableView, spot: Spot, color: str | None) -> tuple[dict[str, Role], Op]:
    part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
    rate = Op("/", (part, whole))
    return {"part": part, "whole": whole, "rate": rate}, rate


def _counts(view: TableView) -> set[int]:
    """The numbers that the table prints: no answer may be one of a set that it shows."""
    return {row.set_up for row in view.table.rows} | {row.down for row in view.table.rows}


@problem_model(skill="part from a decimal")
def part_from_decimal(view: TableView) -> AskSpace:
    """How many would be knocked down of the next set, where the same decimal part of the pins is."""
    printed = _counts(view)

    def build(spot: Spot, color: str | None, number: int) -> Draft | None:
        found = _rate(view, spot, color, number)
        if found is None or number in printed:
            return None
        k, n, text = found
        roles, rate = _roles(view, spot, color)
        following = Stated(number, "set up next time")
        answer = k * number // n
        return Draft(
            ask=Ask(Value(Op("*", (rate, following))), (), _WHOLE),
            roles={**roles, "next": following},
            structure="part from rate",
            slips=(("E34", (10 * answer,)), ("A15", (number, answer)), ("G05", (k, n, number))),
            features=decimal_features("decimal_compute", text),
            rates=((rate, text),),
            sets=(n,),
        )

    return AskSpace((view.spots, view.colors_or_all, NEXT_SETS), build)


@problem_model(skill="whole from a decimal")
def whole_from_decimal(view: TableView) -> AskSpace:
    """How many must be set up next time, so that the same decimal part of them is the number wanted."""
    printed = _counts(view)

    def build(spot: Spot, color: str | None, number: int) -> Draft | None:
        found = _rate(view, spot, color, number)
        if found is None:
            return None
        k, n, text = found
        goal = k * number // n
        if {number, goal} & printed:
            return None
        roles, rate = _roles(view, spot, color)
        wanted = Stated(goal, "goal next time")
        return Draft(
            ask=Ask(Value(Op("/", (wanted, rate))), (), _WHOLE),
            roles={**roles, "goal": wanted},
            structure="whole from part",
            slips=(("E35", (goal, k, n)), ("E36", (number,)), ("G13", (k, n, goal)), ("A21", (number, goal))),
            features=decimal_features("decimal_compute", text),
            rates=((rate, text),),
            sets=(n,),
        )

    return AskSpace((view.spots, view.colors_or_all, NEXT_SETS), build)


@problem_model(skill="add tenths and hundredths")
def add_tenths_and_hundredths(view: TableView) -> AskSpace:
    """Two colors' fractions of 100 pins, one in tenths and one in hundredths."""

    def build(spot: Spot, pair: tuple[str, str], first_in_tenths: bool) -> Draft | None:
        first, second = (view.quantity("down", spot, color) for color in (pair if first_in_tenths else pair[::-1]))
        whole = view.quantity("set_up", spot)
        k, k2, n = map(view.number, (first, second, whole))
        if n != 100 or not k or not k2 or k % 10 or k2 % 10 == 0 or k + k2 >= n:
            return None
        forms = k // 10, 10, k2, 100
        rate, rate2 = Op("/", (first, whole)), Op("/", (second, whole))
        return Draft(
            ask=Ask(Value(Op("+", (rate, rate2))), (), Demand("any")),
            roles={"first": first, "second": second, "parts": (first, second), "whole": whole, "rate": rate, "rate2": rate2},
            structure="whole unknown",
            slips=(("C02", forms), ("C01", forms), ("C12", forms), ("A05", (k + k2,))),
            rates=((rate, f"{k // 10}/10"), (rate2, f"{k2}/100")),
            sets=(n,),
            over=lcm(10, 100),
            unit=False,
            unlike="one divides",
            must_not_show=(view.scope(spot, pair),),
        )

    return AskSpace((view.spots, tuple(combinations(view.table.colors, 2)), (True, False)), build)


@problem_model(skill="round a sum of decimals")
def about_both_parts(view: TableView) -> AskSpace:
    """The sum of two colors' decimal parts of one rack, rounded to tenths."""

    def build(spot: Spot, pair: tuple[str, str]) -> Draft | None:
        found = _two_parts(view, spot, pair)
        if found is None:
            return None
        first, second, whole, texts = found
        k, k2, n = map(view.number, (first, second, whole))
        # What ends at tenths is not rounded; a tie is rounded in more than one way.
        if 20 * (k + k2) % n == 0 or max(map(places, texts)) >= MOST_PLACES or not n < 20 * (k + k2) < 19 * n:
            return None
        rate, rate2 = Op("/", (first, whole)), Op("/", (second, whole))
        return Draft(
            ask=Ask(Value(Op("+", (rate, rate2))), (), _TENTHS),
            roles={"first": first, "second": second, "parts": (first, second), "whole": whole, "rate": rate, "rate2": rate2},
            structure="whole unknown",
            slips=(("E38", (k, k2, n)), ("D15", (k + k2, n)), ("E12", (k + k2, n)), ("E11", (k + k2, n))),
            features=decimal_features("decimal_compute", *texts) | {"round_decimal"},
            rates=((rate, texts[0]), (rate2, texts[1])),
            sets=(n,),
            unit=False,
            must_not_show=(view.scope(spot, pair),),
        )

    return AskSpace((view.spots, tuple(combinations(view.table.colors, 2))), build)
