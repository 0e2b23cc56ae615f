"""How many operations an ask leaves to the pupil, at the least: steps for fewer leave something out."""

from __future__ import annotations

from collections import Counter
from collections.abc import Container

from mathgen.asks.expression import Ask, Expr, Op, Stat, StatName, Value
from mathgen.proof.by_steps.given_numbers import stats_in


def operations_of(ask: Ask, printed: Container[Expr]) -> int:
    """The operations of all that the goal is made of.

    Args:
        ask: what is asked.
        printed: expressions that are given.
    """
    needed = sum(_operations(expr, printed) for expr in ask.goal.exprs) - _means_used_again(ask)
    return needed - _used_again(ask.goal.expr, printed) if isinstance(ask.goal, Value) else needed


def _operations(expr: Expr, printed: Container[Expr]) -> int:
    if expr in printed:
        return 0
    if isinstance(expr, Stat):
        return _in_statistic(expr.name, len(expr.series))
    if isinstance(expr, Op):
        return len(expr.args) - 1 + sum(_operations(arg, printed) for arg in expr.args)
    return 0


def _in_statistic(name: StatName, size: int) -> int:
    if name == "mean":
        return size
    if name == "mean absolute deviation":
        return 2 * size + 1  # a mean, at least one distance, a mean
    if name == "range":
        return 1
    # One number in the middle is found; two are added and halved.
    middle = 0 if (size if name == "median" else size // 2) % 2 else 2
    return 2 * middle + 1 if name == "interquartile range" else middle


def _means_used_again(ask: Ask) -> int:
    """The operations of means that are worked out once and used for a deviation besides."""
    stats = {stat for expr in ask.goal.exprs for stat in stats_in(expr)}
    return sum(len(stat.series) for stat in stats if stat.name == "mean absolute deviation" and stat._replace(name="mean") in stats)


def _used_again(expr: Expr, printed: Container[Expr]) -> int:
    """The operations of what is worked out once and used twice: a total, and 20% of the total."""
    seen = _left_to_do(expr, printed)
    if len(seen) < 2:
        return 0
    return sum((times - 1) * (len(op.args) - 1) for op, times in Counter(seen).items())


def _left_to_do(expr: Expr, printed: Container[Expr]) -> list[Op]:
    if not isinstance(expr, Op) or expr in printed:
        return []
    return [expr, *(op for arg in expr.args for op in _left_to_do(arg, printed))]
