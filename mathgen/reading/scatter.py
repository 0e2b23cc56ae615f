"""Scatter plots of spaces and pins, and a line close to the points: what is told of them, and what is asked."""

from __future__ import annotations

from sympy import Integer, Rational

from mathgen.asks.expression import Expr, Measured, Op, Quantity, Stated, Value
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.lengths import LineCloseBy, ScatterPlot
from mathgen.reading.meaning.scope import Np
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.lengths import LineChange, OffLine, Predicted
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Scope

_CLOSE = 2  # pins: as far as the points are from the line on average, to be called close


def scatter_plot(told: Told, claim: ScatterPlot) -> None:
    """Keep which letter stands for what.

    Raises:
        NotRead: there are two, or some pins are left out.
    """
    if told.scatter_plot is not None:
        raise NotRead("two scatter plots are told of")
    if told.scope(claim.np._replace(groups=told.mentions.every("groups"), trials=told.mentions.every("trials"))).colors is not None:
        raise NotRead("the scatter plot is of pins of every color")
    told.mentions.before["groups"].clear()
    told.mentions.before["trials"].clear()
    told.scatter_plot = claim


def line_close_by(told: Told, claim: LineCloseBy) -> None:
    """Keep a line, once it is seen to be close to the points.

    Raises:
        NotRead: other letters than those of the plot, or the points are far from it.
    """
    plot = told.scatter_plot
    if plot is None or told.line is not None or (claim.x, claim.y) != (plot.x, plot.y):
        raise NotRead("it is not said what the letters of the line stand for")
    away = [abs(pins - _height(claim, length)) for length, pins in _points(told)]
    if not away or sum(away, Integer(0)) > _CLOSE * len(away):
        raise NotRead("the line is not close to the points")
    told.line = claim
    told.facts.append(Fact(_start(claim), claim.start.text))
    told.facts.append(Fact(_slope(claim), claim.slope.text))
    told.open["line"] = "the line"


def _height(line: LineCloseBy, x: Rational) -> Rational:
    return line.start.value + (line.slope.value if line.sign == "+" else -line.slope.value) * x


def _points(told: Told) -> list[tuple[Rational, Rational]]:
    """Every space that was measured, with the pins that were knocked down there."""
    found = []
    for group, trial in dict.fromkeys((row.group, row.trial) for row in told.counts.table.rows if row.gap_inches is not None):
        pins = evaluate(Quantity("down", Scope((group,), (trial,))), told.counts)
        found.append((told.counts.length(Measured("gap", group, trial)), pins))
    return found


def _start(line: LineCloseBy) -> Stated:
    return Stated(int(line.start.value), "start of the line")


def _slope(line: LineCloseBy) -> Stated:
    return Stated(int(line.slope.value), "pins for each inch")


def line_at(told: Told, x: Expr) -> Op:
    """The number that the line has at x.

    Raises:
        NotRead: no line is told of.
    """
    line = told.line
    if line is None:
        raise NotRead("no line is told of")
    return Op(line.sign, (_start(line), Op("*", (_slope(line), x))))


def all_pins(told: Told, np: Np) -> None:
    """Check that pins of every color are meant.

    Raises:
        NotRead: only some are.
    """
    if isinstance(np.colors, tuple) and set(np.colors) != set(told.mentions.every("colors")):
        raise NotRead("the line is for pins of every color")


def predicted(question: Predicted, told: Told, _: Scenario) -> Asked:
    all_pins(told, question.np)
    x = Stated(int(question.number.value), "inches")
    told.facts.append(Fact(x, question.number.text))
    return Asked("length", Value(line_at(told, x)), WHOLE, (), ("line",))


def off_line(question: OffLine, told: Told, _: Scenario) -> Asked:
    if len(told.lengths) != 1 or told.last_count is None:
        raise NotRead("one result beside its space is needed")
    space, down = told.lengths[0], told.quantity(question.measure, question.np)
    if down != told.last_count or down.scope.colors is not None:
        raise NotRead("it is another result that is asked about")
    both = (down, line_at(told, space)) if question.sign > 0 else (line_at(told, space), down)
    goal = Op("-", both)
    if evaluate(goal, told.counts) <= 0:
        raise NotRead("it is the other way round")
    return Asked("length", Value(goal), WHOLE, (down,), ("line",))


def line_change(question: LineChange, told: Told, _: Scenario) -> Asked:
    all_pins(told, question.np)
    line = told.line
    if line is None or (line.sign == "+") != (question.sign > 0):
        raise NotRead("no line is told of that goes this way")
    more = Stated(int(question.number.value), "inches wider")
    told.facts.append(Fact(more, question.number.text))
    return Asked("length", Value(Op("*", (_slope(line), more))), WHOLE, (), ("line",))


ASKED: Answers = {
    Predicted: predicted,
    OffLine: off_line,
    LineChange: line_change,
}


TAKEN: Takers = {
    ScatterPlot: scatter_plot,
    LineCloseBy: line_close_by,
}
