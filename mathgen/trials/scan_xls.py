"""Scans of an XLS workbook: its records inside an OLE2 file, as far as is needed to know how far the cells in use reach.

Source: [MS-CFB] Compound File Binary File Format and [MS-XLS] Excel Binary File Format (.xls) Structure, from memory.
"""

from __future__ import annotations

import struct
from collections.abc import Iterator

from mathgen.trials.archive import damaged, password
from mathgen.trials.limits import refuse_large_sheet, refuse_many_sheets
from mathgen.trials.scan import Scan

_FREE = 0xFFFFFFFA  # sector numbers from here on are marks, not sectors
_ERRORS = {0x00: "#NULL!", 0x07: "#DIV/0!", 0x0F: "#VALUE!", 0x17: "#REF!", 0x1D: "#NAME?", 0x24: "#NUM!", 0x2A: "#N/A"}
_FORMULAS = (0x0006, 0x0206, 0x0406)
_BOOL_OR_ERROR = 0x0205
# One cell each: number, text, text with formats, text from the shared list, RK number, truth value or error, formulas.
_CELLS = (0x0203, 0x0204, 0x00D6, 0x00FD, 0x027E, _BOOL_OR_ERROR, *_FORMULAS)
_RK_ROW, _DIMENSIONS, _SHEET, _LOCKED, _END = 0x00BD, 0x0200, 0x0085, 0x002F, 0x000A


def scan_xls(content: bytes, name: str) -> list[Scan]:
    """A scan of each sheet, in the workbook's order.

    Raises:
        TableFaults: damage, a password, or cells in use far beyond a class's table.
    """
    try:
        stream = _workbook_stream(content)
        starts = []
        for kind, data in _records(stream, 0):
            if kind == _LOCKED:
                raise password(name)
            if kind == _SHEET:
                starts.append(struct.unpack_from("<I", data)[0])
        refuse_many_sheets(len(starts))
        return [_scan(stream, start, name) for start in starts]
    except (struct.error, LookupError) as err:
        raise damaged(name, "the file is cut short or changed on the way") from err


def _scan(stream: bytes, start: int, name: str) -> Scan:
    scan = Scan()
    for kind, data in _records(stream, start):
        if kind in _CELLS:
            row, column = struct.unpack_from("<HH", data)
            scan.use(row + 1, column + 1)
            if kind == _BOOL_OR_ERROR and data[7]:
                scan.errors[row + 1, column + 1] = _ERRORS.get(data[6], "#ERROR")
            elif kind in _FORMULAS and data[12:14] == b"\xff\xff" and data[6] == 2:
                scan.errors[row + 1, column + 1] = _ERRORS.get(data[8], "#ERROR")
        elif kind == _RK_ROW:
            row, last = struct.unpack_from("<H", data)[0], struct.unpack_from("<H", data, len(data) - 2)[0]
            scan.use(row + 1, last + 1)
        elif kind == _DIMENSIONS and len(data) >= 12:
            first_row, end_row, first_column, end_column = struct.unpack_from("<IIHH", data)
            # Formatted cells count here, so that only a size that no XLS sheet can have is damage.
            if not first_row <= end_row <= 65536 or not first_column <= end_column <= 256:
                raise damaged(name, "a sheet larger than XLS allows")
        refuse_large_sheet(scan.rows, scan.columns)
    return scan


def _records(stream: bytes, start: int) -> Iterator[tuple[int, bytes]]:
    """The records from one place to the end of its part, with the kind of each."""
    place = start
    while place + 4 <= len(stream):
        kind, length = struct.unpack_from("<HH", stream, place)
        yield kind, stream[place + 4 : place + 4 + length]
        if kind == _END:
            return
        place += 4 + length


def _workbook_stream(content: bytes) -> bytes:
    """The stream that holds the workbook's records, put together from its sectors."""
    size = {9: 512, 12: 4096}[struct.unpack_from("<H", content, 30)[0]]

    def sector(number: int) -> bytes:
        return content[(number + 1) * size : (number + 2) * size]

    def chain(number: int, table: tuple[int, ...]) -> list[int]:
        numbers: list[int] = []
        while number < _FREE:
            numbers.append(number)
            if len(numbers) > len(table):
                raise LookupError  # sectors in a ring
            number = table[number]
        return numbers

    index = list(struct.unpack_from("<109I", content, 76))
    more, places = struct.unpack_from("<I", content, 68)[0], size // 4
    while more < _FREE and len(index) * size <= len(content):
        *numbers, more = struct.unpack(f"<{places}I", sector(more))
        index += numbers
    table: tuple[int, ...] = ()
    for number in index:
        if number < _FREE:
            table += struct.unpack(f"<{places}I", sector(number))
    directory = b"".join(map(sector, chain(struct.unpack_from("<I", content, 48)[0], table)))
    entries = {}
    root = (0, 0)
    for place in range(0, len(directory), 128):
        entry = directory[place : place + 128]
        length, kind = struct.unpack_from("<HB", entry, 64)
        found = struct.unpack_from("<II", entry, 116)
        entries[entry[: max(length - 2, 0)].decode("utf-16-le", "replace").lower()] = found
        if kind == 5:
            root = found
    first, length = entries.get("workbook") or entries["book"]
    if length >= struct.unpack_from("<I", content, 56)[0]:
        return b"".join(map(sector, chain(first, table)))[:length]
    # Short streams stand in 64-byte pieces of one stream of their own.
    pieces = b"".join(map(sector, chain(root[0], table)))
    small = b"".join(map(sector, chain(struct.unpack_from("<I", content, 60)[0], table)))
    small_table = struct.unpack(f"<{len(small) // 4}I", small)
    return b"".join(pieces[number * 64 : number * 64 + 64] for number in chain(first, small_table))[:length]
