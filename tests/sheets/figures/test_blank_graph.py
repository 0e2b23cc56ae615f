"""The bar graph and the picture graph to complete."""

from __future__ import annotations

from mathgen.asks.expression import Op, Stated
from mathgen.sheets.figures.bar_graph import graph_data
from mathgen.sheets.figures.blank_graph import blank_graph, graph_to_make
from mathgen.sheets.figures.scene import Support
from tests.sheets.by_hand import GRAPHS, TABLE, words
from tests.sheets.figures.scenes import down, over, scene


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


def to_make(question: str, expr: Op) -> Support:
    one = scene(expr, grade=3, skill="graph to make")
    made = graph_to_make(one._replace(problem=one.problem._replace(facts=question)))
    assert made is not None
    return made


def test_a_bar_graph_shows_every_color_though_two_are_compared() -> None:
    """The Owls in Trial 1: 3 red, 2 blue, 4 gold."""
    made = to_make("Draw a bar graph for Trial 1.", Op("-", (down(color="gold"), down(color="blue"))))
    assert made.worked is not None
    assert [(one["label"], one["value"]) for one in made.worked["bars"]] == [("red", 3), ("blue", 2), ("gold", 4)]
    assert (made.worked["kind"], made.worked["title"]) == ("bar", "Pins knocked down, Owls, Trial 1")
    assert {one["value"] for one in made.blank["bars"]} == {0}


def test_a_picture_graph_keeps_its_key_and_tells_no_count_until_it_is_finished() -> None:
    """4 gold pins by twos."""
    made = to_make("Draw a picture graph for Trial 1.", over(down(color="gold"), Stated(2, "pins for each picture")))
    assert made.worked is not None
    assert (made.blank["kind"], made.blank["step"], made.worked["step"]) == ("picture", 2, 2)
    assert made.blank["alt"] == (
        "Picture graph to complete. Pins knocked down, Owls, Trial 1. Each picture stands for 2 pins. "
        "No picture is drawn for red, blue, gold."
    )
    assert made.worked["alt"] == "Picture graph. Pins knocked down, Owls, Trial 1. red 3, blue 2, gold 4."


def test_without_a_key_a_picture_stands_for_one_pin() -> None:
    made = to_make("Draw a picture graph for Trial 1.", Op("-", (down(color="gold"), down(color="blue"))))
    assert made.blank["legend"] == "Each picture stands for 1 pin."
