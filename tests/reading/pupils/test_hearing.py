"""Pupils' lines to tokens: what is mended, what is unknown, and what is never dropped."""

import pytest

from mathgen.reading.pupils.hearing import Hearing, UnknownWord
from mathgen.reading.tokens import NotRead
from tests.reading.small_class import RAMP, TABLE

HEARING = Hearing(TABLE, RAMP)


def kinds(text: str) -> list[tuple[str, ...]]:
    return [token.kinds for sentence in HEARING.line(text).sentences for token in sentence]


def test_synonyms_are_one_verb():
    for words in ("knocked down", "fell", "tipped over", "knock over", "fall", "falling"):
        assert kinds(words) == [("VERB",)], words


def test_empty_words_are_left_out():
    assert kinds("um hey how many please") == [("HOWMANY",)]


def test_a_slip_is_said():
    assert HEARING.line("how menny pinz").mended == (("menny", "many"), ("pinz", "pins"))


@pytest.mark.parametrize("word", ["wobbly", "plus", "pens", "lake"])
def test_an_unknown_word_is_never_dropped(word: str):
    with pytest.raises(UnknownWord, match=word):
        HEARING.line(f"how many {word} pins")


def test_a_trial_that_is_not_there_is_named():
    with pytest.raises(NotRead, match="no trial 9"):
        HEARING.line("how many in trial 9")
