"""Box plots: five numbers over one scale, one box or several to compare."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from sympy import Rational

from mathgen.asks.evaluate import value
from mathgen.asks.expression import Stat, StatName, Value
from mathgen.bank.graph_scale import scale_step
from mathgen.exact.forms import mixed
from mathgen.sheets.figures.counts_listed import counts_listed
from mathgen.sheets.figures.scene import FigureData, Scene, Support

_UNIT_MARKS = 26  # up to here a mark for every whole number can be told apart
_QUARTILES: tuple[StatName, ...] = ("lower quartile", "median", "upper quartile")


class FiveNumbers(NamedTuple):
    """Least, lower quartile, median, upper quartile, greatest, in this order of size."""

    least: Rational
    lower: Rational
    median: Rational
    upper: Rational
    greatest: Rational


def box_plot(title: str, axis: str, boxes: Sequence[tuple[str, FiveNumbers]]) -> FigureData:
    """One box for each label, over a scale from 0.

    Args:
        title: of the plot.
        axis: what the numbers count.
        boxes: label and numbers; a single box may have the label "".
    """
    highest = max(int(-(-numbers.greatest // 1)) for _, numbers in boxes)
    step = scale_step(highest, 6)
    names = ("least", "lower quartile", "median", "upper quartile", "greatest")
    told = []
    for label, numbers in boxes:
        listed = ", ".join(f"{name} {mixed(number)}" for name, number in zip(names, numbers, strict=True))
        told.append(f"{label}: {listed}." if label else f"{listed[:1].upper()}{listed[1:]}.")
    return {
        "kind": "box-plot",
        "title": title,
        "axis": axis,
        "step": step,
        "top": (top := step * (highest // step + 1)),
        "between": _parts_of_a_step(step, top, any(number.q > 1 for _, numbers in boxes for number in numbers)),
        "boxes": [{"label": label, "at": [[int(number.p), int(number.q)] for number in numbers]} for label, numbers in boxes],
        "alt": f"Box plot. {title}. {axis}. {' '.join(told)}",
    }


def _parts_of_a_step(step: int, top: int, halves: bool) -> int:
    """How many parts small marks cut each step in: halves of 1 where a number is one, else whole numbers where there is room."""
    if step == 1:
        return 2 if halves else 1
    return step if top <= _UNIT_MARKS else 1


def plot_to_complete(plot: FigureData) -> FigureData:
    """The same scale with no box drawn, and room for the boxes."""
    scale = f"The scale goes from 0 to {plot['top']} by {plot['step']}; no box is drawn."
    alt = f"Box plot to complete. {plot['title']}. {plot['axis']}. {scale}"
    return {**plot, "boxes": [{**one, "at": []} for one in plot["boxes"]], "alt": alt}


def counts_boxed(scene: Scene) -> Support | None:
    """The box plot of the counts that a problem lists: a scale to draw it over, and the finished plot for the key."""
    goal = scene.problem.ask.goal
    if not isinstance(goal, Value) or not isinstance(goal.expr, Stat):
        return None
    series = goal.expr.series
    counts = counts_listed(scene, series)
    if counts is None:
        return None
    lower, median, upper = (value(Stat(name, series), scene.totals) for name in _QUARTILES)
    five = FiveNumbers(min(counts.numbers), lower, median, upper, max(counts.numbers))
    finished = box_plot(counts.title, counts.axis, [("", five)])
    return Support(plot_to_complete(finished), finished)
