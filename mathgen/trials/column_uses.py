"""The columns of one sheet by use."""

from __future__ import annotations

from dataclasses import dataclass, field

from mathgen.errors import Fault, Place
from mathgen.trials.grid import Grid
from mathgen.trials.headed_columns import HeadedColumn


@dataclass(slots=True)
class Columns:
    """The columns of one sheet by use; each list in the sheet's order."""

    keys: dict[str, HeadedColumn] = field(default_factory=dict)  # "group", "trial", "color", "measure"
    values: list[HeadedColumn] = field(default_factory=list)
    totals: list[HeadedColumn] = field(default_factory=list)
    optional: dict[str, HeadedColumn] = field(default_factory=dict)
    notes: list[str] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)
    timestamp: HeadedColumn | None = None


def place_of(grid: Grid, column: HeadedColumn, row: int | None = None) -> Place:
    """Where a column's heading stands, or its cell in a given row."""
    return Place(row or column.row, column.number, grid.sheet, column.heading.text or None)
