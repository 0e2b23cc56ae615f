"""Dot plots and histograms that pupils make: of which numbers, and how many of them are meant."""

from __future__ import annotations

from mathgen.asks.expression import Quantity, Stat, Stated, Tally, Value
from mathgen.reading.asked import ANY, WHOLE, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.statistics import Bars, PlotToMake
from mathgen.reading.means import mean
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.counts import MeanOf
from mathgen.reading.wanted.statistics import Dots, InBar
from mathgen.scenario.words import Scenario


def plot_to_make(told: Told, claim: PlotToMake) -> None:
    """Keep of which numbers a plot is to be made.

    Raises:
        NotRead: there are two plots.
    """
    if told.plot is not None:
        raise NotRead("two plots are to be made")
    told.plot = claim
    told.open["plot"] = "the plot"


def bars_told(told: Told, claim: Bars) -> None:
    """Keep the bars of a histogram.

    Raises:
        NotRead: they are told twice, they do not follow on one another from 0 on, or they are not of one width.
    """
    if told.bars is not None:
        raise NotRead("the bars are told of twice")
    ends = [(int(low.value), int(high.value)) for low, high in claim.ends]
    width = ends[0][1] - ends[0][0] + 1
    if width < 2 or ends != [(width * place, width * place + width - 1) for place in range(len(ends))]:
        raise NotRead("the bars do not follow on one another from 0 on, each as wide as the next")
    told.bars = claim
    told.open["bars"] = "the bars"
    for low, high in claim.ends:
        _stated(told, low, "from")
        _stated(told, high, "to")


def _plotted(kind: str, told: Told, scenario: Scenario) -> tuple[Quantity, ...]:
    claim = told.plot
    if claim is None or claim.kind != kind:
        raise NotRead("nothing says of which numbers the plot is")
    goal = mean(MeanOf(claim.measure, claim.np, claim.by, ANY, "mean"), told, scenario).goal
    assert isinstance(goal, Value)
    assert isinstance(goal.expr, Stat)
    return tuple(one for one in goal.expr.series if isinstance(one, Quantity))


def _stated(told: Told, number: Number, meaning: str) -> Stated:
    stated = Stated(int(number.value), meaning)
    if Fact(stated, number.text) not in told.facts:
        told.facts.append(Fact(stated, number.text))
    return stated


def dots(question: Dots, told: Told, scenario: Scenario) -> Asked:
    series = _plotted("dots", told, scenario)
    than = _stated(told, question.number, "number on the line")
    return Asked("tally", Value(Tally(series, question.test, than)), WHOLE, series, ("plot",))


def in_bar(question: InBar, told: Told, scenario: Scenario) -> Asked:
    series, bars = _plotted("histogram", told, scenario), told.bars
    asked_for = (question.low.value, question.high.value)
    if bars is None or asked_for not in [(low.value, high.value) for low, high in bars.ends]:
        raise NotRead("there is no such bar")
    if max(evaluate(one, told.counts) for one in series) > bars.ends[-1][1].value:
        raise NotRead("a number has no bar")
    low, high = _stated(told, question.low, "from"), _stated(told, question.high, "to")
    return Asked("tally", Value(Tally(series, "from", low, high)), WHOLE, series, ("plot", "bars"))


ASKED: Answers = {
    Dots: dots,
    InBar: in_bar,
}


TAKEN: Takers = {
    PlotToMake: plot_to_make,
    Bars: bars_told,
}
