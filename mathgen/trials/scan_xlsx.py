"""Scans of an XLSX workbook's sheets, before anything makes room for them.

A sheet of two cells, A1 and XFD1048576, is a small file; a reader that makes room for all cells between them takes all memory.
"""

from __future__ import annotations

import posixpath
import re
from xml.parsers import expat

from mathgen.trials.archive import Archive, damaged
from mathgen.trials.limits import refuse_large_sheet, refuse_many_sheets
from mathgen.trials.scan import Scan

_NAME = re.compile(r"([A-Z]{1,3})([1-9][0-9]{0,6})")


def scan_xlsx(archive: Archive) -> dict[str, Scan]:
    """A scan of each worksheet, by its name.

    Raises:
        TableFaults: damage, or cells in use far beyond a class's table.
    """
    workbook, relations = "xl/workbook.xml", "xl/_rels/workbook.xml.rels"
    if workbook not in archive.parts or relations not in archive.parts:
        raise damaged(archive.name, "its list of sheets is missing")
    targets: dict[str, str] = {}
    for attributes in _elements(archive, relations, "Relationship"):
        if attributes.get("Type", "").endswith("/worksheet"):
            targets[attributes.get("Id", "")] = posixpath.normpath(posixpath.join("/xl", attributes.get("Target", ""))).lstrip("/")
    scans = {}
    sheets = _elements(archive, workbook, "sheet")
    refuse_many_sheets(len(sheets))
    for attributes in sheets:
        relation = next((value for key, value in attributes.items() if key.rpartition(":")[2] == "id"), "")
        sheet, target = attributes.get("name", ""), targets.get(relation)
        if target is None:
            continue  # a chart, a macro: no cells
        if target not in archive.parts:
            raise damaged(archive.name, f'sheet "{sheet}" is missing')
        scans[sheet] = _SheetScanner(archive, target, sheet).scan
    return scans


def parse(archive: Archive, part: str, parser: expat.XMLParserType) -> None:
    """Run the part through a parser.

    Raises:
        TableFaults: the part is no XML, or defines entities, which no spreadsheet does and traps do.
    """

    def refuse(*_: object) -> None:
        raise damaged(archive.name, f"{part} defines entities")

    parser.StartDoctypeDeclHandler = refuse
    try:
        for chunk in archive.chunks(part):
            parser.Parse(chunk, False)
        parser.Parse(b"", True)
    except expat.ExpatError as err:
        raise damaged(archive.name, f"{part} cannot be read") from err


def _elements(archive: Archive, part: str, wanted: str) -> list[dict[str, str]]:
    """The attributes of each element of one name."""
    found: list[dict[str, str]] = []

    def start(tag: str, attributes: dict[str, str]) -> None:
        if tag.rpartition(":")[2] == wanted:
            found.append(attributes)

    parser = expat.ParserCreate()
    parser.StartElementHandler = start
    parse(archive, part, parser)
    return found


class _SheetScanner:
    """Follows one sheet's cells; those that are only formatted hold nothing and do not count."""

    def __init__(self, archive: Archive, part: str, sheet: str) -> None:
        self.scan = Scan()
        self._sheet = sheet
        self._row, self._column = 0, 0
        self._kind, self._formula, self._held, self._text = "", False, False, ""
        self._reading = False
        parser = expat.ParserCreate()
        parser.buffer_text = True
        parser.StartElementHandler, parser.EndElementHandler, parser.CharacterDataHandler = self._start, self._end, self._characters
        parse(archive, part, parser)

    def _start(self, tag: str, attributes: dict[str, str]) -> None:
        tag = tag.rpartition(":")[2]
        if tag == "row":
            number = attributes.get("r", "")
            self._row = int(number) if number.isdecimal() else self._row + 1
            self._column = 0
        elif tag == "c":
            name = _NAME.fullmatch(attributes.get("r", ""))
            if name:
                self._row, self._column = int(name.group(2)), _column_number(name.group(1))
            else:
                self._column += 1
            self._kind, self._formula, self._held, self._text = attributes.get("t", "n"), False, False, ""
        elif tag == "f":
            self._formula = True
        elif tag in ("v", "is"):
            self._held = self._reading = True

    def _characters(self, text: str) -> None:
        if self._reading:
            self._text += text

    def _end(self, tag: str) -> None:
        tag = tag.rpartition(":")[2]
        if tag in ("v", "is"):
            self._reading = False
        elif tag == "c" and (self._held or self._formula):
            self.scan.use(self._row, self._column)
            # Here and not at the end: the rest of a huge sheet need not be followed.
            refuse_large_sheet(self.scan.rows, self.scan.columns, self._sheet)
            if self._kind == "e":
                self.scan.errors[self._row, self._column] = self._text.strip()
            elif self._formula and not self._text and self._kind != "str":  # "str" is a formula whose result is no text
                self.scan.unworked.append((self._row, self._column))


def _column_number(letters: str) -> int:
    """A column's number from its letters.

    >>> _column_number("A"), _column_number("XFD")
    (1, 16384)
    """
    number = 0
    for letter in letters:
        number = 26 * number + ord(letter) - ord("A") + 1
    return number
