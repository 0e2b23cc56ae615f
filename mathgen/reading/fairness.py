"""Claims about two groups that did not have as many pins or trials: by what they are judged, and whether they are fair by it."""

from __future__ import annotations

from mathgen.asks.expression import Expr, Op, Quantity, Stat, Stated, Truth
from mathgen.exact.demand import Demand
from mathgen.reading.asked import TRUTH, Answers, Asked
from mathgen.reading.meaning.judged import Stronger
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Told
from mathgen.reading.wanted.judged import IsFair
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Label


def is_fair(question: IsFair, told: Told, _: Scenario) -> Asked:
    """Whether the result of the group that the claim names beats the other's.

    Raises:
        NotRead: not two groups were told of, or not what they are to be judged by.
    """
    said = None if told.claimed is None else told.claimed.statement
    if not isinstance(said, Stronger):
        raise NotRead("it is not said which claim is meant")
    rates = _means(told) if question.by == "mean" else _rates(question, told)
    named = told.mentions.resolve("groups", said.who)
    groups: list[tuple[Label, ...]] = [_counts(rate)[0].scope.groups or () for rate in rates]
    if len(rates) != 2 or groups[0] == groups[1] or groups.count(named) != 1:
        raise NotRead("it is not said which two results are compared")
    mine = groups.index(named)
    if said.than is not None and told.mentions.resolve("groups", said.than) != groups[1 - mine]:
        raise NotRead("another group is named than was told of")
    colors = question.colors  # "the pins knocked down" are those that were told of
    if isinstance(colors, tuple) and any(_counts(rate)[0].scope.colors != colors for rate in rates):
        raise NotRead("other colors are asked about than were told of")
    subjects = tuple(count for rate in rates for count in _counts(rate))
    return Asked("claim", Truth(rates[mine], ">", rates[1 - mine]), Demand("rubric") if told.explain else TRUTH, subjects, ("claim",))


def _means(told: Told) -> list[Expr]:
    return [Stat("mean", series) for series in told.lists]


def _rates(question: IsFair, told: Told) -> list[Expr]:
    """Of each count told of, the part of the pins set up, or the share of a trial.

    Raises:
        NotRead: of a part it is not said how many were set up.
    """
    counts = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity)]
    sets = [one for one in counts if one.measure == "set_up"]
    rates: list[Expr] = []
    for one in counts:
        if one.measure == "set_up":
            continue
        if one.measure != question.measure:
            raise NotRead("something else is told of than is compared")
        whole = one._replace(measure="set_up")
        if (question.by == "fraction") != (whole in sets):
            raise NotRead("it is not said how many were set up")
        trials = len(one.scope.trials or told.mentions.every("trials"))
        rates.append(Op("/", (one, whole if question.by == "fraction" else Stated(trials, "how many"))))
    return rates


def _counts(rate: Expr) -> tuple[Quantity, ...]:
    if isinstance(rate, Stat):
        return tuple(one for one in rate.series if isinstance(one, Quantity))
    return tuple(one for one in rate.args if isinstance(one, Quantity)) if isinstance(rate, Op) else ()


ASKED: Answers = {
    IsFair: is_fair,
}
