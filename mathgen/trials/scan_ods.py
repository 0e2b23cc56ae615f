"""Scans of an ODS workbook's sheets: repeats, which make a small file huge, and merged cells, which the reader does not tell."""

from __future__ import annotations

from xml.parsers import expat

from mathgen.trials.archive import Archive, damaged, password
from mathgen.trials.limits import refuse_large_sheet, refuse_many_sheets
from mathgen.trials.scan import Scan
from mathgen.trials.scan_xlsx import parse


def scan_ods(archive: Archive) -> dict[str, Scan]:
    """A scan of each sheet, by its name.

    Raises:
        TableFaults: damage, a password, or cells in use far beyond a class's table.
    """
    manifest = "META-INF/manifest.xml"
    if manifest in archive.parts and b"encryption-data" in archive.read(manifest):
        raise password(archive.name)
    if "content.xml" not in archive.parts:
        raise damaged(archive.name, "its sheets are missing")
    return _Scanner(archive).scans


class _Scanner:
    """Follows the rows and cells of every sheet. Empty cells at the end are repeated up to the last column and do not count."""

    def __init__(self, archive: Archive) -> None:
        self.scans: dict[str, Scan] = {}
        self._sheet = ""
        self._row, self._column = 0, 0  # of the cell before
        self._row_repeats, self._column_repeats = 1, 1
        self._attributes: dict[str, str] = {}
        self._text: list[str] = []
        self._cell, self._note = 0, 0  # how deep inside a cell, a comment
        parser = expat.ParserCreate()
        parser.buffer_text = True
        parser.StartElementHandler, parser.EndElementHandler, parser.CharacterDataHandler = self._start, self._end, self._characters
        parse(archive, "content.xml", parser)

    def _start(self, tag: str, attributes: dict[str, str]) -> None:
        if tag == "table:table" and not self._cell:
            self._sheet = attributes.get("table:name", "")
            self.scans[self._sheet] = Scan()
            refuse_many_sheets(len(self.scans))
            self._row = 0
        elif tag == "table:table-row":
            self._row_repeats = _count(attributes, "table:number-rows-repeated")
            self._column = 0
        elif tag in ("table:table-cell", "table:covered-table-cell"):
            self._cell += 1
            self._attributes, self._text = attributes, []
            self._column_repeats = _count(attributes, "table:number-columns-repeated")
        elif tag == "office:annotation":
            self._note += 1

    def _characters(self, text: str) -> None:
        if self._cell and not self._note:
            self._text.append(text)

    def _end(self, tag: str) -> None:
        if tag == "table:table-row":
            self._row += self._row_repeats
        elif tag == "office:annotation":
            self._note -= 1
        elif tag in ("table:table-cell", "table:covered-table-cell"):
            self._cell -= 1
            self._close_cell()

    def _close_cell(self) -> None:
        scan, attributes, shown = self.scans.setdefault(self._sheet, Scan()), self._attributes, "".join(self._text).strip()
        row, column = self._row + 1, self._column + 1
        self._column += self._column_repeats
        if shown or "office:value-type" in attributes or "table:formula" in attributes:
            scan.use(self._row + self._row_repeats, self._column)
            refuse_large_sheet(scan.rows, scan.columns, self._sheet)
            if attributes.get("calcext:value-type") == "error" or (shown.startswith("#") and shown.endswith(("!", "/A", "?"))):
                scan.errors[row, column] = shown
            elif "table:formula" in attributes and "office:value-type" not in attributes and not shown:
                scan.unworked.append((row, column))
        down, across = _count(attributes, "table:number-rows-spanned"), _count(attributes, "table:number-columns-spanned")
        if down > 1 or across > 1:
            scan.merged.append((row, column, row + down - 1, column + across - 1))


def _count(attributes: dict[str, str], name: str) -> int:
    """How often something is repeated or spanned: once where the file does not say."""
    stated = attributes.get(name, "1")
    return int(stated) if stated.isdecimal() and len(stated) < 10 and stated != "0" else 1
