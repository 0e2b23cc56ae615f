"""An ask as an equation in one unknown, the way the story tells it.

Stated backwards where a school would: a difference as a missing addend, a quotient as a missing factor, a median as halfway
between the two numbers in the middle. Nothing is worked out here; numbers come in only where the equation is printed or solved.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from mathgen.asks.expression import (
    Ask,
    Changes,
    Choice,
    Chosen,
    Deviation,
    Equation,
    Expr,
    Listing,
    Measured,
    Op,
    Ordered,
    Price,
    Quantity,
    QuotientRemainder,
    Ratio,
    Same,
    Stat,
    Stated,
    Tally,
    Truth,
    Unknown,
    Value,
)

X = Unknown()


def relation(ask: Ask) -> Equation:
    """The equation whose one solution is the answer.

    Where the words assert something about the asked quantity, that is the equation; else the goal itself is turned round.

    Raises:
        TypeError: a goal that has no equation (``Choice``, ``Truth``).
    """
    if not isinstance(ask.goal, Value | Ratio):
        raise TypeError("only a number that is asked for has an equation in one unknown")
    goal = ask.goal.expr
    for fact in ask.given:
        found = Equation(_put(fact.left, goal), _put(fact.right, goal))
        if _has_unknown(found.left) or _has_unknown(found.right):
            return found
    return _turned_round(goal)


def _turned_round(goal: Expr) -> Equation:
    if isinstance(goal, Stat):
        goal = spelled_out(goal)
    if isinstance(goal, Op):
        first, rest = goal.args[0], goal.args[1:]
        if goal.symbol == "+":
            return Equation(goal, X)
        if goal.symbol == "-":
            return Equation(Op("+", (*rest, X)), first)
        if goal.symbol == "/":
            return Equation(Op("*", (*rest, X)), first)
        if isinstance(first, Op) and first.symbol == "/":  # a rate of a number: x is to the number as part is to whole
            part, whole = first.args
            return Equation(Op("*", (whole, X)), Op("*", (part, *rest)))
    return Equation(X, goal)


def spelled_out(expr: Expr) -> Expr:
    """An expression without a statistic: as sums and quotients of numbers of the list."""
    if isinstance(expr, Op):
        return Op(expr.symbol, tuple(map(spelled_out, expr.args)))
    if not isinstance(expr, Stat):
        return expr
    series, name, size = expr.series, expr.name, len(expr.series)
    if name == "mean":
        return _shared(series)
    if name == "mean absolute deviation":
        return _shared(tuple(Deviation(series, place) for place in range(size)))
    if name == "median":
        return _between(series, 0, size)
    if name == "range":
        return Op("-", (Ordered(series, size - 1), Ordered(series, 0)))
    half = size // 2
    lower, upper = _between(series, 0, half), _between(series, size - half, size)
    return lower if name == "lower quartile" else upper if name == "upper quartile" else Op("-", (upper, lower))


def _shared(parts: tuple[Expr, ...]) -> Expr:
    return Op("/", (Op("+", parts), Stated(len(parts), "how many")))


def _between(series: tuple[Quantity | Measured, ...], start: int, end: int) -> Expr:
    """What stands in the middle of the places from ``start`` up to ``end`` of the list in order."""
    middle, odd = divmod(start + end, 2)
    return Ordered(series, middle) if odd else _shared((Ordered(series, middle - 1), Ordered(series, middle)))


def _put(expr: Expr, goal: Expr) -> Expr:
    """The expression with the unknown in the goal's place."""
    if expr == goal and isinstance(expr, Quantity):
        return X
    if isinstance(expr, Op):
        return Op(expr.symbol, tuple(_put(arg, goal) for arg in expr.args))
    return expr


def _has_unknown(expr: Expr) -> bool:
    return isinstance(expr, Unknown) or (isinstance(expr, Op) and any(map(_has_unknown, expr.args)))


def written(equation: Equation, count: Callable[[Any], Any]) -> str:
    """The equation in ASCII, quantities as their counts, lengths as fractions of an inch, readable by sympy: ``12*x = 9``."""
    return f"{_text(equation.left, count, 0)} = {_text(equation.right, count, 0)}"


def question_in_x(ask: Ask, count: Callable[[Any], Any]) -> str:
    """Any ask as an equation in x that sympy reads.

    Of expressions, x is what the story makes, its letter kept.
    Of a choice, x is the greatest (or least) of the values. Of a statement, x is how far the left is from the right (0 where they are
    equal), or what is over when the left is put in groups of the right (0 where none is). Of groups, x is
    how many are full, how many are needed, or what is over. Of a list, x is how many pairs it holds;
    of changes, by how much one number changes; of numbers that are chosen, what all the others add up to.
    """
    goal = ask.goal
    if isinstance(goal, Same):
        return f"x = {_text(goal.target, count, 0)}"
    if isinstance(goal, Choice):
        return f"x = {'Max' if goal.most else 'Min'}({', '.join(_text(expr, count, 0) for expr in goal.exprs)})"
    if isinstance(goal, Truth):
        if goal.divides:
            return f"x = Mod({_text(goal.left, count, 0)}, {_text(goal.right, count, 0)})"
        return written(Equation(X, Op("-", goal.exprs)), count)
    if isinstance(goal, QuotientRemainder):
        amount, size = _text(goal.amount, count, 0), _text(goal.size, count, 0)
        if goal.want == "over":
            return f"x = Mod({amount}, {size})"
        return f"{size}*x = {amount} - Mod({amount}, {size}){f' + {size}' if goal.want == 'needed' else ''}"
    if isinstance(goal, Listing):
        number = _text(goal.amount if goal.whole is None else Op("*", (goal.whole, goal.amount)), count, 0)
        both = f"divisor_count({number})" if goal.symbol == "*" else f"{number} - 1"  # each pair is met twice, but for two alike
        return f"2*x = {both} + Mod({both}, 2)"
    if isinstance(goal, Changes):
        return written(Equation(Op("+", (*goal.series, X)), goal.wanted), count)
    if isinstance(goal, Chosen):
        return written(Equation(Op("+", (goal.total, X)), Op("+", goal.options)), count)
    return written(relation(ask), count)


def _distance(number: int, total: int, size: int) -> str:
    """The greater of a number and a mean, less the other: ``(9 - 7)``, ``(9 - 15/2)``."""
    mean = str(total // size) if total % size == 0 else f"{total}/{size}"
    return f"({number} - {mean})" if number * size >= total else f"({mean} - {number})"


def _length(text: str, outer: int) -> str:
    """A number; a fraction in brackets where it is multiplied or divided."""
    return f"({text})" if "/" in text and outer > 1 else text


_BINDS = {"+": 1, "-": 1, "*": 2, "/": 2}


def _text(expr: Expr, count: Callable[[Any], Any], outer: int) -> str:
    if isinstance(expr, Quantity):
        return str(count(expr))
    if isinstance(expr, Op):
        return _operation(expr, count, outer)
    if isinstance(expr, Measured | Price):
        return _length(str(count(expr)), outer)
    if isinstance(expr, Stated):
        return _length(f"{expr.number}/{expr.bottom}" if expr.bottom > 1 else str(expr.number), outer)
    if isinstance(expr, Tally):
        ones = " + ".join(["1"] * int(count(expr))) or "0"  # ticked off one by one
        return f"({ones})" if "+" in ones and outer > 1 else ones
    if isinstance(expr, Unknown):
        return expr.name
    if isinstance(expr, Stat):
        return _text(spelled_out(expr), count, outer)
    if isinstance(expr, Deviation):
        counts = [count(one) for one in expr.series]
        return _distance(counts[expr.place], sum(counts), len(counts))
    return _length(str(sorted(map(count, expr.series))[expr.place]), outer)  # of numbers in order


def _operation(expr: Op, count: Callable[[Any], Any], outer: int) -> str:
    if expr.symbol in ("abs", "opposite"):
        inside = _text(expr.args[0], count, 0)
        return f"Abs({inside})" if expr.symbol == "abs" else f"-({inside})"
    if expr.symbol in ("gcf", "lcm"):
        one, other = (_text(arg, count, 0) for arg in expr.args)
        return f"{'gcd' if expr.symbol == 'gcf' else 'lcm'}({one}, {other})"
    binds = _BINDS[expr.symbol]
    first = _text(expr.args[0], count, binds)
    # What follows a minus or a division sign is bracketed even where it binds alike: 12 - (3 + 4).
    rest = [_text(arg, count, binds + (expr.symbol in "-/")) for arg in expr.args[1:]]
    sign = expr.symbol if expr.symbol in "*/" else f" {expr.symbol} "
    text = sign.join([first, *rest])
    return f"({text})" if binds < outer else text
