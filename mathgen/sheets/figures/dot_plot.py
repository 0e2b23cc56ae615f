"""Dot plots of whole numbers, and line plots of measures in halves, fourths or eighths: a mark over its place for each result."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from math import lcm
from typing import Any

from sympy import Integer, Rational

from mathgen.asks.expression import Expr, Measured, Op, Stat, Tally, Value
from mathgen.exact.forms import mixed
from mathgen.sheets.figures.counts_listed import counts_listed
from mathgen.sheets.figures.scene import FigureData, Scene, Support


def dot_plot(title: str, axis: str, values: Sequence[int]) -> FigureData:
    """Dots over a line of whole numbers, from the least value to the greatest.

    Args:
        title: of the plot.
        axis: what the numbers count.
        values: one for each dot, at least one.
    """
    return _plot("Dot plot", "dot", title, axis, [Integer(value) for value in values])


def line_plot(title: str, axis: str, values: Sequence[Rational]) -> FigureData:
    """Crosses over a line that is cut into the parts that the values need (2.MD.D.9, 3.MD.B.4, 4.MD.B.4)."""
    return _plot("Line plot", "cross", title, axis, list(values))


def _plot(name: str, mark: str, title: str, axis: str, values: list[Rational]) -> FigureData:
    counts = Counter(values)
    cut = lcm(*(int(value.q) for value in counts))
    first, last = min(counts) * cut, max(counts) * cut
    places: list[dict[str, Any]] = []
    for at in range(int(first), int(last) + 1):
        place = Rational(at, cut)
        places.append({"label": mixed(place), "count": counts[place]})
    told = ", ".join(f"{one['label']}: {one['count']}" for one in places)
    noun = "dots" if mark == "dot" else "crosses"
    return {
        "kind": "dot-plot",
        "mark": mark,
        "title": title,
        "axis": axis,
        "places": places,
        "alt": f"{name}. {title}. {axis}, and how many {noun}: {told}.",
    }


def plot_to_complete(plot: FigureData) -> FigureData:
    """The same line with no mark drawn, and room for as many as the highest place has."""
    noun = "dot" if plot["mark"] == "dot" else "cross"
    labels = ", ".join(str(one["label"]) for one in plot["places"])
    return {
        **plot,
        "most": max(int(one["count"]) for one in plot["places"]),
        "places": [{**one, "count": 0} for one in plot["places"]],
        "alt": f"{plot['alt'].partition('.')[0]} to complete. {plot['title']}. {plot['axis']}: {labels}; no {noun} is drawn.",
    }


def spaces_plotted(scene: Scene) -> Support | None:
    """The line plot of the spaces that a problem lists: to complete, and finished for the key."""
    goal = scene.problem.ask.goal
    expr = goal.expr if isinstance(goal, Value) else None
    if isinstance(expr, Op) and isinstance(expr.args[0], Tally):  # crosses above two places of one plot
        expr = expr.args[0]
    if isinstance(expr, Stat | Tally):
        series: tuple[Expr, ...] = expr.series
    elif isinstance(expr, Op) and expr.symbol == "+" and "line plot" in scene.problem.text:  # all the spaces of a plot together
        series = expr.args
    else:
        return None
    lengths = [scene.totals.gap(one.group, one.trial) for one in series if isinstance(one, Measured)]
    if len(lengths) != len(series) or None in lengths:
        return None
    first = series[0]
    assert isinstance(first, Measured)  # all are
    words = scene.words
    title = f"Space between {words['things']}, {words['trial_labels'][first.trial]}"
    finished = line_plot(title, "Inches", lengths)
    return Support(plot_to_complete(finished), finished)


def counts_plotted(scene: Scene) -> Support | None:
    """The dot plot of the counts that a problem lists: to complete, and finished for the key."""
    goal = scene.problem.ask.goal
    counts = counts_listed(scene, goal.expr.series) if isinstance(goal, Value) and isinstance(goal.expr, Tally) else None
    if counts is None:
        return None
    finished = dot_plot(counts.title, counts.axis, [int(number) for number in counts.numbers])
    return Support(plot_to_complete(finished), finished)
