"""From questions about a next time, equal shares and means to what has to be worked out."""

from __future__ import annotations

from typing import Literal

from mathgen.asks.expression import Op, Quantity, Stat, Stated, Value
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.comparing import covered
from mathgen.reading.meaning.counts import NextGoal
from mathgen.reading.meaning.scope import Mark, Np
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.counts import MeanOf, Needed, NextCount, NextSetUp, OneShare
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Scope

BY: tuple[Literal["groups", "trials"], ...] = ("groups", "trials")


def next_count(question: NextCount, told: Told, _: Scenario) -> Asked:
    if told.next_set is None:
        raise NotRead("it is not said how many are set up next time")
    if not (told.same_rate or question.same):
        raise NotRead("nothing says that the fraction stays the same")
    size = told.next_set.number
    if question.whole is not None and question.whole.value != size.value:
        raise NotRead(f"no set of {question.whole.text} is told of")
    scope = told.scope(question.np)
    for np in (told.next_set.np, *(rate.np for rate in told.same_rate)):
        _agrees(told, np, scope)
    if any(rate.measure not in (None, question.measure) for rate in told.same_rate):
        raise NotRead("it is another fraction that stays the same")
    part, whole = Quantity(question.measure, scope), Quantity("set_up", scope)
    stated = Stated(int(size.value), "set up next time")
    goal = Op("/", (Op("*", (stated, part)), whole))
    return Asked("next", Value(goal), WHOLE, (part, whole), ("next set", "same rate"))


def next_goal(told: Told, claim: NextGoal) -> None:
    """Keep the goal for the next time.

    Raises:
        NotRead: there are two.
    """
    if told.next_goal is not None:
        raise NotRead("two goals are told of")
    told.next_goal = claim
    told.facts.append(Fact(Stated(int(claim.number.value), "goal next time"), claim.number.text))
    told.open["next goal"] = claim.number.text
    groups, colors = claim.np.groups, claim.np.colors
    if isinstance(colors, tuple):
        told.mentions.note("colors", colors)
    if groups is not None:
        told.mentions.resolve("groups", groups)


def next_set_up(question: NextSetUp, told: Told, _: Scenario) -> Asked:
    goal = told.next_goal
    if goal is None:
        raise NotRead("nothing says what the goal is")
    if not (told.same_rate or question.same):
        raise NotRead("nothing says that the fraction stays the same")
    scope = told.scope(question.np)
    for np in (goal.np, *(rate.np for rate in told.same_rate)):
        _agrees(told, np, scope)
    if any(rate.measure not in (None, goal.measure) for rate in told.same_rate):
        raise NotRead("it is another fraction that stays the same")
    part, whole = Quantity(goal.measure, scope), Quantity("set_up", scope)
    stated = Stated(int(goal.number.value), "goal next time")
    return Asked("next set up", Value(Op("/", (Op("*", (stated, whole)), part))), WHOLE, (part, whole), ("next goal", "same rate"))


def _agrees(told: Told, np: Np, scope: Scope) -> None:
    """A next set must be of the same group and colors as the results that tell its rate."""
    for part in ("groups", "colors"):
        labels = getattr(np, part)
        if labels is None:
            continue
        if isinstance(labels, Mark):
            labels = told.mentions.every(part)
        if set(labels) != set(getattr(scope, part) or told.mentions.every(part)):
            raise NotRead(f"the next set is of other {part}")


def needed(question: Needed, told: Told, _: Scenario) -> Asked:
    goal = told.goal_mean
    if goal is None or told.one_more is None:
        raise NotRead("nothing says what the goal is")
    scope = told.scope(question.np)
    _agrees(told, goal.np, scope)
    trials = scope.trials or told.mentions.every("trials")
    size = len(trials) + 1
    for number in (goal.trials, told.one_more.trials):
        if number is not None:
            if number.value != size:
                raise NotRead(f"with one more trial there are {size}, not {number.text}")
            told.said(Stated(size, "trials"), number)
    if goal.trials is None and told.one_more.trials is None:
        raise NotRead("it is not said for how many trials the goal is")
    total = Op("*", (Stated(size, "trials"), Stated(int(goal.number.value), "goal mean")))
    parts = tuple(
        Quantity(question.measure, scope._replace(trials=None if len(told.mentions.every("trials")) == 1 else (t,))) for t in trials
    )
    return Asked("needed", Value(Op("-", (total, *parts))), WHOLE, (Quantity(question.measure, scope),), ("goal", "one more trial"))


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
        several: list[Literal["groups", "trials"]] = [part for part in BY if len(told.mentions.named(part)) > 1]
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
    NextCount: next_count,
    NextSetUp: next_set_up,
    Needed: needed,
    OneShare: one_share,
    MeanOf: mean,
}


TAKEN: Takers = {
    NextGoal: next_goal,
}
