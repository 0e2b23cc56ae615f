"""Graphs as plain data."""

from __future__ import annotations

import pytest

from mathgen.bank.graph_scale import scale_step
from mathgen.bank.plan import Graph
from mathgen.sheets.figures.bar_graph import graph_data
from mathgen.trials.scope import Scope
from mathgen.trials.table import Row, TrialTable
from tests.sheets.by_hand import GRAPHS, TABLE, words


def test_the_scale_ends_above_the_highest_bar_and_every_bar_has_its_word_and_pattern() -> None:
    """Trial 1: red 3 + 4 + 2, blue 2 + 1 + 3, gold 4 + 3 + 1, counted by hand."""
    graph = GRAPHS[4]
    assert graph is not None
    data = graph_data(graph, TABLE, words(4), 4)
    assert (data["step"], data["top"]) == (1, 10)
    assert data["bars"] == [
        {"label": "red", "value": 9, "pattern": 0},
        {"label": "blue", "value": 6, "pattern": 1},
        {"label": "gold", "value": 8, "pattern": 2},
    ]


def test_alt_text_tells_the_data_and_no_comparison() -> None:
    """PDF/UA asks for alt text on each figure; ours must not do the pupil's work."""
    graph = Graph(Scope(("Owls",), (1, 2), None), ("red", "gold"), (4, 6))
    alt = graph_data(graph, TABLE, words(4), 4)["alt"]
    assert alt == "Bar graph. Pins knocked down, Owls, Trials 1 and 2. red 4, gold 6."


def test_a_color_keeps_its_pattern_when_another_is_left_out() -> None:
    """Pattern by the color's place in the table, not on the graph."""
    graph = Graph(Scope(), ("gold",), (6,))
    assert graph_data(graph, TABLE, words(4), 4)["bars"][0]["pattern"] == 2


@pytest.mark.parametrize("highest", [0, 1, 9, 10, 11, 14, 20, 21, 37, 99, 100, 480, 2160, 20_000])
def test_scales_have_few_lines(highest: int) -> None:
    """Single units in grade 2 as far as 20 (2.MD.D.10), else at most 10 lines."""
    assert highest <= 10 * scale_step(highest, 5)
    assert scale_step(highest, 2) == 1 or highest > 20


def test_the_title_says_over_which_trials_it_counts() -> None:
    """A graph of all trials must not look like one of a single trial."""
    graph = Graph(Scope(("Owls",), None, None), ("red",), (4,))
    assert graph_data(graph, TABLE, words(4), 4)["title"] == "Pins knocked down, Owls, the 2 trials"
    three = TrialTable(tuple(Row("Owls", trial, "red", 4, 1) for trial in (1, 2, 3)))
    assert graph_data(graph, three, words(4, three), 4)["title"] == "Pins knocked down, Owls, all 3 trials"


@pytest.mark.parametrize("highest", [31, 35, 37, 39, 40, 99, 480])
def test_a_number_on_the_highest_bar_has_a_step_of_room_above_it(highest: int) -> None:
    """It must not reach the title."""
    data = graph_data(Graph(Scope(), ("red", "blue"), (highest, 2)), TABLE, words(4), 4)
    assert data["numbers_on_bars"]
    assert data["top"] - highest > data["step"]
    assert data["top"] % data["step"] == 0


def test_a_title_can_be_set_on_two_lines_with_the_same_words() -> None:
    """Where a narrow column would break it in the middle of "Trials 1 and 2"."""
    data = graph_data(Graph(Scope(("Owls",), (1, 2), None), ("red",), (4,)), TABLE, words(4), 4)
    assert data["title_lines"] == ["Pins knocked down,", "Owls, Trials 1 and 2"]
    assert " ".join(data["title_lines"]) == data["title"]
