"""The record of a proof: what each route says of one problem."""

from __future__ import annotations

from sympy import Rational

from mathgen.asks.expression import Ask, Choice, Expr, Op, Quantity, Stat
from mathgen.problems.record import Answer, Problem
from mathgen.proof import by_forms, by_relation, by_steps
from mathgen.proof.raw import RawRows

AGREES = "agrees"
ROUTES = ("steps", "relation", "forms")


def prove(problem: Problem, rows: RawRows) -> Problem:
    """The problem with each route's verdict: ``agrees``, or what is wrong."""
    verdicts = (
        ("steps", _verdict_of_steps(problem, rows)),
        ("relation", _verdict_of_relation(problem, rows)),
        ("forms", _verdict_of_forms(problem)),
    )
    return problem._replace(proof=verdicts)


def proved(problem: Problem) -> bool:
    """Whether every route in force agrees."""
    return tuple(route for route, _ in problem.proof) == ROUTES and all(verdict == AGREES for _, verdict in problem.proof)


def _verdict_of_relation(problem: Problem, rows: RawRows) -> str:
    try:
        found = by_relation.solve(problem.ask, rows)
        for given in problem.givens:
            if not by_relation.true_to_table(given, rows):
                return f"the given {given.number} is not true to the table"
    except by_relation.NoSolution as err:
        return str(err)
    return AGREES if found == problem.answer.exact else f"gives {found}"


def _verdict_of_steps(problem: Problem, rows: RawRows) -> str:
    goal = problem.ask.goal
    givens = tuple(given.number for given in problem.givens) + _counts_of_series(problem.ask)
    steps = tuple(step.text for step in problem.steps)
    exprs = goal.exprs if isinstance(goal, Choice) else (goal.expr,)
    printed = {given.expr for given in problem.givens}
    try:
        operations = sum(_operations(expr, printed) for expr in exprs)
        results = by_steps.follow(steps, givens, operations)
        if isinstance(goal, Choice):
            return _winner(problem, goal)
    except by_steps.NotTrue as err:
        return str(err)
    if not results:
        return "no step"
    if not _in_form(problem.answer, steps[-1]):
        return f"the steps end in another form than {problem.answer.shown}"
    exact = Rational(problem.answer.exact)
    return AGREES if results[-1] == (exact.numerator, exact.denominator) else f"the steps end in {Rational(*results[-1])}"


def _in_form(answer: Answer, last: str) -> bool:
    """Whether the last step ends in the form that the words demand: in a percent, a decimal, a mixed number."""
    form, places = answer.demand
    end = last.rpartition(" = ")[2]
    if form == "percent":
        return end.endswith("%")
    if form in ("decimal", "mixed", "simplest") and places is None and "..." not in answer.shown:
        return end == answer.shown
    return True  # any form is right, or the exact value is worked out and the rounding is the last thing to do


def _winner(problem: Problem, goal: Choice) -> str:
    """The label whose value, as the givens have it, beats every other when cross-multiplied."""
    numbers = {given.expr: by_steps.number(given.number) for given in problem.givens}
    read = {given.expr: numbers[given.expr] for given in problem.givens if given.where == "table"}
    pairs = [_pair(expr, numbers, read) for expr in goal.exprs]
    sign = 1 if goal.most else -1
    winners = [
        label
        for label, (top, bottom) in zip(goal.labels, pairs, strict=True)
        if sum(sign * (a * bottom - top * b) >= 0 for a, b in pairs) == 1
    ]
    return AGREES if winners == [problem.answer.exact] else f"the steps point to {winners}"


def _pair(expr: Expr, numbers: dict[Expr, tuple[int, int]], read: dict[Expr, tuple[int, int]]) -> tuple[int, int]:
    """A value as a pair: the given itself, the sum of the cells read for it, or the part over the whole."""
    if expr in numbers:
        return numbers[expr]
    if isinstance(expr, Op) and expr.symbol == "/":
        (top, bottom), (other_top, other_bottom) = (_pair(arg, numbers, read) for arg in expr.args)
        return top * other_bottom, bottom * other_top
    if isinstance(expr, Quantity):
        cells = [top for one, (top, _) in read.items() if isinstance(one, Quantity) and _within(one, expr)]
        if cells:
            return sum(cells), 1
    raise by_steps.NotTrue(f"nobody gave {expr}")


def _within(cell: Quantity, total: Quantity) -> bool:
    """Whether a cell that was read is part of a total."""
    return cell.measure == total.measure and all(
        labels is None or (one is not None and set(one) <= set(labels)) for one, labels in zip(cell.scope, total.scope, strict=True)
    )


def _verdict_of_forms(problem: Problem) -> str:
    try:
        by_forms.check(problem.answer, problem.slips)
    except by_forms.FormFails as err:
        return str(err)
    return AGREES


def _counts_of_series(ask: Ask) -> tuple[str, ...]:
    """How many numbers each mean is of: structural constants that no word has to print."""
    goal = ask.goal
    if isinstance(goal, Choice):
        return ()
    return tuple(str(len(expr.series)) for expr in (goal.expr,) if isinstance(expr, Stat))


def _operations(expr: Expr, printed: set[Expr]) -> int:
    """The operations of an ask that the words leave to the pupil."""
    if expr in printed:
        return 0
    if isinstance(expr, Stat):
        return len(expr.series)
    if isinstance(expr, Op):
        return len(expr.args) - 1 + sum(_operations(arg, printed) for arg in expr.args)
    return 0
