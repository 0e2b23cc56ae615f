"""Route 2: the question as an equation in one unknown, solved by sympy over the rationals.

Quantities are added up afresh from the table's raw rows. The equation stays symbolic (a polynomial in x over QQ) until sympy's
row reduction solves it; there has to be exactly one solution. A question of "which" has no equation: there the one label
whose value strictly beats every other is taken.
"""

from __future__ import annotations

from typing import Any

from sympy import QQ, Rational, ring
from sympy.polys.matrices.sdm import sdm_irref
from sympy.polys.rings import PolyElement

from mathgen.asks.expression import Ask, Choice, Expr, Op, Quantity, Stat, Stated, Unknown
from mathgen.asks.relation import relation
from mathgen.problems.record import Given
from mathgen.proof.raw import RawRows

_RING, _X = ring("x", QQ)
_ONE_PLACE = (1,)  # the exponent of x in a linear polynomial's leading term
_CONSTANT = (0,)


class NoSolution(ValueError):
    """The equation has no solution, or more than one; or no label beats every other."""


def solve(ask: Ask, rows: RawRows) -> Rational | str:
    """The answer by this route.

    Raises:
        NoSolution: not exactly one solution.
    """
    if isinstance(ask.goal, Choice):
        return _winner(ask.goal, rows)
    equation = relation(ask)
    difference = _symbolic(equation.left, rows) - _symbolic(equation.right, rows)
    if not isinstance(difference, PolyElement) or difference.degree() > 1:
        raise NoSolution("not linear in x")
    slope, constant = difference.get(_ONE_PLACE, QQ.zero), difference.get(_CONSTANT, QQ.zero)
    row = {column: entry for column, entry in ((0, slope), (1, -constant)) if entry}
    reduced, pivots, _ = sdm_irref({0: row} if row else {})
    if pivots != [0]:
        raise NoSolution("no single solution")
    found = reduced[0].get(1, QQ.zero)
    return Rational(int(found.numerator), int(found.denominator))


def _symbolic(expr: Expr, rows: RawRows) -> Any:
    """A rational constant, or a polynomial in x. Whole numbers stay plain until something is divided."""
    kind = type(expr)
    if kind is Quantity:
        return rows.count(expr)  # type: ignore[arg-type]
    if kind is Stated:
        return expr.number  # type: ignore[union-attr]
    if kind is Unknown:
        return _X
    if kind is Stat:
        return QQ(sum(rows.count(one) for one in expr.series), len(expr.series))  # type: ignore[union-attr]
    symbol, args = expr.symbol, expr.args  # type: ignore[union-attr]
    result = _symbolic(args[0], rows)
    for arg in args[1:]:
        other = _symbolic(arg, rows)
        if symbol == "+":
            result = result + other
        elif symbol == "-":
            result = result - other
        elif symbol == "*":
            result = result * other
        elif not other:
            raise NoSolution("division by zero")
        else:
            result = QQ.convert(result) / other if isinstance(result, int) else result / other
    return result


def true_to_table(given: Given, rows: RawRows) -> bool:
    """Whether a printed or counted number is what the raw rows say."""
    expr = given.expr
    if isinstance(expr, Quantity):
        count = rows.count(expr)
        return given.number == str(count) and bool(given.value == count)
    if isinstance(expr, Stated):
        return given.number == str(expr.number)
    found = QQ.convert(_symbolic(expr, rows))
    return bool(given.value == Rational(int(found.numerator), int(found.denominator)))


def _winner(goal: Choice, rows: RawRows) -> str:
    sign = 1 if goal.most else -1
    values = [sign * _symbolic(expr, rows) for expr in goal.exprs]
    for label, one in zip(goal.labels, values, strict=True):
        if sum(other >= one for other in values) == 1:
            return label
    raise NoSolution("no label beats every other")

