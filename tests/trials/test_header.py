"""Where the heading rows are."""

from __future__ import annotations

import pytest

from mathgen.trials.headed_columns import read_spelled
from mathgen.trials.header import find_header
from tests.trials.as_grid import grid


@pytest.mark.parametrize(
    ("text", "rows"),
    [
        ("Group,Trial,Red (4)\nOwls,1,3", (1, 1)),
        ("Sock ball,,\n,,\nPins knocked down,,\nGroup,Trial,Red (4)\nOwls,1,3", (4, 4)),
        ("Class:,4B,\nDate:,March 4,\nGroup,Trial,Red (4)\nOwls,1,3", (3, 3)),
        ("Group,Trial 1,\n,Red,Blue\nOwls,3,2", (1, 2)),
        ("Results,,\n,Trial 1,\nGroup,Red,Blue\nOwls,3,2", (2, 3)),
        ("Group,Trial,Pins knocked down,\n,,Red,Blue\nOwls,1,3,2", (1, 2)),
        ("Pins knocked down,,\nGroup,Owls,Hawks\nTrial,1,1\nRed (4),3,2", (2, 3)),
        ("Gruop,Tiral,Colr,Dwon\nOwls,1,red,3", (1, 1)),
        ("Group,Trial,Color,Set up,Down\nOwls,Trial 1,red (4),4,3", (1, 1)),
        (",Owls,Hawks\nRed (4),3,2", (1, 1)),
        ("Pins down,,\nSet up,,4\nGroup,Trial,Red\nOwls,1,3", (3, 3)),
    ],
)
def test_the_heading_rows_are_found(text: str, rows: tuple[int, int]) -> None:
    header = find_header(grid(text))
    assert header is not None
    assert (header.first_row, header.last_row) == rows


@pytest.mark.parametrize("text", ["Owls,1,3,2\nHawks,1,2,2", "x,y", "Group", "1,2,3\n4,5,6", "Dear all,,\nthe ramp is broken,,"])
def test_a_sheet_without_headings_has_none(text: str) -> None:
    assert find_header(grid(text)) is None


def test_upper_headings_reach_over_the_columns_to_their_right() -> None:
    header = find_header(grid("Group,Trial 1,,Trial 2,\n,Red (4),Blue (3),Red (4),Blue (3)\nOwls,1,2,3,0"))
    assert header is not None
    assert [(column.heading.trial, column.heading.color) for column in header.columns[1:]] == [
        (1, "red"),
        (1, "blue"),
        (2, "red"),
        (2, "blue"),
    ]


def test_a_merged_heading_reaches_as_far_as_its_cell_and_no_farther() -> None:
    header = find_header(grid("Group,Trial 1,,\n,Red,Blue,Total\nOwls,1,2,3", merged=((1, 2, 1, 3),)))
    assert header is not None
    assert [column.heading.trial for column in header.columns] == [None, 1, 1, None]


def test_a_word_typed_wrong_is_taken_for_its_neighbor_and_named() -> None:
    heading = read_spelled("Gruop")
    assert (heading.role, heading.text, heading.guess) == ("group", "Gruop", "group")
    assert read_spelled("Cone").role is None
