"""Pasted text, CSV and its relatives to a grid: which separator, which rows."""

from __future__ import annotations

import csv
import io
import re
from collections import Counter

from mathgen.errors import Fault, Place, TableFaults
from mathgen.trials.aligned import aligned_rows, split_at_gaps
from mathgen.trials.decoding import decoded
from mathgen.trials.grid import Grid
from mathgen.trials.limits import TEXT_BYTES, megabytes, refuse_large_sheet
from mathgen.trials.quotation import marks_note, needless_marks, with_marks_kept
from mathgen.trials.tidy import squared

_SEPARATORS = "\t,;|"  # in the order of trust, where two part the text equally well
_STATED = re.compile(r'"?sep=([\t,;|])"?[ \t]*(?:\r\n|\r|\n)', re.IGNORECASE)
_RULE = re.compile(r":?-+:?")  # the line under the headings of a Markdown table
_LINE_END = re.compile(r"\r\n|\r|\n")
_END = "end of text"


def read_text(content: bytes, name: str) -> Grid:
    """The grid of one text file or of text pasted from a spreadsheet.

    A row is a record, as a spreadsheet shows it: a line break inside quotation marks does not start a new one, a blank line
    is an empty row, and a first line ``sep=;`` is an instruction and no row.

    Args:
        content: the bytes, in any encoding that spreadsheets write.
        name: what to call the file in a fault.
    Raises:
        TableFaults: too large, no text, nothing in it, a quotation mark left open, cells that cannot be told apart.
    """
    if len(content) > TEXT_BYTES:
        advice = "Copy only the class's table into a new file."
        raise TableFaults((Fault(Place(), f"{name}: {megabytes(len(content))} of text", f"at most {megabytes(TEXT_BYTES)}", advice),))
    text = decoded(content)
    if text is None:
        advice = "Open it in the program that made it and save it as CSV or XLSX."
        raise TableFaults((Fault(Place(), f"{name}: bytes that are no text", "a table as text, CSV, XLSX, XLS or ODS", advice),))
    records, notes = _records(text)
    rows = squared(records)
    if not rows:
        advice = "Was it saved, and is it the right one?"
        raise TableFaults((Fault(Place(), f"{name}: nothing", "a table with headings and results", advice),))
    refuse_large_sheet(len(rows), len(rows[0]))
    return Grid(rows, notes=notes)


def _records(text: str) -> tuple[list[list[str]], tuple[str, ...]]:
    """The cells, and a note where quotation marks were taken for the file's own."""
    stated = _STATED.match(text)
    if stated:
        text, separator = text[stated.end() :], stated.group(1)
    else:
        separator = _separator(text)
    if separator == "  ":
        return aligned_rows(_LINE_END.split(text.expandtabs())), ()
    records = _checked(text, separator)
    needless = needless_marks(text, separator, records) if '"' in text else ()
    if needless and separator == "\t":
        # A spreadsheet puts marks around a cell only where it must; these were typed.
        return _checked(with_marks_kept(text, separator, needless), separator), ()
    notes = (marks_note(needless),) if needless else ()
    return (_without_frame(records) if separator == "|" else records), notes


def _parted(text: str, separator: str) -> list[list[str]]:
    # newline="" leaves line ends to csv, which alone knows whether one stands inside quotation marks.
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator)
    records: list[list[str]] = []
    try:
        records.extend(reader)
    except csv.Error:
        records.append([])  # a cell longer than csv takes, which is a quotation mark left open
    return records


def _checked(text: str, separator: str) -> list[list[str]]:
    """The text's records, none of which swallows the rest of the table."""
    if '"' not in text:
        return _parted(text, separator)
    # csv takes a mark left open for a cell that runs to the end of the file: it would swallow this line as well.
    records = _parted(f"{text}\n{_END}", separator)
    if records[-1] != [_END]:
        advice = "Close the quotation mark, or take it out."
        raise TableFaults((Fault(Place(row=len(records)), '"', "a second quotation mark that closes the cell", advice),))
    return records[:-1]


def _separator(text: str) -> str:
    """What parts the cells: tab, comma, semicolon, pipe, or two spaces; told from the whole text, quoted cells honored."""
    widths: dict[str, list[int]] = {}
    for separator in _SEPARATORS:
        if separator in text:
            widths[separator] = [len(record) for record in _parted(text, separator) if any(cell.strip() for cell in record)]
    tabs = widths.get("\t")
    # What is pasted from a spreadsheet has tabs between its cells and none inside them, whatever else the cells hold.
    if tabs and 2 * sum(width > 1 for width in tabs) >= len(tabs):
        return "\t"
    widths["  "] = [len(cells) for line in _LINE_END.split(text.expandtabs()) if (cells := split_at_gaps(line))]
    # The first of equals is taken, so a pipe must part more rows than a comma does: tally marks are pipes as well.
    return max(widths, key=lambda separator: _fit(widths[separator]))


def _fit(widths: list[int]) -> tuple[int, int, int]:
    """How well a separator parts the text: rows that it parts, rows of the commonest width, that width."""
    parted = Counter(width for width in widths if width > 1)
    if not parted:
        return 0, 0, 0
    count, width = max((count, width) for width, count in parted.items())
    return parted.total(), count, width


def _without_frame(records: list[list[str]]) -> list[list[str]]:
    """Records of a table parted by pipes without its frame: outer pipes, and the rule under the headings left empty."""
    table = [record for record in records if len(record) > 1]
    if all(not record[0].strip() for record in table):
        records = [record[1:] if len(record) > 1 else record for record in records]
    if all(not record[-1].strip() for record in table):
        records = [record[:-1] if len(record) > 1 else record for record in records]
    width = next((len(record) for record in records if len(record) > 1), 0)
    faults = tuple(
        Fault(Place(row=number), "|".join(record).strip(), f"{width} columns, as in the first row of the table", _TALLIES)
        for number, record in enumerate(records, 1)
        if len(record) > width and "" in record
    )
    if faults:
        raise TableFaults(faults)
    return [[] if record and all(_RULE.fullmatch(cell.strip()) for cell in record) else record for record in records]


_TALLIES = "Tally marks cannot be told from the lines of a table drawn with |. Write the counts as numbers, or part the columns by tabs."
