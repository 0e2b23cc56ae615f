"""Number sentences with a blank: which numbers of the story stand in them, and what the blank is the number of."""

from __future__ import annotations

from mathgen.asks.expression import Expr, Op, Quantity, Stated, Truth, Value
from mathgen.reading import arrays, scoring
from mathgen.reading.asked import TRUTH, WHOLE, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Fact, Told
from mathgen.reading.wanted.counts import Blank, HowMany, IsDifference, IsTotal, IsTrue
from mathgen.scenario.words import Scenario


def blank(question: Blank, told: Told, _: Scenario) -> Asked:
    """The number that makes a number sentence true.

    Raises:
        NotRead: a number of the sentence is not that of a count told of, another count is told of, or the counts do not go
            together so.
    """
    counts, others = _told_counts(told)
    printed = [number for number in (question.first, question.second, question.result) if number is not None]
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
    """Whether a number sentence is true of the counts told of, in the order in which they are told.

    Raises:
        NotRead: the sentence has other numbers than the words, or in another order.
    """
    counts, others = _told_counts(told)
    numbers = [number.value for number in (*question.left, *question.right)]
    if others or [evaluate(count, told.counts) for count in counts] != numbers or len(set(counts)) != len(counts):
        raise NotRead("the number sentence is about other numbers than the words")
    sides = tuple(counts[: len(question.left)]), tuple(counts[len(question.left) :])
    left, right = (side[0] if len(side) == 1 else Op("+", side) for side in sides)
    return Asked("is true", Truth(left, question.test, right), TRUTH, tuple(counts))


def is_difference(question: IsDifference, told: Told, _: Scenario) -> Asked:
    """Whether what is left of the pins set up is the sum of two numbers.

    Raises:
        NotRead: the difference is not of the two counts told of, or they do not go together so.
    """
    counts, others = _told_counts(told)
    if others or [evaluate(count, told.counts) for count in counts] != [number.value for number in question.counts]:
        raise NotRead("the number sentence is about other numbers than the words")
    claimed = tuple(_claimed(told, number) for number in question.claimed)
    return Asked("is true", Truth(_rest(told, *counts), "=", Op("+", claimed)), TRUTH, tuple(counts))


def _claimed(told: Told, number: Number) -> Stated:
    """A number that nothing bears out yet."""
    claim = Stated(int(number.value), "claimed")
    told.facts.append(Fact(claim, number.text))
    return claim


def is_total(question: IsTotal, told: Told, scenario: Scenario) -> Asked:
    """Whether a number is the total asked about.

    Raises:
        NotRead: rows are told of that do not make the total.
    """
    wanted = HowMany(question.measure, question.np, None, True)
    asked = scoring.how_many(wanted, told, scenario) if told.in_rows is None else arrays.array_total(wanted, told)
    assert isinstance(asked.goal, Value)
    if asked.direct is not None and evaluate(asked.direct, told.counts) != evaluate(asked.goal.expr, told.counts):
        raise NotRead("the rows do not make the number in the table")
    claimed = _claimed(told, question.number)
    return asked._replace(kind="total claimed", goal=Truth(asked.goal.expr, "=", claimed), demand=TRUTH, direct=None)


def _told_counts(told: Told) -> tuple[list[Quantity], bool]:
    """The counts that the words tell, and whether they tell anything else."""
    counts = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity)]
    # How many trials there were may be said in passing; it is no count.
    others = [fact for fact in told.facts if fact.expr not in counts and getattr(fact.expr, "meaning", None) != "trials"]
    return counts, bool(others)


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


ASKED: Answers = {
    Blank: blank,
    IsTrue: is_true,
    IsDifference: is_difference,
    IsTotal: is_total,
}
