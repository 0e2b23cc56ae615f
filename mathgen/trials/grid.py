"""A file's cells as text, before anybody knows what they mean."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Grid:
    """One sheet, or one text file: every cell as the spreadsheet shows it, "" where it is empty.

    ``rows[0]`` is the spreadsheet's row 1 and every row has the same length, so that row and column numbers in a fault are
    the ones a person sees.
    """

    rows: tuple[tuple[str, ...], ...]
    sheet: str | None = None  # the sheet's name; None for text
    merged: tuple[tuple[int, int, int, int], ...] = ()  # first row, first column, last row, last column, counted from 1
    dates: frozenset[tuple[int, int]] = frozenset()  # (row, column) from 1 of cells that the spreadsheet holds as a date
    unworked: frozenset[tuple[int, int]] = frozenset()  # (row, column) from 1 of formulas that the file holds no result for
    notes: tuple[str, ...] = ()  # what was guessed while the file was parted into cells
