"""Box plots: five numbers over one scale, one box or several to compare."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from sympy import Rational

from mathgen.exact.forms import mixed
from mathgen.sheets.figures.bar_graph import scale_step
from mathgen.sheets.figures.scene import FigureData


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
        "top": step * (highest // step + 1),
        "boxes": [{"label": label, "at": [[int(number.p), int(number.q)] for number in numbers]} for label, numbers in boxes],
        "alt": f"Box plot. {title}. {axis}. {' '.join(told)}",
    }
