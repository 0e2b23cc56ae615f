"""The value of an ask, worked forwards from the table's totals.

This is where a key comes from. The proof may not import it: it has to arrive at the same answer on its own.
"""

from __future__ import annotations

from itertools import combinations
from math import gcd, lcm

from sympy import Integer, Rational

from mathgen.asks.expression import (
    LETTER_VALUES,
    Ask,
    Changes,
    Choice,
    Chosen,
    Expr,
    Listing,
    Measured,
    Op,
    Price,
    Quantity,
    QuotientRemainder,
    Same,
    Stat,
    Stated,
    StatName,
    Tally,
    Truth,
    with_number,
)
from mathgen.trials.totals import Totals


class NoAnswer(ValueError):
    """The ask has no answer on this table: a zero divisor, or no single label that beats all others."""


def value(expr: Expr, totals: Totals) -> Rational:
    """The exact value of an expression.

    Args:
        expr: no Unknown in it.
        totals: of the table that the expression reads.
    Raises:
        NoAnswer: division by zero.
    """
    kind = type(expr)
    if kind is Quantity:
        return Integer(totals.total(expr.measure, expr.scope))  # type: ignore[union-attr]
    if kind is Measured:
        length = totals.gap(expr.group, expr.trial)  # type: ignore[union-attr]
        if length is None:
            raise NoAnswer("nothing was measured there")
        return length
    if kind is Price:
        return Rational(totals.cents(expr.item), 100 if expr.unit == "dollars" else 1)  # type: ignore[union-attr]
    if kind is Stated:
        return Rational(expr.number, expr.bottom)  # type: ignore[union-attr]
    if kind is Op:
        return _op(expr, totals)  # type: ignore[arg-type]
    if kind is Stat:
        return _statistic(expr.name, [value(one, totals) for one in expr.series])  # type: ignore[union-attr,arg-type]
    if kind is Tally:
        return _tally(expr, totals)  # type: ignore[arg-type]
    raise NoAnswer("an unknown has no value of its own")


def _statistic(name: StatName, numbers: list[Rational]) -> Rational:
    if name == "mean":
        return _mean(numbers)
    if name == "mean absolute deviation":
        mean = _mean(numbers)
        return _mean([abs(one - mean) for one in numbers])
    if name == "median":
        return _median(numbers)
    if name == "range":
        return max(numbers) - min(numbers)
    ordered, half = sorted(numbers), len(numbers) // 2
    lower, upper = _median(ordered[:half]), _median(ordered[-half:])
    return lower if name == "lower quartile" else upper if name == "upper quartile" else upper - lower


def _mean(numbers: list[Rational]) -> Rational:
    return sum(numbers, Integer(0)) / len(numbers)


def _median(numbers: list[Rational]) -> Rational:
    """The number in the middle of the list in order; halfway between the two in the middle where there are two."""
    ordered = sorted(numbers)
    half = len(ordered) // 2
    return ordered[half] if len(ordered) % 2 else (ordered[half - 1] + ordered[half]) / 2


def _tally(tally: Tally, totals: Totals) -> Rational:
    than, *to = (value(bound, totals) for bound in tally.bounds)
    numbers = [value(one, totals) for one in tally.series]
    if tally.test == "digits":
        return Integer(sum(1 for one in numbers if sum("1" <= digit <= str(than) for digit in str(one)) >= to[0]))
    if tally.test == "=":
        return Integer(numbers.count(than))
    if to:
        return Integer(sum(1 for one in numbers if than <= one <= to[0]))
    return Integer(sum(1 for one in numbers if (one > than if tally.test == ">" else one < than)))


def _op(expr: Op, totals: Totals) -> Rational:
    symbol = expr.symbol
    result = value(expr.args[0], totals)
    if symbol in ("abs", "opposite"):
        return abs(result) if symbol == "abs" else -result
    for arg in expr.args[1:]:
        other = value(arg, totals)
        if symbol in ("gcf", "lcm"):
            return Integer((gcd if symbol == "gcf" else lcm)(int(result), int(other)))
        if symbol == "+":
            result = result + other
        elif symbol == "-":
            result = result - other
        elif symbol == "*":
            result = result * other
        elif not other:
            raise NoAnswer("division by zero")
        else:
            result = result / other
    return result


def _same(goal: Same, totals: Totals) -> str:
    target, *options = [[value(with_number(expr, number), totals) for number in LETTER_VALUES] for expr in goal.exprs]
    found = [label for label, option in zip(goal.labels, options, strict=True) if option == target]
    if len(found) != 1:
        raise NoAnswer("no single expression is the same")
    return found[0]


def answer(ask: Ask, totals: Totals) -> Rational | str:
    """The number, the value of the ratio, the name of the one label that strictly beats every other, "true" or "false", "7 r 1",
    or a list, "1 * 12, 2 * 6, 3 * 4".

    Raises:
        NoAnswer: division by zero, or a tie.
    """
    goal = ask.goal
    if isinstance(goal, Same):
        return _same(goal, totals)
    if isinstance(goal, Truth):
        return "true" if _holds(goal, totals) else "false"
    if isinstance(goal, QuotientRemainder):
        return _grouped(goal, totals)
    if isinstance(goal, Listing):
        return _listed(goal, totals)
    if isinstance(goal, Changes):
        return _changes(goal, totals)
    if isinstance(goal, Chosen):
        return _chosen(goal, totals)
    if not isinstance(goal, Choice):
        return value(goal.expr, totals)
    values = [value(expr, totals) for expr in goal.exprs]
    best = max(values) if goal.most else min(values)
    winners = [label for label, one in zip(goal.labels, values, strict=True) if one == best]
    if len(winners) != 1:
        raise NoAnswer("a tie")
    return winners[0]


def _holds(goal: Truth, totals: Totals) -> bool:
    left, right = value(goal.left, totals), value(goal.right, totals)
    if not goal.divides:
        return bool(left == right if goal.test == "=" else left > right if goal.test == ">" else left < right)
    _check_groups(left, right)
    return bool(left % right == 0) == (goal.test == "multiple")


def _check_groups(amount: Rational, size: Rational) -> None:
    if not (amount.is_integer and size.is_integer and amount > 0 and size > 0):
        raise NoAnswer("only whole numbers are put in groups")


def _grouped(goal: QuotientRemainder, totals: Totals) -> Rational | str:
    amount, size = value(goal.amount, totals), value(goal.size, totals)
    _check_groups(amount, size)
    over = amount % size
    full = (amount - over) / size
    if goal.want == "both":
        return f"{full} r {over}"
    if goal.want == "over":
        return over
    return full + 1 if goal.want == "needed" and over else full


def _listed(goal: Listing, totals: Totals) -> str:
    whole = Integer(1) if goal.whole is None else value(goal.whole, totals)
    number = value(goal.amount, totals) * whole
    _check_groups(number, whole)
    pairs = []
    for one in range(1, int(number) + 1):
        other = number / one if goal.symbol == "*" else number - one
        if other < one:
            break
        if other.is_integer:
            pairs.append(f"{one} * {other}" if goal.whole is None else f"{one}/{whole} + {other}/{whole}")
    return ", ".join(pairs)


def _changes(goal: Changes, totals: Totals) -> str:
    numbers = [value(one, totals) for one in goal.series]
    change, most = value(goal.wanted, totals) - sum(numbers), value(goal.most, totals)
    found = [f"{one} to {one + change}" for one in numbers if change and 0 <= one + change <= most]
    if not found:
        raise NoAnswer("no change will do")
    return ", ".join(found)


def _chosen(goal: Chosen, totals: Totals) -> str:
    numbers = [value(one, totals) for one in goal.options]
    total = value(goal.total, totals)
    found = [
        " + ".join(goal.labels[place] for place in places)
        for places in combinations(range(len(numbers)), goal.size)
        if sum((numbers[place] for place in places), Integer(0)) == total
    ]
    if not found:
        raise NoAnswer("no sum will do")
    return ", ".join(found)
