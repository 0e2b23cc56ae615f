"""The bar graph to complete."""

from __future__ import annotations

from mathgen.sheets.figures.bar_graph import graph_data
from mathgen.sheets.figures.blank_graph import blank_graph
from tests.sheets.by_hand import GRAPHS, TABLE, words


def test_axes_and_words_stay_and_no_bar_is_drawn_or_told() -> None:
    """Red 9, blue 6, gold 8 on a scale to 10 by 1."""
    graph = GRAPHS[4]
    assert graph is not None
    full = graph_data(graph, TABLE, words(4), 4)
    made = blank_graph(full)
    assert [(one["label"], one["value"]) for one in made["bars"]] == [("red", 0), ("blue", 0), ("gold", 0)]
    assert (made["step"], made["top"], made["title"]) == (full["step"], full["top"], full["title"])
    assert made["alt"] == (
        "Bar graph to complete. Pins knocked down, all groups, Trial 1. "
        "The scale goes from 0 to 10 by 1; no bar is drawn for red, blue, gold."
    )
