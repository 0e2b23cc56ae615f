"""Counting on or back by ones from a count that is told."""

from __future__ import annotations

from mathgen.asks.expression import Op, Stated, Value
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.meaning.counts import CountOn
from mathgen.reading.meaning.scope import Mark
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.counts import NextNumber
from mathgen.scenario.words import Scenario

_ONE = Stated(1, "whole")


def count_on(told: Told, claim: CountOn) -> None:
    """Keep from where to where is counted.

    Raises:
        NotRead: it is not from the count that is told, or not to the next number.
    """
    if told.count_on is not None or told.last_count is None:
        raise NotRead("it is not said from where to count on")
    if claim.start is not None:
        told.referred(told.last_count, claim.start)
    if isinstance(claim.colors, tuple) and claim.colors != (told.last_count.scope.colors or told.mentions.every("colors")):
        raise NotRead("other colors are to be counted")
    if claim.colors == Mark("bare") and told.last_count.scope.colors not in (None, told.mentions.every("colors")):
        raise NotRead("it is not said which are to be counted")
    if claim.following is not None:
        if claim.start is None or claim.following.value != claim.start.value + 1:
            raise NotRead(f"{claim.following.text} does not come next")
        told.facts.append(Fact(Stated(int(claim.following.value), "counted next"), claim.following.text))
    told.count_on = claim
    told.open["count on"] = "the counting"


def next_number(question: NextNumber, told: Told, _: Scenario) -> Asked:
    claim, count = told.count_on, told.last_count
    if claim is None or count is None or question.by != claim.by or question.blank != (claim.following is not None):
        raise NotRead("it is not said how to count, or from which number")
    if question.start is not None:
        told.referred(count, question.start)
    goal = Op("+", (count, _ONE, _ONE)) if claim.by == 2 else Op("-", (count, _ONE))
    return Asked("counted on" if claim.by == 2 else "counted back", Value(goal), WHOLE, (count,), ("count on",))


ASKED: Answers = {
    NextNumber: next_number,
}


TAKEN: Takers = {
    CountOn: count_on,
}
