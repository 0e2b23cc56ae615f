"""Two-way tables: counts by two kinds of labels, and empty ones to fill in or to list pairs in."""

from __future__ import annotations

from collections.abc import Sequence

from mathgen.sheets.figures.scene import FigureData


def two_way_table(title: str, corner: str, columns: Sequence[str], rows: Sequence[tuple[str, Sequence[int | None]]]) -> FigureData:
    """A true table with head cells, which is read cell by cell and needs no alt text.

    Args:
        title: printed above it.
        corner: what the rows are.
        columns: their names.
        rows: a name and a count for each column; None leaves a cell to write in.
    """
    return {
        "kind": "two-way-table",
        "title": title,
        "corner": corner,
        "columns": list(columns),
        "rows": [{"head": head, "cells": ["" if cell is None else str(cell) for cell in cells]} for head, cells in rows],
        "alt": "",
    }
