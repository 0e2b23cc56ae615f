"""Tokens to spans: small rules that hold wherever the words stand."""

import pytest

from mathgen.reading.pupils.hearing import Hearing
from mathgen.reading.pupils.spans import Scan, Span
from mathgen.reading.tokens import NotRead
from tests.reading.small_class import RAMP, TABLE

HEARING = Hearing(TABLE, RAMP)


def spans(text: str) -> list[Span]:
    [sentence] = HEARING.line(text).sentences
    return Scan(sentence, TABLE.trials).spans()


@pytest.mark.parametrize("text", ["in trial 1", "on the first try", "trial one"])
def test_a_trial_is_named_in_many_ways(text: str):
    [span] = spans(text)
    assert span.bag.trials == (1,)


STOOD = ("did not fall", "never went down", "didn't get knocked over", "failed to knock down", "missed", "still up")


@pytest.mark.parametrize("text", STOOD)
def test_what_did_not_fall_stood(text: str):
    assert "standing" in {span.bag.measure for span in spans(text)}


@pytest.mark.parametrize("text", ["did not not fall", "not the owls", "how many did they knock down after trial 1"])
def test_a_word_that_goes_with_nothing_is_asked_about(text: str):
    with pytest.raises(NotRead):
        spans(text)


def test_than_is_heard_where_then_is_written_after_more():
    assert "than" in {span.kind for span in spans("how many more red pins then blue pins")}
    assert "than" not in {span.kind for span in spans("then how many red pins")}
