"""Formulas that a workbook holds no result for, as one that a program wrote and no spreadsheet has opened since."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.errors import Fault, Place
from mathgen.trials.readings import SheetReadings

_ADVICE = "Open the workbook in the spreadsheet program, save it there and try again; or type the number itself."


class Unworked(NamedTuple):
    """What such formulas come to: faults where a number is needed, a note where it follows from the counts."""

    faults: tuple[Fault, ...]
    notes: tuple[str, ...]


def unworked(sheet: SheetReadings) -> Unworked:
    """Faults and notes for a sheet's formulas without a result.

    Totals, averages and the like say nothing that the counts do not say; only there may formulas be passed over.
    """
    idle: list[Place] = []
    needed: list[Place] = []
    for row, column in sorted(sheet.grid.unworked):
        (idle if row in sheet.summed_rows or column in sheet.summed_columns else needed).append(Place(row, column, sheet.grid.sheet))
    return Unworked(tuple(map(without_result, needed)), _passed_over(idle))


def without_result(place: Place) -> Fault:
    """The fault of one such formula."""
    return Fault(place, "a formula without a result", "a formula with its result", _ADVICE)


def _passed_over(idle: list[Place]) -> tuple[str, ...]:
    if not idle:
        return ()
    if len(idle) == 1:
        return (f"Cell {idle[0].cell} is a formula without a result; it is passed over, for it follows from the counts.",)
    cells = f"Cells {idle[0].cell} to {idle[-1].cell}"
    return (f"{cells} hold {len(idle)} formulas without a result; they are passed over, for they follow from the counts.",)
