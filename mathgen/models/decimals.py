"""Decimals: a part of a set as a decimal that ends, or that repeats; compared, and rounded."""

from __future__ import annotations

from math import gcd

from sympy import Rational

from mathgen.asks.expression import Ask, Choice, Op, Quantity, Stated, Truth, Value
from mathgen.asks.steps.written_number import terminating
from mathgen.exact.demand import Demand
from mathgen.exact.forms import decimal, period
from mathgen.models.aimed import SUCCESS, Record, of_successes, slips
from mathgen.models.registry import problem_model
from mathgen.models.side_by_side import Pair, side_by_side
from mathgen.models.space import AskSpace, joined
from mathgen.models.view import Spot, TableView
from mathgen.models.written_fractions import lowest
from mathgen.problems.draft import Draft

_DECIMAL = Demand("decimal")
_FRACTION = Demand("fraction")
_TENTHS = Demand("decimal", 1)
_NAME = Demand("name")
_REPEATS = frozenset({"repeating"})
_ENDS: frozenset[str] = frozenset()
_SIDE_BY_SIDE = 10  # the largest set whose number pupils write beside the part as a decimal
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
        # Nobody writes 20.36 for 20/36. Of 15/24 it is the 5 and the 8 of 5/8 that are written side by side.
        a, b = (k, n) if n <= _SIDE_BY_SIDE else lowest(k, n)
        glued = (("D01", (a, b)), ("D02", (a, b))) if b <= _SIDE_BY_SIDE else ()
        return Draft(
            ask=Ask(Value(Op("/", (part, whole))), (), _DECIMAL),
            roles={"part": part, "whole": whole},
            structure="what fraction",
            slips=(
                ("N06", (k, n)),
                *((("D22", (k, n)),) if not block else ()),
                *glued,
                ("D04", (k,)),
                ("A03", (k, n)),
                ("D18", (k, n)),
                *((("D05", (k, n)),) if 100 % (n // gcd(k, n)) and _short(n, k, bool(block)) else ()),
            ),
            features=frozenset({"decimal_notation"}),
            sets=(n,),
            unit=False,
            wanted=_REPEATS if block else _ENDS,
        )

    def of_trials(record: Record, negated: bool) -> Draft | None:
        part, k = record.meant(negated)
        if period(record.n // gcd(k, record.n))[1] or 1000 * k % record.n:
            return None
        return Draft(
            ask=Ask(Value(Op("/", (part, record.tries))), (), _DECIMAL),
            roles=record.roles(negated),
            structure="what fraction",
            slips=(*slips(record, negated)[:3], ("D22", (k, record.n)), ("D02", (k, record.n)), ("D01", (k, record.n)), ("T06", (k,))),
            features=frozenset({"decimal_notation"}),
            sets=(record.n,),
            unit=False,
            wanted=SUCCESS,
        )

    return joined(AskSpace(((*view.spots, *view.group_pairs), view.colors_or_all), build), of_successes(view, of_trials))


@problem_model(skill="compare decimals")
def compare_decimals(view: TableView) -> AskSpace:
    """Which of two groups, trials or colors had the greater part of its set knocked down: sets of one size, decimals of two lengths."""

    def build(pair: Pair) -> Draft | None:
        wholes = Quantity("set_up", pair.one.scope), Quantity("set_up", pair.other.scope)
        n, n2 = map(view.number, wholes)
        k, k2 = view.number(pair.one), view.number(pair.other)
        if n != n2 or k in (0, n) or k2 in (0, n):
            return None
        text, text2 = terminating(k, n), terminating(k2, n)
        # With as many places, the digits alone would tell, and both slips would be right.
        if text is None or text2 is None or len(text) == len(text2):
            return None
        longest = max(len(text), len(text2)) - 2  # "0." stands before the places
        if longest > _MOST_DIGITS:
            return None
        first, second = str(pair.first), str(pair.second)
        rates = Op("/", (pair.one, wholes[0])), Op("/", (pair.other, wholes[1]))
        return Draft(
            ask=Ask(Choice((first, second), rates), (), _NAME),
            roles={
                "parts": (pair.one, pair.other),
                "first": pair.one,
                "second": pair.other,
                "wholes": wholes,
                "whole": wholes[0],
                "whole2": wholes[1],
                "rate": rates[0],
                "rate2": rates[1],
            },
            structure="what fraction",
            slips=(
                ("E01", (first, second, text, text2)),
                ("E02", (first, second, text, text2)),
                ("B10", (second if k > k2 else first,)),
            ),
            features=frozenset({"decimal_notation", "thousandths"} if longest == _MOST_DIGITS else {"decimal_notation"}),
            rates=((rates[0], text), (rates[1], text2)),
            sets=(n, n),
            unit=False,
            wanted=frozenset({pair.kind}),
        )

    return side_by_side(view, build)


@problem_model(skill="round a decimal")
def round_decimal(view: TableView) -> AskSpace:
    """The part of a set that was knocked down, as a decimal rounded to tenths."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(part), view.number(whole)
        # What ends at tenths is not rounded; a tie is rounded in more than one way.
        if k in (0, n) or n < 3 or 20 * k % n == 0 or 10**_MOST_DIGITS * k % n:
            return None
        if not n < 20 * k < 19 * n:  # would be rounded to nothing or to all
            return None
        rate = Op("/", (part, whole))
        return Draft(
            ask=Ask(Value(rate), (), _TENTHS),
            roles={"part": part, "whole": whole, "rate": rate},
            structure="what fraction",
            slips=(("D15", (k, n)), ("E12", (k, n)), ("E11", (k, n)), ("A03", (k, n))),
            features=frozenset({"decimal_notation", "round_decimal"}),
            rates=((rate, str(terminating(k, n))),),
            sets=(n,),
            unit=False,
        )

    return AskSpace((view.spots, view.colors_or_all), build)


@problem_model(skill="fraction of a repeating decimal")
def fraction_of_repeating(view: TableView) -> AskSpace:
    """The fraction that a repeating decimal is, which tells the part of a set that was knocked down."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        exact = Rational(view.number(part), view.number(whole))
        before, block = period(int(exact.q))
        if not 0 < block <= 2 or before > 2:
            return None
        rate, text = Op("/", (part, whole)), decimal(exact)
        return Draft(
            ask=Ask(Value(rate), (), _FRACTION),
            roles={"part": part, "whole": whole, "rate": rate},
            structure="what fraction",
            slips=(("N01", (int(exact.p), int(exact.q))), ("N02", (int(exact.p), int(exact.q))), ("N03", (int(exact.p), int(exact.q)))),
            features=frozenset({"decimal_notation"}),
            rates=((rate, text),),
            sets=(view.number(whole),),
            unit=False,
        )

    return AskSpace((view.spots, view.colors_or_all), build)


@problem_model(skill="rest as a decimal")
def rest_as_decimal(view: TableView) -> AskSpace:
    """The part of a set that was left standing, as an exact decimal, where what was knocked down is told."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(part), view.number(whole)
        before, block = period(n // gcd(k, n))
        if k in (0, n) or n < 3 or before > _MOST_DIGITS or not 0 < block <= _MOST_DIGITS:
            return None
        standing = Quantity("standing", whole.scope)
        return Draft(
            ask=Ask(Value(Op("/", (Op("-", (whole, part)), whole))), (), _DECIMAL),
            roles={"part": part, "whole": whole, "standing": standing},
            structure="part unknown",
            slips=(("N04", (k, n)), ("N06", (n - k, n)), *((("D02", (n - k, n)),) if n <= _SIDE_BY_SIDE else ()), ("D18", (n - k, n))),
            features=frozenset({"decimal_notation"}),
            sets=(n,),
            unit=False,
        )

    return AskSpace((view.spots, view.colors_or_all), build)


def _short(top: int, bottom: int, repeats: bool) -> bool:
    """Whether the quotient turned round is a decimal of a few digits, which repeats only where pupils write such decimals."""
    before, block = period(bottom // gcd(top, bottom))
    return before <= 2 and block <= (2 if repeats else 0)


@problem_model(skill="fraction of a repeating decimal")
def equal_to_repeating(view: TableView) -> AskSpace:
    """Whether a fraction is equal to a repeating decimal; where it is not, the decimal is cut off, or all its digits stand over nines."""

    def build(spot: Spot, color: str | None, right: bool) -> Draft | None:
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(part), view.number(whole)
        exact = Rational(k, n)
        before, block = period(int(exact.q))
        if not 0 < block <= 2 or before > 2:
            return None
        digits = int(exact * 10 ** (before + block))
        cut, nines = Rational(digits, 10 ** (before + block)), Rational(digits, 10 ** (before + block) - 1)
        claimed = exact if right else nines if before else cut
        rate = Op("/", (part, whole))
        claim = Stated(int(claimed.p), "claimed", int(claimed.q))
        return Draft(
            ask=Ask(Truth(rate, "=", claim), (), Demand("truth")),
            roles={"part": part, "whole": whole, "rate": rate, "claim": claim},
            structure="is it so",
            slips=(("N05", ("true" if claimed == (nines if before else cut) else "false",)),),
            features=frozenset({"decimal_notation"}),
            rates=((rate, decimal(exact)),),
            sets=(n,),
        )

    return AskSpace((view.spots, view.colors_or_all, (True, False)), build)
