"""What one sheet says, not yet weighed: its count cells, total cells, set-up counts and optional columns."""

from __future__ import annotations

from dataclasses import dataclass, field

from mathgen.errors import Fault, Place
from mathgen.trials.grid import Grid
from mathgen.trials.scope import Label, Measure
from mathgen.trials.set_up import Statement


@dataclass(frozen=True, slots=True)
class Reading:
    """One count cell. A measure of None: nothing in its row or column says whether pins fell or stood."""

    place: Place
    text: str
    is_date: bool
    group: str
    trial: Label
    color: str
    measure: Measure | None
    line: tuple[str, int]  # sheet and row: the submission that it belongs to
    color_place: Place | None = None  # the cell that names the color, where a cell does


@dataclass(frozen=True, slots=True)
class TotalCell:
    """One cell of a totals row or column, and each set of cells that it may be the sum of."""

    place: Place
    text: str
    sums: tuple[frozenset[tuple[int, int]], ...]
    label: str = ""  # "Totals" or the like, where that stands in the place of a group's name


@dataclass(slots=True)
class SheetReadings:
    """Everything that one sheet says, not yet weighed."""

    grid: Grid
    readings: list[Reading] = field(default_factory=list)
    set_ups: list[Statement] = field(default_factory=list)
    totals: list[TotalCell] = field(default_factory=list)
    extras: dict[int, dict[str, tuple[str, Place, str | None, bool]]] = field(
        default_factory=dict
    )  # row -> role -> text, place, unit, date
    titles: list[str] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)
    timestamped: bool = False
    # Rows and columns that sum up, average or the like: what they hold follows from the counts.
    summed_rows: set[int] = field(default_factory=set)
    summed_columns: set[int] = field(default_factory=set)
