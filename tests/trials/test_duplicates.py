"""Results that are there more than once."""

from __future__ import annotations

import pytest

from mathgen.errors import Place, TableFaults
from mathgen.trials.duplicates import settle_duplicates
from mathgen.trials.grid import Grid
from mathgen.trials.reading import interpret
from mathgen.trials.readings import Reading


def reading(row: int, text: str, trial: int = 1, color: str = "red") -> Reading:
    return Reading(Place(row, 3), text, False, "Owls", trial, color, "down", ("", row))


TWICE = [reading(2, "3"), reading(2, "2", color="blue"), reading(3, "1", trial=2), reading(4, "4"), reading(4, "0", color="blue")]


def told(readings: list[Reading]) -> list[tuple[int | str, str, str]]:
    return [(one.trial, one.color, one.text) for one in readings]


def test_the_first_counts() -> None:
    assert told(settle_duplicates(TWICE, "first", False).readings) == [(1, "red", "3"), (1, "blue", "2"), (2, "red", "1")]


def test_the_last_counts() -> None:
    assert told(settle_duplicates(TWICE, "last", False).readings) == [(2, "red", "1"), (1, "red", "4"), (1, "blue", "0")]


def test_kept_ones_become_one_further_trial_after_the_last() -> None:
    settled = settle_duplicates(TWICE, "keep", False)
    assert told(settled.readings)[3:] == [(3, "red", "4"), (3, "blue", "0")]
    assert settled.notes == ('A further result of "Owls" for trial 1 (row 4) is counted as trial 3.',)


def test_without_an_answer_a_question_names_the_rows() -> None:
    question = settle_duplicates(TWICE, None, True).question
    assert question is not None
    assert question.text == "These results are sent in more than once: Owls, trial 1 (rows 2, 4). Which should count?"


def test_no_doubles_no_question() -> None:
    settled = settle_duplicates(TWICE[:3], None, False)
    assert (settled.readings, settled.notes, settled.question) == (TWICE[:3], (), None)


def test_what_is_wrong_in_a_double_is_told_at_once_with_what_is_open() -> None:
    rows = (("Group", "Trial", "Red (3)", "Blue (4)"), ("Owls", "1", "1", "2"), ("Owls", "2", "3", "4"), ("Owls", "2", "", "1.5"))
    with pytest.raises(TableFaults) as caught:
        interpret([Grid((("Pins knocked down", "", "", ""), *rows))])
    assert [(fault.place.cell, fault.found) for fault in caught.value.faults] == [("D5", "1.5")]
    assert [question.id for question in caught.value.questions] == ["duplicates", "blank"]
    assert "Cell C5 is blank." in str(caught.value)
