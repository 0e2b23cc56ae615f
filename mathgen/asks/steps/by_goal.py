"""The whole working of an ask: each kind of goal has its own way from numbers to the last line."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from mathgen.asks.expression import (
    PAIR,
    Ask,
    Changes,
    Choice,
    Chosen,
    Expr,
    Listing,
    Measured,
    Op,
    Price,
    Quantity,
    QuotientRemainder,
    Ratio,
    Same,
    Stat,
    Stated,
    Truth,
    Value,
)
from mathgen.asks.relation import relation
from mathgen.asks.steps import products, ways
from mathgen.asks.steps.answer_form import in_form
from mathgen.asks.steps.cell_reader import CellReader
from mathgen.asks.steps.sums import same_bottoms
from mathgen.asks.steps.undoing import can_be_undone, undo
from mathgen.asks.steps.working import Working
from mathgen.asks.steps.written_number import percent
from mathgen.exact.demand import Demand


def school_steps(ask: Ask, reader: CellReader, printed: dict[Expr, str]) -> tuple[str, ...]:
    """Each line of the working, the last one ending in the exact answer.

    Args:
        ask: what is asked.
        reader: of the table.
        printed: expressions that the words print, with the text they print; other counts are read from the table.
    """
    return tuple(worked(ask, reader, printed).lines)


def worked(ask: Ask, reader: CellReader, printed: dict[Expr, str], grade: int = 8) -> Working:
    """The whole working of an ask, with the lines for the board of a grade and the numbers that are compared."""
    working = Working(reader, printed, grade)
    _BY_KIND[type(ask.goal)](working, ask.goal, ask)
    return working


def _put_in_signs(working: Working, goal: Same, ask: Ask) -> None:
    """Nothing is worked out: the story is put in signs."""


def _choice(working: Working, goal: Choice, ask: Ask) -> None:
    numbers = [working.number(expr) for expr in goal.exprs]
    # The one number in the middle of a list is found, not worked out: the comparison says it.
    working.lines = [line for line in working.lines if len(set(line.split(" = "))) > 1]
    working.ends = same_bottoms(working, numbers)


def _truth(working: Working, goal: Truth, ask: Ask) -> None:
    left, right = working.ends = [working.number(expr) for expr in goal.exprs]
    if goal.divides and goal.right == PAIR:
        products.pairs(working, left.top)
    elif goal.divides:
        products.groups(working, left.top, right.top)
    elif ask.demand.form == "rubric":  # a reason is to be given: both sides are made ready to compare
        stated = goal.right if isinstance(goal.right, Stated) and goal.right.meaning == "claimed percent" else None
        if stated is not None and isinstance(goal.left, Op) and isinstance(goal.left.args[0], Op):
            told = percent(left.top, left.bottom)  # a change is told as a percent
            working.line(left.text, told)
            working.ends = [left._replace(text=told), right._replace(text=f"{stated.number}%")]
        else:
            if stated is not None:
                working.line(f"{stated.number}%", right.text)
            working.ends = same_bottoms(working, [left, right])
    elif "." in left.text and "." in right.text:
        working.ends = same_bottoms(working, [left, right])


def _quotient_remainder(working: Working, goal: QuotientRemainder, ask: Ask) -> None:
    amount, size = working.ends = [working.number(expr) for expr in goal.exprs]
    if goal.size == PAIR:
        products.pairs(working, amount.top)
    else:
        products.groups(working, amount.top, size.top, goal.want)


def _listing(working: Working, goal: Listing, ask: Ask) -> None:
    amount, *rest = (working.number(expr) for expr in goal.exprs)
    if rest:
        ways.splits(working, amount, rest[0])
    else:
        ways.factor_pairs(working, amount.top)


def _changes(working: Working, goal: Changes, ask: Ask) -> None:
    numbers = [working.number(one).top for one in goal.series]
    ways.changes(working, numbers, working.number(goal.wanted).top, working.number(goal.most).top)


def _chosen(working: Working, goal: Chosen, ask: Ask) -> None:
    *numbers, total = map(working.number, goal.exprs)
    ways.chosen(working, numbers, total, goal.size)


def _ratio(working: Working, goal: Ratio, ask: Ask) -> None:
    products.ratio(working, working.number(goal.first), working.number(goal.second))


def _value(working: Working, goal: Value, ask: Ask) -> None:
    expr = goal.expr
    if isinstance(expr, Quantity) or (ask.given and can_be_undone(relation(ask))):
        undo(working, relation(ask))
    elif isinstance(expr, Price):
        price = working.number(expr)  # "What fraction of a dollar is $0.35?"
        working.line(price.text, f"{price.top}/{price.bottom}")
    else:
        # A length is told as a ruler shows it: 2 2/4 inches are 2 1/2 inches.
        in_form(working, working.number(expr), Demand("mixed") if _is_length(expr) else ask.demand)
    if ask.demand.form == "whole" and ask.demand.places is not None and not working.lines:
        # A number that the words give and that is only to be rounded: nothing is worked out.
        given = working.number(expr).text
        working.lines.append(f"{given} = {given}")


def _is_length(expr: Expr) -> bool:
    if isinstance(expr, Stat):
        return isinstance(expr.series[0], Measured)
    return isinstance(expr, Measured) or (isinstance(expr, Op) and any(map(_is_length, expr.args)))


_BY_KIND: dict[type, Callable[[Working, Any, Ask], None]] = {
    Same: _put_in_signs,
    Choice: _choice,
    Truth: _truth,
    QuotientRemainder: _quotient_remainder,
    Listing: _listing,
    Changes: _changes,
    Chosen: _chosen,
    Ratio: _ratio,
    Value: _value,
}
