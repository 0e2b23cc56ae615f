"""Tables typed or printed with spaces: columns parted by two or more spaces, or lined up under their headings."""

from __future__ import annotations

import re

from mathgen.errors import Fault, Place, TableFaults

_GAP = re.compile(r" {2,}")
_WORDS = re.compile(r"\S+(?: \S+)*")


def split_at_gaps(line: str) -> list[str]:
    """The line's cells, parted by two or more spaces.

    >>> split_at_gaps("Owls   1  Red (4)")
    ['Owls', '1', 'Red (4)']
    """
    return _GAP.split(line.strip()) if line.strip() else []


def aligned_rows(lines: list[str]) -> list[list[str]]:
    """The cells of each line; an empty cell is known by what stands above and below it.

    Args:
        lines: without line ends; titles may stand above the table.
    Returns:
        A row for each line, blank lines included.
    Raises:
        TableFaults: a row has fewer cells than the heading and is not lined up with it, so that nobody can say which is missing.
    """
    split = [split_at_gaps(line) for line in lines]
    width = max(map(len, split), default=0)
    start = next((number for number, cells in enumerate(split) if len(cells) == width), 0)
    spans = _spans([line for line, cells in zip(lines[start:], split[start:], strict=True) if len(cells) > 1])
    rows, faults = [], []
    for number, (line, cells) in enumerate(zip(lines, split, strict=True), 1):
        placed = _placed(line, spans) if 1 < len(cells) < width and len(spans) == width else None
        if placed is None and 1 < len(cells) < width and number > start + 1:
            advice = "Part the columns by tabs or commas, so that an empty cell shows."
            faults.append(Fault(Place(row=number), line.strip(), f"{width} columns, as in row {start + 1}", advice))
        rows.append(cells if placed is None else placed)
    if faults:
        raise TableFaults(tuple(faults))
    return rows


def _spans(lines: list[str]) -> list[tuple[int, int]]:
    """The columns' first and last places: what is left between the gaps that run down through all lines."""
    length = max(map(len, lines), default=0)
    used = ["x" if any(line[place : place + 1].strip() for line in lines) else " " for place in range(length)]
    return [match.span() for match in _WORDS.finditer("".join(used))]


def _placed(line: str, spans: list[tuple[int, int]]) -> list[str] | None:
    """The line's cells each in its column, or None where one lies outside every column."""
    placed = [""] * len(spans)
    for match in _WORDS.finditer(line):
        column = next((at for at, (first, last) in enumerate(spans) if first <= match.start() and match.end() <= last), None)
        if column is None or placed[column]:
            return None
        placed[column] = match.group()
    return placed
