"""Number sentences with a blank: which numbers of the story stand in them, and what the blank is the number of."""

from __future__ import annotations

from mathgen.asks.expression import Expr, Op, Quantity, Truth, Value
from mathgen.reading.asked import TRUTH, WHOLE, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Told
from mathgen.reading.wanted import Blank, IsTrue
from mathgen.scenario.words import Scenario


def blank(question: Blank, told: Told, _: Scenario) -> Asked:
    """The number that makes a number sentence true.

    Raises:
        NotRead: a number of the sentence is not that of a count told of, another count is told of, or the counts do not go
            together so.
    """
    counts = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity)]
    printed = [number for number in (question.first, question.second, question.result) if number is not None]
    # How many trials there were may be said in passing; it is no count.
    others = [fact for fact in told.facts if fact.expr not in counts and getattr(fact.expr, "meaning", None) != "trials"]
    if len(counts) != len(printed) or others:
        raise NotRead("the number sentence is about other numbers than the words")
    known, result = (_told_as(told, counts, number) for number in printed)
    if known == result:
        raise NotRead("both numbers are of the same count")
    if question.symbol == "+":
        expr = _rest(told, result, known)
    elif question.first is not None:
        expr = _rest(told, known, result)
    else:
        expr = _whole(known, result)
    if evaluate(expr, told.counts) <= 0:
        raise NotRead("no count makes the number sentence true")
    return Asked("blank", Value(expr), WHOLE, (known, result))


def is_true(question: IsTrue, told: Told, _: Scenario) -> Asked:
    """Whether both sides of a number sentence are equal: of three counts told of, in the order in which they are told.

    Raises:
        NotRead: the sentence has other numbers than the words, or in another order.
    """
    counts = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity)]
    numbers = [number.value for number in question.numbers]
    if len(told.facts) != len(counts) or [evaluate(count, told.counts) for count in counts] != numbers or len(set(counts)) != len(counts):
        raise NotRead("the number sentence is about other numbers than the words")
    first, second, third = counts
    whole = Truth(Op("+", (first, second)), "=", third) if question.sum_first else Truth(first, "=", Op("+", (second, third)))
    return Asked("is true", whole, TRUTH, tuple(counts))


def _told_as(told: Told, counts: list[Quantity], number: Number) -> Quantity:
    found = [count for count in counts if evaluate(count, told.counts) == number.value]
    if len(found) != 1:
        raise NotRead(f"the words do not tell {number.text}" if not found else f"the words tell {number.text} twice")
    return found[0]


def _rest(told: Told, whole: Quantity, part: Quantity) -> Expr:
    """A whole without a part: of one rack, what is not knocked down or not left standing; of a total, its other cells."""
    of_rack = whole.measure == "set_up" != part.measure and whole.scope == part.scope
    inside = whole.measure == part.measure and set(told.counts.cells(part.scope)) < set(told.counts.cells(whole.scope))
    if not of_rack and not inside:
        raise NotRead("the counts do not go together so")
    return Op("-", (whole, part))


def _whole(down: Quantity, left: Quantity) -> Expr:
    """All that was set up, from what was taken from it and what was left, in this order."""
    if (down.measure, left.measure) != ("down", "standing") or down.scope != left.scope:
        raise NotRead("the counts do not go together so")
    return Op("+", (down, left))
