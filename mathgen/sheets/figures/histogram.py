"""Histograms: counts by equal intervals, bars that touch."""

from __future__ import annotations

from collections.abc import Sequence

from mathgen.sheets.figures.bar_graph import scale_step
from mathgen.sheets.figures.scene import FigureData


def histogram(title: str, axis: str, up: str, values: Sequence[int], start: int, width: int) -> FigureData:
    """Bars over intervals of whole numbers, ``start`` to ``start + width - 1`` first.

    Args:
        title: of the graph.
        axis: what the numbers count.
        up: what the bars count.
        values: at least one, none below ``start``.
        start: the first number of the first interval.
        width: how many whole numbers an interval holds.
    """
    bins = [0] * ((max(values) - start) // width + 1)
    for value in values:
        bins[(value - start) // width] += 1
    step = scale_step(max(bins), 6)
    names = [str(low) if width == 1 else f"{low}-{low + width - 1}" for low in range(start, start + width * len(bins), width)]
    told = ", ".join(f"{name}: {count}" for name, count in zip(names, bins, strict=True))
    return {
        "kind": "histogram",
        "title": title,
        "axis": axis,
        "up": up,
        "step": step,
        "top": step * (max(bins) // step + 1),
        "bars": [{"label": name, "value": count} for name, count in zip(names, bins, strict=True)],
        "alt": f"Histogram. {title}. {axis}, and {up[:1].lower()}{up[1:]}: {told}.",
    }
