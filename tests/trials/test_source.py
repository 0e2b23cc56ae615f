"""What a file is, told by its content, and files that are no table called by their names."""

from __future__ import annotations

import io
import os
import subprocess
import sys
from pathlib import Path
from types import SimpleNamespace

import pytest

from mathgen.errors import Fault, Place, TableFaults
from mathgen.trials.source import read_grids
from tests.trials.test_archive import zipped

SAVE_AS = "Open it in the program that made it and save it as CSV or XLSX."
TABLE = "a table as text, CSV, XLSX, XLS or ODS"
OLE2 = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
SAMPLES = Path(__file__).parent.parent.parent / "samples"


def fault(path: Path | str) -> Fault:
    with pytest.raises(TableFaults) as caught:
        read_grids(str(path))
    (only,) = caught.value.faults
    return only


@pytest.mark.parametrize(
    ("content", "what"),
    [
        (b"%PDF-1.7\n%\xe2\xe3\n", "a PDF"),
        (b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR", "a picture"),
        (b"\xff\xd8\xff\xe0\0\x10JFIF", "a picture"),
        (b"GIF89a\1\0\1\0", "a picture"),
        (b"BM\x36\0\0\0\0\0", "a picture"),
        (b"{\\rtf1\\ansi Owls}", "an RTF document"),
        (b"\x1f\x8b\x08\0\0", "a packed file (GZ)"),
        (b"SQLite format 3\0", "a database"),
        (b"\x09\x02\x06\0\0\0", "an Excel workbook from before 1993"),
        (b"\xef\xbb\xbf \n<!DOCTYPE html><table><tr>", "a web page"),
        (b"<html><body>", "a web page"),
        (b"<?xml version='1.0'?><Workbook>", "an XML file"),
        (OLE2 + "WordDocument\0".encode("utf-16-le"), "a Word document"),
        (zipped(("word/document.xml", b"<a/>")), "a Word document"),
        (zipped(("ppt/presentation.xml", b"<a/>")), "a PowerPoint file"),
        (zipped(("xl/workbook.bin", b"a")), "an XLSB workbook"),
        (zipped(("Index/Document.iwa", b"a"), ("Index/Tables/DataList.iwa", b"a")), "a Numbers workbook"),
        (zipped(("Index/Document.iwa", b"a")), "a Numbers, Pages or Keynote file"),
        (zipped(("mimetype", b"application/vnd.oasis.opendocument.text")), "an OpenDocument file that is no spreadsheet"),
    ],
)
def test_a_file_that_is_no_table_is_called_by_its_name(tmp_path: Path, content: bytes, what: str) -> None:
    file = tmp_path / "table.csv"  # a suffix that says otherwise
    file.write_bytes(content)
    assert fault(file) == Fault(Place(), f"{file}: {what}", TABLE, SAVE_AS)


def test_a_plain_zip_file_asks_for_the_table_in_it(tmp_path: Path) -> None:
    file = tmp_path / "a.xlsx"
    file.write_bytes(zipped(("table.csv", b"Group,Red\n")))
    advice = "Unpack it, and name the file in it that holds the table."
    assert fault(file) == Fault(Place(), f"{file}: a packed file (ZIP)", TABLE, advice)


def test_bytes_of_no_kind_are_refused(tmp_path: Path) -> None:
    file = tmp_path / "a.csv"
    file.write_bytes(bytes(range(256)))
    assert fault(file) == Fault(Place(), f"{file}: bytes that are no text", TABLE, SAVE_AS)


def test_a_missing_file_is_refused_with_the_names_near_it(tmp_path: Path) -> None:
    (tmp_path / "results.csv").write_text("a,b\n")
    wrong, right = tmp_path / "reslts.csv", tmp_path / "results.csv"
    assert fault(wrong) == Fault(Place(), f"{wrong}: no such file", TABLE, f"Did you mean {right}?")
    other = tmp_path / "z"
    assert fault(other).advice == "Is the name spelled right?"
    assert fault(tmp_path / "no" / "a.csv").advice == f'There is no folder "{tmp_path / "no"}".'


def test_a_folder_is_refused(tmp_path: Path) -> None:
    assert fault(tmp_path) == Fault(Place(), f"{tmp_path}: a folder", TABLE, "Name the file in it that holds the table.")
    package = tmp_path / "results.numbers"  # on macOS a Numbers workbook may be a folder
    package.mkdir()
    assert fault(package) == Fault(Place(), f"{package}: a Numbers workbook", TABLE, SAVE_AS)


def test_a_large_file_is_refused_without_reading_it(tmp_path: Path) -> None:
    file = tmp_path / "a.csv"
    with file.open("wb") as sparse:
        sparse.truncate(3_000_000_000)
    advice = "Copy only the class's table into a new sheet and save that as CSV or XLSX."
    assert fault(file) == Fault(Place(), f"{file}: 3000 MB, more than 20 MB", TABLE, advice)


@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() == 0, reason="root may open every file")
def test_a_file_that_may_not_be_opened_is_refused(tmp_path: Path) -> None:
    file = tmp_path / "a.csv"
    file.write_text("a,b\n")
    file.chmod(0)
    assert fault(file).found == f"{file}: a file that cannot be opened (Permission denied)"


def test_a_name_with_a_zero_byte_is_refused() -> None:
    assert "cannot be opened" in fault("a\0.csv").found


def test_standard_input_takes_pasted_text_and_workbooks(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "stdin", SimpleNamespace(buffer=io.BytesIO(b"Group\tRed\nOwls\t3\n")))
    assert [grid.rows for grid in read_grids("-")] == [(("Group", "Red"), ("Owls", "3"))]
    monkeypatch.setattr(sys, "stdin", SimpleNamespace(buffer=io.BytesIO((SAMPLES / "messy.xlsx").read_bytes())))
    assert [grid.sheet for grid in read_grids("-")] == ["Sheet1"]
    monkeypatch.setattr(sys, "stdin", SimpleNamespace(buffer=io.BytesIO(b"")))
    assert fault("-").found == "standard input: nothing"


def test_text_whose_heading_starts_like_a_picture_is_text(tmp_path: Path) -> None:
    file = tmp_path / "a.csv"
    file.write_text("BMX,Red\nOwls,3\n")
    assert read_grids(str(file))[0].rows[0] == ("BMX", "Red")


def test_reading_text_does_not_load_the_workbook_library() -> None:
    program = (
        "import sys; from mathgen.trials.source import read_grids; read_grids(sys.argv[1]);"
        "print([name for name in ('python_calamine', 'pandas', 'openpyxl', 'mathgen.trials.read_workbook') if name in sys.modules])"
    )
    run = subprocess.run([sys.executable, "-c", program, str(SAMPLES / "main.csv")], capture_output=True, text=True, check=True)
    assert run.stdout == "[]\n"
