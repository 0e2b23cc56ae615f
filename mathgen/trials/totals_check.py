"""Totals that a table gives, checked against its counts."""

from __future__ import annotations

from dataclasses import dataclass

from mathgen.errors import Fault
from mathgen.trials.cells import Absent, Blank, Unreadable, read_cell
from mathgen.trials.heading_words import measure_words, plain
from mathgen.trials.readings import TotalCell


@dataclass(frozen=True, slots=True)
class CountedCell:
    """What one count cell came to: the number in it, and the pins that were set up there where known."""

    value: int
    set_up: int | None


def check_totals(totals: list[TotalCell], counted: dict[tuple[int, int], CountedCell], unreadable: set[tuple[int, int]]) -> list[Fault]:
    """A fault for each total that is not the sum of the counts it stands for.

    Args:
        totals: the total cells of one sheet.
        counted: every count cell of that sheet by row and column.
        unreadable: cells that hold no count; a total over one of them cannot be checked.
    """
    faults = []
    for total in totals:
        if any(cells & unreadable for cells in total.sums):
            continue
        fault = _check(total, counted)
        if fault is not None:
            faults.append(fault)
    return faults


def _check(total: TotalCell, counted: dict[tuple[int, int], CountedCell]) -> Fault | None:
    cell = read_cell(total.text)
    if isinstance(cell, Blank | Absent):
        return None
    if _may_mean_set_up(total) and any(counted[place].set_up is None for cells in total.sums for place in cells if place in counted):
        return None  # it may be the sum of set-up counts, and these are still to be asked for
    sums = [sum(counted[place].value for place in sorted(cells) if place in counted) for cells in total.sums]
    set_ups = [sum(counted[place].set_up or 0 for place in sorted(cells) if place in counted) for cells in total.sums]
    expected = sums[0] if sums else 0
    if isinstance(cell, Unreadable):
        return Fault(total.place, total.text, f"{expected}, the sum of the counts", cell.advice)
    if cell.out_of is not None:
        if (cell.value, cell.out_of) in zip(sums, set_ups, strict=True):
            return None
        return Fault(total.place, total.text, f"{expected} of {set_ups[0] if set_ups else 0}, the sums of the counts", _advice(total))
    if cell.value in sums or (_may_mean_set_up(total) and cell.value in set_ups) or cell.value in _complements(total, sums, set_ups):
        return None
    return Fault(total.place, total.text, f"{expected}, the sum of the counts", _advice(total))


_ADVICE = "Correct the count or the total that is wrong, or use --ignore-totals to go on with the counts as they are."


def _advice(total: TotalCell) -> str:
    """What to do about a wrong total; it may be a group with an unlucky name."""
    return f'{_ADVICE} If "{total.label}" is a group, call it "The {total.label}".' if total.label else _ADVICE


def _may_mean_set_up(total: TotalCell) -> bool:
    """Whether the total's heading allows that it adds up the pins set up."""
    heading = total.place.heading or ""
    return "set_up" in measure_words(heading) or "pins" in plain(heading).split() or "in all" in plain(heading)


def _complements(total: TotalCell, sums: list[int], set_ups: list[int]) -> list[int]:
    """Pins of the other kind: "Total standing" in a table that counts pins knocked down."""
    said = measure_words(total.place.heading or "")
    if said & {"down", "standing"}:
        return [set_up - value for set_up, value in zip(set_ups, sums, strict=True)]
    return []
