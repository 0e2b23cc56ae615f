"""Unit rates of two lengths: what is told of a drawing, and what is asked."""

from __future__ import annotations

from mathgen.asks.expression import Measured, Op, Stated, Value
from mathgen.reading.asked import ANY, Answers, Asked
from mathgen.reading.meaning.lengths import OnDrawing
from mathgen.reading.meaning.scope import Labels
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.lengths import ForDrawnInch, ForEachInch
from mathgen.scenario.words import Scenario


def on_drawing(told: Told, claim: OnDrawing) -> None:
    """Keep how long the space told last is on a drawing.

    Raises:
        NotRead: no space was told, or that is said twice.
    """
    if told.drawn_space is not None or len(told.lengths) != 1:
        raise NotRead("it is not said which space is drawn")
    value = claim.number.value
    told.drawn_space = Stated(int(value.numerator), "inches on the drawing", int(value.denominator))
    told.facts.append(Fact(told.drawn_space, claim.number.text))
    told.open["drawing"] = claim.number.text


def for_drawn_inch(_: ForDrawnInch, told: Told, __: Scenario) -> Asked:
    if told.drawn_space is None or len(told.lengths) != 1:
        raise NotRead("it is not said how long the space is on a drawing")
    return Asked("length", Value(Op("/", (told.lengths[0], told.drawn_space))), ANY, (), ("drawing",))


def for_each_inch(question: ForEachInch, told: Told, _: Scenario) -> Asked:
    if len(told.lengths) != 2:
        raise NotRead("two spaces are needed for a unit rate")
    return Asked("length", Value(Op("/", (_space(told, question.asked), _space(told, question.base)))), ANY, ())


def _space(told: Told, who: Labels) -> Measured:
    groups = told.mentions.resolve("groups", who)
    found = [length for length in told.lengths if (length.group,) == groups]
    if len(found) != 1:
        raise NotRead("it is not said which space is meant")
    return found[0]


ASKED: Answers = {
    ForDrawnInch: for_drawn_inch,
    ForEachInch: for_each_inch,
}


TAKEN: Takers = {
    OnDrawing: on_drawing,
}
