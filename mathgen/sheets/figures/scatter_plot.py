"""Scatter plots: a point for each pair of counts (8.SP.A.1)."""

from __future__ import annotations

from collections.abc import Sequence

from mathgen.sheets.figures.bar_graph import scale_step
from mathgen.sheets.figures.scene import FigureData


def scatter_plot(title: str, across: str, up: str, points: Sequence[tuple[int, int]]) -> FigureData:
    """Points over two scales from 0.

    Args:
        title: of the plot.
        across: what the first number of a pair counts.
        up: what the second counts.
        points: pairs, at least one; the same pair twice is one mark.
    """
    steps = [scale_step(max(pair[at] for pair in points), 8) for at in (0, 1)]
    tops = [step * (max(pair[at] for pair in points) // step + 1) for at, step in enumerate(steps)]
    told = ", ".join(f"({x}, {y})" for x, y in sorted(points))
    return {
        "kind": "scatter-plot",
        "title": title,
        "across": across,
        "up": up,
        "steps": steps,
        "tops": tops,
        "points": [list(point) for point in sorted(set(points))],
        "alt": f"Scatter plot. {title}. Across: {across}. Up: {up}. Points: {told}.",
    }
