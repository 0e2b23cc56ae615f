"""Formulas without a result: passed over where they sum up the counts, refused everywhere else."""

from __future__ import annotations

import io
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from openpyxl import Workbook

from mathgen.errors import TableFaults
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import ReadResult, read_table

Edit = Callable[[Any], None]
ROWS = (
    ("Pins knocked down", None, None, None, None),
    ("Group", "Trial", "Red (4)", "Blue (3)", "Total"),
    ("Owls", 1, 3, 1, "=SUM(C3:D3)"),
    ("Owls", 2, 4, 2, "=SUM(C4:D4)"),
    ("Herons", 1, 0, 3, "=SUM(C5:D5)"),
    ("Total", None, "=SUM(C3:C5)", "=SUM(D3:D5)", "=SUM(E3:E5)"),
    ("Average", None, "=AVERAGE(C3:C5)", "=AVERAGE(D3:D5)", None),
)


def read(folder: Path, edit: Edit = lambda sheet: None) -> ReadResult:
    """A workbook as a program writes it: no formula has a result."""
    book = Workbook()
    sheet = book.active
    for row in ROWS:
        sheet.append(row)
    edit(sheet)
    out = io.BytesIO()
    book.save(out)
    path = folder / "table.xlsx"
    path.write_bytes(out.getvalue())
    return read_table(str(path), ReadOptions())


def test_totals_and_averages_without_a_result_are_passed_over_and_that_is_said(tmp_path: Path) -> None:
    result = read(tmp_path)
    assert [row.down for row in result.table.rows] == [3, 1, 4, 2, 0, 3]
    assert result.table.groups == ("Owls", "Herons")
    said = "Cells E3 to D7 hold 8 formulas without a result; they are passed over, for they follow from the counts."
    assert said in result.notes


def test_one_of_them_is_told_by_its_cell(tmp_path: Path) -> None:
    def edit(sheet: Any) -> None:
        sheet.delete_rows(6, 2)
        sheet["E3"], sheet["E4"] = 4, 6

    assert "Cell E5 is a formula without a result; it is passed over, for it follows from the counts." in read(tmp_path, edit).notes


@pytest.mark.parametrize("cell", ["C4", "B4", "A5", "C2"])
def test_where_a_number_or_a_name_is_needed_the_cell_is_refused_and_what_to_do_is_said(tmp_path: Path, cell: str) -> None:
    with pytest.raises(TableFaults) as refused:
        read(tmp_path, lambda sheet: sheet.__setitem__(cell, "=1+1"))
    told = [fault for fault in refused.value.faults if fault.found == "a formula without a result"]
    assert [fault.place.cell for fault in told] == [cell]
    assert "save it there" in told[0].advice


def test_a_row_of_counts_that_are_all_formulas_is_not_called_empty(tmp_path: Path) -> None:
    def edit(sheet: Any) -> None:
        for cell in ("C3", "D3", "C4", "D4", "C5", "D5"):
            sheet[cell] = "=1+1"

    with pytest.raises(TableFaults) as refused:
        read(tmp_path, edit)
    assert {fault.found for fault in refused.value.faults} == {"a formula without a result"}
    assert len(refused.value.faults) == 6


def test_headings_that_are_formulas_are_named_where_no_table_is_found(tmp_path: Path) -> None:
    def edit(sheet: Any) -> None:
        for cell in ("A2", "B2", "C2", "D2", "E2", "A3", "A4", "A5"):
            sheet[cell] = '="x"'

    with pytest.raises(TableFaults) as refused:
        read(tmp_path, edit)
    assert any(fault.place.cell == "A2" and fault.found == "a formula without a result" for fault in refused.value.faults)
