"""How large a table may be: a class's results fill a page, so a file beyond these is damage, a mistake or a trap."""

from __future__ import annotations

from mathgen.errors import Fault, Place, TableFaults

FILE_BYTES = 20_000_000
TEXT_BYTES = 5_000_000
UNPACKED_BYTES = 100_000_000  # all parts of one workbook together
PACKING_RATIO = 100  # times; spreadsheets reach 10 to 30
PACKING_RATIO_FROM = 10_000_000  # unpacked bytes below which any ratio is harmless
ROWS = 5_000
COLUMNS = 400
SHEETS = 200
ADVICE = "Copy only the class's table into a new sheet and save that as CSV or XLSX."


def megabytes(count: int) -> str:
    """A count of bytes as people say it.

    >>> megabytes(20_000_000), megabytes(1_234_567), megabytes(20_000_001)
    ('20 MB', '1.3 MB', '20.1 MB')
    """
    # Rounded up, so that a file just over a limit is not reported as being exactly at it.
    tenths = -(-count // 100_000)
    return f"{tenths // 10} MB" if tenths % 10 == 0 else f"{tenths // 10}.{tenths % 10} MB"


def refuse_large_sheet(rows: int, columns: int, sheet: str | None = None) -> None:
    """Nothing, where the cells in use fit.

    Args:
        rows: the last row in use, counted from 1.
        columns: the last column in use, counted from 1.
        sheet: the sheet's name, None for text.
    Raises:
        TableFaults: the cells in use reach beyond 5,000 rows or 400 columns.
    """
    if rows > ROWS or columns > COLUMNS:
        found = f"cells in use down to row {rows:,} and across to column {columns:,}"
        raise TableFaults((Fault(Place(sheet=sheet), found, f"at most {ROWS:,} rows and {COLUMNS:,} columns", ADVICE),))


def refuse_many_sheets(sheets: int) -> None:
    """Nothing, where a workbook has at most 200 sheets.

    Raises:
        TableFaults: it has more.
    """
    if sheets > SHEETS:
        raise TableFaults((Fault(Place(), f"a workbook of {sheets:,} sheets", f"at most {SHEETS} sheets", ADVICE),))
