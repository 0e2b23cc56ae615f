"""What is to be worked out, as a sentence that a pupil can say yes or no to, and the steps of working it out."""

from __future__ import annotations

from collections.abc import Sequence

from mathgen.asks.expression import (
    Changes,
    Choice,
    Chosen,
    Expr,
    Listing,
    Op,
    Ordered,
    Quantity,
    QuotientRemainder,
    Ratio,
    Same,
    Stat,
    Stated,
    Truth,
    Value,
)
from mathgen.exact.demand import in_words
from mathgen.exact.forms import fraction
from mathgen.reading.evaluate import Counts, evaluate
from mathgen.reading.pupils.plan import Picked, Plan
from mathgen.reading.pupils.say_series import SaySeries
from mathgen.reading.say_back import number_of
from mathgen.scenario.naming import group_name
from mathgen.scenario.words import Scenario
from mathgen.trials.table import TrialTable


def sentence_of(plan: Plan, table: TrialTable, scenario: Scenario) -> str:
    """The question as it was understood, with everything that was left out filled in."""
    goal, say = plan.goal, SaySeries(table, scenario)

    def named(expr: Expr) -> str:
        return _named(expr, table, scenario)

    if isinstance(goal, Picked):
        tested = {"equal": "exactly", "more": "more than", "fewer": "fewer than"}.get(goal.test, goal.test)
        short = say.picked(goal, tested)
        if short is not None:
            return f"{short}."
        what = "Count those" if goal.counted else "Find those"
        return f"{what} for which it is {tested} {goal.number}: {'; '.join(map(named, goal.exprs))}."
    if isinstance(goal, Choice):
        short = say.choice(goal)
        if short is not None:
            return f"{short}."
        size = "greatest" if goal.most else "smallest"
        once = _once([named(expr) for expr in goal.exprs], [group_name(label, scenario) for label in goal.labels])
        if once is not None and goal.labels == table.groups:
            return f"Find for which group this is the {size}: {once}."
        return f"Find which is the {size}: {'; '.join(map(named, goal.exprs))}."
    assert not isinstance(goal, Truth | QuotientRemainder | Listing | Changes | Chosen | Same)  # no wish asks for any of these
    if isinstance(goal, Ratio):
        text = f"Find the ratio: {named(goal.first)}, to {named(goal.second)}"
    elif plan.kind == "part" and isinstance(goal.expr, Op):
        form = {"percent": "the percent", "decimal": "the decimal"}.get(plan.demand.form, "the fraction")
        text = f"Find {form}: {named(goal.expr.args[0])}, out of {named(goal.expr.args[1])}"
    elif plan.kind == "times" and isinstance(goal.expr, Op):
        text = f"Find how many times as great {named(goal.expr.args[0])} is as {named(goal.expr.args[1])}"
    elif plan.kind == "percent change" and isinstance(goal.expr, Op) and isinstance(goal.expr.args[0], Op):
        text = f"Find the percent of change: {named(goal.expr.args[0])}, out of {named(goal.expr.args[1])}"
    else:
        text = f"Find {named(goal.expr)}"
    form = in_words(plan.demand) if plan.demand.form not in ("whole", "any", "name", "ratio") else ""
    return f"{text}. Give the answer {form}." if form else f"{text}."


def _once(texts: Sequence[str], names: Sequence[str]) -> str | None:
    """What is said of each name, said of "the group" where it is the same for all; None where it is not."""
    said = {text.replace(f" that {name} ", " that the group ") for text, name in zip(texts, names, strict=True)}
    return said.pop() if len(said) == 1 else None


def _named(expr: Expr, table: TrialTable, scenario: Scenario) -> str:
    if isinstance(expr, Quantity):
        return number_of(expr, table, scenario)
    if isinstance(expr, Stated):
        return str(expr.number)
    if isinstance(expr, Stat):
        short = SaySeries(table, scenario).statistic(expr.series, f"the {expr.name}")
        return short or f"the {expr.name} of: {'; '.join(_named(part, table, scenario) for part in expr.series)}"
    if isinstance(expr, Ordered):
        which = "greatest" if expr.place else "smallest"
        short = SaySeries(table, scenario).statistic(expr.series, f"the {which}")
        return short or f"the {which} of: {'; '.join(_named(part, table, scenario) for part in expr.series)}"
    assert isinstance(expr, Op)  # plans hold no other
    parts = [_named(part, table, scenario) for part in expr.args]
    if expr.symbol == "-":
        return f"how much greater {parts[0]} is than {parts[1]}"
    return {"+": " plus ", "*": " times ", "/": " divided by "}[expr.symbol].join(parts)


def steps_of(plan: Plan, counts: Counts, scenario: Scenario) -> list[str]:
    """Each count that is needed, then each equality that leads to the answer."""
    goal = plan.goal
    exprs = (goal.first, goal.second) if isinstance(goal, Ratio) else goal.exprs
    lines: list[str] = []
    for expr in exprs:
        for part in _counted(expr):
            name = number_of(part, counts.table, scenario)
            lines.append(f"{name[:1].upper()}{name[1:]}: {evaluate(part, counts)}")
    for expr in exprs:
        _work(expr, counts, lines)
    return list(dict.fromkeys(lines))


def _counted(expr: Expr) -> list[Quantity]:
    from mathgen.reading.evaluate import quantities

    return quantities(expr)


_SIGNS = {"+": "+", "-": "−", "*": "×", "/": "÷"}  # as pupils write them


def _work(expr: Expr, counts: Counts, lines: list[str]) -> str:
    """Write the work of an expression; gives back its value as text."""
    value = fraction(evaluate(expr, counts))
    if isinstance(expr, Op):
        parts = [_work(part, counts, lines) for part in expr.args]
        written = [f"({part})" if "/" in part and expr.symbol in "/*" else part for part in parts]
        lines.append(f"{f' {_SIGNS[expr.symbol]} '.join(written)} = {value}")
    elif isinstance(expr, Stat):
        numbers = sorted((evaluate(part, counts) for part in expr.series), key=int)
        if expr.name == "mean":
            lines.append(f"({' + '.join(str(evaluate(part, counts)) for part in expr.series)}) ÷ {len(numbers)} = {value}")
        elif expr.name == "range":
            lines.append(f"{numbers[-1]} − {numbers[0]} = {value}")
        else:
            middle = numbers[(len(numbers) - 1) // 2 : len(numbers) // 2 + 1]
            lines.append(f"In order: {', '.join(map(str, numbers))}")
            lines.append(f"({middle[0]} + {middle[1]}) ÷ 2 = {value}" if len(middle) == 2 else f"In the middle: {value}")
    return value


__all__ = ["Value", "sentence_of", "steps_of"]
