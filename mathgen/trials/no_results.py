"""Tables that hold no result at all: nothing is filled in yet, or every trial was missed."""

from __future__ import annotations

from mathgen.errors import Fault, Place
from mathgen.trials.cells import Blank, read_cell
from mathgen.trials.readings import Reading, SheetReadings


def not_filled_in(sheets: list[SheetReadings], readings: list[Reading]) -> Fault | None:
    """The fault of a table in which nobody has written yet, such as a recording sheet before the first roll.

    Whatever a blank is said to mean, a class that has written nothing down has not knocked down nothing.
    """
    # A formula without a result is empty to us, but not to whoever wrote it.
    formulas = {(sheet.grid.sheet, row, column) for sheet in sheets for row, column in sheet.grid.unworked}
    places = [reading.place for reading in readings if reading.measure != "set_up"]
    cells = [read_cell(reading.text, reading.is_date) for reading in readings if reading.measure != "set_up"]
    if not places or not all(isinstance(cell, Blank) for cell in cells):
        return None
    if any((place.sheet, place.row, place.column) in formulas for place in places):
        return None
    first, last = places[0].cell, places[-1].cell
    where = f"cells {first} to {last}" if first != last else f"cell {first}"
    advice = f"Fill in the counts in {where}, 0 where there were none and absent where no trial was taken, save, and run mathgen again."
    return Fault(Place(None, None, places[0].sheet), "no results yet", "the counts of at least one trial", advice)


def all_absent(number: int, sheet: str | None) -> Fault:
    """The fault of a table whose every result is absent."""
    return Fault(Place(None, None, sheet), f"every result ({number}) is absent", "at least one count", "Fill in what was counted.")
