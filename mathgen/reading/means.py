"""Means and other statistics of numbers one by one, and equal shares of points."""

from __future__ import annotations

from typing import Literal

from mathgen.asks.expression import Op, Quantity, Stat, Stated, Value
from mathgen.reading.asked import Answers, Asked
from mathgen.reading.counting import covered
from mathgen.reading.meaning.scope import Mark
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Told
from mathgen.reading.wanted.counts import MeanOf, OneShare
from mathgen.scenario.words import Scenario

_BY: tuple[Literal["groups", "trials"], ...] = ("groups", "trials")


def one_share(question: OneShare, told: Told, _: Scenario) -> Asked:
    claim, share = told.points_claim, told.share_out
    if claim is None or share is None or (question.among and question.among != share.among):
        raise NotRead("it is not said what is shared")
    scope = told.scope(claim.np, True)
    if any(np.groups is not None and told.scope(claim.np._replace(groups=np.groups), True) != scope for np in (share.np, question.np)):
        raise NotRead("the points are somebody else's")
    quantity = Quantity(claim.measure, scope)
    covered(told, quantity)
    for number in told.points_said:
        told.referred(quantity, number)
    every = told.mentions.every(share.among)
    size = len(getattr(scope, share.among) or every)
    if share.number is not None:
        if share.number.value != size:
            raise NotRead(f"there are {size} {share.among}, not {share.number.text}")
        if not any(fact.text == share.number.text and fact.expr == Stated(size, "trials") for fact in told.facts):
            told.said(Stated(size, share.among), share.number)
    goal = Op("/", (quantity, Stated(size, share.among)))
    return Asked("share", Value(goal), question.demand, (quantity,), ("points", "share"))


def mean(question: MeanOf, told: Told, _: Scenario) -> Asked:
    by = question.by
    if not by and not told.series and question.measure is not None:
        # "Find the Owls, the Wrens, and the Kites in the results table. What is the median number of pins?"
        several: list[Literal["groups", "trials"]] = [part for part in _BY if len(told.mentions.named(part)) > 1]
        if len(several) != 1:
            raise NotRead("it is not said whether for each group or for each trial")
        by = several[0]
    if not by:
        if not told.series or told.series[0].measure != (question.measure or told.series[0].measure):
            raise NotRead('it is not said which numbers "these" are')
        first = told.series[0]
        if len(told.lists) > 1:
            raise NotRead('it is not said which numbers "these" are')
        if isinstance(question.np.colors, tuple) and question.np.colors != (first.scope.colors or told.mentions.every("colors")):
            raise NotRead("the numbers are of other colors")
        series = told.series
    else:
        measure = question.measure
        assert measure is not None  # the grammar leaves it out for "these numbers" only
        labels = told.mentions.named(by) or (() if question.np.groups == Mark("these") else told.mentions.every(by))
        if by == "trials" and not told.mentions.named(by):
            told.mentions.resolve(by, None)
        series = tuple(told.quantity(measure, question.np._replace(**{by: (label,)})) for label in labels)
    if len(series) < 2:
        raise NotRead("a mean needs more than one number")
    return Asked("mean", Value(Stat(question.statistic, series)), question.demand, series)


ASKED: Answers = {
    OneShare: one_share,
    MeanOf: mean,
}
