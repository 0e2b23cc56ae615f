"""Route 3: the printed words, read back without a look at how they were made.

The reader gets the sentences and the table, nothing else. It has to arrive at the same value and the same demand, find exactly
the facts that the problem says it printed, and look where the problem says a pupil looks. On shadow tables (the same labels, large
other counts) its question must have the same answer as the problem's ask: equal by luck does not pass.
"""

from __future__ import annotations

from collections.abc import Callable

from sympy import Rational

from mathgen.asks.expression import Ask, Expr, Op, Quantity, Stated, Value, parts_to_share
from mathgen.problems.record import Problem
from mathgen.proof.verdict import AGREES
from mathgen.reading.evaluate import Counts
from mathgen.reading.read_problem import Reader, Reading
from mathgen.reading.tokens import NotRead
from mathgen.trials.table import TrialTable

# The ask's answer on a shadow, or the sides of a statement; None where it has none.
Solved = Callable[[Ask], Rational | str | tuple[Rational, ...] | None]


def verdict(problem: Problem, reader: Reader, shadows: tuple[tuple[Counts, Solved], ...]) -> str:
    """``agrees``, or what is wrong.

    Args:
        problem: with its words.
        reader: of the table.
        shadows: the counts of each, with the answer of an ask on it, by another route.
    """
    try:
        reading = reader.read(problem.text)
    except NotRead as err:
        return f"cannot be read: {err}"
    answer = problem.answer
    if reading.value not in (answer.accepted if answer.kind == "name" else (answer.exact,)):
        return f"reads as {reading.value}"
    if reading.demand != problem.ask.demand:
        return f"reads as asking for {reading.demand}"
    if answer.kind == "rubric" and reading.sides_on(reader.counts) != tuple(one.value for one in answer.reasons):
        return "the words lead to other reasons"
    if not _same_count(problem.ask, reading, reader.table):
        return "another count is asked for"
    told = {_said(given.expr, given.number, reader.table) for given in problem.givens if given.where == "words"}
    read = {_said(fact.expr, fact.text, reader.table) for fact in reading.facts}
    if told | {None} != read | {None}:
        return "the facts that are read are not those that were printed"
    return _on_shadows(problem, reading, shadows)


def _same_count(ask: Ask, reading: Reading, table: TrialTable) -> bool:
    """Whether the words ask for the very count that the ask asks for, where it is one that facts lead to.

    "The Owls earned 30 points, 5 for each pin" comes to 6 on any table, whatever group is named.
    """
    direct = reading.asked.direct
    if not isinstance(direct, Quantity) or not isinstance(ask.goal, Value) or not isinstance(ask.goal.expr, Quantity):
        return True
    return _plain(direct, table) == _plain(ask.goal.expr, table)


def _said(expr: Expr, text: str, table: TrialTable) -> tuple[object, ...] | None:
    """A fact as it is compared; None for a count of trials or groups, which only says again what is named beside it.

    "12 pins for each of 3 trials" is read as a total shared out; to the program it is the set-up of any one of those trials.
    """
    if isinstance(expr, Stated):
        return None if expr.meaning in ("trials", "groups") else (expr, text)
    if isinstance(expr, Op) and expr.symbol == "/" and isinstance(expr.args[1], Stated):
        return ("each trial", _without_trials(_plain(expr.args[0], table)), text)
    plain = _plain(expr, table)
    if isinstance(plain, Quantity) and plain.measure == "set_up" and plain.scope.trials is not None and len(plain.scope.trials) == 1:
        return ("each trial", _without_trials(plain), text)
    return (plain, text)


def _without_trials(expr: Expr) -> Expr:
    return expr._replace(scope=expr.scope._replace(trials=None)) if isinstance(expr, Quantity) else expr


def _plain(expr: Expr, table: TrialTable) -> Expr:
    """The expression with None for a label that is the table's only one."""
    if isinstance(expr, Op):
        return Op(expr.symbol, tuple([_plain(arg, table) for arg in expr.args]))
    if not isinstance(expr, Quantity):
        return expr
    scope = expr.scope
    if len(table.groups) == 1:
        scope = scope._replace(groups=None)
    if len(table.trials) == 1:
        scope = scope._replace(trials=None)
    if len(table.colors) == 1:
        scope = scope._replace(colors=None)
    return expr if scope is expr.scope else Quantity(expr.measure, scope)


def _on_shadows(problem: Problem, reading: Reading, shadows: tuple[tuple[Counts, Solved], ...]) -> str:
    manner = parts_to_share(problem.ask.goal)[0]
    if manner != parts_to_share(reading.goal)[0]:
        return "reads as another kind of question"
    for dark, solved in shadows:
        expected = solved(problem.ask)
        found: Rational | str | tuple[Rational, ...] | None
        try:
            found = reading.sides_on(dark) if manner else reading.value_on(dark)
        except NotRead:
            found = None
        if isinstance(found, str) and isinstance(expected, str) and found.endswith(f" {expected}"):
            expected = found  # the table's label is 2, the words say Trial 2
        if found != expected:
            return f"on a shadow table it reads as {found}, where the ask gives {expected}"
    return AGREES
