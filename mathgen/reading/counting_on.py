"""Counting on by ones from a count that is told."""

from __future__ import annotations

from mathgen.asks.expression import Op, Stated, Value
from mathgen.reading.asked import WHOLE, Asked
from mathgen.reading.meaning import CountOn
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Told
from mathgen.reading.wanted import NextNumber
from mathgen.scenario.words import Scenario

_ONE = Stated(1, "whole")


def count_on(told: Told, claim: CountOn) -> None:
    """Keep from where to where is counted.

    Raises:
        NotRead: it is not from the count that is told, or not to the next number.
    """
    if told.count_on is not None or told.last_count is None:
        raise NotRead("it is not said from where to count on")
    told.referred(told.last_count, claim.first)
    if claim.following.value != claim.first.value + 1:
        raise NotRead(f"{claim.following.text} does not come after {claim.first.text}")
    told.count_on = claim
    told.facts.append(Fact(Stated(int(claim.following.value), "counted next"), claim.following.text))
    told.open["count on"] = "the counting"


def next_number(question: NextNumber, told: Told, _: Scenario) -> Asked:
    claim, count = told.count_on, told.last_count
    if claim is None or count is None or question.after not in (None, claim.following):
        raise NotRead("it is not said after which number")
    return Asked("counted on", Value(Op("+", (count, _ONE, _ONE))), WHOLE, (count,), ("count on",))
