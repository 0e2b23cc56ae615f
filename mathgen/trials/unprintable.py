"""Control characters in cells: they cannot be printed, and what was meant by them nobody can tell."""

from __future__ import annotations

import re
from collections.abc import Sequence

from mathgen.errors import Fault, Place
from mathgen.trials.grid import Grid

# Line breaks and tabs have become spaces by now; what is left of these ranges has no shape on paper.
_CONTROL = re.compile("[\x00-\x1f\x7f-\x9f]")
_ADVICE = "Type the cell again."


def unprintable(grids: Sequence[Grid]) -> tuple[Fault, ...]:
    """A fault for each cell that holds a control character, which is shown in brackets."""
    return tuple(
        Fault(
            Place(row, column, grid.sheet),
            _CONTROL.sub(lambda match: f"[U+{ord(match[0]):04X}]", cell),
            "text without control characters",
            _ADVICE,
        )
        for grid in grids
        for row, cells in enumerate(grid.rows, 1)
        for column, cell in enumerate(cells, 1)
        if not cell.isprintable() and _CONTROL.search(cell)
    )
