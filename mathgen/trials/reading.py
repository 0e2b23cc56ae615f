"""From a file's cells to a trial table, with every guess named; or every fault, or every question, at once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from mathgen.errors import Place, TableFaults, TableQuestions
from mathgen.trials.grid import Grid
from mathgen.trials.layout import read_sheet
from mathgen.trials.options import ReadOptions
from mathgen.trials.price_list import find_price_list, read_price_list, without_headings
from mathgen.trials.results import weigh
from mathgen.trials.sheets import choose_sheets
from mathgen.trials.source import read_grids
from mathgen.trials.table import TrialTable
from mathgen.trials.unprintable import unprintable
from mathgen.trials.unworked import unworked, without_result

__all__ = ["ReadOptions", "ReadResult", "interpret", "read_table"]


@dataclass(frozen=True, slots=True)
class ReadResult:
    """A table that was understood, and in plain words each guess that was made on the way."""

    table: TrialTable
    notes: tuple[str, ...] = ()


def interpret(grids: Sequence[Grid], options: ReadOptions = ReadOptions()) -> ReadResult:  # noqa: B008  (frozen, so shared safely)
    """The trial table that the cells hold.

    Args:
        grids: every sheet of the file.
        options: what the user has said beforehand.
    Returns:
        The table, and a note for each guess.
    Raises:
        TableFaults: something cannot be understood; every fault at once.
        TableQuestions: something reads in more than one way; every question at once.
    """
    if unseen := unprintable(grids):
        raise TableFaults(unseen)
    if (priced := _price_list(tuple(grids), options)) is not None:
        return priced
    try:
        choosing = choose_sheets(tuple(grids), options.sheet)
    except TableFaults as none:
        if (unheaded := without_headings(grids)) is not None:
            raise TableFaults((unheaded,)) from None
        # Perhaps the headings themselves are formulas without results.
        told = [without_result(Place(row, column, grid.sheet)) for grid in grids for row, column in sorted(grid.unworked)]
        raise TableFaults((*none.faults, *told)) from None
    if choosing.question is not None:
        raise TableQuestions((choosing.question,), choosing.notes)
    named = frozenset(color.casefold() for color, _ in options.set_up)
    sheets = [read_sheet(chosen.grid, chosen.header, named, chosen.trial, chosen.group) for chosen in choosing.sheets]
    formulas = [unworked(sheet) for sheet in sheets]
    faults = [fault for sheet in sheets for fault in sheet.faults] + [fault for told in formulas for fault in told.faults]
    if any(sheet.faults and not sheet.readings for sheet in sheets):
        # Without its headings a sheet's cells mean nothing: the headings' faults are told alone.
        raise TableFaults(tuple(faults))
    results = weigh(sheets, options)
    faults += results.faults
    said = [note for sheet in sheets for note in sheet.notes] + [note for told in formulas for note in told.notes]
    notes = (*choosing.notes, *dict.fromkeys(said), *results.notes)
    if faults:
        # A set-up count may only seem to be missing, where the cell that holds it is at fault: that is asked once the faults are gone.
        open_anyway = tuple(question for question in results.questions if question.id != "set-up")
        raise TableFaults(tuple(dict.fromkeys(faults)), open_anyway)
    if results.questions:
        raise TableQuestions(tuple(results.questions), notes)
    return ReadResult(results.table, notes)


def _price_list(grids: tuple[Grid, ...], options: ReadOptions) -> ReadResult | None:
    """The price list, where one sheet holds one; None where none does, and where several do and none is named."""
    named = [grid for grid in grids if options.sheet is None or (grid.sheet or "").casefold() == options.sheet.casefold()]
    found = [one for one in map(find_price_list, named) if one is not None]
    if len(found) != 1:
        return None
    read = read_price_list(found[0], options)
    notes = tuple(read.notes)
    if len(grids) > 1 and options.sheet is None:
        notes = (f'The sheet "{found[0].grid.sheet}" is read: it holds a price list.', *notes)
    if read.faults:
        raise TableFaults(tuple(read.faults))
    if read.question is not None:
        raise TableQuestions((read.question,), notes)
    return ReadResult(TrialTable((), (), tuple(read.prices)), notes)


def read_table(path: str, options: ReadOptions = ReadOptions()) -> ReadResult:  # noqa: B008  (frozen, so shared safely)
    """The trial table in a file, or in standard input for ``-``.

    Raises:
        TableFaults: the file cannot be read, or something in it cannot be understood.
        TableQuestions: something in it reads in more than one way.
    """
    return interpret(read_grids(path), options)
