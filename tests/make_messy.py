"""Makes samples/messy.xlsx, a class's table as real life leaves it; run as ``python tests/make_messy.py``."""

from __future__ import annotations

import datetime
import io
import re
import zipfile
from pathlib import Path

from openpyxl import Workbook
from openpyxl.styles import Alignment, Font

SAMPLE = Path(__file__).parent.parent / "samples" / "messy.xlsx"
_MADE = datetime.datetime(2025, 1, 1)

ROWS: tuple[tuple[str | int | None, ...], ...] = (
    ("Sock ball results", None, None, None, None, None, None),
    ("cardboard ramp, paper-tube pins (pins KNOCKED DOWN)", None, None, None, None, None, None),
    (None, None, None, None, None, None, None),
    ("Gruop ", "Attempt", "Knocked down", None, None, "Total", "Notes"),
    (None, None, "RED", "blue ", "Gold", None, None),
    ("Set up", None, 4, 3, 5, 12, None),
    ("Owls", 1, 3, 2, "||||", 9, None),
    (None, 2, 4, 1, 5, 10, "new sock"),
    (None, 3, 2, 3, 3, 8, None),
    ("HERONS ", 1, 1, 2, 1, 4, None),
    (None, 2, 2, "0", 4, 6, "ramp slipped, set it up again"),
    (None, 3, 3, 3, 5, 11, None),
    ("Finches", 1, 4, 1, 3, 8, None),
    (None, 2, 3, 1, 5, 9, " "),
    (None, 3, 1, 2, "absent", 3, "gold pins not rolled at"),
    ("wrens", "1", 2, 3, 0, 5, None),
    (None, 2, "3 ", 1, 3, 7, None),
    (None, 3, 1, 1, 2, 4, None),
    ("Totals", None, 29, 20, 35, 84, None),
)
MERGED = ("A1:G1", "A2:G2", "A4:A5", "B4:B5", "C4:E4", "F4:F5", "G4:G5", "A7:A9", "A10:A12", "A13:A15", "A16:A18")


def messy() -> bytes:
    """The workbook's bytes, the same each time."""
    workbook = Workbook()
    workbook.properties.created = workbook.properties.modified = _MADE
    sheet = workbook.active
    assert sheet is not None
    sheet.title = "Sheet1"
    for row in ROWS:
        sheet.append(row)
    for cells in MERGED:
        sheet.merge_cells(cells)
    for cell in (*sheet[1], *sheet[4], *sheet[5], *sheet[19]):
        cell.font = Font(bold=True)
    sheet["C4"].alignment = Alignment(horizontal="center")
    sheet.column_dimensions["G"].width = 30
    lists = workbook.create_sheet("lists")
    lists.sheet_state = "hidden"
    for color in ("red", "blue", "gold"):
        lists.append((color,))
    raw = io.BytesIO()
    workbook.save(raw)
    return _without_clock(raw.getvalue())


def _without_clock(content: bytes) -> bytes:
    """The same archive with one time for every part: openpyxl writes the time of saving into each, and into its properties."""
    made = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(content)) as read, zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED) as write:
        for name in read.namelist():
            part = read.read(name)
            if name == "docProps/core.xml":
                part = re.sub(rb"(?<=>)[^<>]*(?=</dcterms:modified>)", b"2025-01-01T00:00:00Z", part)
            info = zipfile.ZipInfo(name, _MADE.timetuple()[:6])
            info.compress_type = zipfile.ZIP_DEFLATED
            write.writestr(info, part)
    return made.getvalue()


if __name__ == "__main__":
    SAMPLE.write_bytes(messy())
