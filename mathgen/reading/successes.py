"""Successes: what is told of trials with a target color, and what a question about them comes to."""

from __future__ import annotations

from mathgen.asks.expression import Expr, Op, Quantity, Value
from mathgen.reading.asked import ANY, WHOLE, Asked
from mathgen.reading.meaning import Np, SuccessesWere, SuccessRule, TriesWere
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Told
from mathgen.reading.wanted import NextSuccess, SuccessCount, SuccessShare
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


def _counted(told: Told, np: Np) -> tuple[Quantity, Quantity]:
    """The successes and the trials of whom the question is about.

    Raises:
        NotRead: it is not said what a success is.
    """
    if not told.success_rule:
        raise NotRead("it is not said what a success is")
    scope = _scope(told, np)
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
