"""Fraction bars."""

from __future__ import annotations

from mathgen.asks.expression import Choice, Op, Stated
from mathgen.sheets.figures.fraction_bars import fraction_bars
from tests.sheets.figures.scenes import down, over, scene, up

WHOLE = Stated(1, "whole")
RED, BLUE = over(down(color="red"), up()), over(down(color="blue"), up())


def test_parts_of_one_whole_share_a_bar_that_is_empty_for_the_pupil_and_shaded_in_the_key() -> None:
    """3/12 red and 2/12 blue pins: 5 of 12 parts shaded in two patterns."""
    made = fraction_bars(scene(Op("+", (RED, BLUE))))
    assert made is not None
    assert made.worked is not None
    assert made.blank["bars"] == [{"label": "", "cut": 12, "shaded": []}]
    assert made.blank["alt"] == "Fraction bar to shade: one whole in 12 equal parts, none shaded."
    assert made.worked["bars"][0]["shaded"] == [{"count": 3, "pattern": 0}, {"count": 2, "pattern": 1}]
    assert made.worked["alt"] == "Fraction bar: one whole in 12 equal parts, 3 and then 2 shaded, 7 not."


def test_a_fraction_is_cut_as_the_words_print_it() -> None:
    """3/12 of the pins printed as 1/4: a bar in fourths."""
    made = fraction_bars(scene(Op("-", (WHOLE, RED)), printed=(("1/4", RED),)))
    assert made is not None
    assert made.worked is not None
    assert (made.worked["bars"][0]["cut"], made.worked["bars"][0]["shaded"][0]["count"]) == (4, 1)


def test_a_part_taken_from_a_part_stands_beside_what_is_left_of_it() -> None:
    """9/12 knocked down, of them 3/12 red: 3 parts, then 6."""
    made = fraction_bars(scene(Op("-", (over(down(), up()), RED))))
    assert made is not None
    assert made.worked is not None
    assert [run["count"] for run in made.worked["bars"][0]["shaded"]] == [3, 6]


def test_fractions_that_are_compared_have_a_named_bar_each() -> None:
    """Owls 9 of 12, Herons 8 of 12 in Trial 1."""
    goal = Choice(("Owls", "Herons"), tuple(over(down(group), up(group)) for group in ("Owls", "Herons")))
    made = fraction_bars(scene(goal))
    assert made is not None
    assert made.worked is not None
    assert made.blank["alt"] == "Fraction bars of one length to shade: Owls in 12 equal parts, Herons in 12 equal parts."
    assert [(bar["label"], bar["shaded"][0]["count"]) for bar in made.worked["bars"]] == [("Owls", 9), ("Herons", 8)]


def test_an_equal_fraction_has_a_bar_for_each_bottom_number() -> None:
    """3/4 of the red pins is 6/8."""
    goal = Op("*", (down(color="red"), Op("/", (Stated(8, "bottom number"), up(color="red")))))
    made = fraction_bars(scene(goal))
    assert made is not None
    assert made.worked is not None
    assert made.blank["alt"] == "Fraction bars of one length to shade: one in 4 equal parts, one in 8."
    assert [(bar["cut"], bar["shaded"][0]["count"]) for bar in made.worked["bars"]] == [(4, 3), (8, 6)]


def test_fractions_of_two_trials_have_a_bar_for_each() -> None:
    """9/12 in Trial 1 and 6/12 in Trial 2: their gap is no part of one bar."""
    made = fraction_bars(scene(Op("-", (over(down(), up()), over(down(trial=2), up(trial=2))))))
    assert made is not None
    assert made.worked is not None
    assert [(bar["label"], bar["shaded"][0]["count"]) for bar in made.worked["bars"]] == [("Trial 1", 9), ("Trial 2", 6)]


def test_no_bar_has_more_parts_than_can_be_shaded_and_none_belongs_to_whole_numbers() -> None:
    """24 pins in two trials; a sum of counts."""
    assert fraction_bars(scene(over(down(trial=None), up(trial=None)))) is None
    assert fraction_bars(scene(Op("+", (down(trial=1), down(trial=2))))) is None
    assert fraction_bars(scene(Op("+", (RED, over(down(), up(trial=None)))))) is None
