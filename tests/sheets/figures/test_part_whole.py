"""Part-whole boxes."""

from __future__ import annotations

import json

from mathgen.asks.expression import Equation, Op
from mathgen.sheets.figures.part_whole import part_whole
from tests.sheets.figures.scenes import down, over, scene, up

COLORS = tuple(down(color=color) for color in ("red", "blue", "gold"))


def test_a_total_has_a_box_for_each_part_and_no_number_in_any() -> None:
    """The Owls' 3 red, 2 blue and 4 gold pins, counted by hand."""
    made = part_whole(scene(Op("+", COLORS)))
    assert made is not None
    assert made.worked is not None
    assert [(part["label"], part["number"]) for part in made.blank["parts"]] == [("red", ""), ("blue", ""), ("gold", "")]
    assert not any(sign.isdigit() for sign in json.dumps(made.blank))
    assert made.blank["alt"] == (
        "Part-whole boxes to fill in. Top box, the whole: in all. Boxes under it, the parts: red, blue, gold. "
        "Frame: blank plus blank plus blank equals blank."
    )


def test_the_key_fills_in_every_box() -> None:
    """3 + 2 + 4 = 9."""
    made = part_whole(scene(Op("+", COLORS)))
    assert made is not None
    assert made.worked is not None
    assert (made.worked["whole"]["number"], [part["number"] for part in made.worked["parts"]]) == ("9", ["3", "2", "4"])
    assert made.worked["alt"].endswith("in all 9. Boxes under it: red 3, blue 2, gold 4.")


def test_a_missing_part_has_its_box_too() -> None:
    """Owls 9 and 6 pins in the two trials, 15 in all."""
    trials = (down(trial=1), down(trial=2))
    made = part_whole(scene(trials[1], Equation(Op("+", trials), down(trial=None))))
    assert made is not None
    assert made.worked is not None
    assert made.worked["parts"] == [{"label": "Trial 1", "number": "9"}, {"label": "Trial 2", "number": "6"}]


def test_what_is_left_is_a_part_of_what_was_set_up() -> None:
    """12 set up, 9 knocked down: 3 left standing."""
    made = part_whole(scene(Op("-", (up(), Op("+", COLORS)))))
    assert made is not None
    assert made.worked is not None
    assert made.worked["whole"] == {"label": "set up", "number": "12"}
    assert made.worked["parts"][-1] == {"label": "left standing", "number": "3"}


def test_a_comparison_and_a_fraction_have_no_part_whole_boxes() -> None:
    """A difference of two groups has no whole."""
    assert part_whole(scene(Op("-", (down("Herons"), down("Owls"))))) is None
    assert part_whole(scene(over(down(), up()))) is None
