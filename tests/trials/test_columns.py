"""What each column is for."""

from __future__ import annotations

import pytest

from mathgen.trials.column_uses import Columns
from mathgen.trials.columns import sort_columns
from mathgen.trials.header import find_header
from tests.trials.as_grid import grid


def sorted_columns(text: str, named: frozenset[str] = frozenset()) -> Columns:
    cells = grid(text)
    header = find_header(cells)
    assert header is not None
    return sort_columns(cells, header, named, outer_trial=False, outer_group=False)


def uses(columns: Columns) -> dict[int, str]:
    found = {column.number: key for key, column in (columns.keys | columns.optional).items()}
    found |= {column.number: "counts" for column in columns.values} | {column.number: "total" for column in columns.totals}
    return dict(sorted(found.items()))


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Group,Trial,Red,Blue,Total\nOwls,1,3,2,5", {1: "group", 2: "trial", 3: "counts", 4: "counts", 5: "total"}),
        ("Group,Trial,Color,Set up,Down\nOwls,1,red,4,3", {1: "group", 2: "trial", 3: "color", 4: "counts", 5: "counts"}),
        ("Group,Trial,Color,Total,Down\nOwls,1,red,4,3", {1: "group", 2: "trial", 3: "color", 4: "counts", 5: "counts"}),
        ("Group,Trial,Red,Blue,Knocked down\nOwls,1,3,2,5", {1: "group", 2: "trial", 3: "counts", 4: "counts", 5: "total"}),
        ("Group,Round,Trial,Red\nOwls,A,1,3", {1: "group", 2: "round", 3: "trial", 4: "counts"}),
        ("Group,Round,Red,Blue\nOwls,1,3,2", {1: "group", 2: "trial", 3: "counts", 4: "counts"}),
        ("Group,Color,1,2\nOwls,red,3,2", {1: "group", 2: "color", 3: "counts", 4: "counts"}),
        ("Trial,Color,Owls,Hawks\n1,red,3,2", {1: "trial", 2: "color", 3: "counts", 4: "counts"}),
        ("Group,Owls,Hawks\nRed (4),3,2\nBlue (3),1,1", {1: "color", 2: "counts", 3: "counts"}),
        ("#,Trial,Red,Blue\n7,1,3,2", {1: "group", 2: "trial", 3: "counts", 4: "counts"}),
        ("#,Group,Trial,Red\n1,Owls,1,2", {2: "group", 3: "trial", 4: "counts"}),
        ("Group,Trial,,Red\nOwls,1,Set up,4\nOwls,1,Down,3", {1: "group", 2: "trial", 3: "measure", 4: "counts"}),
        (
            "Group,Trial,Target,Gap,Height,Notes,Red\nOwls,1,red,1,2,x,3",
            {1: "group", 2: "trial", 3: "target", 4: "gap", 5: "height", 6: "notes", 7: "counts"},
        ),
    ],
)
def test_columns_are_told_apart(text: str, expected: dict[int, str]) -> None:
    assert uses(sorted_columns(text)) == expected


@pytest.mark.parametrize(
    ("text", "note"),
    [
        ("Timestamp,Group,Trial,Red\nx,Owls,1,3", 'The time stamp column "Timestamp" is left out.'),
        ("Group,Trial,Red,Weather\nOwls,1,3,sunny", 'The column "Weather" is not used.'),
        ("Group,Table,Trial,Red\nOwls,4,1,3", 'The column "Table" is not used: "Group" already names the group.'),
        ("Group,Trial,Red,Percent\nOwls,1,3,75", 'The column "Percent" is not used.'),
        ("Group,Trial,Cone,Tube\nOwls,1,3,2", 'The headings "Cone", "Tube" are read as kinds of pin.'),
        ("Group,Trial,Red,Total\nOwls,1,3,3", 'The column "Total" is checked against the counts and not counted itself.'),
        ("Group,Trial,R,B\nOwls,1,3,3", "The colors r, b are kept as single letters."),
        (",Trial,Red,Blue\nOwls,1,3,3", "The column without a heading (column 1) is read as the group column."),
        ("Name,Trial,Red,Blue\nOwls,1,3,3", 'The column "Name" is read as the group column.'),
    ],
)
def test_what_is_guessed_or_left_out_is_said(text: str, note: str) -> None:
    assert note in sorted_columns(text).notes


def test_a_column_of_numbers_beside_known_colors_is_a_fault_unless_something_names_it() -> None:
    text = "Group,Trial,Red,Cone\nOwls,1,3,2"
    assert [fault.place.cell for fault in sorted_columns(text).faults] == ["D1"]
    assert sorted_columns(text, frozenset({"cone"})).faults == []
