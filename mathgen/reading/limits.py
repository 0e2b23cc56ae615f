"""Limits: what is told of a loss of points, and how many pins it allows."""

from __future__ import annotations

from mathgen.asks.expression import Expr, Op, Stated, Value
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.meaning.letters import LossLimit
from mathgen.reading.meaning.scope import Mark, Np
from mathgen.reading.scoring import LOSES
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.letters import MostAllowed
from mathgen.scenario.words import Scenario

LIMIT = "limit in points"


def loss_limit(told: Told, claim: LossLimit) -> None:
    """Keep the limit of a loss.

    Raises:
        NotRead: there are two.
    """
    if told.loss_limit is not None:
        raise NotRead("two limits are told of")
    told.loss_limit = claim
    told.facts.append(Fact(Stated(int(claim.number.value), LIMIT), claim.number.text))
    told.open["limit"] = claim.number.text
    if claim.np.groups is not None:
        told.mentions.resolve("groups", claim.np.groups)
    told.mentions.resolve("trials", claim.np.trials)


def most_allowed(question: MostAllowed, told: Told, _: Scenario) -> Asked:
    state, claim = told.scoring, told.loss_limit
    if claim is None or len(state.each) != 1 or state.scores or state.rule or state.bonus is not None:
        raise NotRead("it is not said what loses points, or where the limit is")
    [each] = state.each
    have = told.quantity(question.measure, question.np)
    if claim.np.trials != (have.scope.trials or told.mentions.every("trials")):
        raise NotRead("the limit is for other trials than those told of")
    place = Np(have.scope.groups or Mark("all"), have.scope.trials or Mark("all"))
    if each.sign > 0 or told.quantity(each.measure, place._replace(colors=each.np.colors)) != have:
        raise NotRead("the points are lost for something else")
    loss, limit = Stated(int(each.number.value), LOSES), Stated(int(claim.number.value), LIMIT)
    allowed: Expr = Op("/", (Op("-", (limit, Op("*", (loss, have)))), loss))
    if claim.strict:
        allowed = Op("-", (allowed, Stated(1, "whole")))
    return Asked("goal", Value(allowed), WHOLE, (have,), ("limit", "points each 1"))


ASKED: Answers = {
    MostAllowed: most_allowed,
}


TAKEN: Takers = {
    LossLimit: loss_limit,
}
