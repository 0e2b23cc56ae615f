"""Which sheets of a workbook are read, and what a sheet's name says."""

from __future__ import annotations

from dataclasses import dataclass

from mathgen.errors import Fault, Place, Question, TableFaults
from mathgen.trials.grid import Grid
from mathgen.trials.header import Header, find_header
from mathgen.trials.heading_words import COLOR_WORDS, tidy
from mathgen.trials.labels import is_trial_label, read_trial, spelling_key
from mathgen.trials.questions import ask_sheet
from mathgen.trials.scope import Label


@dataclass(frozen=True, slots=True)
class ChosenSheet:
    """A sheet that is read, with what its name adds to every row."""

    grid: Grid
    header: Header
    trial: Label | None = None
    group: str | None = None


@dataclass(frozen=True, slots=True)
class Choosing:
    """The sheets to read; or a question."""

    sheets: tuple[ChosenSheet, ...]
    notes: tuple[str, ...] = ()
    question: Question | None = None


def choose_sheets(grids: tuple[Grid, ...], wanted: str | None) -> Choosing:
    """The sheets that hold the results table.

    Args:
        grids: every sheet of the file.
        wanted: the sheet that the user named, if any.
    Raises:
        TableFaults: no sheet holds a table, or the named one does not exist.
    """
    filled = [grid for grid in grids if any(map(tidy, (cell for row in grid.rows for cell in row)))]
    if wanted is not None:
        filled = [_named(grids, wanted)]
    found = [(grid, header) for grid in filled if (header := find_header(grid)) is not None]
    if not found:
        raise TableFaults(tuple(_no_table(grid) for grid in filled[:1]) or (_EMPTY,))
    notes = []
    if len(found) == 1:
        if len(filled) > 1:
            others = ", ".join(f'"{grid.sheet}"' for grid in filled if grid is not found[0][0])
            notes.append(f'The sheet "{found[0][0].sheet}" is read; {others} {"holds" if len(filled) == 2 else "hold"} no results table.')
        return Choosing((_with_name(*found[0]),), tuple(notes))
    names = [grid.sheet or "" for grid, _ in found]
    unused = [f'The sheet "{grid.sheet}" holds no results table; it is not used.' for grid in filled if grid not in [g for g, _ in found]]
    if all(is_trial_label(name) for name in names):
        return Choosing(
            tuple(ChosenSheet(grid, header, read_trial(grid.sheet or "")) for grid, header in found),
            (f"The sheets {', '.join(names)} are read together, a trial each.", *unused),
        )
    if all(_lacks(header, "group") for _, header in found):
        return Choosing(
            tuple(ChosenSheet(grid, header, None, grid.sheet) for grid, header in found),
            (f"The sheets {', '.join(names)} are read together, a group each.", *unused),
        )
    return Choosing((), (), ask_sheet(names))


def _with_name(grid: Grid, header: Header) -> ChosenSheet:
    name = grid.sheet or ""
    return ChosenSheet(grid, header, read_trial(name) if is_trial_label(name) else None)


def _lacks(header: Header, dimension: str) -> bool:
    """Whether the headings name no group: no such column, no column that could stand in, and none across."""
    for column in header.columns:
        if column.heading.role == dimension or getattr(column.heading, dimension) is not None:
            return False
    first = header.columns[0].heading
    return first.known and (first.color is None or bool(set(first.color.split()) & COLOR_WORDS))


def _named(grids: tuple[Grid, ...], wanted: str) -> Grid:
    for grid in grids:
        if grid.sheet is not None and spelling_key(grid.sheet) == spelling_key(wanted):
            return grid
    names = [grid.sheet for grid in grids if grid.sheet is not None]
    if not names:
        raise TableFaults((Fault(Place(), f"--sheet {wanted}", "no --sheet: this file has no sheets", "Leave --sheet out."),))
    # rapidfuzz is loaded only for a name that is not there as it stands.
    from mathgen.trials.spelling import nearest

    meant = nearest(spelling_key(wanted), {spelling_key(name): None for name in names})
    advice = next((f'Did you mean "{name}"?' for name in names if meant and spelling_key(name) == meant), "")
    raise TableFaults((Fault(Place(), f"--sheet {wanted}", f"one of the sheets {', '.join(names)}", advice),))


_EMPTY = Fault(Place(), "", "a results table", "The file is empty.")


def _no_table(grid: Grid) -> Fault:
    first = next((index for index, row in enumerate(grid.rows) if any(map(tidy, row))), 0)
    cells = ", ".join(tidy(cell) for cell in grid.rows[first] if tidy(cell)) if grid.rows else ""
    shown = cells if len(cells) <= 60 else cells[:57] + "..."
    return Fault(
        Place(first + 1, None, grid.sheet), shown, "a row of headings such as Group, Trial, Red (4), Blue (3)",
        "Put headings above the columns: the group, the trial, and the color of the pins that each column counts.",
    )  # fmt: skip
