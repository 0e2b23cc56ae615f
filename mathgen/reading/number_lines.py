"""A number line from 0 to 1, and whole sets as a fraction: what is told of them, and what is asked."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stated, Value
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.meaning.parts import AsFraction, FromOne, NumberLine, SetIsWhole, TopAndBottom
from mathgen.reading.meaning.scope import Np
from mathgen.reading.one_whole import fraction_told
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Takers, Told
from mathgen.reading.wanted.counts import Part
from mathgen.reading.wanted.parts import PartsFromOne, TopOfSets, WholeOfFraction
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Measure


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


_OTHER: dict[Measure, Measure] = {"down": "standing", "standing": "down"}


def from_one(told: Told, claim: FromOne) -> None:
    """Keep how far a fraction is from 1.

    Raises:
        NotRead: it is told twice.
    """
    if told.from_one is not None:
        raise NotRead("two fractions are told of")
    told.from_one = claim
    told.open["from one"] = "how far the fraction is from 1"


def fraction_on_line(question: Part, told: Told, _: Scenario) -> Asked:
    """The fraction that so many parts of the line lie behind; the parts have to be those of the set.

    Raises:
        NotRead: no line is told of, or the question is about another fraction.
    """
    claim, whole = told.from_one, Quantity("set_up", told.scope(question.np))
    if claim is None or told.number_line is None or question.measure != claim.measure:
        raise NotRead("it is not said which fraction is meant")
    for number in (told.number_line.parts, question.whole):
        if number is not None:
            told.referred(whole, number)
    rest = Quantity(_OTHER[claim.measure], whole.scope)
    told.said(rest, claim.parts)
    goal = Value(Op("/", (Op("-", (whole, rest)), whole)))
    return Asked("fraction of a line", goal, question.demand, (rest, whole), ("number line", "from one"))


def top_and_bottom(told: Told, claim: TopAndBottom) -> None:
    """Keep both numbers of a fraction.

    Raises:
        NotRead: two fractions are told of.
    """
    if told.top_and_bottom is not None:
        raise NotRead("two fractions are told of")
    told.top_and_bottom = claim
    told.open["top and bottom"] = "the fraction"


def set_is_whole(told: Told, _: SetIsWhole) -> None:
    """Keep of what a fraction is told."""
    told.set_is_whole = True
    told.open["set is whole"] = "what the whole is"


def whole_of_fraction(_question: WholeOfFraction, told: Told, _: Scenario) -> Asked:
    """How many sets a total makes, which a fraction says: the total over the size of one set.

    Raises:
        NotRead: the fraction is not of the total and of one set.
    """
    claim = told.top_and_bottom
    sets = [fact for fact in told.facts if isinstance(fact.expr, Op)]
    totals = [fact for fact in told.facts if isinstance(fact.expr, Quantity) and fact.expr.measure == "set_up"]
    if claim is None or not told.set_is_whole or len(sets) != 1 or len(totals) != 1:
        raise NotRead("it is not said which fraction is meant, or of what")
    [each], [total] = sets, totals
    assert isinstance(each.expr, Op)
    whole = each.expr.args[0]
    assert isinstance(whole, Quantity)
    if whole != total.expr or (claim.top.text, claim.bottom.text) != (total.text, each.text):
        raise NotRead("the fraction is not of these sets")
    return Asked("fraction as sets", Value(Op("/", (total.expr, each.expr))), WHOLE, (whole,), ("top and bottom", "set is whole"))


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


ASKED: Answers = {
    WholeOfFraction: whole_of_fraction,
    PartsFromOne: parts_from_one,
    TopOfSets: top_of_sets,
}


TAKEN: Takers = {
    NumberLine: number_line,
    FromOne: from_one,
    TopAndBottom: top_and_bottom,
    SetIsWhole: set_is_whole,
    AsFraction: as_fraction,
}
