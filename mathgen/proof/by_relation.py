"""Route 2: the question as an equation in one unknown, solved by sympy over the rationals.

Quantities are added up afresh from the table's raw rows. The equation stays symbolic (linear in x over QQ) until sympy's row
reduction solves it; there has to be exactly one solution. A question of "which" has no equation: there the one label
whose value strictly beats every other is taken. A statement is held against both its sides.
"""

from __future__ import annotations

from itertools import combinations
from typing import Any

from sympy import QQ, ZZ, Integer, Rational, divisors
from sympy.polys.matrices.sdm import sdm_irref

from mathgen.asks.expression import (
    Ask,
    Changes,
    Choice,
    Chosen,
    Deviation,
    Equation,
    Expr,
    Goal,
    Listing,
    Measured,
    Ordered,
    Price,
    Quantity,
    QuotientRemainder,
    Same,
    Stat,
    Stated,
    Tally,
    Truth,
    Unknown,
    parts_to_share,
)
from mathgen.asks.relation import question_in_x, relation, spelled_out
from mathgen.exact.parse import written
from mathgen.problems.record import Given, Problem
from mathgen.proof.raw import RawRows
from mathgen.proof.verdict import AGREES

# (slope, constant) of slope * x + constant, over the rationals: whole numbers stay plain until something is divided.
Linear = tuple[Any, Any]


class NoSolution(ValueError):
    """The equation has no solution, or more than one; or no label beats every other."""


def verdict(problem: Problem, rows: RawRows) -> str:
    """``agrees``, or what is wrong: another solution, a fact or given that is not true to the table, another relation printed."""
    ask = problem.ask
    try:
        found = solve(ask, rows)
        for fact in ask.given:
            if not _holds(fact, rows):
                return "what the words assert is not true to the table"
        for given in problem.givens:
            if not true_to_table(given, rows):
                return f"the given {given.number} is not true to the table"
    except NoSolution as err:
        return str(err)
    if found != problem.answer.exact:
        return f"gives {found}"
    if problem.answer.kind == "rubric" and sides(ask.goal, rows) != tuple(one.value for one in problem.answer.reasons):
        return "the reasons are not what the rows say"
    if ask.equals is not None and found != rows.count(ask.equals):
        return f"gives {found}, where the table has {rows.count(ask.equals)}"
    if problem.relation != question_in_x(ask, rows.number):
        return f"{problem.relation} is not the question's relation"
    return AGREES


def _holds(fact: Equation, rows: RawRows) -> bool:
    """Whether an equation is true on the table; one that has an unknown asserts nothing of the table."""
    (a, b), (c, d) = _symbolic(fact.left, rows), _symbolic(fact.right, rows)
    return bool(a != c or b == d)


def solve(ask: Ask, rows: RawRows) -> Rational | str:
    """The answer by this route.

    Raises:
        NoSolution: not exactly one solution.
    """
    if isinstance(ask.goal, Same):
        return _same(ask.goal, rows)
    if isinstance(ask.goal, Choice):
        return _winner(ask.goal, rows)
    if isinstance(ask.goal, Truth):
        return "true" if _is_so(ask.goal, rows) else "false"
    if isinstance(ask.goal, QuotientRemainder):
        return _grouped(ask.goal, rows)
    if isinstance(ask.goal, Listing):
        return _pairs(ask.goal, rows)
    if isinstance(ask.goal, Changes):
        return _changes(ask.goal, rows)
    if isinstance(ask.goal, Chosen):
        return _chosen(ask.goal, rows)
    equation = relation(ask)
    (a, b), (c, d) = _symbolic(equation.left, rows), _symbolic(equation.right, rows)
    row = {0: QQ(a - c), 1: QQ(d - b)}
    # sympy's row reduction of the one-row system [slope | constant]; a row holds what is not zero.
    held = {column: entry for column, entry in row.items() if entry}
    reduced, pivots, _ = sdm_irref({0: held} if held else {})
    if pivots != [0]:
        raise NoSolution("no single solution")
    return _rational(reduced[0].get(1, QQ.zero))


def _rational(number: Any) -> Rational:
    # Elements of QQ are in lowest terms.
    return Integer(number) if type(number) is int else Rational.from_coprime_ints(int(number.numerator), int(number.denominator))


def _symbolic(expr: Expr, rows: RawRows) -> Linear:
    """An expression as a linear polynomial in x."""
    kind = type(expr)
    if kind is Quantity:
        return 0, rows.count(expr)  # type: ignore[arg-type]
    if kind is Measured or kind is Tally or kind is Price:
        found = rows.number(expr)  # type: ignore[arg-type]
        if found is None:
            raise NoSolution("nothing was measured there, or it has no one price")
        return 0, found
    if kind is Stated:
        return 0, QQ(expr.number, expr.bottom) if expr.bottom > 1 else expr.number  # type: ignore[union-attr]
    if kind is Unknown:
        return 1, 0
    if kind is Ordered:
        return 0, _at_place(expr, rows)  # type: ignore[arg-type]
    if kind is Deviation:
        counts = list(map(rows.number, expr.series))  # type: ignore[union-attr]
        return 0, QQ(abs(len(counts) * counts[expr.place] - sum(counts)), len(counts))  # type: ignore[union-attr]
    if kind is Stat:
        return _symbolic(spelled_out(expr), rows)
    symbol, args = expr.symbol, expr.args  # type: ignore[union-attr]
    slope, constant = _symbolic(args[0], rows)
    if symbol == "opposite":
        return -slope, -constant
    if symbol == "abs":
        if slope:
            raise NoSolution("not linear in x")
        return 0, max(constant, -constant)
    for arg in args[1:]:
        a, b = _symbolic(arg, rows)
        if symbol in ("gcf", "lcm"):
            if slope or a:
                raise NoSolution("not linear in x")
            return 0, int((ZZ.gcd if symbol == "gcf" else ZZ.lcm)(ZZ(constant), ZZ(b)))
        if symbol == "+":
            slope, constant = slope + a, constant + b
        elif symbol == "-":
            slope, constant = slope - a, constant - b
        elif symbol == "*":
            if slope and a:
                raise NoSolution("not linear in x")
            slope, constant = slope * b + a * constant, constant * b
        elif a or not b:
            raise NoSolution("division by zero or by x")
        else:
            slope, constant = (slope and QQ(slope) / b), QQ(constant) / b
    return slope, constant


def _at_place(expr: Ordered, rows: RawRows) -> Any:
    """The number that has at most ``place`` others below it, and more than ``place`` at or below it. Nothing is sorted."""
    counts = [rows.number(one) for one in expr.series]
    for one in counts:
        if sum(other < one for other in counts) <= expr.place < sum(other <= one for other in counts):
            return one
    raise NoSolution("no such place in the list")


def _constant(expr: Expr, rows: RawRows) -> Rational:
    slope, constant = _symbolic(expr, rows)
    if slope:
        raise NoSolution("an unknown where a number was wanted")
    return _rational(constant)


def true_to_table(given: Given, rows: RawRows) -> bool:
    """Whether a printed or counted number is what the raw rows say."""
    expr = given.expr
    if isinstance(expr, Quantity):
        count = rows.count(expr)
        return given.number == str(count) and bool(given.value == count)
    if isinstance(expr, Stated) and expr.bottom == 1:
        return given.number == str(expr.number) and bool(given.value == expr.number)
    found = _constant(expr, rows)
    return bool(given.value == found and written(given.number).value == found)


def sides(goal: Goal, rows: RawRows) -> tuple[Rational, ...]:
    """What the parts come to that goals must share: two statements that are both true need not be one.

    Raises:
        NoSolution: a part has no value.
    """
    return tuple(_constant(expr, rows) for expr in parts_to_share(goal)[1])


def _divided(amount: Rational, size: Rational) -> tuple[int, int]:
    """amount = size * q + r with r from 0 to size - 1, by the division of sympy's ring of integers."""
    if amount.q != 1 or size.q != 1 or min(amount, size) < 1:
        raise NoSolution("only whole numbers are put in groups")
    full, over = ZZ.div(ZZ(int(amount)), ZZ(int(size)))
    return int(full), int(over)


def _grouped(goal: QuotientRemainder, rows: RawRows) -> Rational | str:
    full, over = _divided(*sides(goal, rows))
    if goal.want == "both":
        return f"{full} r {over}"
    return Rational({"full": full, "over": over, "needed": full + (over > 0)}[goal.want])


def _pairs(goal: Listing, rows: RawRows) -> str:
    """The divisors of a number, each beside the one that it divides the number into; or tops that add up to the top of a fraction."""
    amount, *wholes = sides(goal, rows)
    whole = wholes[0] if wholes else Rational(1)
    number = amount * whole
    if number.q != 1 or number < 1:
        raise NoSolution("only whole numbers are listed")
    if goal.symbol == "*":
        return ", ".join(f"{one} * {number / one}" for one in divisors(number) if one * one <= number)
    return ", ".join(f"{one}/{whole} + {number - one}/{whole}" for one in range(1, int(number)) if 2 * one <= number)


def _changes(goal: Changes, rows: RawRows) -> str:
    """Each number in turn is the unknown: with the others as they are, it has to make the total that is wanted."""
    *numbers, _, most = sides(goal, rows)
    wanted, found = _constant(goal.wanted, rows), []
    for place, old in enumerate(numbers):
        new = wanted - sum(numbers[:place] + numbers[place + 1 :], Rational(0))
        if new != old and new.is_integer and 0 <= new <= most:
            found.append(f"{old} to {new}")
    if not found:
        raise NoSolution("no change will do")
    return ", ".join(found)


def _chosen(goal: Chosen, rows: RawRows) -> str:
    """All but the last number of a sum settle which the last has to be."""
    *numbers, total = sides(goal, rows)
    if any(written(label).value != number for label, number in zip(goal.labels, numbers, strict=True)):
        raise NoSolution("a number is written as another than it is")
    places = list(range(len(numbers)))
    found = []
    for some in combinations(places, goal.size - 1):
        missing = total - sum((numbers[place] for place in some), Rational(0))
        found += [(*some, last) for last in places[some[-1] + 1 :] if numbers[last] == missing]
    if not found:
        raise NoSolution("no sum will do")
    return ", ".join(" + ".join(goal.labels[place] for place in some) for some in found)


def _is_so(goal: Truth, rows: RawRows) -> bool:
    left, right = sides(goal, rows)
    difference = left - right
    if goal.divides:
        return bool(_divided(left, right)[1] == 0) == (goal.test == "multiple")
    return bool({"=": difference.is_zero, ">": difference.is_positive, "<": difference.is_negative}[goal.test])


def _same(goal: Same, rows: RawRows) -> str:
    """The one option that is the target as a polynomial: the same slope, the same constant."""
    target, *options = (tuple(map(QQ, _symbolic(expr, rows))) for expr in goal.exprs)
    found = [label for label, option in zip(goal.labels, options, strict=True) if option == target]
    if len(found) != 1:
        raise NoSolution("no single expression is the same")
    return found[0]


def _winner(goal: Choice, rows: RawRows) -> str:
    sign = 1 if goal.most else -1
    values = [sign * _constant(expr, rows) for expr in goal.exprs]
    for label, one in zip(goal.labels, values, strict=True):
        if sum(1 for other in values if other >= one) == 1:
            return label
    raise NoSolution("no label beats every other")
