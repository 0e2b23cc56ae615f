"""What a workbook's reader would not tell: how far the cells in use reach, errors, formulas without a result."""

from __future__ import annotations

from dataclasses import dataclass, field


@dataclass(slots=True)
class Scan:
    """One sheet as far as it was scanned; rows and columns count from 1."""

    rows: int = 0  # last row in use
    columns: int = 0  # last column in use
    errors: dict[tuple[int, int], str] = field(default_factory=dict)  # cells that show an error, such as #DIV/0!
    unworked: list[tuple[int, int]] = field(default_factory=list)  # formulas that the file holds no result for
    merged: list[tuple[int, int, int, int]] = field(default_factory=list)  # where the reader does not know them

    def use(self, row: int, column: int) -> None:
        """Note that a cell is in use."""
        self.rows, self.columns = max(self.rows, row), max(self.columns, column)
