"""Two counts put together: "double A, then subtract B", "how many A plus how many B". Each count is a question of its own."""

from __future__ import annotations

import re
from typing import NamedTuple

from mathgen.asks.expression import Expr, Op, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.reading.evaluate import Counts, evaluate
from mathgen.reading.pupils.plan import Plan
from mathgen.reading.tokens import NotRead

_TIMES = {"double": 2, "twice": 2, "two times": 2, "2 times": 2, "triple": 3, "three times": 3, "3 times": 3}
_END = (
    r"[.?!]*(?: *(?:how many|how much|what) (?:number )?"
    r"(?:is (?:that|it|the (?:result|answer))|do (?:you|i|we|u) get|would (?:that|it) be)\??)?$"
)
_AFTER = r"(?:,? *(?:and |then )*(?P<sign>subtract|take away|minus|add|plus) (?P<second>[^.?!]+?))?"
_DOUBLED = re.compile(
    rf"^(?:what is |find |if (?:you|u|we|i) |take |work out )?(?P<times>{'|'.join(_TIMES)}) (?P<first>[^.?!]+?){_AFTER}{_END}",
    re.IGNORECASE,
)
_SUMMED = re.compile(
    rf"^(?P<first>add (?:up )?[^.?!]+?),? (?:and )?then (?P<sign>subtract|take away) (?P<second>[^.?!]+?){_END}", re.IGNORECASE
)
_ADDED = re.compile(r"^(?P<first>how many [^.?!]+?) (?P<sign>plus|minus) (?P<second>how many [^.?!]+?)[.?!]*$", re.IGNORECASE)


class Combined(NamedTuple):
    """Two questions, or one, and what to do with their answers."""

    first: str
    second: str
    times: int
    symbol: str


def combined(text: str) -> Combined | None:
    """The counts that a text puts together; None where it is one plain question."""
    match = _DOUBLED.match(text) or _SUMMED.match(text) or _ADDED.match(text)
    if match is None:
        return None
    found = match.groupdict()
    symbol = "-" if (found["sign"] or "").casefold() in ("subtract", "take away", "minus") else "+"
    times = _TIMES[found["times"].casefold()] if "times" in found else 1
    return Combined(_question(found["first"]), _question(found["second"] or ""), times, symbol)


def _question(part: str) -> str:
    return part if not part or part.casefold().startswith(("how many", "add ")) else f"what is {part}"


def together(of: Combined, first: Plan, second: Plan | None, counts: Counts) -> Plan:
    """One plan from those of the two questions.

    Raises:
        NotRead: one of them asks for no count, or more would be taken away than there is.
    """
    one = _count(first)
    expr: Expr = one if of.times == 1 else Op("*", (Stated(of.times, "times"), one))
    if second is not None:
        other = _count(second)
        if of.symbol == "-" and evaluate(expr, counts) < evaluate(other, counts):
            raise NotRead(f"You cannot take {evaluate(other, counts)} from {evaluate(expr, counts)}.")
        expr = Op(of.symbol, (expr, other))  # type: ignore[arg-type]
    return Plan(Value(expr), Demand("whole"), "count")


def _count(plan: Plan) -> Expr:
    if plan.kind not in ("count", "difference") or not isinstance(plan.goal, Value):
        raise NotRead("I can put together two counts. Please say for each of them what to count.")
    return plan.goal.expr
