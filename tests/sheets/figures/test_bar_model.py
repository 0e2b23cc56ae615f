"""Bar models."""

from __future__ import annotations

import json

from mathgen.asks.expression import Choice, Equation, Op, Stated
from mathgen.sheets.figures.bar_model import bar_model
from tests.sheets.figures.scenes import down, over, scene

OWLS, HERONS = down("Owls"), down("Herons")  # 9 and 8 pins in Trial 1


def test_how_many_more_has_a_longer_and_a_shorter_bar_and_no_number() -> None:
    """9 against 8."""
    made = bar_model(scene(Op("-", (OWLS, HERONS))))
    assert made is not None
    assert made.worked is not None
    assert not any(sign in json.dumps([made.blank[part] for part in ("bigger", "smaller", "gap", "alt")]) for sign in "0123456789")
    assert made.blank["alt"] == "Bar model to fill in. Longer bar: Owls. Shorter bar: Herons. Dashed part beside it: how many more."
    assert (made.worked["bigger"]["number"], made.worked["smaller"]["number"], made.worked["gap"]) == ("9", "8", "1")


def test_more_than_is_told_by_the_same_bars_whichever_is_asked_for() -> None:
    """Owls 1 more than Herons."""
    fact = Equation(OWLS, Op("+", (HERONS, Stated(1, "more than"))))
    for asked in (OWLS, HERONS):
        made = bar_model(scene(asked, fact))
        assert made is not None
        assert (made.blank["bigger"]["label"], made.blank["smaller"]["label"]) == ("Owls", "Herons")


def test_times_as_many_has_a_box_for_each_time() -> None:
    """The Owls' 4 gold pins are 2 times their 2 blue pins."""
    gold, blue = down(color="gold"), down(color="blue")
    made = bar_model(scene(gold, Equation(gold, Op("*", (Stated(2, "times"), blue)))))
    assert made is not None
    assert made.worked is not None
    assert (made.blank["times"], made.blank["alt"]) == (2, "Bar model to fill in. gold: 2 equal boxes. blue: 1 box of the same size.")
    assert made.worked["alt"].endswith("gold: 2 equal boxes of 2, 4 in all. blue: 1 box of 2.")


def test_where_the_bars_would_tell_the_answer_there_are_none() -> None:
    """How many times as many; which group had more."""
    assert bar_model(scene(over(down(color="gold"), down(color="blue")))) is None
    assert bar_model(scene(Choice(("Owls", "Herons"), (OWLS, HERONS)))) is None
