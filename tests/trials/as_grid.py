"""Grids from small tables written in a test, and tables in one line for comparing."""

from __future__ import annotations

import csv
import io

from mathgen.trials.grid import Grid
from mathgen.trials.table import TrialTable


def grid(
    text: str, sheet: str | None = None, merged: tuple[tuple[int, int, int, int], ...] = (), dates: tuple[tuple[int, int], ...] = ()
) -> Grid:
    """The cells of a comma-separated table; its first line is row 1."""
    rows = list(csv.reader(io.StringIO(text.strip("\n"))))
    width = max(map(len, rows))
    return Grid(tuple(tuple(cell.strip() for cell in row) + ("",) * (width - len(row)) for row in rows), sheet, merged, frozenset(dates))


def in_a_line(table: TrialTable) -> str:
    """``Owls 1: red 3/4, blue absent; Owls 2: ...``, knocked down of set up, in table order."""
    results = {(row.group, row.trial, row.color): f"{row.down}/{row.set_up}" for row in table.rows}
    results |= dict.fromkeys(table.absent, "absent")
    groups = dict.fromkeys(group for group, _, _ in results)
    trials = dict.fromkeys(trial for _, trial, _ in results)
    colors = dict.fromkeys(color for _, _, color in results)
    parts = []
    for group in groups:
        for trial in trials:
            shown = ", ".join(f"{color} {results[group, trial, color]}" for color in colors if (group, trial, color) in results)
            if shown:
                parts.append(f"{group} {trial}: {shown}")
    return "; ".join(parts)


def pieces(line: str) -> set[tuple[str, frozenset[str]]]:
    """The same line without its order: each group and trial with its results."""
    return {(label, frozenset(results.split(", "))) for label, results in (part.rsplit(": ", 1) for part in line.split("; "))}
