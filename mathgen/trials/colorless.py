"""Columns of counts under no color: how many were set up, or a total; and columns that say the same twice."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from mathgen.errors import Fault
from mathgen.trials.column_uses import Columns, place_of
from mathgen.trials.grid import Grid
from mathgen.trials.headed_columns import HeadedColumn
from mathgen.trials.labels import spelling_key


def settle_colorless(columns: Columns, grid: Grid, filled: Callable[[HeadedColumn], bool]) -> None:
    """Counts under no color: in a wide table a total; in a long table "Total" may be how many were set up.

    Args:
        columns: the columns so far; changed in place.
        grid: the sheet.
        filled: whether a column has any cells filled.
    """
    values, totals = columns.values, columns.totals
    if "color" in columns.keys:
        _counts_beside(columns)
        set_up = any(column.heading.measure == "set_up" for column in values)
        measured = any(column.heading.role in ("count", "down", "standing") for column in values)
        across = any(column.heading.trial is not None or column.heading.group for column in values)
        for column in list(totals):
            if across or (column.heading.measure is None and (set_up or not measured)):
                continue
            if column.heading.measure in (None, "set_up") and not set_up:
                totals.remove(column)
                values.append(replace(column, heading=replace(column.heading, role="set_up", measure="set_up")))
                columns.notes.append(f'"{column.heading.text}" is read as how many were set up.')
                set_up = True
            elif column.heading.measure in ("down", "standing") and not any(v.heading.measure == column.heading.measure for v in values):
                totals.remove(column)
                values.append(replace(column, heading=replace(column.heading, role=column.heading.measure)))
    elif any(column.heading.color for column in values):
        _sets_beside(columns)
        for column in list(values):
            if column.heading.color is None:
                values.remove(column)
                totals.append(column)
    values.sort(key=lambda column: column.number)
    totals.sort(key=lambda column: column.number)
    for column in totals:
        if filled(column):
            columns.notes.append(f'The column "{column.heading.text}" is checked against the counts and not counted itself.')
    letters = list(dict.fromkeys(column.heading.color for column in values if column.heading.color and len(column.heading.color) == 1))
    if letters:
        columns.notes.append(f"The colors {', '.join(letters)} are kept as single letters.")
    _repeated(columns, grid)


def _counts_beside(columns: Columns) -> None:
    """In a long table, a bare "Pins" beside pins knocked down or left standing says how many were set up."""
    values = columns.values
    measures = [column.heading.measure for column in values]
    bare = [column for column in values if column.heading.role == "count"]
    if len(bare) == 1 and "set_up" not in measures and ("down" in measures or "standing" in measures):
        values[values.index(bare[0])] = replace(bare[0], heading=replace(bare[0].heading, role="set_up", measure="set_up"))
        columns.notes.append(f'"{bare[0].heading.text}" is read as how many were set up.')


def _sets_beside(columns: Columns) -> None:
    """In a wide table, "Out of" right of each color says how many of that color were set up."""
    values = columns.values
    by_number = {column.number: column for column in values}
    beside = {
        column.number: by_number[column.number - 1]
        for column in values
        if column.heading.color is None
        and (column.heading.measure == "set_up" or column.heading.text.casefold() == "of")
        and column.number - 1 in by_number
        and by_number[column.number - 1].heading.color is not None
    }
    colored = [column for column in values if column.heading.color is not None]
    if len(beside) != len(colored):
        return
    for index, column in enumerate(values):
        if column.number in beside:
            left = beside[column.number].heading
            values[index] = replace(column, heading=replace(left, text=column.heading.text, role=None, measure="set_up", set_up=None))
            columns.notes.append(f'"{column.heading.text}" in column {column.number} is read as how many {left.color} pins were set up.')


def _repeated(columns: Columns, grid: Grid) -> None:
    """Two columns that say the same of the same pins."""
    seen: dict[tuple[object, ...], HeadedColumn] = {}
    for column in columns.values:
        heading = column.heading
        label = (spelling_key(heading.group or ""), heading.trial, heading.color, heading.measure)
        if label in seen:
            columns.faults.append(
                Fault(
                    place_of(grid, column),
                    heading.text,
                    f"a heading of its own, other than that of column {seen[label].number}",
                    "Two columns count the same pins. Rename one of them or leave it out.",
                )
            )
        seen.setdefault(label, column)
