"""Percents: the percent of a set, a part or a whole from a percent, percent change, and a part in one form and another."""

from __future__ import annotations

from itertools import combinations

from mathgen.asks.expression import Ask, Op, Stated, Value
from mathgen.asks.steps.written_number import percent, terminating
from mathgen.exact.demand import Demand
from mathgen.models.aimed import SUCCESS, Record, of_successes, slips
from mathgen.models.next_sets import may_be_next
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace, joined
from mathgen.models.view import Spot, TableView
from mathgen.models.written_fractions import lowest
from mathgen.problems.draft import Draft
from mathgen.trials.scope import Label

_Spans = tuple[tuple[Label, ...], tuple[Label, ...]]  # earlier trials, later trials

_WHOLE = Demand("whole")
_PERCENT = Demand("percent")
_TO_A_TENTH = Demand("percent", 1)

# Sets of the next time: friendly numbers, none of them 100, where a percent and its part are the same number.
_NEXT = (20, 30, 40, 50, 60, 80, 120, 150, 200)


def percent_demand(top: int, bottom: int) -> Demand | None:
    """How the percent of top/bottom is asked for: exactly where it ends within one place, else to the nearest tenth.

    None where the percent lies half way between two tenths: rounding rules part ways there.

    >>> str(percent_demand(5, 8)), str(percent_demand(2, 3)), percent_demand(1, 16)
    ('percent', 'percent:1', None)
    """
    if 1000 * top % bottom == 0:
        return _PERCENT
    return None if 2000 * top % bottom == 0 else _TO_A_TENTH


def _place(demand: Demand) -> str:
    """The place that the words name for rounding; "" for an exact percent."""
    return "" if demand.places is None else "tenth"


def _plain(top: int, bottom: int) -> bool:
    """Whether the percent of top/bottom is one that a pupil would write: at most one place, or thirds."""
    return 1000 * top % bottom == 0 or 300 * top % bottom == 0


def _backwards(k: int, n: int) -> tuple[tuple[str, tuple[int, int]], ...]:
    """The slip that divides by the rest, where a pupil could believe its percent: at most double, and plain."""
    rest = n - k
    return (("D09", (k, n)),) if k <= 2 * rest and _plain(k, rest) else ()


@problem_model(skill="percent of a set")
def percent_of_set(view: TableView) -> AskSpace:
    """What percent of a set was knocked down: of one color or all pins, or of two colors taken together."""
    colors = view.table.colors
    ways = [*(((color,) if color is not None else None) for color in view.colors_or_all), *combinations(colors, 2)]

    def build(spot: Spot, way: tuple[str, ...] | None) -> Draft | None:
        whole = view.quantity("set_up", spot, way)
        part = view.quantity("down", spot, way)
        n, k = view.number(whole), view.number(part)
        # A half hides the commonest mistakes; of 100 pins, the count is the percent; of fewer than 5, there is nothing to work out.
        if k in (0, n) or 2 * k == n or n == 100 or n < 5:
            return None
        if way is not None and len(way) == 2:
            return _two_colors(view, spot, way, k, n)
        if 1000 * k % n:
            return None
        return Draft(
            ask=Ask(Value(Op("/", (part, whole))), (), _PERCENT),
            roles={"part": part, "whole": whole},
            structure="what fraction",
            slips=(("A03", (k, n)), ("D07", (k,)), *_backwards(k, n), *((("F06", (k, n)),) if _plain(n, k) else ())),
            features=frozenset({"percent"}),
            sets=(n,),
            unit=False,
        )

    def of_trials(record: Record, negated: bool) -> Draft | None:
        part, k = record.meant(negated)
        if 2 * k == record.n or 1000 * k % record.n:
            return None
        return Draft(
            ask=Ask(Value(Op("/", (part, record.tries))), (), _PERCENT),
            roles=record.roles(negated),
            structure="what fraction",
            slips=(*slips(record, negated)[:3], ("T12", (k,))),
            features=frozenset({"percent"}),
            sets=(record.n,),
            unit=False,
            wanted=SUCCESS,
        )

    return joined(AskSpace((view.spots, ways), build), of_successes(view, of_trials))


def _two_colors(view: TableView, spot: Spot, colors: tuple[str, ...], k: int, n: int) -> Draft | None:
    """Total over total: the mean of the two percents is the mistake to find."""
    demand = percent_demand(k, n)
    sets = tuple(view.quantity("set_up", spot, color) for color in colors)
    parts = tuple(view.quantity("down", spot, color) for color in colors)
    (n1, n2), (k1, k2) = map(view.number, sets), map(view.number, parts)
    # Equal sets or equal rates: there the mean of the percents is right by luck. "5 of the 5 gold pins" is not said aloud.
    if demand is None or n1 == n2 or k1 * n2 == k2 * n1 or 0 in (k1, k2) or k1 == n1 or k2 == n2:
        return None
    return Draft(
        ask=Ask(Value(Op("/", (Op("+", parts), Op("+", sets)))), (), demand),
        roles={"sets": sets, "parts": parts, "whole": view.quantity("set_up", spot, colors), "place": _place(demand)},
        structure="pooled rate",
        slips=(("F12", (k1, n1, k2, n2)), ("F13", (k1, n1, k2, n2)), ("A03", (k, n)), *_backwards(k, n)),
        features=frozenset({"percent", "unequal_sets"}),
        sets=(n1, n2),
        unit=False,
        wanted=frozenset({"two-sets"}),
    )


@problem_model(skill="part from a percent")
def part_from_percent(view: TableView) -> AskSpace:
    """How many pins of the next set: the results as a whole percent, then the same rate. No table holds that answer."""

    def build(spot: Spot, color: str | None, number: int) -> Draft | None:
        whole = view.quantity("set_up", spot, color)
        part = view.quantity("down", spot, color)
        n, k = view.number(whole), view.number(part)
        if n < 4 or k in (0, n) or 100 * k % n or not may_be_next(number, n) or number * k % n:
            return None
        percent, share = 100 * k // n, number * k // n
        # At 50% the rest is the part; at 10% dividing by the percent's number happens to be right.
        # "80% of 80" mixes up two numbers that mean different things.
        if percent in (10, 50, number) or share in (percent, k, n):
            return None
        rate = Op("/", (part, whole))
        next_set = Stated(number, "set up next time")
        return Draft(
            ask=Ask(Value(Op("*", (rate, next_set))), (), _WHOLE),
            roles={"part": part, "whole": whole, "rate": rate, "next": next_set},
            structure="part from rate",
            slips=(
                ("F05", (number, share)),
                ("F03", (percent,)),
                ("F04", (percent, number)),
                ("F02", (percent, number)),
                ("F01", (percent, number)),
            ),
            features=frozenset({"percent"}),
            rates=((rate, f"{percent}%"),),
            sets=(n,),
        )

    return AskSpace((view.spots, view.colors_or_all, _NEXT), build)


@problem_model(skill="whole from a percent")
def whole_from_percent(view: TableView) -> AskSpace:
    """How many pins must be set up next time, so that the same percent of them is the number wanted."""

    def build(spot: Spot, color: str | None, number: int) -> Draft | None:
        whole = view.quantity("set_up", spot, color)
        part = view.quantity("down", spot, color)
        n, k = view.number(whole), view.number(part)
        if n < 4 or k in (0, n) or 100 * k % n or not may_be_next(number, n) or number * k % n:
            return None
        points, share = 100 * k // n, number * k // n
        if points in (number, share) or share in (k, n):
            return None
        rate = Op("/", (part, whole))
        goal = Stated(share, "goal next time")
        return Draft(
            ask=Ask(Value(Op("/", (goal, rate))), (), _WHOLE),
            roles={"part": part, "whole": whole, "rate": rate, "goal": goal},
            structure="whole from part",
            slips=(("F14", (points, share)), ("G13", (k, n, share)), ("F03", (points,)), ("A21", (number, share))),
            features=frozenset({"percent"}),
            rates=((rate, f"{points}%"),),
            sets=(n,),
        )

    return AskSpace((view.spots, view.colors_or_all, _NEXT), build)


@problem_model(skill="forms of a part")
def three_forms(view: TableView) -> AskSpace:
    """A part of a set, given as a fraction, a decimal or a percent, asked for in another form; later two parts of one whole added."""
    pairs = tuple(combinations(view.table.colors, 2))

    def one_part(spot: Spot, color: str | None, given: str, asked: str) -> Draft | None:
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(part), view.number(whole)
        if k in (0, n) or 2 * k == n or n < 4 or n == 100 or 1000 * k % n:
            return None
        a, b = lowest(k, n)
        rate = Op("/", (part, whole))
        return Draft(
            ask=Ask(Value(rate), (), Demand("percent" if asked == "percent" else "decimal")),
            roles={"part": part, "whole": whole, "rate": rate},
            structure="what fraction",
            slips=(*_form_slips(a, b, given), ("A03", (k, n))),
            features=frozenset({"percent", "decimal_notation"} if asked == "decimal" or given == "decimal" else {"percent"}),
            rates=((rate, _in_form(a, b, given)),),
            sets=(n,),
            unit=False,
            wanted=frozenset({asked}),
        )

    def two_parts(spot: Spot, colors: tuple[str, str], given: tuple[str, str], asked: str) -> Draft | None:
        first, second = (view.quantity("down", spot, color) for color in colors)
        whole = view.quantity("set_up", spot)
        k, k2, n = view.number(first), view.number(second), view.number(whole)
        if not k or not k2 or k + k2 >= n or n == 100 or 100 * k % n or 100 * k2 % n:
            return None
        rates = Op("/", (first, whole)), Op("/", (second, whole))
        texts = tuple(_in_form(*lowest(one, n), form) for one, form in zip((k, k2), given, strict=True))
        every = k + k2
        return Draft(
            ask=Ask(Value(Op("+", rates)), (), Demand("percent" if asked == "percent" else "decimal")),
            roles={"first": first, "second": second, "parts": (first, second), "whole": whole, "rate": rates[0], "rate2": rates[1]},
            structure="whole unknown",
            slips=(("C13", (k, n)), *_form_slips(every, n, "decimal" if asked == "percent" else "percent"), ("A03", (every, n))),
            features=frozenset({"percent", "decimal_notation", "mixed_forms"}),
            rates=((rates[0], texts[0]), (rates[1], texts[1])),
            sets=(n,),
            unit=False,
            wanted=frozenset({f"joined-{asked}"}),
            must_not_show=(view.scope(spot, colors),),
        )

    return joined(
        AskSpace((view.spots, view.colors_or_all, ("fraction", "decimal"), ("percent",)), one_part),
        AskSpace((view.spots, view.colors_or_all, ("percent",), ("decimal",)), one_part),
        AskSpace((view.spots, pairs, (("fraction", "decimal"), ("decimal", "fraction")), ("percent",)), two_parts),
        AskSpace((view.spots, pairs, (("fraction", "percent"), ("percent", "fraction")), ("decimal",)), two_parts),
    )


def _in_form(a: int, b: int, form: str) -> str:
    """a/b, in lowest terms, as a fraction, a decimal or a percent."""
    if form == "fraction":
        return f"{a}/{b}"
    return str(terminating(a, b)) if form == "decimal" else percent(a, b)


def _form_slips(a: int, b: int, given: str) -> tuple[tuple[str, tuple[int, ...]], ...]:
    """The slips of one change of form, a/b being the part."""
    if given == "fraction":
        return ("D07", (a,)), ("D08", (b,))
    if given == "decimal":
        return ("D10", (a, b)), ("D12", (int(str(terminating(a, b)).partition(".")[2] or 0),)), ("D11", (a, b))
    return ("D21", (a, b)), *((("D13", (100 * a // b,)),) if 100 * a % b == 0 else ()), ("D11", (a, b))


@problem_model(skill="percent change")
def percent_change(view: TableView) -> AskSpace:
    """By what percent a group's count changed, from an earlier trial to a later one, or from one half of the trials to the other."""
    table = view.table
    trials = table.trials
    spans: list[_Spans] = [((a,), (b,)) for a, b in combinations(trials, 2)]
    if len(trials) > 2 and len(trials) % 2 == 0:
        spans.append((trials[: len(trials) // 2], trials[len(trials) // 2 :]))

    def build(group: tuple[str, ...] | None, span: _Spans, color: str | None) -> Draft | None:
        before, after = (view.quantity("down", Spot(group, trials_), color) for trials_ in span)
        if not (view.totals.complete(before.scope) and view.totals.complete(after.scope)):
            return None
        # With other racks, a change in the count would say nothing about the rolls.
        if view.totals.total("set_up", before.scope) != view.totals.total("set_up", after.scope):
            return None
        old, new = view.number(before), view.number(after)
        # Small starts give wild percents; a percent that is one of the counts would stand in the text.
        if old < 4 or new == 0 or old == new or 100 * abs(new - old) in (old * old, old * new):
            return None
        demand = percent_demand(abs(new - old), old)
        if demand is None:
            return None
        change = Op("-", (after, before) if new > old else (before, after))
        return Draft(
            ask=Ask(Value(Op("/", (change, before))), (), demand),
            roles={"old": before, "new": after, "place": _place(demand)},
            structure="percent change",
            slips=(("F07", (old, new)), ("F08", (old, new)), ("F09", (old, new))),
            features=frozenset({"percent", "percent_change"}),
            unit=False,
            wanted=frozenset({"increase" if new > old else "decrease"}),
        )

    return AskSpace((view.groups_or_class, spans, view.colors_or_all), build)
