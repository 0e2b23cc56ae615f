"""Slips of the pen: mended only where one known word is meant."""

import pytest

from mathgen.reading.pupils.hearing import SPELLED_RIGHT
from mathgen.reading.pupils.spelling import mended

KNOWN = ["trial", "fraction", "pins", "owls", "herons", "finches", "gold", "knock", "many", "mean", "percent"]


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("fractoin", "fraction"),
        ("herrons", "herons"),
        ("finchs", "finches"),
        ("goald", "gold"),
        ("tirals", "trial"),
        ("owlz", "owls"),
        ("persent", "percent"),
    ],
)
def test_a_near_word_that_is_alone_is_taken(typed: str, meant: str):
    assert mended(typed, [*KNOWN, "trials"] if typed == "tirals" else KNOWN, SPELLED_RIGHT) in (meant, f"{meant}s")


@pytest.mark.parametrize("typed", ["hens", "pink", "rad", "bowls", "ravens", "purple", "goldfish", "tall", "balls"])
def test_other_words_are_left_alone(typed: str):
    assert mended(typed, KNOWN, SPELLED_RIGHT) is None


def test_two_words_as_near_leave_a_doubt():
    assert mended("finckes", ["finches", "fincles"], frozenset()) is None
