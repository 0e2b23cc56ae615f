"""What is told of a next time: a set that will stand up, a rate that stays, a goal, one more trial."""

from __future__ import annotations

from mathgen.asks.expression import Stated
from mathgen.reading.meaning.counts import GoalMean, NextSet, OneMoreTrial, SameRate
from mathgen.reading.meaning.scope import Mark
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told


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


def goal_mean(told: Told, claim: GoalMean) -> None:
    if told.goal_mean is not None:
        raise NotRead("two goals are told of")
    told.goal_mean = claim
    told.open["goal"] = claim.number.text
    told.facts.append(Fact(Stated(int(claim.number.value), "goal mean"), claim.number.text))
    for part in ("groups", "colors"):
        labels = getattr(claim.np, part)
        if labels is not None:
            told.mentions.resolve(part, labels)


def one_more(told: Told, claim: OneMoreTrial) -> None:
    told.one_more = claim
    told.open["one more trial"] = "one more trial"


TAKEN: Takers = {
    NextSet: next_set,
    SameRate: same_rate,
    GoalMean: goal_mean,
    OneMoreTrial: one_more,
}
