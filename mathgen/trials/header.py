"""Where a sheet's heading rows are, below any title lines, and what each column's heading says."""

from __future__ import annotations

from dataclasses import dataclass

from mathgen.trials.grid import Grid
from mathgen.trials.headed_columns import HeadedColumn, columns_below, columns_beside, numbered_colors, read_spelled
from mathgen.trials.heading_rows import SEARCHED_ROWS, best_row, heads_counts, is_lower_heading, is_upper_heading, side_headings
from mathgen.trials.heading_words import read_heading, tidy


@dataclass(frozen=True, slots=True)
class Header:
    """The heading rows of one sheet."""

    first_row: int
    last_row: int
    columns: tuple[HeadedColumn, ...]
    titles: tuple[tuple[int, str], ...]  # row and text of each filled cell above the heading rows
    notes: tuple[str, ...] = ()


def find_header(grid: Grid) -> Header | None:
    """The heading rows of a sheet, or None where no row looks like one."""
    best, keyed = best_row(grid, read_heading)
    if not keyed:
        # Only now are words typed wrong looked at: doing so for every cell of a clear table would load the spelling for nothing.
        best, _ = best_row(grid, read_spelled)
    if best is None:
        best = next((index for index in range(min(SEARCHED_ROWS, len(grid.rows) - 1)) if heads_counts(grid, index)), None)
    side = side_headings(grid)
    if side is not None and (best is None or side[0] <= best <= side[1]):
        return Header(side[0] + 1, side[1] + 1, columns_beside(grid, *side), _titles(grid, side[0]))
    if best is None:
        return None
    first = last = best
    while first > 0 and is_upper_heading(grid.rows[first - 1], grid.rows[first]):
        first -= 1
    while last + 1 < len(grid.rows) and last - first < 2 and is_lower_heading(grid.rows[last + 1], grid.rows[last]):
        last += 1
    notes: list[str] = []
    columns = numbered_colors(columns_below(grid, first, last, notes), notes)
    return Header(first + 1, last + 1, columns, _titles(grid, first), tuple(notes))


def _titles(grid: Grid, first: int) -> tuple[tuple[int, str], ...]:
    return tuple((index + 1, tidy(cell)) for index in range(first) for cell in grid.rows[index] if tidy(cell))
