"""A number line from 0 to 1, and whole sets as a fraction: what is told of them, and what is asked."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stated, Value
from mathgen.reading.asked import WHOLE, Asked
from mathgen.reading.meaning import AsFraction, Np, NumberLine
from mathgen.reading.one_whole import fraction_told
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Told
from mathgen.reading.wanted import PartsFromOne, TopOfSets
from mathgen.scenario.words import Scenario


def number_line(told: Told, claim: NumberLine) -> None:
    """Keep into how many parts the line is cut.

    Raises:
        NotRead: two lines are told of.
    """
    if told.number_line is not None:
        raise NotRead("two number lines are told of")
    told.number_line = claim
    told.open["number line"] = "the number line"


def parts_from_one(question: PartsFromOne, told: Told, _: Scenario) -> Asked:
    """How many parts of the line are left from the fraction to 1; the parts have to be those of the set."""
    if told.number_line is None:
        raise NotRead("no number line is told of")
    measure, scope = fraction_told(told, question.measure, Np())
    part, whole = Quantity(measure, scope), Quantity("set_up", scope)
    told.referred(whole, told.number_line.parts)
    return Asked("parts of a line", Value(Op("-", (whole, part))), WHOLE, (whole, part), ("number line",), looked_at=(part,))


def as_fraction(told: Told, claim: AsFraction) -> None:
    """Keep which whole number is to be a fraction.

    Raises:
        NotRead: two are.
    """
    if told.as_fraction is not None:
        raise NotRead("two fractions are told of")
    told.as_fraction = claim
    told.open["as fraction"] = "the fraction"


def top_of_sets(_question: TopOfSets, told: Told, _: Scenario) -> Asked:
    """The top number of a fraction equal to so many sets, where the bottom number is the size of one."""
    claim = told.as_fraction
    sets = [fact for fact in told.facts if isinstance(fact.expr, Op) and isinstance(fact.expr.args[1], Stated)]
    if claim is None or len(sets) != 1:
        raise NotRead("it is not said which fraction is meant")
    [each] = sets
    assert isinstance(each.expr, Op)
    total, count = each.expr.args
    assert isinstance(total, Quantity)
    assert isinstance(count, Stated)
    if claim.bottom.text != each.text or claim.number.value != count.number:
        raise NotRead("the fraction is not of these sets")
    return Asked("sets as a fraction", Value(Op("*", (count, each.expr))), WHOLE, (total,), ("as fraction",), total)
