"""Feet and inches: what is told of them, and what is asked."""

from __future__ import annotations

from mathgen.asks.expression import Measured, Op, Stated, Truth, Value
from mathgen.reading.asked import ANY, TRUTH, WHOLE, Answers, Asked
from mathgen.reading.lengths import end_to_end as in_inches
from mathgen.reading.meaning.lengths import FootIs, InFeet
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.lengths import EndToEnd, EndToEndFeet, LongerThan, NextWider, SpacesIn
from mathgen.scenario.words import Scenario


def foot_is(told: Told, claim: FootIs) -> None:
    """Keep how many inches make a foot.

    Raises:
        NotRead: another number than 12, or told twice.
    """
    if claim.number.value != 12 or told.foot is not None:
        raise NotRead("one foot is 12 inches, and that is told once")
    told.foot = claim.number
    told.facts.append(Fact(Stated(12, "inches in a foot"), claim.number.text))
    told.open["foot"] = claim.number.text


def in_feet(told: Told, claim: InFeet) -> None:
    """Keep a length that is told in feet.

    Raises:
        NotRead: there are two, or it is of another group than the space before.
    """
    if told.feet is not None or not told.lengths:
        raise NotRead("it is not clear what the feet are compared with")
    told.feet = claim
    told.facts.append(_feet(claim.number, claim.next_time))
    told.open["feet"] = claim.number.text
    if claim.np.groups is not None and set(told.mentions.resolve("groups", claim.np.groups)) != {told.lengths[-1].group}:
        raise NotRead("the next space is of another group")


def _feet(number: Number, next_time: bool) -> Fact:
    if number.value.q != 1:
        raise NotRead("only whole feet are read")
    return Fact(Stated(int(number.value), "feet next time" if next_time else "feet in all"), number.text)


def _foot(told: Told) -> Stated:
    if told.foot is None:
        raise NotRead("nothing says how many inches a foot has")
    return Stated(12, "inches in a foot")


def _space(told: Told) -> Measured:
    if len(told.lengths) != 1:
        raise NotRead("one space has to be told in inches")
    return told.lengths[0]


def next_wider(_: NextWider, told: Told, __: Scenario) -> Asked:
    if told.feet is None or not told.feet.next_time:
        raise NotRead("nothing says how wide the next space will be")
    feet = Stated(int(told.feet.number.value), "feet next time")
    space = _space(told)
    if told.counts.length(space) >= 12 * told.feet.number.value:
        raise NotRead("the next space is not wider")
    return Asked("length", Value(Op("-", (Op("*", (feet, _foot(told))), space))), ANY, (), ("feet", "foot"))


def end_to_end(question: EndToEndFeet, told: Told, scenario: Scenario) -> Asked:
    inches = in_inches(EndToEnd(question.number), told, scenario)
    assert isinstance(inches.goal, Value)  # a number is asked for
    return inches._replace(goal=Value(Op("/", (inches.goal.expr, _foot(told)))), uses=(*inches.uses, "foot"))


def spaces_in(question: SpacesIn, told: Told, _: Scenario) -> Asked:
    if question.number is not None:
        if told.feet is not None:
            raise NotRead("feet are told twice")
        told.facts.append(_feet(question.number, False))
        number = question.number
    elif told.feet is None or told.feet.next_time:
        raise NotRead("nothing says how long the row is")
    else:
        number = told.feet.number
    feet = Stated(int(number.value), "feet in all")
    return Asked("length", Value(Op("/", (Op("*", (feet, _foot(told))), _space(told)))), WHOLE, (), ("feet", "foot"))


def longer_than(question: LongerThan, told: Told, scenario: Scenario) -> Asked:
    """Whether some equal spaces, end to end, are longer than a length in feet.

    Raises:
        NotRead: it is not said how many spaces there are.
    """
    number = question.spaces or told.spaces
    if number is None:
        raise NotRead("it is not said how many spaces there are")
    inches = in_inches(EndToEnd(number), told, scenario)
    assert isinstance(inches.goal, Value)  # a number is asked for
    fact = _feet(question.feet, False)
    told.facts.append(fact)
    goal = Truth(inches.goal.expr, ">", Op("*", (fact.expr, _foot(told))))
    return inches._replace(goal=goal, demand=TRUTH, uses=(*inches.uses, "foot"))


ASKED: Answers = {
    LongerThan: longer_than,
    NextWider: next_wider,
    EndToEndFeet: end_to_end,
    SpacesIn: spaces_in,
}


TAKEN: Takers = {
    FootIs: foot_is,
    InFeet: in_feet,
}
