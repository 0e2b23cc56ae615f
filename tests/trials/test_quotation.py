"""Quotation marks around names."""

from __future__ import annotations

import pytest

from mathgen.trials.grid import Grid
from mathgen.trials.read_text import read_text

HEAD = "Group,Trial,Red\n"


def read(text: str) -> Grid:
    return read_text(text.encode(), "class.csv")


def test_marks_typed_into_a_spreadsheet_stay_in_what_is_pasted() -> None:
    pasted = read('Group\tTrial\tRed\nX\t1\t3\n"Q"\t1\t2')
    assert (pasted.rows[2], pasted.notes) == (('"Q"', "1", "2"), ())


def test_marks_in_a_csv_file_are_the_files_own_and_that_is_said() -> None:
    grid = read(HEAD + 'Owls,1,3\n"Q",1,2')
    assert grid.rows[2] == ("Q", "1", "2")
    assert grid.notes == ('The quotation marks around "Q" are read as marks of the file, not as part of the name.',)


@pytest.mark.parametrize(
    "text",
    [
        '"Group","Trial","Red"\n"Owls","1","3"',
        HEAD + '"Owls, the first",1,3',
        HEAD + '"The Owls",1,3',
        HEAD + '"""Q""",1,3',
        HEAD + 'Owls,1,"3"',
        HEAD + "Owls,1,3",
    ],
)
def test_marks_that_a_program_puts_are_passed_over_in_silence(text: str) -> None:
    assert read(text).notes == ()


def test_doubled_marks_are_a_name_in_marks() -> None:
    assert read(HEAD + '"""Q""",1,3').rows[1][0] == '"Q"'
