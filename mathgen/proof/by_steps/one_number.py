"""Steps that lead to one number: a value or a ratio in the form that the words demand, or what two numbers share."""

from __future__ import annotations

from mathgen.asks.expression import Op, Ratio, Stat, Value
from mathgen.problems.record import Answer
from mathgen.proof.by_steps.work import Work
from mathgen.proof.list_statistics import is_statistic
from mathgen.proof.step_numbers import NotTrue


def check_value(work: Work, goal: Value) -> None:
    """The last step has to end in the number."""
    if isinstance(goal.expr, Op) and goal.expr.symbol in ("gcf", "lcm"):
        _check_common(work, goal.expr)
    else:
        check_end(work, goal)


def check_end(work: Work, goal: Value | Ratio) -> None:
    """The last step has to end in the exact answer, in its form."""
    exact, steps, given = work.answer.exact, work.steps, work.given
    end = (int(exact.numerator), int(exact.denominator))  # type: ignore[union-attr]
    stat = goal.expr if isinstance(goal.expr, Stat) else None
    listed = () if stat is None else given.values(stat.series)
    results = work.follow(end, *given.crossed_off(goal.exprs), *given.looked_over(goal.expr))
    if not results:
        raise NotTrue("no step")
    if results[-1] != end:
        raise NotTrue(f"the steps end in {results[-1][0]}/{results[-1][1]}")
    if stat is not None and not is_statistic(stat.name, end, listed):
        raise NotTrue(f"{work.answer.shown} is not the {stat.name} of the list")
    if not _in_form(work.answer, steps[-1]):
        raise NotTrue(f"the steps end in another form than {work.answer.shown}")


def _in_form(answer: Answer, last: str) -> bool:
    """Whether the last step ends in the form that the words demand: in a percent, a decimal, a mixed number."""
    form, places = answer.demand
    end = last.rpartition(" = ")[2]
    if answer.kind == "ratio":
        return end == answer.shown.replace(":", "/")  # the two numbers as they were counted, in their order
    if form == "percent":
        return end.endswith("%")
    if form in ("decimal", "mixed", "mixed:any", "simplest", "fraction") and places is None and "..." not in answer.shown:
        return end == answer.shown
    return True  # any form is right, or the exact value is worked out and the rounding is the last thing to do


def _check_common(work: Work, expr: Op) -> None:
    """The last two steps have to lead from both numbers to the answer, by numbers that share no factor but 1."""
    (one, _), (other, _) = work.given.values(expr.args)
    shared = max(size for size in range(1, min(one, other) + 1) if one % size == other % size == 0)
    sign, end = ("/", shared) if expr.symbol == "gcf" else ("*", one * other // shared)
    by = (one // shared, other // shared) if sign == "/" else (other // shared, one // shared)
    work.follow((end, 1), known=(str(by[0]), str(by[1])))
    if work.steps[-2:] != (f"{one} {sign} {by[0]} = {end}", f"{other} {sign} {by[1]} = {end}"):
        raise NotTrue("the steps do not say what both numbers share")
    if work.answer.exact != end:
        raise NotTrue(f"the steps end in {end}")
