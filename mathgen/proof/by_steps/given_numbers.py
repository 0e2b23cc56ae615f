"""What the givens of a problem make of an expression, as pairs of whole numbers."""

from __future__ import annotations

from collections.abc import Iterable

from mathgen.asks.expression import DOLLAR, Ask, Choice, Expr, Op, Quantity, Stat, Stated, Tally
from mathgen.problems.record import Problem
from mathgen.proof.list_statistics import statistic
from mathgen.proof.step_numbers import NotTrue, Pair, lowest, number

_ADDED_UP = ("mean", "mean absolute deviation")  # statistics of which each number of the list is used


class GivenNumbers:
    """The numbers that a pupil has before the first step. ``texts`` are all of them, as printed or counted."""

    def __init__(self, problem: Problem) -> None:
        """
        Raises:
            NotTrue: a given is no number.
        """
        self.texts = tuple(given.number for given in problem.givens) + _counts_of_series(problem.ask) + _known_to_all(problem.ask)
        self.numbers = {given.expr: number(given.number) for given in problem.givens}
        self._read = {given.expr: self.numbers[given.expr] for given in problem.givens if given.where == "table"}

    def value(self, expr: Expr) -> Pair:
        """The value of an expression in lowest terms.

        Raises:
            NotTrue: something in it was not given.
        """
        return lowest(*_pair(expr, self.numbers, self._read))

    def values(self, exprs: Iterable[Expr]) -> tuple[Pair, ...]:
        """The value of each expression."""
        return tuple(map(self.value, exprs))

    def with_letters(self, expr: Expr, letters: Iterable[Expr], tried: Pair) -> Pair:
        """The value of an expression with a number for its letter; nothing is read from a table for it."""
        return lowest(*_pair(expr, {**self.numbers, **dict.fromkeys(letters, tried)}, {}))

    def crossed_off(self, exprs: Iterable[Expr]) -> tuple[Pair, ...]:
        """The numbers of the lists of which only a few are used: one that is added up from cells may be crossed off."""
        stats = [stat for expr in exprs for stat in stats_in(expr) if stat.name not in _ADDED_UP]
        return tuple(one for stat in stats for one in self.values(stat.series))

    def looked_over(self, expr: Expr) -> tuple[Pair, ...]:
        """The numbers of the lists that tallies count in: one that is added up from cells may be not meant."""
        return tuple(one for tally in tallies_in(expr) for one in self.values(tally.series))


def _pair(expr: Expr, numbers: dict[Expr, Pair], read: dict[Expr, Pair]) -> Pair:
    """A value as a pair: the given itself, the sum of the cells read for it, or the part over the whole."""
    if expr in numbers:
        return numbers[expr]
    if isinstance(expr, Op):
        (top, bottom), *others = (_pair(arg, numbers, read) for arg in expr.args)
        if expr.symbol == "opposite" or (expr.symbol == "abs" and top < 0):
            top = -top
        for other_top, other_bottom in others:
            if expr.symbol == "/":
                top, bottom = top * other_bottom, bottom * other_top
            elif expr.symbol == "*":
                top, bottom = top * other_top, bottom * other_bottom
            else:
                sign = 1 if expr.symbol == "+" else -1
                top, bottom = top * other_bottom + sign * other_top * bottom, bottom * other_bottom
        return top, bottom
    if isinstance(expr, Stat):
        return statistic(expr.name, tuple(lowest(*_pair(one, numbers, read)) for one in expr.series))
    if isinstance(expr, Stated):
        return expr.number, expr.bottom  # 2 in a pair, which no word has to print
    if isinstance(expr, Quantity):
        cells = [top for one, (top, _) in read.items() if isinstance(one, Quantity) and _within(one, expr)]
        if cells:
            return sum(cells), 1
    raise NotTrue(f"nobody gave {expr}")


def _within(cell: Quantity, total: Quantity) -> bool:
    """Whether a cell that was read is part of a total."""
    return cell.measure == total.measure and all(
        labels is None or (one is not None and set(one) <= set(labels)) for one, labels in zip(cell.scope, total.scope, strict=True)
    )


def _counts_of_series(ask: Ask) -> tuple[str, ...]:
    """How many numbers a mean is of, or the two in the middle of a list: structural constants that no word has to print."""
    return tuple(str(len(stat.series)) if stat.name in _ADDED_UP else "2" for expr in ask.goal.exprs for stat in stats_in(expr))


def _known_to_all(ask: Ask) -> tuple[str, ...]:
    """100 cents in a dollar, where the question is about a dollar; how many trials are named, where pins per trial are meant."""
    waiting: list[Expr] = [] if isinstance(ask.goal, Choice) else list(ask.goal.exprs)
    for expr in waiting:
        if isinstance(expr, Op):
            waiting.extend(expr.args)
    counted = tuple(str(one.number) for one in waiting if isinstance(one, Stated) and one.meaning == "how many")
    return (*counted, str(DOLLAR.number)) if DOLLAR in waiting else counted


def stats_in(expr: Expr) -> tuple[Stat, ...]:
    """The statistics in an expression, in the order in which they are worked out."""
    if isinstance(expr, Op):
        return tuple([stat for arg in expr.args for stat in stats_in(arg)])
    return (expr,) if isinstance(expr, Stat) else ()


def tallies_in(expr: Expr) -> tuple[Tally, ...]:
    """The tallies in an expression."""
    if isinstance(expr, Op):
        return tuple([tally for arg in expr.args for tally in tallies_in(arg)])
    return (expr,) if isinstance(expr, Tally) else ()
