"""Equations and inequalities solved by hand, line by line: common practice, no source."""

from __future__ import annotations

import pytest

from mathgen.asks.algebra import in_words, solved
from mathgen.asks.expression import Equation, Expr, Op, Stated, Unknown

X = Unknown()


def n(number: int, meaning: str = "points") -> Stated:
    return Stated(number, meaning)


def times(*parts: Expr) -> Op:
    return Op("*", parts)


def plus(*parts: Expr) -> Op:
    return Op("+", parts)


def minus(*parts: Expr) -> Op:
    return Op("-", parts)


def whole(expr: Expr) -> int | None:
    if isinstance(expr, Op):
        first, *rest = (whole(arg) or 0 for arg in expr.args)
        for one in rest:
            first = first * one if expr.symbol == "*" else first + one if expr.symbol == "+" else first - one
        return first
    assert isinstance(expr, Stated)
    return expr.number if expr.bottom == 1 else None


GOAL, LIMIT = n(200, "goal in points"), n(36, "limit in points")
SOLVED = {
    "two steps": (Equation(plus(times(n(2), X), n(8)), n(40)), ("2x + 8 = 40", "2x = 32", "x = 16")),
    "one step": (Equation(times(X, n(75)), n(1275)), ("75x = 1275", "x = 17")),
    "a sum": (Equation(plus(X, n(21)), n(36)), ("x + 21 = 36", "x = 15")),
    "both sides": (
        Equation(times(n(6), plus(n(14), X)), times(n(8), plus(n(10), X))),
        ("6(14 + x) = 8(10 + x)", "6x + 84 = 8x + 80", "2x = 4", "x = 2"),
    ),
    "taken away": (
        Equation(plus(times(n(6), X), times(n(2), minus(n(18), X))), n(60)), ("6x + 2(18 - x) = 60", "4x + 36 = 60", "4x = 24", "x = 6"),
    ),
    "a loss": (
        Equation(minus(times(n(5), X), times(n(3), minus(n(6), X))), n(14)), ("5x - 3(6 - x) = 14", "8x - 18 = 14", "8x = 32", "x = 4"),
    ),
    "more than": (
        Equation(plus(times(n(10), n(16)), times(n(10), minus(X, n(1)))), GOAL),
        ("10 * 16 + 10x > 200", "10x + 160 > 200", "10x > 40", "x > 4", "the least number is 5"),
    ),
    "at least": (
        Equation(plus(times(n(10), n(16)), times(n(10), X)), GOAL),
        ("10 * 16 + 10x >= 200", "10x + 160 >= 200", "10x >= 40", "x >= 4", "the least number is 4"),
    ),
    "less than": (
        Equation(plus(times(n(2), n(8)), times(n(2), plus(X, n(1)))), LIMIT),
        ("2 * 8 + 2x < 36", "2x + 16 < 36", "2x < 20", "x < 10", "the greatest number is 9"),
    ),
    "no whole number": (Equation(times(n(2), X), n(7)), ()),
    "parts of an inch": (Equation(times(n(2), X), Stated(9, "space", 4)), ()),
    "squared": (Equation(times(X, X), n(9)), ()),
    "every x": (Equation(plus(X, n(2)), plus(X, n(2))), ()),
}  # fmt: skip


@pytest.mark.parametrize("name", SOLVED)
def test_each_kind_of_equation_by_hand(name: str) -> None:
    equation, lines = SOLVED[name]
    assert solved(equation, whole) == lines


N = Unknown("n")
WORDS = {
    "7 times 4, plus 10": plus(times(n(7), n(4)), n(10)),
    "3 plus 10 first, then times 5": times(plus(n(3), n(10)), n(5)),
    "12 minus n": minus(n(12), N),
    "3 times 5, plus 3 times n": plus(times(n(3), n(5)), times(n(3), N)),
    "": times(plus(n(3), n(10)), plus(n(5), N)),
}


@pytest.mark.parametrize("words", WORDS)
def test_an_expression_in_words(words: str) -> None:
    assert in_words(WORDS[words], whole, bound=False) == words


def test_an_inequality_in_words() -> None:
    assert in_words(minus(N, n(9)), whole, bound=True) == "more than 9"
    assert in_words(minus(n(9), N), whole, bound=True) == "less than 9"
