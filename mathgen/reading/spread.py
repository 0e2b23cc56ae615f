"""Spread: what is told of box plots and of results written down, and what is asked of them."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.meaning.scope import Mark
from mathgen.reading.meaning.statistics import BoxPlot, MeanWas, Recorded
from mathgen.reading.means import mean
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.counts import MeanOf
from mathgen.reading.wanted.statistics import BehindMean, BoxPart, HowManyRecorded
from mathgen.scenario.words import Scenario


def box_plot(told: Told, claim: BoxPlot) -> None:
    """Keep of which numbers a box plot is drawn.

    Raises:
        NotRead: there are two box plots.
    """
    if told.box_plot is not None:
        raise NotRead("two box plots are told of")
    told.box_plot = claim
    told.open["box plot"] = "the box plot"


def box_part(question: BoxPart, told: Told, scenario: Scenario) -> Asked:
    claim = told.box_plot
    if claim is None:
        raise NotRead("no box plot is told of")
    of = mean(MeanOf(claim.measure, claim.np, claim.by, Demand("any"), question.statistic), told, scenario)
    return of._replace(uses=(*of.uses, "box plot"))


def recorded(told: Told, claim: Recorded) -> None:
    """Keep how many groups, trials and kinds there are, and for which of them a result was written down.

    Raises:
        NotRead: told twice, or the table has another number of them, or a result is missing in the table.
    """
    table = told.counts.table
    numbers: tuple[tuple[str, Number | None, int], ...] = (
        ("groups", claim.groups, len(table.groups)),
        ("trials", claim.trials, len(table.trials)),
        ("kinds", claim.kinds, len(table.colors)),
    )
    if len(table.rows) != len(table.groups) * len(table.trials) * len(table.colors):
        raise NotRead("a result is missing in the table")
    for sort, number, size in numbers:
        if number is None:
            continue
        if sort in told.recorded:
            raise NotRead(f"how many {sort} is told twice")
        if number.value != size:
            raise NotRead(f"the table has {size} {sort}, not {number.text}")
        told.recorded[sort] = Stated(size, sort)
        told.facts.append(Fact(told.recorded[sort], number.text))
        told.open[f"recorded {sort}"] = number.text
    if claim.one_for:
        told.one_for.append(claim.one_for)


def how_many_recorded(question: HowManyRecorded, told: Told, _: Scenario) -> Asked:
    sorts = ("groups", "trials", "kinds") if question.one_for == "kinds" else ("groups", "trials")
    if question.one_for not in told.one_for or set(told.recorded) != set(sorts):
        raise NotRead("it is not said for what a result was written down")
    goal = Op("*", tuple(told.recorded[sort] for sort in sorts))
    return Asked("recorded", Value(goal), WHOLE, (), tuple(f"recorded {sort}" for sort in sorts))


def mean_was(told: Told, claim: MeanWas) -> None:
    """Keep the mean of a count per trial, over all trials.

    Raises:
        NotRead: two means are told of, or the table says otherwise.
    """
    if told.mean_was is not None:
        raise NotRead("two means are told of")
    total = Quantity(claim.measure, told.scope(claim.np._replace(trials=Mark("all"))))
    told.mean_was = Op("/", (total, Stated(len(told.mentions.every("trials")), "trials")))
    told.said(told.mean_was, claim.number)
    told.open["mean"] = claim.number.text


def behind_mean(question: BehindMean, told: Told, __: Scenario) -> Asked:
    """How many trials a mean is of: the total over the mean.

    Raises:
        NotRead: no mean is told of, or another total than its own.
    """
    totals = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity)]
    if told.mean_was is None or totals != [told.mean_was.args[0]]:
        raise NotRead("the total of the mean has to be told")
    if question.np.groups is not None and told.scope(question.np).groups != totals[0].scope.groups:
        raise NotRead("the trials of others are asked for")
    return Asked("behind a mean", Value(Op("/", (totals[0], told.mean_was))), WHOLE, (totals[0],), ("mean",))


ASKED: Answers = {
    BehindMean: behind_mean,
    BoxPart: box_part,
    HowManyRecorded: how_many_recorded,
}


TAKEN: Takers = {
    BoxPlot: box_plot,
    Recorded: recorded,
    MeanWas: mean_was,
}
