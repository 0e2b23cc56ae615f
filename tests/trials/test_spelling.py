"""A word typed wrong and its neighbor."""

from __future__ import annotations

import pytest

from mathgen.trials.spelling import nearest

KNOWN = ("group", "trial", "color", "attempt", "blue", "gold")


@pytest.mark.parametrize(
    ("word", "meant"),
    [("gruop", "group"), ("goup", "group"), ("tral", "trial"), ("colr", "color"), ("atempt", "attempt"), ("bleu", "blue"), ("blu", "blue")],
)
def test_a_slip_of_the_fingers_is_forgiven(word: str, meant: str) -> None:
    assert nearest(word, KNOWN) == meant


@pytest.mark.parametrize("word", ["cone", "weather", "go", "group", "bold gold", ""])
def test_other_words_are_left_alone(word: str) -> None:
    assert nearest(word, KNOWN) is None


def test_a_word_between_two_neighbors_is_left_alone() -> None:
    assert nearest("cold", ["gold", "colt"]) is None
