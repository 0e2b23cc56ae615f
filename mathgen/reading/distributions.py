"""Distributions: two lists that are compared, the mean and the median of one, and questions whose answers differ."""

from __future__ import annotations

from typing import Literal

from mathgen.asks.expression import NOTHING, Choice, Op, Quantity, Stat, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.reading.asked import ANY, NAME, TRUTH, WHOLE, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.scope import Mark
from mathgen.reading.meaning.statistics import TwoPlots, Wondered
from mathgen.reading.means import mean
from mathgen.reading.mentions import Dimension
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Takers, Told
from mathgen.reading.wanted.counts import MeanOf
from mathgen.reading.wanted.statistics import IsStatistical, MeanOrMedian, MeansApart, Overlap, WhichList
from mathgen.scenario.naming import trial_name
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Label


def _both_lists(question: WhichList | MeansApart, told: Told) -> tuple[list[Label], list[tuple[Quantity, ...]]]:
    """The two lists that are compared, and of which group or trial each is."""
    by, over = question.by, "trials" if question.by == "groups" else "groups"
    lists = told.lists or _looked_up(question, told)
    labels: list[Label] = []
    for series in lists:
        own = {getattr(one.scope, by) or told.mentions.every(by) for one in series}
        if len(own) != 1 or len(one_label := own.pop()) != 1:
            raise NotRead(f"each list is not of one of the {by}")
        labels.extend(one_label)
    alike = {(tuple(getattr(one.scope, over) for one in series), series[0].measure, series[0].scope.colors) for series in lists}
    if len(lists) != 2 or len(set(labels)) != 2 or len(alike) != 1:
        raise NotRead("there are not two lists to compare")
    return labels, lists


def means_apart(question: MeansApart, told: Told, _: Scenario) -> Asked:
    labels, lists = _both_lists(question, told)
    own = told.mentions.resolve(question.by, getattr(question.np, question.by))
    if len(own) != 1 or own[0] not in labels:
        raise NotRead("it is not said whose mean absolute deviation is meant")
    means = sorted((Stat("mean", series) for series in lists), key=lambda stat: evaluate(stat, told.counts))
    gap = Op("-", (means[1], means[0]))
    goal = Op("/", (gap, Stat("mean absolute deviation", lists[labels.index(own[0])])))
    return Asked("which list", Value(goal), ANY, tuple(one for series in lists for one in series))


def which_list(question: WhichList, told: Told, scenario: Scenario) -> Asked:
    by = question.by
    labels, lists = _both_lists(question, told)
    names = tuple(trial_name(label, scenario) if by == "trials" else str(label) for label in labels)
    goal = Choice(names, tuple(Stat(question.statistic, series) for series in lists), question.greater)
    return Asked("which list", goal, NAME, tuple(one for series in lists for one in series), sign=1 if question.greater else -1)


def _looked_up(question: WhichList | MeansApart, told: Told) -> list[tuple[Quantity, ...]]:
    """The lists that the table has of the two groups or trials to look at.

    Raises:
        NotRead: not exactly two are named, or nothing says what to look for.
    """
    looks = [look for look in told.seen if look.measure is not None]
    labels = told.mentions.named(question.by)
    if len(looks) != 1 or len(labels) != 2:
        raise NotRead("it is not said which are compared")
    [look] = looks
    over: Dimension = "trials" if question.by == "groups" else "groups"
    if not isinstance(getattr(look.np, over), Mark | None) or (over == "trials" and look.np.trials is None):
        raise NotRead(f"it is not said that the lists are of all the {over}")
    measure = look.measure or "down"
    return [
        tuple(told.quantity(measure, look.np._replace(**{question.by: (label,), over: (one,)})) for one in told.mentions.every(over))
        for label in labels
    ]


def two_plots(told: Told, _: TwoPlots) -> None:
    """Keep that the lists are shown over one number line."""
    told.open["two plots"] = "the dot plots"


def overlap(question: Overlap, told: Told, __: Scenario) -> Asked:
    """From the least number of the list that ends last to the greatest of the one that ends first."""
    by: Literal["groups", "trials"] = "groups" if len({one.scope.groups for series in told.lists for one in series}) == 2 else "trials"
    _labels, lists = _both_lists(WhichList("range", by, True), told)
    if question.by not in (None, by):
        raise NotRead(f"these are not lists of two {question.by}")
    if not told.lists or "two plots" not in told.open:
        raise NotRead("it is not said which two dot plots are meant")
    spans = []
    for series in lists:
        rising = sorted(series, key=lambda one: evaluate(one, told.counts))
        spans.append((rising[0], rising[-1]))
    spans.sort(key=lambda span: evaluate(span[1], told.counts))
    (low, end), (start, high) = spans
    numbers = [evaluate(one, told.counts) for one in (low, start, end, high)]
    if sorted(set(numbers)) != numbers:
        raise NotRead("one list does not reach from below into the other")
    return Asked("which list", Value(Op("-", (end, start))), WHOLE, tuple(one for series in lists for one in series), ("two plots",))


def mean_or_median(question: MeanOrMedian, told: Told, scenario: Scenario) -> Asked:
    of = mean(MeanOf(question.measure, question.np, question.by, Demand("any")), told, scenario)
    assert isinstance(of.goal, Value)
    assert isinstance(of.goal.expr, Stat)
    series = of.goal.expr.series
    goal = Choice(("mean", "median"), (Stat("mean", series), Stat("median", series)), question.greater)
    return Asked("mean or median", goal, NAME, of.subjects, sign=1 if question.greater else -1)


def wondered(told: Told, claim: Wondered) -> None:
    """Keep the question that is asked about.

    Raises:
        NotRead: there are two.
    """
    if told.wondered is not None:
        raise NotRead("two questions are asked about")
    told.wondered = claim
    told.open["wondered"] = "a question"
    for part in ("groups", "trials", "colors"):
        labels = getattr(claim.np, part)
        if isinstance(labels, tuple):
            told.mentions.note(part, labels)


def is_statistical(_: IsStatistical, told: Told, __: Scenario) -> Asked:
    claim = told.wondered
    if claim is None:
        raise NotRead("it is not said which question is meant")
    groups = told.mentions.every("groups") if claim.each else None
    many = [claim.np] if groups is None else [claim.np._replace(groups=(group,)) for group in groups]
    series = tuple(told.quantity(claim.measure, np) for np in many)
    return Asked("is statistical", Truth(Stat("range", series), ">", NOTHING), TRUTH, series, ("wondered",))


ASKED: Answers = {
    WhichList: which_list,
    MeanOrMedian: mean_or_median,
    IsStatistical: is_statistical,
    Overlap: overlap,
    MeansApart: means_apart,
}


TAKEN: Takers = {
    Wondered: wondered,
    TwoPlots: two_plots,
}
