"""The cells below the headings, as the readers of each kind of row look them up."""

from __future__ import annotations

from mathgen.trials.cells import Count, read_cell
from mathgen.trials.column_uses import Columns, place_of
from mathgen.trials.headed_columns import HeadedColumn
from mathgen.trials.header import Header
from mathgen.trials.heading_words import tidy
from mathgen.trials.labels import spelling_key, total_label
from mathgen.trials.readings import SheetReadings, TotalCell
from mathgen.trials.tidy import tidy_cell
from mathgen.trials.total_cells import summed_columns


class BodyCells:
    """One sheet's cells by row and column; what is read from them goes to ``found``."""

    def __init__(self, found: SheetReadings, header: Header, columns: Columns) -> None:
        self.found, self.header, self.columns = found, header, columns
        self.grid = found.grid

    def text(self, row: int, column: HeadedColumn) -> str:
        """What stands in a cell."""
        return tidy(self.grid.rows[row - 1][column.number - 1])

    def is_date(self, row: int, column: HeadedColumn) -> bool:
        """Whether the cell was a date in its workbook."""
        return (row, column.number) in self.grid.dates

    def key_text(self, row: int, key: str) -> str:
        """A key cell's label, as typed."""
        column = self.columns.keys.get(key)
        return tidy_cell(self.grid.rows[row - 1][column.number - 1]) if column else ""

    def label_cells(self, row: int) -> list[str]:
        """The texts that may say what kind of row it is: its keys, and the cells left of the first count."""
        first = min((column.number for column in self.columns.values), default=len(self.grid.rows[0]) + 1)
        kept = {column.number for column in self.columns.optional.values()}  # a note that says "start" heads no set-up row
        keys = {column.number for column in self.columns.keys.values()} | (set(range(1, first)) - kept)
        return [text for number in sorted(keys) if (text := tidy(self.grid.rows[row - 1][number - 1]))]

    def has_one_cell(self, row: int) -> bool:
        """Whether a single cell of the row is filled."""
        return sum(1 for cell in self.grid.rows[row - 1] if tidy(cell)) == 1

    def block(self, row: int) -> list[int]:
        """The rows from one on that are of the same group: its name typed again or left blank, with a trial or a color."""
        rows, name = [row], spelling_key(self.key_text(row, "group"))
        for below in range(row + 1, len(self.grid.rows) + 1):
            group = self.key_text(below, "group")
            if (group and spelling_key(group) != name) or not (self.key_text(below, "trial") or self.key_text(below, "color")):
                break
            rows.append(below)
        return rows

    def trial_in_block(self, row: int) -> str:
        """The trial beside a row; where its group or color goes on from above, the trial does so too."""
        for above in range(row, self.header.last_row, -1):
            if text := self.key_text(above, "trial"):
                return text
            if self.key_text(above, "group") or not self.key_text(above, "color"):
                break
        return ""

    def counts_in(self, rows: list[int], column: HeadedColumn) -> list[int]:
        """The counts of one column in some rows."""
        cells = [read_cell(self.text(row, column), self.is_date(row, column)) for row in rows]
        return [cell.value for cell in cells if isinstance(cell, Count)]

    def total_cell(self, row: int, column: HeadedColumn, sums: list[list[tuple[int, int]]]) -> None:
        """Keeps a total, with each set of cells that it may be the sum of."""
        if text := self.text(row, column):
            group = self.key_text(row, "group")
            label = group if total_label(group) else ""
            self.found.totals.append(TotalCell(place_of(self.grid, column, row), text, tuple(map(frozenset, sums)), label))

    def totals_across(self, row: int) -> None:
        """Keeps what stands in the total columns of a row that is no total itself."""
        for column in self.columns.totals:
            self.total_cell(row, column, [[(row, number) for number in numbers] for numbers in summed_columns(column, self.columns)])
