"""Which sheets are read."""

from __future__ import annotations

import pytest

from mathgen.errors import TableFaults, TableQuestions
from mathgen.trials.reading import ReadOptions, interpret
from tests.trials.as_grid import grid, in_a_line

WIDE = "Pins down\nGroup,Trial,Red (4)\nOwls,1,3"
OTHER = "Pins down\nGroup,Trial,Red (4)\nOwls,1,2"


def test_a_sheet_for_each_trial_is_one_table() -> None:
    sheets = [grid("Pins down\nGroup,Red (4)\nOwls,3\nHawks,2", "Trial 1"), grid("Pins down\nGroup,Red (4)\nOwls,1\nHawks,0", "Trial 2")]
    result = interpret(sheets)
    assert in_a_line(result.table) == "Owls 1: red 3/4; Owls 2: red 1/4; Hawks 1: red 2/4; Hawks 2: red 0/4"
    assert "The sheets Trial 1, Trial 2 are read together, a trial each." in result.notes


def test_a_sheet_for_each_group_is_one_table() -> None:
    result = interpret([grid("Trial,Red (4) down\n1,3", "Owls"), grid("Trial,Red (4) down\n1,1", "Hawks")])
    assert in_a_line(result.table) == "Owls 1: red 3/4; Hawks 1: red 1/4"


def test_the_only_sheet_with_a_table_is_read_and_said() -> None:
    result = interpret([grid("Ball,mass\nsock,light", "About"), grid(WIDE, "Results")])
    assert in_a_line(result.table) == "Owls 1: red 3/4"
    assert 'The sheet "Results" is read; "About" holds no results table.' in result.notes


def test_two_tables_are_asked_about_and_the_option_settles_it() -> None:
    sheets = [grid(WIDE, "Room 1"), grid(OTHER, "Room 2")]
    with pytest.raises(TableQuestions) as caught:
        interpret(sheets)
    (question,) = caught.value.questions
    assert (question.id, [answer.option for answer in question.answers]) == ("sheet", ['--sheet "Room 1"', '--sheet "Room 2"'])
    assert in_a_line(interpret(sheets, ReadOptions(sheet="room 2")).table) == "Owls 1: red 2/4"


def test_a_sheet_that_is_not_there_is_refused_with_its_neighbor() -> None:
    with pytest.raises(TableFaults, match=r'one of the sheets Results, About\. Did you mean "Results"\?'):
        interpret([grid(WIDE, "Results"), grid(OTHER, "About")], ReadOptions(sheet="Resuts"))


def test_faults_of_all_sheets_come_together_each_with_its_sheet() -> None:
    sheets = [grid("Pins down\nGroup,Red (4)\nOwls,9", "Trial 1"), grid("Pins down\nGroup,Red (4)\nOwls,x", "Trial 2")]
    with pytest.raises(TableFaults) as caught:
        interpret(sheets)
    assert [(fault.place.sheet, fault.place.cell, fault.found) for fault in caught.value.faults] == [
        ("Trial 1", "B3", "9"),
        ("Trial 2", "B3", "x"),
    ]


def test_an_empty_file_is_refused() -> None:
    with pytest.raises(TableFaults, match="a results table"):
        interpret([grid(",", "Sheet1")])
