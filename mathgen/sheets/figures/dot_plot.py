"""Dot plots of whole numbers, and line plots of measures in halves, fourths or eighths: a mark over its place for each result."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from math import lcm
from typing import Any

from sympy import Integer, Rational

from mathgen.exact.forms import mixed
from mathgen.sheets.figures.scene import FigureData


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
