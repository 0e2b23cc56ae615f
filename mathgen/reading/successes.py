"""Successes: what is told of trials with a target color, and what a question about them comes to."""

from __future__ import annotations

from mathgen.asks.expression import Choice, Expr, Op, Quantity, Ratio, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.reading.asked import ANY, NAME, WHOLE, Answers, Asked
from mathgen.reading.meaning.hits import (
    NewSuccesses,
    NextTries,
    OtherTrials,
    SuccessesWere,
    SuccessGoal,
    SuccessRate,
    SuccessRule,
    TriesWere,
)
from mathgen.reading.meaning.scope import Np
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.hits import ExpectSuccesses, NewTrials, NextSuccess, SuccessCount, SuccessRatio, SuccessShare, SuccessWhich
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Scope


def success_rule(told: Told, _: SuccessRule) -> None:
    """Keep that it is said what a success is."""
    if told.success_rule:
        raise NotRead("it is said twice what a success is")
    told.success_rule = True
    told.open["success"] = "what a success is"


def _scope(told: Told, np: Np) -> Scope:
    """The trials of whom the words speak, all of them, whatever the color."""
    groups = told.mentions.resolve("groups", np.groups)
    return told.mentions.scope(groups, told.mentions.every("trials"), told.mentions.every("colors"))


def tries_were(told: Told, claim: TriesWere) -> None:
    told.said(Quantity("trials", _scope(told, claim.np)), claim.number)


def successes_were(told: Told, claim: SuccessesWere) -> None:
    scope = _scope(told, claim.np)
    if claim.tries is not None:
        told.referred(Quantity("trials", scope), claim.tries)
    told.said(Quantity("successes", scope), claim.number)


def success_rate(told: Told, claim: SuccessRate) -> None:
    scope = _scope(told, claim.np)
    tries = Quantity("trials", scope)
    told.referred(tries, claim.tries)
    told.said(Op("/", (Quantity("successes", scope), tries)), claim.rate)


def other_trials(told: Told, _: OtherTrials) -> None:
    """A trial that is not a success is another one: nothing new, after the successes have been told."""
    if not any(isinstance(fact.expr, Op) for fact in told.facts):
        raise NotRead("it is not said other than which trials")


def _whose(told: Told, np: Np) -> None:
    """Keep whose trials are to come, where that is said."""
    if np.groups is not None:
        told.to_come = _scope(told, np)


def next_tries(told: Told, claim: NextTries) -> None:
    """Keep how many trials are to come.

    Raises:
        NotRead: it is told twice.
    """
    if told.next_tries is not None:
        raise NotRead("it is told twice how many trials are to come")
    told.next_tries = claim.number
    _whose(told, claim.np)
    told.open["next tries"] = claim.number.text
    told.facts.append(Fact(Stated(int(claim.number.value), "trials to come"), claim.number.text))


def success_goal(told: Told, claim: SuccessGoal) -> None:
    """Keep the goal.

    Raises:
        NotRead: there are two, or it is no whole percent.
    """
    hundredths = 100 * claim.percent.value
    if told.success_goal is not None or not hundredths.is_integer:
        raise NotRead("two goals are told of, or one that is no whole percent")
    told.success_goal = claim.percent
    _whose(told, claim.np)
    told.open["success goal"] = claim.percent.text
    told.facts.append(Fact(Stated(int(hundredths), "goal percent", 100), claim.percent.text))


def new_successes(told: Told, _: NewSuccesses) -> None:
    told.new_successes = True
    told.open["new successes"] = "that every new trial is a success"


def _counted(told: Told, np: Np) -> tuple[Quantity, Quantity]:
    """The successes and the trials of whom the question is about.

    Raises:
        NotRead: it is not said what a success is.
    """
    if not told.success_rule:
        raise NotRead("it is not said what a success is")
    scope = _scope(told, np)
    if told.to_come not in (None, scope):
        raise NotRead("other groups have trials to come than those asked about")
    return Quantity("successes", scope), Quantity("trials", scope)


def _meant(hits: Quantity, tries: Quantity, negated: bool) -> Expr:
    return Op("-", (tries, hits)) if negated else hits


def success_count(question: SuccessCount, told: Told, _: Scenario) -> Asked:
    hits, tries = _counted(told, question.np)
    if question.tries is not None:
        told.referred(tries, question.tries)
    return Asked("count", Value(_meant(hits, tries, question.negated)), WHOLE, (hits, tries), ("success",))


def success_share(question: SuccessShare, told: Told, _: Scenario) -> Asked:
    hits, tries = _counted(told, Np())
    told.referred(tries, question.tries)
    goal = Value(Op("/", (_meant(hits, tries, question.negated), tries)))
    return Asked("part", goal, question.demand, (hits, tries), ("success",))


def next_success(question: NextSuccess, told: Told, _: Scenario) -> Asked:
    hits, tries = _counted(told, Np())
    return Asked("chance", Value(Op("/", (_meant(hits, tries, question.negated), tries))), ANY, (hits, tries), ("success",))


def success_ratio(question: SuccessRatio, told: Told, _: Scenario) -> Asked:
    hits, tries = _counted(told, Np())
    others = _meant(hits, tries, True)
    goal = Ratio(others, hits) if question.negated else Ratio(hits, others)
    return Asked("ratio", goal, Demand("ratio:any"), (hits, tries), ("success",))


def success_which(_: SuccessWhich, told: Told, __: Scenario) -> Asked:
    """Between the groups that are named, each by its own trials."""
    labels = told.mentions.named("groups")
    if len(labels) < 2:
        raise NotRead("it is not said which groups are compared")
    pairs = [_counted(told, Np((label,))) for label in labels]
    goal = Choice(tuple(map(str, labels)), tuple(Op("/", pair) for pair in pairs))
    return Asked("which", goal, NAME, tuple(one for pair in pairs for one in pair), ("success",))


def expect_successes(question: ExpectSuccesses, told: Told, _: Scenario) -> Asked:
    if told.next_tries is None or told.next_tries.value != question.tries.value:
        raise NotRead("it is not said how many trials are to come")
    hits, tries = _counted(told, question.np)
    goal = Op("/", (Op("*", (Stated(int(question.tries.value), "trials to come"), hits)), tries))
    return Asked("next", Value(goal), WHOLE, (hits, tries), ("success", "next tries"))


def new_trials(_: NewTrials, told: Told, __: Scenario) -> Asked:
    """The successes that the goal asks of the trials so far, less those there are; each new trial lacks only the rest of the goal."""
    if told.success_goal is None or not told.new_successes:
        raise NotRead("it is not said what the goal is, or that every new trial is a success")
    hits, tries = _counted(told, Np())
    percent = Stated(int(100 * told.success_goal.value), "goal percent", 100)
    goal = Op("/", (Op("-", (Op("*", (percent, tries)), hits)), Op("-", (Stated(1, "whole"), percent))))
    return Asked("needed", Value(goal), WHOLE, (hits, tries), ("success", "success goal", "new successes"))


ASKED: Answers = {
    SuccessCount: success_count,
    SuccessShare: success_share,
    NextSuccess: next_success,
    SuccessRatio: success_ratio,
    SuccessWhich: success_which,
    ExpectSuccesses: expect_successes,
    NewTrials: new_trials,
}


TAKEN: Takers = {
    SuccessRule: success_rule,
    TriesWere: tries_were,
    SuccessesWere: successes_were,
    SuccessRate: success_rate,
    OtherTrials: other_trials,
    NextTries: next_tries,
    SuccessGoal: success_goal,
    NewSuccesses: new_successes,
}
