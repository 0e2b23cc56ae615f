"""Steps that find an unknown by undoing what is done to it, the last thing first."""

from __future__ import annotations

from mathgen.asks.expression import Equation, Expr, Measured, Op, Price, Quantity, Stat, Stated, Tally
from mathgen.asks.steps.working import Working
from mathgen.asks.steps.written_number import over, whole


def can_be_undone(equation: Equation) -> bool:
    """Whether the unknown stands in one place, with nothing but sums and products around it: what is done to it can be undone."""
    sides = [side for side in equation if _unknown(side)]
    if len(sides) != 1:
        return False  # x on both sides is collected first: the goal says how
    side = sides[0]
    while isinstance(side, Op):
        inner = [arg for arg in side.args if _unknown(arg)]
        if len(inner) != 1 or side.symbol not in "+*":
            return False
        side = inner[0]
    return True


def undo(working: Working, equation: Equation) -> None:
    """Solves ``known = unknown side`` as a pupil would: work out the known side, then undo what is done to the unknown."""
    left, right = equation
    unknown, known = (left, right) if _unknown(left) else (right, left)
    result = working.number(known)
    while isinstance(unknown, Op):
        others = [arg for arg in unknown.args if not _unknown(arg)]
        inner = next(arg for arg in unknown.args if _unknown(arg))
        other = working.number(others[0] if len(others) == 1 else Op(unknown.symbol, tuple(others)))
        if unknown.symbol == "+":
            result_next = whole(result.top - other.top)
            working.line(f"{result.text} - {other.text}", result_next.text)
        elif unknown.symbol == "-" and _unknown(unknown.args[0]):
            result_next = whole(result.top + other.top)
            working.line(f"{result.text} + {other.text}", result_next.text)
        elif unknown.symbol == "-":
            result_next = whole(other.top - result.top)
            working.line(f"{other.text} - {result.text}", result_next.text)
        elif unknown.symbol == "*":
            result_next = over(result.top // other.top, 1) if result.top % other.top == 0 else over(result.top, other.top)
            working.line(f"{result.text} / {other.text}", result_next.text)
        else:
            raise TypeError(f"cannot undo {unknown.symbol}")
        result, unknown = result_next, inner


def _unknown(expr: Expr) -> bool:
    if isinstance(expr, Op):
        return any(map(_unknown, expr.args))
    return not isinstance(expr, Quantity | Measured | Price | Stated | Stat | Tally)
