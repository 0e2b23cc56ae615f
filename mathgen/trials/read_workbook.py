"""XLSX, XLS and ODS workbooks to grids, a sheet each."""

from __future__ import annotations

import datetime
import io
from decimal import Decimal

from python_calamine import CalamineError, CalamineSheet, PasswordError, SheetTypeEnum, SheetVisibleEnum, load_workbook

from mathgen.errors import Fault, Place, TableFaults
from mathgen.trials.archive import Archive, damaged, password
from mathgen.trials.grid import Grid
from mathgen.trials.scan import Scan
from mathgen.trials.scan_ods import scan_ods
from mathgen.trials.scan_xls import scan_xls
from mathgen.trials.scan_xlsx import scan_xlsx
from mathgen.trials.tidy import squared

Value = int | float | str | bool | datetime.time | datetime.date | datetime.datetime | datetime.timedelta
_DATES = (datetime.date, datetime.time, datetime.timedelta)  # a datetime is a date


def read_xlsx(archive: Archive) -> tuple[Grid, ...]:
    """The grids of an XLSX workbook, as `read_sheets` gives them."""
    return read_sheets(archive.content, archive.name, scan_xlsx(archive))


def read_ods(archive: Archive) -> tuple[Grid, ...]:
    """The grids of an ODS workbook, as `read_sheets` gives them."""
    return read_sheets(archive.content, archive.name, scan_ods(archive))


def read_xls(content: bytes, name: str) -> tuple[Grid, ...]:
    """The grids of an XLS workbook, as `read_sheets` gives them."""
    return read_sheets(content, name, scan_xls(content, name))


def read_sheets(content: bytes, name: str, scans: dict[str, Scan] | list[Scan]) -> tuple[Grid, ...]:
    """A grid for each sheet that has cells in use: the visible ones, or the hidden ones where none is visible.

    Args:
        content: the workbook, which has been scanned and fits.
        name: what to call it in a fault.
        scans: the sheets' scans by name, or in the workbook's order.
    Raises:
        TableFaults: a password, damage, no cells in use.
    """
    # pandas reads workbooks through this same library, but drops what we need: hidden or not, merged cells, where cells start.
    try:
        workbook = load_workbook(io.BytesIO(content))
        sheets = [sheet for sheet in workbook.sheets_metadata if sheet.typ == SheetTypeEnum.WorkSheet]
        if isinstance(scans, list):
            scans = {sheet.name: scan for sheet, scan in zip(workbook.sheets_metadata, scans, strict=False)}
        grids = {}
        for sheet in sheets:
            # Only what was scanned is opened: opening makes room for all that lies between the outermost cells.
            if sheet.name not in scans:
                raise damaged(name, f'sheet "{sheet.name}" cannot be found')
            grid = _grid(workbook.get_sheet_by_name(sheet.name), scans[sheet.name])
            if grid.rows:
                grids[sheet.name] = grid
    except PasswordError as err:
        raise password(name) from err
    except CalamineError as err:
        raise damaged(name, "the file is cut short or changed on the way") from err
    except BaseException as err:
        # The library's word for "this cannot happen" on a damaged file; it is no Exception, so it can be told by name only.
        if type(err).__name__ != "PanicException":
            raise
        raise damaged(name, "the file is cut short or changed on the way") from err
    visible = [sheet.name for sheet in sheets if sheet.visible == SheetVisibleEnum.Visible and sheet.name in grids]
    chosen = tuple(grids[sheet] for sheet in visible or grids)
    if not chosen:
        advice = "Was it saved, and is it the right one?"
        raise TableFaults((Fault(Place(), f"{name}: a workbook without anything in it", "a table with headings and results", advice),))
    return chosen


def _grid(sheet: CalamineSheet, scan: Scan) -> Grid:
    values: list[list[Value]] = sheet.to_python(skip_empty_area=False)
    texts = [[shown(value) for value in row] for row in values]
    for (row, column), error in scan.errors.items():
        # The reader leaves a cell that shows an error empty, and empty means that nobody wrote anything.
        texts += [[] for _ in range(row - len(texts))]
        texts[row - 1] += [""] * (column - len(texts[row - 1]))
        texts[row - 1][column - 1] = error
    dates = frozenset(
        (row, column) for row, cells in enumerate(values, 1) for column, value in enumerate(cells, 1) if isinstance(value, _DATES)
    )
    known = sheet.merged_cell_ranges or []
    merged = [(top + 1, left + 1, bottom + 1, right + 1) for (top, left), (bottom, right) in known] or scan.merged
    rows = squared(texts)
    return Grid(rows, sheet.name, _inside(merged, len(rows), len(rows[0]) if rows else 0), dates, frozenset(scan.unworked))


def _inside(merged: list[tuple[int, int, int, int]], rows: int, columns: int) -> tuple[tuple[int, int, int, int], ...]:
    """Merged ranges cut to the grid: they may run on far below the last cell in use, or lie outside altogether."""
    cut = [(top, left, min(bottom, rows), min(right, columns)) for top, left, bottom, right in merged]
    return tuple(sorted((top, left, bottom, right) for top, left, bottom, right in cut if top <= bottom and left <= right))


def shown(value: Value) -> str:
    """One cell's value as text, numbers in plain digits to the 15 places that spreadsheets keep.

    Dates and times are in ISO form: the cell's own form is not told, and this one cannot be read two ways.

    >>> shown(3.0), shown(0.75), shown(0.1 + 0.2), shown(True), shown(datetime.date(2025, 3, 4))
    ('3', '0.75', '0.3', 'TRUE', '2025-03-04')
    """
    if isinstance(value, bool):
        return "TRUE" if value else "FALSE"
    if isinstance(value, float):
        text = format(Decimal(format(value, ".15g")), "f")
        return "0" if text == "-0" else text
    if isinstance(value, datetime.datetime):
        return value.isoformat(" ", "seconds")
    if isinstance(value, datetime.timedelta):
        minutes, seconds = divmod(value.days * 86_400 + value.seconds, 60)
        return f"{minutes // 60:02}:{minutes % 60:02}:{seconds:02}"
    return str(value)
