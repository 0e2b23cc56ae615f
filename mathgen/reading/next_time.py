"""A next time: the set that will stand up, the rate that stays, the goal, and what is asked of them."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stated, Value
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.meaning.counts import NextGoal, NextSet, SameRate
from mathgen.reading.meaning.scope import Mark, Np
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.counts import NextCount, NextSetUp
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Scope


def next_set(told: Told, claim: NextSet) -> None:
    if told.next_set is not None:
        raise NotRead("two next sets are told of")
    told.next_set = claim
    told.facts.append(Fact(Stated(int(claim.number.value), "set up next time"), claim.number.text))
    told.open["next set"] = claim.number.text
    for part in ("groups", "colors"):
        labels = getattr(claim.np, part)
        if isinstance(labels, tuple):
            told.mentions.note(part, labels)
        elif part == "groups" and isinstance(labels, Mark):
            told.mentions.resolve("groups", labels)


def same_rate(told: Told, claim: SameRate) -> None:
    told.same_rate.append(claim)
    told.open["same rate"] = "that something stays the same"


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
        agrees(told, np, scope)
    if any(rate.measure not in (None, question.measure) for rate in told.same_rate):
        raise NotRead("it is another fraction that stays the same")
    part, whole = Quantity(question.measure, scope), Quantity("set_up", scope)
    stated = Stated(int(size.value), "set up next time")
    goal = Op("/", (Op("*", (stated, part)), whole))
    return Asked("next", Value(goal), WHOLE, (part, whole), ("next set", "same rate"))


def next_set_up(question: NextSetUp, told: Told, _: Scenario) -> Asked:
    goal = told.next_goal
    if goal is None:
        raise NotRead("nothing says what the goal is")
    if not (told.same_rate or question.same):
        raise NotRead("nothing says that the fraction stays the same")
    scope = told.scope(question.np)
    for np in (goal.np, *(rate.np for rate in told.same_rate)):
        agrees(told, np, scope)
    if any(rate.measure not in (None, goal.measure) for rate in told.same_rate):
        raise NotRead("it is another fraction that stays the same")
    part, whole = Quantity(goal.measure, scope), Quantity("set_up", scope)
    stated = Stated(int(goal.number.value), "goal next time")
    return Asked("next set up", Value(Op("/", (Op("*", (stated, whole)), part))), WHOLE, (part, whole), ("next goal", "same rate"))


def agrees(told: Told, np: Np, scope: Scope) -> None:
    """A next set must be of the same group and colors as the results that tell its rate."""
    for part in ("groups", "colors"):
        labels = getattr(np, part)
        if labels is None:
            continue
        if isinstance(labels, Mark):
            labels = told.mentions.every(part)
        if set(labels) != set(getattr(scope, part) or told.mentions.every(part)):
            raise NotRead(f"the next set is of other {part}")


ASKED: Answers = {
    NextCount: next_count,
    NextSetUp: next_set_up,
}


TAKEN: Takers = {
    NextSet: next_set,
    SameRate: same_rate,
    NextGoal: next_goal,
}
