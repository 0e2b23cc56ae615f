"""Histograms: counts by equal intervals, bars that touch."""

from __future__ import annotations

from collections.abc import Sequence

from mathgen.asks.expression import Tally, Value
from mathgen.bank.graph_scale import scale_step
from mathgen.sheets.figures.counts_listed import counts_listed
from mathgen.sheets.figures.scene import FigureData, Scene, Support


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


def histogram_to_complete(graph: FigureData) -> FigureData:
    """The same intervals and scale with no bar drawn."""
    names = ", ".join(str(one["label"]) for one in graph["bars"])
    scale = f"The scale goes from 0 to {graph['top']} by {graph['step']}"
    return {
        **graph,
        "bars": [{**one, "value": 0} for one in graph["bars"]],
        "alt": f"Histogram to complete. {graph['title']}. {graph['axis']}: {names}. {scale}; no bar is drawn.",
    }


def counts_in_bars(scene: Scene) -> Support | None:
    """The histogram of the counts that a problem lists, its bars as wide as the one that is asked for: to complete, and finished."""
    goal = scene.problem.ask.goal
    tally = goal.expr if isinstance(goal, Value) else None
    if not isinstance(tally, Tally) or tally.to is None:
        return None
    counts = counts_listed(scene, tally.series)
    if counts is None:
        return None
    low, width = tally.than.number, tally.to.number - tally.than.number + 1
    values = [int(number) for number in counts.numbers]
    finished = histogram(counts.title, counts.axis, "How many numbers", values, low % width, width)
    return Support(histogram_to_complete(finished), finished)
