"""Workbooks to grids: values as shown, dates, errors, merged cells, hidden sheets, far cells and what cannot be read."""

from __future__ import annotations

import datetime
import io
import re
import zipfile
from collections.abc import Callable
from pathlib import Path

import pandas
import pytest
import xlwt
from openpyxl import Workbook

from mathgen.errors import Fault, Place, TableFaults
from mathgen.trials.grid import Grid
from mathgen.trials.source import read_grids
from tests.make_messy import ROWS, messy
from tests.trials.test_archive import zipped

SAMPLES = Path(__file__).parent.parent.parent / "samples"
HEADING, OWLS, HERONS = ("Group", "Trial", "Red (4)"), ("Owls", 1, 3), ("Herons", 2, 0)
AS_TEXT = (("Group", "Trial", "Red (4)"), ("Owls", "1", "3"), ("Herons", "2", "0"))
ADVICE = "Copy only the class's table into a new sheet and save that as CSV or XLSX."
ODS_HEAD = (
    '<office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" '
    'xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" '
    'xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:'
    'xmlns:calcext:1.0"><office:automatic-styles><style:style style:name="hidden" style:family="table"><style:table-properties '
    'table:display="false"/></style:style></office:automatic-styles><office:body><office:spreadsheet>'
)
ODS_TAIL = "</office:spreadsheet></office:body></office:document-content>"


def xlsx(fill: Callable[[Workbook], object]) -> bytes:
    workbook, made = Workbook(), io.BytesIO()
    fill(workbook)
    workbook.save(made)
    return made.getvalue()


def xls(fill: Callable[[xlwt.Workbook], object]) -> bytes:
    workbook, made = xlwt.Workbook(), io.BytesIO()
    fill(workbook)
    workbook.save(made)
    return made.getvalue()


def ods(tables: str) -> bytes:
    kind, manifest = b"application/vnd.oasis.opendocument.spreadsheet", b"<manifest/>"
    return zipped(("mimetype", kind), ("META-INF/manifest.xml", manifest), ("content.xml", (ODS_HEAD + tables + ODS_TAIL).encode()))


def ods_cell(text: str, attributes: str = "") -> str:
    return f'<table:table-cell office:value-type="string" {attributes}><text:p>{text}</text:p></table:table-cell>'


@pytest.fixture
def read(tmp_path: Path) -> Callable[[bytes], tuple[Grid, ...]]:
    def grids(content: bytes) -> tuple[Grid, ...]:
        file = tmp_path / "table.txt"  # the suffix does not matter
        file.write_bytes(content)
        return read_grids(str(file))

    return grids


@pytest.fixture
def refused(read: Callable[[bytes], tuple[Grid, ...]]) -> Callable[[bytes], tuple[Fault, ...]]:
    def faults(content: bytes) -> tuple[Fault, ...]:
        with pytest.raises(TableFaults) as caught:
            read(content)
        return caught.value.faults

    return faults


Read = Callable[[bytes], tuple[Grid, ...]]
Refused = Callable[[bytes], tuple[Fault, ...]]


def edited(content: bytes, part: str, change: Callable[[bytes], bytes]) -> bytes:
    """The archive with one part changed."""
    with zipfile.ZipFile(io.BytesIO(content)) as archive:
        parts = [(name, archive.read(name)) for name in archive.namelist()]
    assert any(name == part and change(old) != old for name, old in parts)
    return zipped(*((name, change(old) if name == part else old) for name, old in parts))


def test_each_format_gives_the_same_rows_from_where_they_stand(read: Read) -> None:
    table = pandas.DataFrame([HEADING, OWLS, HERONS])
    made = io.BytesIO()
    table.to_excel(made, engine="odf", index=False, header=False, startrow=2, startcol=1)

    def fill_xlsx(workbook: Workbook) -> None:
        for row, cells in enumerate((HEADING, OWLS, HERONS), 3):
            for column, value in enumerate(cells, 2):
                workbook.worksheets[0].cell(row, column, value)

    def fill_xls(workbook: xlwt.Workbook) -> None:
        sheet = workbook.add_sheet("Sheet")
        for row, cells in enumerate((HEADING, OWLS, HERONS), 2):
            for column, value in enumerate(cells, 1):
                sheet.write(row, column, value)

    expected = (("",) * 4, ("",) * 4, *(("", *row) for row in AS_TEXT))
    for content in (xlsx(fill_xlsx), xls(fill_xls), made.getvalue()):
        (grid,) = read(content)
        assert grid.rows == expected


def test_values_are_shown_as_the_spreadsheet_shows_them_and_dates_are_marked(read: Read) -> None:
    def fill(workbook: Workbook) -> None:
        sheet = workbook.worksheets[0]
        sheet.append([3.0, 0.75, 0.1 + 0.2, True, " Red\n(4)\u00a0", -0.0, 1e16, "3/4"])
        sheet.append(
            [datetime.date(2025, 3, 4), datetime.time(3, 4), datetime.timedelta(hours=30), datetime.datetime(2025, 3, 4, 10, 2, 3)]
        )

    (grid,) = read(xlsx(fill))
    assert grid.rows[0] == ("3", "0.75", "0.3", "TRUE", "Red (4)", "0", "10000000000000000", "3/4")
    assert grid.rows[1][:4] == ("2025-03-04", "03:04:00", "30:00:00", "2025-03-04 10:02:03")
    assert grid.dates == {(2, 1), (2, 2), (2, 3), (2, 4)}


def test_a_date_in_xls_and_ods_is_marked(read: Read) -> None:
    day = datetime.date(2025, 3, 4)
    made = io.BytesIO()
    pandas.DataFrame([["Owls", day]]).to_excel(made, engine="odf", index=False, header=False)

    def fill(workbook: xlwt.Workbook) -> None:
        sheet = workbook.add_sheet("S")
        sheet.write(0, 0, "Owls")
        sheet.write(0, 1, day, xlwt.easyxf(num_format_str="D-MMM"))

    for content in (xls(fill), made.getvalue()):
        (grid,) = read(content)
        assert (grid.rows, grid.dates) == ((("Owls", "2025-03-04"),), {(1, 2)})


def test_a_cell_that_shows_an_error_is_not_empty(read: Read) -> None:
    def fill_xlsx(workbook: Workbook) -> None:
        sheet = workbook.worksheets[0]
        sheet.append(["Owls", 3])
        sheet["C2"] = "#DIV/0!"
        sheet["C2"].data_type = "e"

    def fill_xls(workbook: xlwt.Workbook) -> None:
        sheet = workbook.add_sheet("S")
        sheet.write(0, 0, "Owls")
        sheet.write(0, 1, 3)
        sheet.row(1).set_cell_error(2, 7)

    error = ods_cell("#DIV/0!", 'table:formula="of:=1/0" calcext:value-type="error" office:string-value=""')
    rows = f"<table:table-row>{ods_cell('Owls')}{ods_cell('3')}</table:table-row><table:table-row><table:table-cell "
    rows += f'table:number-columns-repeated="2"/>{error}</table:table-row>'
    for content in (xlsx(fill_xlsx), xls(fill_xls), ods(f'<table:table table:name="S">{rows}</table:table>')):
        (grid,) = read(content)
        assert grid.rows == (("Owls", "3", ""), ("", "", "#DIV/0!"))


def test_merged_cells_are_told_and_cut_to_the_cells_in_use(read: Read) -> None:
    def fill_xlsx(workbook: Workbook) -> None:
        sheet = workbook.worksheets[0]
        for row in (("Group", "Red"), ("Owls", 3), (None, 4)):
            sheet.append(row)
        sheet.merge_cells("A2:A900")
        sheet.merge_cells("D1:E1")

    def fill_xls(workbook: xlwt.Workbook) -> None:
        sheet = workbook.add_sheet("S")
        sheet.write(0, 0, "Group")
        sheet.write(0, 1, "Red")
        sheet.write_merge(1, 2, 0, 0, "Owls")
        sheet.write(1, 1, 3)
        sheet.write(2, 1, 4)

    spanned = 'table:number-rows-spanned="2" table:number-columns-spanned="1"'
    rows = f"<table:table-row>{ods_cell('Group')}{ods_cell('Red')}</table:table-row>"
    rows += f"<table:table-row>{ods_cell('Owls', spanned)}{ods_cell('3')}</table:table-row>"
    rows += f"<table:table-row><table:covered-table-cell/>{ods_cell('4')}</table:table-row>"
    for content in (xlsx(fill_xlsx), xls(fill_xls), ods(f'<table:table table:name="S">{rows}</table:table>')):
        (grid,) = read(content)
        assert (grid.rows, grid.merged) == ((("Group", "Red"), ("Owls", "3"), ("", "4")), ((2, 1, 3, 1),))


def test_hidden_sheets_are_left_out_only_where_others_show(read: Read) -> None:
    def fill(workbook: Workbook) -> None:
        shown = workbook.worksheets[0]
        shown.title = "Trial 1"
        hidden, empty = workbook.create_sheet("lists"), workbook.create_sheet("empty")
        hidden.sheet_state, empty.sheet_state = "hidden", "visible"
        hidden["A1"] = "red"
        if filled:
            shown["A1"] = "Owls"
            workbook.create_sheet("Trial 2")["A1"] = "Owls"

    filled = True
    assert [grid.sheet for grid in read(xlsx(fill))] == ["Trial 1", "Trial 2"]
    filled = False
    assert [grid.sheet for grid in read(xlsx(fill))] == ["lists"]
    hidden = f'<table:table table:name="lists" table:style-name="hidden"><table:table-row>{ods_cell("red")}</table:table-row></table:table>'
    shown = f'<table:table table:name="Trial 1"><table:table-row>{ods_cell("Owls")}</table:table-row></table:table>'
    assert [grid.sheet for grid in read(ods(hidden + shown))] == ["Trial 1"]


def test_a_workbook_with_nothing_in_it_is_refused(refused: Refused) -> None:
    (fault,) = refused(xlsx(lambda workbook: workbook.create_sheet("two")))
    assert fault.found.endswith("a workbook without anything in it")


def test_a_formula_without_a_result_is_told_by_its_cell(read: Read) -> None:
    def fill(workbook: Workbook) -> None:
        sheet = workbook.worksheets[0]
        sheet.append(["Owls", 3, "=B1+1"])
        sheet.append(["Herons", 2, "=B2+1"])

    assert read(xlsx(fill))[0].unworked == {(1, 3), (2, 3)}
    worked = edited(xlsx(fill), "xl/worksheets/sheet1.xml", lambda part: re.sub(rb"</f><v ?/>|</f><v></v>", b"</f><v>4</v>", part))
    assert read(worked)[0].rows == (("Owls", "3", "4"), ("Herons", "2", "4"))
    assert not read(worked)[0].unworked
    rows = f'<table:table-row>{ods_cell("Owls")}<table:table-cell table:formula="of:=1+1"/></table:table-row>'
    assert read(ods(f'<table:table table:name="S">{rows}</table:table>'))[0].unworked == {(1, 2)}


def test_cells_far_apart_are_refused_before_room_is_made_for_those_between(refused: Refused) -> None:
    def fill_xlsx(workbook: Workbook) -> None:
        workbook.worksheets[0]["A1"] = workbook.worksheets[0]["XFD1048576"] = 1

    def fill_xls(workbook: xlwt.Workbook) -> None:
        sheet = workbook.add_sheet("Sheet")
        sheet.write(0, 0, 1)
        sheet.write(65535, 255, 1)

    repeats = 'table:number-columns-repeated="1024"'
    rows = f'<table:table-row table:number-rows-repeated="1048576">{ods_cell("3", repeats)}</table:table-row>'
    limit = "at most 5,000 rows and 400 columns"
    for content, sheet, last_row, last_column in (
        (xlsx(fill_xlsx), "Sheet", "1,048,576", "16,384"),
        (xls(fill_xls), None, "65,536", "256"),
        (ods(f'<table:table table:name="S">{rows}</table:table>'), "S", "1,048,576", "1,024"),
    ):
        assert len(content) < 10_000
        found = f"cells in use down to row {last_row} and across to column {last_column}"
        assert refused(content) == (Fault(Place(sheet=sheet), found, limit, ADVICE),)


def test_cells_without_a_place_of_their_own_are_counted(refused: Refused) -> None:
    cells = b"<row>" + b"<c><v>1</v></c>" * 401 + b"</row>"
    filled = b"<sheetData>" + cells + b"</sheetData>"
    empty = rb"<sheetData ?/>|<sheetData></sheetData>"
    content = edited(xlsx(lambda workbook: None), "xl/worksheets/sheet1.xml", lambda part: re.sub(empty, filled, part))
    assert refused(content)[0].found == "cells in use down to row 1 and across to column 401"


def test_empty_cells_to_the_edge_of_the_sheet_do_not_count(read: Read) -> None:
    empty = '<table:table-cell table:number-columns-repeated="16383"/>'
    rows = f"<table:table-row>{ods_cell('Owls')}{empty}</table:table-row>"
    rows += f'<table:table-row table:number-rows-repeated="1048575">{empty}<table:table-cell/></table:table-row>'
    assert read(ods(f'<table:table table:name="S">{rows}</table:table>'))[0].rows == (("Owls",),)

    def fill(workbook: Workbook) -> None:
        sheet = workbook.worksheets[0]
        sheet["A1"] = "Owls"
        sheet["ZZ9000"].number_format = "0.00"

    assert read(xlsx(fill))[0].rows == (("Owls",),)


def test_a_workbook_that_defines_entities_is_refused(refused: Refused) -> None:
    bomb = b'<!DOCTYPE a [<!ENTITY b "bbbbbbbbbb"><!ENTITY c "&b;&b;&b;&b;">]>'
    content = edited(xlsx(lambda workbook: None), "xl/worksheets/sheet1.xml", lambda part: bomb + part[part.index(b"<worksheet") :])
    assert refused(content)[0].found.endswith("a damaged workbook (xl/worksheets/sheet1.xml defines entities)")


def test_a_workbook_of_too_many_sheets_is_refused(refused: Refused) -> None:
    sheets = "".join(f'<table:table table:name="S{number}"/>' for number in range(201))
    assert refused(ods(sheets)) == (Fault(Place(), "a workbook of 201 sheets", "at most 200 sheets", ADVICE),)


def test_a_password_is_said_in_each_format(refused: Refused) -> None:
    """A password-protected XLSX is an OLE2 file with a stream EncryptedPackage ([MS-OFFCRYPTO], from memory)."""
    made = xls(lambda workbook: workbook.add_sheet("S").write(0, 0, 1))
    # FILEPASS (0x2F) in place of the first record after the start of the workbook ([MS-XLS] 2.4.117, from memory).
    start = made.index(b"\x09\x08", 512)
    second = start + 4 + int.from_bytes(made[start + 2 : start + 4], "little")
    locked_xls = made[:second] + b"\x2f\x00" + made[second + 2 :]
    locked_xlsx = made.replace("Workbook\0".encode("utf-16-le"), "EncryptedPackage\0".encode("utf-16-le"))
    kind = b"application/vnd.oasis.opendocument.spreadsheet"
    manifest = b"<manifest:manifest><manifest:encryption-data/></manifest:manifest>"
    locked_ods = zipped(("mimetype", kind), ("META-INF/manifest.xml", manifest), ("content.xml", b"\x8f\x01"))
    for content in (locked_xls, locked_xlsx, locked_ods):
        (fault,) = refused(content)
        assert fault.found.endswith(": a workbook protected by a password")
        assert fault.advice == "Save a copy without the password, as XLSX or CSV."


@pytest.mark.parametrize("keep", [600, 1500, 3000])
def test_a_workbook_that_is_cut_short_is_refused(refused: Refused, keep: int) -> None:
    for content in (xls(lambda workbook: workbook.add_sheet("S").write(0, 0, 1)), messy()):
        assert "a damaged workbook" in refused(content[:keep])[0].found


def test_sectors_in_a_ring_are_refused(refused: Refused) -> None:
    made = bytearray(xls(lambda workbook: workbook.add_sheet("S").write(0, 0, 1)))
    table = (int.from_bytes(made[76:80], "little") + 1) * 512  # where the list of sectors stands
    made[table : table + 400] = (1).to_bytes(4, "little") * 100
    assert "a damaged workbook" in refused(bytes(made))[0].found


def test_the_messy_sample_is_what_its_maker_makes(read: Read) -> None:
    assert read((SAMPLES / "messy.xlsx").read_bytes()) == read(messy())
    assert messy() == messy()


def test_the_messy_sample_keeps_all_that_is_messy(read: Read) -> None:
    (grid,) = read((SAMPLES / "messy.xlsx").read_bytes())
    assert len(grid.rows) == len(ROWS)
    assert grid.rows[3] == ("Gruop", "Attempt", "Knocked down", "", "", "Total", "Notes")
    assert grid.rows[6] == ("Owls", "1", "3", "2", "||||", "9", "")
    assert grid.rows[14][4] == "absent"
    assert {(4, 3, 4, 5), (7, 1, 9, 1)} <= set(grid.merged)
