"""The readings of one sheet: each count cell with the group, trial, color and measure that its row and column give it.

Wide and long tables, trials or groups across, and two heading rows are one thing here: what a column's heading leaves open,
the row's key cells say.
"""

from __future__ import annotations

from mathgen.errors import Fault, Place
from mathgen.trials.body import Body
from mathgen.trials.cells import Count, read_cell
from mathgen.trials.column_uses import Columns, place_of
from mathgen.trials.columns import sort_columns
from mathgen.trials.grid import Grid
from mathgen.trials.header import Header
from mathgen.trials.heading_words import whole_measure
from mathgen.trials.labels import is_trial_label, read_color, read_trial, respelled
from mathgen.trials.readings import SheetReadings
from mathgen.trials.scope import Label
from mathgen.trials.set_up import Statement, in_title


def read_sheet(
    grid: Grid, header: Header, named_colors: frozenset[str], outer_trial: Label | None = None, outer_group: str | None = None
) -> SheetReadings:
    """The readings of a sheet.

    Args:
        grid: the sheet.
        header: its heading rows.
        named_colors: colors that an option names.
        outer_trial: the trial that the sheet's name gives, used where the sheet names none.
        outer_group: the group that the sheet's name gives, used where the sheet names none.
    """
    found = SheetReadings(grid, titles=[text for _, text in header.titles], notes=[*grid.notes, *header.notes])
    titles = _title_set_ups(grid, header)
    found.set_ups.extend(titles)
    for _, text in header.titles:
        if is_trial_label(text) and outer_trial is None:
            outer_trial = read_trial(text)
    named = named_colors | {statement.color for statement in titles}
    columns = sort_columns(grid, header, named | _set_up_row_colors(grid, header), outer_trial is not None, outer_group is not None)
    found.notes.extend(columns.notes)
    found.faults.extend(columns.faults)
    found.timestamped = columns.timestamp is not None
    missing = _missing_dimensions(grid, header, columns, outer_group)
    if missing:
        found.faults.extend(missing)
        return found
    for column in columns.values:
        heading = column.heading
        if heading.color and heading.measure != "set_up" and respelled(heading.color, heading.text):
            found.notes.append(f'"{heading.text}" is read as the color "{heading.color}".')
        if heading.set_up is not None and heading.color and heading.measure != "set_up":
            found.set_ups.append(
                Statement(
                    heading.color, heading.set_up, f'the heading "{heading.text}"', place_of(grid, column), heading.group, heading.trial
                )
            )
    Body(found, header, columns, outer_trial, outer_group).read()
    used = [*columns.keys.values(), *columns.values, *columns.optional.values()]
    follows = [column for column in header.columns if column.heading.role in ("total", "derived") and column not in used]
    found.summed_columns.update(column.number for column in (*columns.totals, *follows))
    if columns.faults:
        found.totals.clear()  # a total may have added up the very column that is not understood
    return found


def _title_set_ups(grid: Grid, header: Header) -> list[Statement]:
    """Set-up counts in title lines, and in a set-up row that stands above the heading rows."""
    statements = []
    for row, text in header.titles:
        for color, count in in_title(text).items():
            statements.append(Statement(read_color(color)[0], count, f'the title line "{text}"', Place(row, None, grid.sheet)))
    for index in range(header.first_row - 1):
        cells = grid.rows[index]
        if any(whole_measure(cell) == "set_up" for cell in cells):
            for column in header.columns:
                cell = read_cell(cells[column.number - 1])
                if column.heading.text and isinstance(cell, Count):
                    color = column.heading.color or read_color(column.heading.text)[0]
                    place = Place(index + 1, column.number, grid.sheet, column.heading.text)
                    statements.append(Statement(color, cell.value, "the set-up row", place, in_row=True))
    return statements


def _set_up_row_colors(grid: Grid, header: Header) -> frozenset[str]:
    """Headings under which a set-up row gives a number: they are kinds of pins, whatever their names."""
    named = set()
    for row in grid.rows[header.last_row :]:
        if any(whole_measure(cell) == "set_up" for cell in row):
            for column in header.columns:
                if column.heading.text and not column.heading.role and isinstance(read_cell(row[column.number - 1]), Count):
                    named.add(read_color(column.heading.text)[0])
    return frozenset(named)


def _missing_dimensions(grid: Grid, header: Header, columns: Columns, outer_group: str | None) -> list[Fault]:
    """Faults for a table that names no groups, no colors, or holds no counts; each told once."""
    place = Place(header.last_row, None, grid.sheet)
    faults = []
    if not columns.values:
        return (
            []
            if columns.faults
            else [
                Fault(
                    place, "", "columns that hold counts", "Head them with the colors, such as Red (4) and Blue (3), and put counts below."
                )
            ]
        )
    if "group" not in columns.keys and outer_group is None and any(column.heading.group is None for column in columns.values):
        faults.append(Fault(place, "", "a column that names the groups", 'Head it "Group".'))
    if "color" not in columns.keys and any(column.heading.color is None for column in columns.values):
        faults.append(
            Fault(
                place,
                "",
                "the colors of the pins",
                'Add a column headed "Color", or a column for each color, such as Red (4) and Blue (3).',
            )
        )
    return faults
