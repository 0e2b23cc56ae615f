"""Fractions: a part of a set, the rest of one whole, comparing, equal fractions, a part of a number or its whole, equal shares."""

from __future__ import annotations

from itertools import combinations
from math import gcd, lcm

from mathgen.asks.expression import Ask, Choice, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.aimed import SUCCESS, Record, aimed, of_successes, slips
from mathgen.models.next_sets import NEXT_SETS, may_be_next
from mathgen.models.registry import problem_model
from mathgen.models.side_by_side import Pair, side_by_side
from mathgen.models.space import AskSpace, joined
from mathgen.models.view import Spot, TableView
from mathgen.models.written_fractions import lowest, unlike
from mathgen.problems.draft import Draft, Role

_ANY = Demand("any")
_NAME = Demand("name")
_WHOLE = Demand("whole")
_MIXED = Demand("mixed:any")
_ONE = Stated(1, "whole")
_FRIENDLY = (3, 4, 5, 6, 8, 10, 12)  # of halves, the part is the rest as well: two slips would give the key
_BOTTOMS = (2, 3, 4, 5, 6, 8, 10, 12, 100)  # footnote 4.NF
_COMMON = 180  # the largest bottom number that two sets of different sizes may ask for


def hides_slips(part: int, whole: int) -> bool:
    """Whether the numbers hide the likeliest slip: nothing or all of the set, or a half where other parts can be had.

    Sets of 4 leave little choice, so halves of them may be asked for.

    >>> hides_slips(3, 8), hides_slips(4, 8), hides_slips(2, 4), hides_slips(0, 4)
    (False, True, False, True)
    """
    return part in (0, whole) or (2 * part == whole and whole > 4)


@problem_model(skill="fraction of a set")
def fraction_down(view: TableView) -> AskSpace:
    """The fraction of a set of one color, or of a whole rack, that was knocked down."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(part), view.number(whole)
        if hides_slips(k, n) or n < 3:  # "1 of 2" is read off, not worked out
            return None
        every = view.count("set_up", spot)
        return Draft(
            ask=Ask(Value(Op("/", (part, whole))), (), _ANY),
            roles={"part": part, "whole": whole},
            structure="what fraction",
            slips=(("A03", (k, n)), ("A01", (k, n)), ("A05", (k,)), *((("A08", (k, every)),) if every != n else ()), ("A02", (k, n))),
            sets=(n,),
            over=n,
            unit=False,
        )

    def of_trials(record: Record, negated: bool) -> Draft:
        part, _ = record.meant(negated)
        return Draft(
            ask=Ask(Value(Op("/", (part, record.tries))), (), _ANY),
            roles=record.roles(negated),
            structure="what fraction",
            slips=slips(record, negated),
            sets=(record.n,),
            over=record.n,
            unit=False,
            wanted=SUCCESS,
        )

    return joined(
        AskSpace(((*view.spots, *view.group_pairs), view.colors_or_all), build),
        of_successes(view, of_trials),
    )


@problem_model(skill="rest of one whole")
def fraction_left_standing(view: TableView) -> AskSpace:
    """The fraction of a set that was left standing, from the fraction knocked down; or the other way round."""

    def build(spot: Spot, color: str | None, asked: str) -> Draft | None:
        given = view.quantity("down" if asked == "standing" else "standing", spot, color)
        rest = Quantity("standing" if asked == "standing" else "down", given.scope)
        whole = Quantity("set_up", given.scope)
        k, n = view.number(given), view.number(whole)
        if hides_slips(k, n) or 2 * k == n:  # the rest of a half is the number in the text
            return None
        rate = Op("/", (given, whole))
        return Draft(
            ask=Ask(Value(Op("-", (_ONE, rate))), (), _ANY),
            roles={"given": given, "rest": rest, "whole": whole, "rate": rate, "asked": asked},
            structure="part unknown",
            slips=(("A03", (n - k, n)), ("A01", (n - k, n)), ("A05", (n - k,)), *((("C06", (k, n)),) if k > 1 else ())),
            rates=((rate, f"{k}/{n}"),),
            sets=(n,),
            over=n,
            unit=False,
            # The count knocked down stands in the table, over the number set up in its head.
            must_not_show=() if asked == "standing" else (rest.scope,),
        )

    def of_trials(record: Record, negated: bool) -> Draft | None:
        if negated or 2 * record.k == record.n:
            return None
        rate = Op("/", (record.hits, record.tries))
        return Draft(
            ask=Ask(Value(Op("-", (_ONE, rate))), (), _ANY),
            roles=record.roles(True) | {"rate": rate},
            structure="part unknown",
            slips=slips(record, True)[1:],
            rates=((rate, f"{record.k}/{record.n}"),),
            sets=(record.n,),
            over=record.n,
            unit=False,
            wanted=SUCCESS,
        )

    return joined(AskSpace((view.spots, view.colors_or_all, ("standing", "down")), build), of_successes(view, of_trials))


@problem_model(skill="compare fractions")
def compare_fractions(view: TableView) -> AskSpace:
    """Which of two groups, trials or colors had the greater fraction of its set knocked down.

    Sets of one size are compared by their fractions, printed over one bottom number or over two; sets of two sizes by counts.
    """

    def build(pair: Pair, bottoms: str) -> Draft | None:
        parts = pair.one, pair.other
        wholes = Quantity("set_up", pair.one.scope), Quantity("set_up", pair.other.scope)
        k, k2 = map(view.number, parts)
        n, n2 = map(view.number, wholes)
        if k in (0, n) or k2 in (0, n2) or k * n2 == k2 * n:
            return None
        first_wins = k * n2 > k2 * n
        seen: tuple[int, int, int, int] | None = (k, n, k2, n2)
        if n != n2:
            # Of counts, the likely slips are more pins and the smaller gap; bottom numbers are not seen.
            slips = _more_misleads(k, k2, first_wins) or _gap_misleads(n - k, n2 - k2, first_wins)
            seen = seen if bottoms == "two" and slips and lcm(n, n2) <= _COMMON else None
        elif bottoms == "two":
            seen = _unlike_forms(k, k2, n, first_wins)
        if seen is None:
            return None
        by_top, by_gap = ("B11", "B12") if n == n2 else ("B05", "B06")
        a, b, c, d = seen  # tops and bottoms as the pupil sees them
        first, second = str(pair.first), str(pair.second)
        rates = Op("/", (parts[0], wholes[0])), Op("/", (parts[1], wholes[1]))
        roles: dict[str, Role] = {
            "parts": parts,
            "first": parts[0],
            "second": parts[1],
            "wholes": wholes,
            "whole": wholes[0],
            "whole2": wholes[1],
        }
        if n == n2:
            roles |= {"rate": rates[0], "rate2": rates[1]}
        return Draft(
            ask=Ask(Choice((first, second), rates), (), _NAME),
            roles=roles,
            structure="what fraction",
            slips=(
                (by_top, (first, second, a, c)),
                ("B04", (first, second, b, d)),
                (by_gap, (first, second, b - a, d - c)),
                ("B10", (second if first_wins else first,)),
            ),
            features=frozenset({"unequal_sets"} if n != n2 else {"unlike_denominators"} if b != d else ()),
            rates=((rates[0], f"{a}/{b}"), (rates[1], f"{c}/{d}")) if n == n2 else (),
            sets=(n, n2),
            unit=False,
            wanted=frozenset({pair.kind} if n == n2 else {pair.kind, "counts"}),
            unlike=unlike(b, d),
        )

    def of_trials(one: Record, other: Record) -> Draft | None:
        if one.n == other.n or one.k * other.n == other.k * one.n:
            return None
        first, second = (str(group) for record in (one, other) for group in record.spot.groups or ())
        first_wins = one.k * other.n > other.k * one.n
        rates = Op("/", (one.hits, one.tries)), Op("/", (other.hits, other.tries))
        return Draft(
            ask=Ask(Choice((first, second), rates), (), _NAME),
            roles={"hits": one.hits, "tries": one.tries, "hits2": other.hits, "tries2": other.tries},
            structure="what fraction",
            slips=(("B05", (first, second, one.k, other.k)), ("B10", (second if first_wins else first,))),
            features=frozenset({"unequal_sets"}),
            sets=(one.n, other.n),
            unit=False,
            wanted=frozenset({"groups", "success"}),
        )

    records = [record for record in aimed(view, pairs=False) if 0 < record.k < record.n]
    return joined(side_by_side(view, build, ("one", "two")), AskSpace((list(combinations(records, 2)),), lambda pair: of_trials(*pair)))


def _unlike_forms(k: int, k2: int, n: int, first_wins: bool) -> tuple[int, int, int, int] | None:
    """Two fractions of sets of one size over different bottom numbers, one or both in lowest terms; None where there are none.

    Only ways on which a slip shows. Which of those is taken differs from one pair of counts to the next, so that the fraction
    in lowest terms is not always the greater.
    """
    one, other = lowest(k, n), lowest(k2, n)
    ways = ((*one, k2, n), (k, n, *other), (*one, *other))
    good = [way for way in ways if way[1] != way[3] and _misleads(*way, first_wins)]
    return good[(k + k2) % len(good)] if good else None


def _misleads(a: int, b: int, c: int, d: int, first_wins: bool) -> bool:
    """Whether more pins (B05), the bigger bottom number (B04) or the smaller gap (B06) points to the lesser of a/b and c/d."""
    return _more_misleads(a, c, first_wins) or _more_misleads(b, d, first_wins) or _gap_misleads(b - a, d - c, first_wins)


def _more_misleads(one: int, other: int, first_wins: bool) -> bool:
    return one < other if first_wins else one > other


def _gap_misleads(one: int, other: int, first_wins: bool) -> bool:
    return one > other if first_wins else one < other


@problem_model(skill="part from a fraction")
def part_from_fraction(view: TableView) -> AskSpace:
    """How many would be knocked down of the next set, at the same rate: a fraction of a number that is not in the table."""
    printed = {row.set_up for row in view.table.rows} | {row.down for row in view.table.rows}

    def build(spot: Spot, color: str | None, number: int) -> Draft | None:
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(part), view.number(whole)
        shared = gcd(k, n)
        if not shared or number in printed or not may_be_next(number, n):
            return None
        a, b = k // shared, n // shared
        if a == b or b not in _FRIENDLY or number % b:
            return None
        rate, following = Op("/", (part, whole)), Stated(number, "set up next time")
        answer = number // b * a
        return Draft(
            ask=Ask(Value(Op("*", (rate, following))), (), _WHOLE),
            roles={"part": part, "whole": whole, "rate": rate, "next": following},
            structure="part from rate",
            slips=(("A12", (number, b)), ("A15", (number, answer)), ("G05", (a, b, number)), ("A13", (a,))),
            features=frozenset({"fraction_of_quantity"}),
            rates=((rate, f"{a}/{b}"),),
            sets=(n,),
        )

    return AskSpace((view.spots, view.colors_or_all, NEXT_SETS), build)


@problem_model(skill="whole from a fraction")
def whole_from_part(view: TableView) -> AskSpace:
    """How many must be set up next time, so that the same fraction of them is the number wanted."""
    printed = {row.set_up for row in view.table.rows} | {row.down for row in view.table.rows}

    def build(spot: Spot, color: str | None, number: int) -> Draft | None:
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(part), view.number(whole)
        shared = gcd(k, n)
        if not shared or not may_be_next(number, n):
            return None
        a, b = k // shared, n // shared
        goal = number // b * a
        if a == b or b not in _FRIENDLY or number % b or {number, goal} & printed:
            return None
        rate, wanted = Op("/", (part, whole)), Stated(goal, "goal next time")
        return Draft(
            ask=Ask(Value(Op("/", (wanted, rate))), (), _WHOLE),
            roles={"part": part, "whole": whole, "rate": rate, "goal": wanted},
            structure="whole from part",
            slips=(("A16", (goal, a, b)), ("A20", (goal, a)), ("G13", (k, n, goal)), ("A21", (number, goal))),
            rates=((rate, f"{a}/{b}"),),
            sets=(n,),
        )

    return AskSpace((view.spots, view.colors_or_all, NEXT_SETS), build)


@problem_model(skill="equal fractions")
def equivalent_fraction(view: TableView) -> AskSpace:
    """The top number of an equal fraction, its bottom number given: smaller and a divisor of the set, or a multiple of it."""

    def build(spot: Spot, color: str | None, new: int) -> Draft | None:
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(part), view.number(whole)
        if k in (0, n) or n < 3 or n == new or k * new % n:
            return None
        bottom = Stated(new, "bottom number")
        # As a pupil does it: the factor between the bottom numbers, then the top number. 9/12 to fourths: 12 / 4 = 3, 9 / 3 = 3.
        if n % new == 0:
            factor, goal = n // new, Op("/", (part, Op("/", (whole, bottom))))
        elif new % n == 0:
            factor, goal = new // n, Op("*", (part, Op("/", (bottom, whole))))
        else:
            return None
        return Draft(
            ask=Ask(Value(goal), (), _WHOLE),
            roles={"part": part, "whole": whole, "bottom": bottom},
            structure="part unknown",
            slips=(("B01", (k, n, new)), ("B02", (k,)), ("B13", (factor,))),
            features=frozenset({"fraction_notation"}),
            sets=(n,),
            unit=False,
        )

    return AskSpace(((*view.spots, *view.group_pairs), view.colors_or_all, _BOTTOMS), build)


@problem_model(skill="fraction as a quotient")
def fair_share(view: TableView) -> AskSpace:
    """One share, as a mixed number, when a total is shared equally among three or more trials or groups."""
    table = view.table
    neighbors = [table.groups[i : i + size] for size in (3, 4, 5, 6) for i in range(len(table.groups) - size + 1)]
    sharers: list[tuple[str, ...] | None] = [None, *neighbors]  # None: the trials share

    def build(spot: Spot, groups: tuple[str, ...] | None, color: str | None) -> Draft | None:
        if groups is None:
            if spot.trials is not None and len(spot.trials) < 3:
                return None
            kind, number, place = "trials", len(spot.trials or table.trials), spot
        elif spot.groups is None:
            kind, number, place = "groups", len(groups), Spot(groups, spot.trials)
        else:
            return None
        total = view.quantity("down", place, color)
        k = view.number(total)
        if number < 3 or k < number or k % number == 0:
            return None
        count = Stated(number, kind)
        return Draft(
            ask=Ask(Value(Op("/", (total, count))), (), _MIXED),
            roles={"total": total, "count": count},
            structure="what fraction",
            slips=(("D17", (k, number)), ("D19", (k, number)), ("D20", (k, number)), ("I02", (k,))),
            unit=False,  # a pin cannot be cut: what is shared is a point for each pin
            features=frozenset({"fraction_as_quotient"}),
            wanted=frozenset({kind}),
        )

    return AskSpace((view.spots, sharers, view.colors_or_all), build)
