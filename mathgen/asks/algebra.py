"""Equations and inequalities in x as a teacher solves them: 2x + 8 = 40, 2x = 32, x = 16."""

from __future__ import annotations

from collections.abc import Callable
from itertools import groupby

from mathgen.asks.expression import Equation, Expr, Op, Stated, Unknown

_STRICT = {"-": ">", "+": "<"}  # more than a goal is one more than reaching it, less than a limit one less
_TURNED = {"=": "=", ">": "<", "<": ">", ">=": "<=", "<=": ">="}
_WORDS = {"+": "plus", "-": "minus"}
_REACHED = {"goal in points": ">=", "limit in points": "<="}
Line = tuple[int, int]  # so many x and so much


def solved(equation: Equation, number: Callable[[Expr], int | None]) -> tuple[str, ...]:
    """The lines of solving, up to "x = 16"; of an inequality up to "the least number is 5".

    Args:
        equation: linear in x.
        number: the whole number that a part without x stands for; None where it is not whole.
    Returns:
        Nothing where it is not linear, or not in whole numbers.
    """
    bound = next((expr for expr in equation if isinstance(expr, Stated) and expr.meaning in _REACHED), None)
    sign = _REACHED[bound.meaning] if bound is not None else "="
    left, right = equation
    if bound is not None:
        left, strict = _without_one(left)
        sign = strict or sign
    one, other = _line(left, number), _line(right, number)
    if one is None or other is None:
        return ()
    (a, b), (c, d) = one, other
    lines = [f"{_text(left, number)} {sign} {_text(right, number)}", f"{_linear(a, b)} {sign} {_linear(c, d)}"]
    times, total = a - c, d - b
    if times < 0:
        times, total, sign = -times, -total, _TURNED[sign]
    if times == 0 or total % times:
        return ()
    x = total // times
    lines += [f"{_linear(times, 0)} {sign} {total}", f"x {sign} {x}"]
    if sign != "=":
        first = "least" if sign[0] == ">" else "greatest"
        lines.append(f"the {first} number is {x + (sign == '>') - (sign == '<')}")
    return tuple(line for line, _ in groupby(lines))


def in_words(target: Expr, number: Callable[[Expr], int | None], bound: bool) -> str:
    """What an expression says: "3 plus 10 first, then times 5"; of a difference that is to be above 0, "more than 9".

    Args:
        target: the expression, an Unknown for its letter.
        number: the whole number that a part without the letter stands for.
        bound: whether it is an inequality.
    Returns:
        "" where no short words are known.
    """
    if not isinstance(target, Op):
        return ""
    if bound:
        first, other = target.args
        return f"more than {number(other)}" if isinstance(first, Unknown) else f"less than {number(first)}"
    told = [_told(arg, number) for arg in target.args]
    if "" in told:
        return ""
    if target.symbol == "*":
        sums = [text for text in told if " plus " in text or " minus " in text]
        others = [text for text in told if text not in sums]
        if len(sums) == 1 and others:
            return f"{sums[0]} first, then times {' times '.join(others)}"
        return "" if sums else " times ".join(told)
    if target.symbol not in _WORDS:
        return ""
    comma = "," if any(isinstance(arg, Op) for arg in target.args) else ""
    return f"{comma} {_WORDS[target.symbol]} ".join(told)


def _told(expr: Expr, number: Callable[[Expr], int | None]) -> str:
    if isinstance(expr, Unknown):
        return "n"
    if isinstance(expr, Op):
        told = [_told(arg, number) for arg in expr.args]
        flat = expr.symbol in "+-*" and not any(isinstance(arg, Op) for arg in expr.args)
        return f" {'times' if expr.symbol == '*' else _WORDS[expr.symbol]} ".join(told) if flat and "" not in told else ""
    plain = number(expr)
    return "" if plain is None else str(plain)


def _without_one(expr: Expr) -> tuple[Expr, str]:
    """An expression with x for "x - 1" or "x + 1", and the sign that this stands for."""
    if not isinstance(expr, Op):
        return expr, ""
    if len(expr.args) == 2 and isinstance(expr.args[0], Unknown) and isinstance(expr.args[1], Stated) and expr.args[1].number == 1:
        return expr.args[0], _STRICT[expr.symbol]
    found = [_without_one(arg) for arg in expr.args]
    return Op(expr.symbol, tuple(arg for arg, _ in found)), "".join(sign for _, sign in found)


def _holds_x(expr: Expr) -> bool:
    return isinstance(expr, Unknown) or (isinstance(expr, Op) and any(map(_holds_x, expr.args)))


def _line(expr: Expr, number: Callable[[Expr], int | None]) -> Line | None:
    if isinstance(expr, Unknown):
        return 1, 0
    if not _holds_x(expr):
        plain = number(expr)
        return None if plain is None else (0, plain)
    assert isinstance(expr, Op)
    first, *others = (_line(arg, number) for arg in expr.args)
    if first is None:
        return None
    for other in others:
        if other is None or expr.symbol not in "+-*" or (expr.symbol == "*" and first[0] and other[0]):
            return None
        if expr.symbol == "*":
            first = first[0] * other[1] + first[1] * other[0], first[1] * other[1]
        else:
            sign = 1 if expr.symbol == "+" else -1
            first = first[0] + sign * other[0], first[1] + sign * other[1]
    return first


def _linear(a: int, b: int) -> str:
    """3x + 5; 20 - 2x."""
    if a == 0:
        return str(b)
    term = "x" if abs(a) == 1 else f"{abs(a)}x"
    if a < 0:
        return f"{b} - {term}" if b > 0 else f"-{term}" + (f" - {-b}" if b else "")
    return term + (f" + {b}" if b > 0 else f" - {-b}" if b else "")


def _text(expr: Expr, number: Callable[[Expr], int | None]) -> str:
    """An expression as it is written: 6(14 + x), 5x."""
    if isinstance(expr, Unknown):
        return "x"
    if not isinstance(expr, Op):
        return str(number(expr))
    if expr.symbol != "*":
        return f" {expr.symbol} ".join(_text(arg, number) for arg in expr.args)
    plain = [_text(arg, number) for arg in expr.args if not _holds_x(arg)]
    letters = [_text(arg, number) for arg in expr.args if _holds_x(arg)]
    product = " * ".join(plain)
    return product + "".join(f"({one})" if " " in one else one for one in letters) if letters else product
