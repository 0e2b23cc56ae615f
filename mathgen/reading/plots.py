"""Dot plots and histograms that pupils make: of which numbers, and how many of them are meant."""

from __future__ import annotations

from mathgen.asks.expression import Quantity, Stat, Stated, Tally, Value
from mathgen.reading.asked import ANY, WHOLE, Asked
from mathgen.reading.going_on import mean
from mathgen.reading.meaning import BarFrom, PlotToMake
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Fact, Told
from mathgen.reading.wanted import Dots, InBar, MeanOf
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


def bar_from(told: Told, claim: BarFrom) -> None:
    """Keep which bar is meant."""
    told.bar = claim
    told.open["bar"] = "the bar"


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
    told.facts.append(Fact(stated, number.text))
    return stated


def dots(question: Dots, told: Told, scenario: Scenario) -> Asked:
    series = _plotted("dots", told, scenario)
    than = _stated(told, question.number, "number on the line")
    return Asked("tally", Value(Tally(series, question.test, than)), WHOLE, series, ("plot",))


def in_bar(question: InBar, told: Told, scenario: Scenario) -> Asked:
    series, bar = _plotted("histogram", told, scenario), told.bar
    if question.low is not None and question.high is not None:
        if bar is not None:
            raise NotRead("two bars are meant")
        bar = BarFrom(question.low, question.high)
    if bar is None:
        raise NotRead("it is not said which bar is meant")
    if bar.low.value >= bar.high.value:
        raise NotRead("a bar goes from a number to a greater one")
    low, high = _stated(told, bar.low, "from"), _stated(told, bar.high, "to")
    return Asked("tally", Value(Tally(series, "from", low, high)), WHOLE, series, ("plot", "bar"))
