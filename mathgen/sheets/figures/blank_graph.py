"""A bar graph to complete: title, axis, scale and words, with no bar drawn."""

from __future__ import annotations

from mathgen.sheets.figures.scene import FigureData


def blank_graph(graph: FigureData) -> FigureData:
    """The same axes as a graph of ``graph_data``, for the pupil to draw the bars; its title, labels and scale are kept."""
    names = ", ".join(str(one["label"]) for one in graph["bars"])
    scale = f"The scale goes from 0 to {graph['top']} by {graph['step']}"
    return {
        **graph,
        "kind": "bar",
        "numbers_on_bars": False,
        "bars": [{**one, "value": 0} for one in graph["bars"]],
        "alt": f"Bar graph to complete. {graph['title']}. {scale}; no bar is drawn for {names}.",
    }
