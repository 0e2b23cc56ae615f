"""Rows that say how many were set up."""

from __future__ import annotations

from mathgen.errors import Fault
from mathgen.trials.body_cells import BodyCells
from mathgen.trials.cells import Blank, Count, read_cell
from mathgen.trials.column_uses import place_of
from mathgen.trials.labels import heads_set_up, read_color, read_trial
from mathgen.trials.result_rows import ResultRows
from mathgen.trials.set_up import Statement


def heads_set_up_row(running: ResultRows, label: str) -> bool:
    """Whether a row's label heads a set-up row; "Total pins" does so above the first result."""
    return heads_set_up(label, first=not running.results)


def read_set_up_row(cells: BodyCells, running: ResultRows, row: int) -> None:
    """Keeps a row that says how many were set up, for all results or for the group or trial that it names."""
    group = cells.key_text(row, "group") or None
    if group and heads_set_up_row(running, group):
        group = None
    elif group is None and heads_set_up_row(running, cells.key_text(row, "trial")) and running.results:
        group = running.group
    trial_text = cells.key_text(row, "trial")
    trial = read_trial(trial_text) if trial_text and not heads_set_up_row(running, trial_text) else None
    if "trial" not in cells.columns.keys and running.section_trial is not None and cells.grid.sheet is None:
        trial = running.section_trial
    color_text = cells.key_text(row, "color")
    for column in cells.columns.values:
        heading = column.heading
        cell = read_cell(cells.text(row, column), cells.is_date(row, column))
        if isinstance(cell, Blank):
            continue
        place = place_of(cells.grid, column, row)
        if not isinstance(cell, Count):
            advice = getattr(cell, "advice", "Type how many pins were set up.")
            cells.found.faults.append(Fault(place, cells.text(row, column), "a whole number of pins set up", advice))
            continue
        color = heading.color or (read_color(color_text)[0] if color_text and not heads_set_up_row(running, color_text) else None)
        if color is None:
            cells.found.faults.append(Fault(place, cells.text(row, column), "a color in the set-up row", "Name the color in this row."))
            continue
        own_trial = heading.trial if heading.trial is not None else trial
        source = f"the set-up row (row {row})"
        cells.found.set_ups.append(Statement(color, cell.value, source, place, heading.group or group, own_trial, in_row=True))
    cells.totals_across(row)
