"""The readings of one sheet: each count cell with the group, trial, color and measure that its row and column give it.

Wide and long tables, trials or groups across, and two heading rows are one thing here: what a column's heading leaves open,
the row's key cells say.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from mathgen.errors import Fault, Place
from mathgen.trials.cells import Blank, Count, read_cell
from mathgen.trials.columns import Columns, place_of, sort_columns
from mathgen.trials.grid import Grid
from mathgen.trials.header import HeadedColumn, Header
from mathgen.trials.heading_words import tidy, whole_measure
from mathgen.trials.labels import is_trial_label, read_color, read_trial, spelling_key, total_label, total_of
from mathgen.trials.scope import Label, Measure
from mathgen.trials.set_up import Statement, in_title

_LONG_SENTENCE = 30  # a lone cell longer than this below a table is a remark, not a group's name


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


@dataclass(slots=True)
class SheetReadings:
    """Everything that one sheet says, not yet weighed."""

    grid: Grid
    readings: list[Reading] = field(default_factory=list)
    set_ups: list[Statement] = field(default_factory=list)
    totals: list[TotalCell] = field(default_factory=list)
    extras: dict[int, dict[str, tuple[str, Place, str | None]]] = field(default_factory=dict)  # row -> role -> text, place, unit
    titles: list[str] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)
    timestamped: bool = False


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
    found = SheetReadings(grid, titles=[text for _, text in header.titles], notes=list(header.notes))
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
    found.faults.extend(_missing_dimensions(grid, header, columns, outer_group))
    if found.faults:
        return found
    for column in columns.values:
        heading = column.heading
        if heading.set_up is not None and heading.color and heading.measure != "set_up":
            found.set_ups.append(
                Statement(
                    heading.color, heading.set_up, f'the heading "{heading.text}"', place_of(grid, column), heading.group, heading.trial
                )
            )
    _Body(found, header, columns, outer_trial, outer_group).read()
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
    if columns.faults:
        return []
    if not columns.values:
        return [
            Fault(place, "", "columns that hold counts", "Head them with the colors, such as Red (4) and Blue (3), and put counts below.")
        ]
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


class _Body:
    """Walks down one sheet's rows; remembers what blank key cells go on from."""

    def __init__(self, found: SheetReadings, header: Header, columns: Columns, trial: Label | None, group: str | None) -> None:
        self.found, self.header, self.columns = found, header, columns
        self.grid = found.grid
        self.outer_group = group
        self.section_trial = trial
        self.group: str | None = None
        self.trial: Label | None = None
        self.filled: list[int] = []
        self.trials_filled: list[int] = []
        self.data_rows: list[int] = []
        self.row_group: dict[int, str] = {}
        self.row_trial: dict[int, Label | None] = {}
        self.last_total = 0
        self.seen_set_up_rows: list[int] = []
        self.no_trial = trial is None and "trial" not in columns.keys and any(c.heading.trial is None for c in columns.values)
        self.last_filled = max((i + 1 for i, row in enumerate(self.grid.rows) if any(map(tidy, row))), default=0)

    # -- cells
    def text(self, row: int, column: HeadedColumn) -> str:
        return tidy(self.grid.rows[row - 1][column.number - 1])

    def key_text(self, row: int, key: str) -> str:
        column = self.columns.keys.get(key)
        return self.text(row, column) if column else ""

    def label_cells(self, row: int) -> list[str]:
        """The texts that may say what kind of row it is: its keys, and the cells left of the first count."""
        first = min((column.number for column in self.columns.values), default=len(self.grid.rows[0]) + 1)
        keys = {column.number for column in self.columns.keys.values()} | set(range(1, first))
        return [text for number in sorted(keys) if (text := tidy(self.grid.rows[row - 1][number - 1]))]

    # -- rows
    def read(self) -> None:
        headings = [tuple(map(tidy, self.grid.rows[row - 1])) for row in range(self.header.first_row, self.header.last_row + 1)]
        for row in range(self.header.last_row + 1, len(self.grid.rows) + 1):
            cells = tuple(map(tidy, self.grid.rows[row - 1]))
            if not any(cells):
                continue
            if cells in headings:
                self.found.notes.append(f"Row {row} repeats the headings; it is passed over.")
                continue
            self.row(row, cells)
        self.say_fills()
        if self.no_trial and self.section_trial is None and self.data_rows:
            self.found.notes.append("No column names the trial: everything is read as trial 1.")

    def row(self, row: int, cells: tuple[str, ...]) -> None:
        filled = [cell for cell in cells if cell]
        labels = self.label_cells(row)
        kinds = {total_label(label) for label in labels} - {None}
        if len(filled) == 1 and is_trial_label(filled[0]) and "trial" not in self.columns.keys:
            self.section_trial = read_trial(filled[0])
            return
        if "measure" not in self.columns.keys and any(self.is_set_up(label) for label in labels):
            self.set_up_row(row)
        elif "derived" in kinds:
            self.found.notes.append(f'Row {row} ("{labels[0]}") is not used.')
        elif "total" in kinds or self.totalled_group(row) is not None:
            self.total_row(row, labels)
        elif len(filled) == 1 and self.lone(row, filled[0]):
            return
        else:
            self.data_row(row)

    def is_set_up(self, label: str) -> bool:
        """Whether a row's label heads a set-up row; "Total pins" does so above the first result."""
        return whole_measure(label) == "set_up" or (not self.data_rows and label.casefold() in ("total pins", "pins in all", "in all"))

    def totalled_group(self, row: int) -> str | None:
        """The group that a label such as "Owls total" sums up."""
        for key in ("group", "trial"):
            name = total_of(self.key_text(row, key))
            if name is not None:
                for group in self.row_group.values():
                    if spelling_key(group) in (spelling_key(name), spelling_key(f"the {name}")):
                        return group
        return None

    def lone(self, row: int, text: str) -> bool:
        """Whether a row of one cell was settled: a group's name above its rows, or a remark."""
        group = self.columns.keys.get("group")
        below = next((r for r in range(row + 1, len(self.grid.rows) + 1) if any(map(tidy, self.grid.rows[r - 1]))), None)
        if group and self.key_text(row, "group") == text:
            if below is not None and not self.key_text(below, "group") and (self.key_text(below, "trial") or self.key_text(below, "color")):
                self.group = text
                return True
            names_row = "trial" in self.columns.keys or "color" in self.columns.keys
            if (below is None and names_row) or len(text) > _LONG_SENTENCE or text.casefold().startswith(("note", "source", "remark", "*")):
                self.found.notes.append(f'Row {row} ("{text}") holds no results; it is not used.')
                return True
            return False
        if any(column.number == self.grid.rows[row - 1].index(self.raw(row, text)) + 1 for column in self.columns.values):
            return False
        self.found.notes.append(f'Row {row} ("{text}") holds no results; it is not used.')
        return True

    def raw(self, row: int, text: str) -> str:
        return next(cell for cell in self.grid.rows[row - 1] if tidy(cell) == text)

    # -- set-up rows
    def set_up_row(self, row: int) -> None:
        """A row that says how many were set up, for all results or for the group or trial that it names."""
        self.seen_set_up_rows.append(row)
        group = self.key_text(row, "group") or None
        if group and self.is_set_up(group):
            group = None
        elif group is None and self.is_set_up(self.key_text(row, "trial")) and self.data_rows:
            group = self.group
        trial_text = self.key_text(row, "trial")
        trial = read_trial(trial_text) if trial_text and not self.is_set_up(trial_text) else None
        if "trial" not in self.columns.keys and self.section_trial is not None and self.grid.sheet is None:
            trial = self.section_trial
        color_text = self.key_text(row, "color")
        for column in self.columns.values:
            heading = column.heading
            cell = read_cell(self.text(row, column), (row, column.number) in self.grid.dates)
            if isinstance(cell, Blank):
                continue
            place = place_of(self.grid, column, row)
            if not isinstance(cell, Count):
                advice = getattr(cell, "advice", "Type how many pins were set up.")
                self.found.faults.append(Fault(place, self.text(row, column), "a whole number of pins set up", advice))
                continue
            color = heading.color or (read_color(color_text)[0] if color_text and not self.is_set_up(color_text) else None)
            if color is None:
                self.found.faults.append(Fault(place, self.text(row, column), "a color in the set-up row", "Name the color in this row."))
                continue
            where = f"the set-up row (row {row})"
            self.found.set_ups.append(
                Statement(color, cell.value, where, place, heading.group or group, heading.trial if heading.trial is not None else trial)
            )
        for column in self.columns.totals:
            if text := self.text(row, column):
                own = frozenset((row, value.number) for value in self.columns.values)
                self.found.totals.append(TotalCell(place_of(self.grid, column, row), text, (own,)))

    # -- totals
    def total_row(self, row: int, labels: list[str]) -> None:
        """A row of sums; what it may be the sum of depends on the keys beside the word."""
        group = self.totalled_group(row)
        own = self.key_text(row, "group")
        if group is None and own and total_label(own) is None:
            group = own
        trial_text = self.key_text(row, "trial")
        trial = read_trial(trial_text) if trial_text and total_label(trial_text) is None and total_of(trial_text) is None else None
        color_text = self.key_text(row, "color")
        since = [r for r in self.data_rows if r > self.last_total]
        if group is not None:
            candidates = [[r for r in self.data_rows if spelling_key(self.row_group[r]) == spelling_key(group)]]
        elif not own and total_label(trial_text) and self.group is not None:
            candidates = [[r for r in self.data_rows if self.row_group[r] == self.group], self.data_rows, since]
        else:
            candidates = [self.data_rows, since]
        if trial is not None:
            candidates = [[r for r in rows if self.row_trial[r] == trial] for rows in candidates]
        if color_text and total_label(color_text) is None:
            candidates = [[r for r in rows if spelling_key(self.key_text(r, "color")) == spelling_key(color_text)] for rows in candidates]
        for column in self.columns.values:
            if text := self.text(row, column):
                sums = tuple(frozenset((r, column.number) for r in rows) for rows in candidates)
                self.found.totals.append(TotalCell(place_of(self.grid, column, row), text, sums))
        for column in self.columns.totals:
            if text := self.text(row, column):
                sums = tuple(
                    frozenset((r, number) for r in rows for number in numbers)
                    for rows in candidates
                    for numbers in self.summed_columns(column)
                )
                self.found.totals.append(TotalCell(place_of(self.grid, column, row), text, sums))
        self.found.notes.append(f'Row {row} ("{labels[0]}") is a totals row; it is checked against the counts and not counted itself.')
        self.last_total = row

    def summed_columns(self, total: HeadedColumn) -> list[list[int]]:
        """Each set of columns that a total column may be the sum of."""
        heading = total.heading
        values = [c for c in self.columns.values if heading.measure is None or c.heading.measure in (None, heading.measure)]
        if heading.color:
            values = [c for c in values if c.heading.color == heading.color]
        before = max((t.number for t in self.columns.totals if t.number < total.number), default=0)
        choices = [values, [c for c in values if before < c.number < total.number]]
        for measure in ("down", "standing", "set_up"):
            choices.append([c for c in values if c.heading.measure == measure])
        if heading.trial is not None:
            choices.insert(0, [c for c in values if c.heading.trial == heading.trial])
        return [numbers for choice in choices if (numbers := [c.number for c in choice])]

    # -- results
    def data_row(self, row: int) -> None:
        group = self.row_group_name(row)
        trial = self.row_trial_label(row, group)
        color = self.row_color(row)
        measure_text = self.key_text(row, "measure")
        row_measure = whole_measure(measure_text) if measure_text else None
        if group is None and "group" in self.columns.keys:
            return
        self.data_rows.append(row)
        self.row_group[row], self.row_trial[row] = group or "", trial
        for column in self.columns.values:
            heading = column.heading
            own_group = heading.group or group
            own_trial = heading.trial if heading.trial is not None else trial
            own_color = heading.color or color
            if own_group is None or own_trial is None or own_color is None:
                continue
            self.found.readings.append(
                Reading(
                    place_of(self.grid, column, row), self.text(row, column), (row, column.number) in self.grid.dates, own_group, own_trial,
                    own_color, heading.measure or row_measure, (self.grid.sheet or "", row),
                )
            )  # fmt: skip
        self.extras(row)
        for column in self.columns.totals:
            if text := self.text(row, column):
                sums = tuple(frozenset((row, number) for number in numbers) for numbers in self.summed_columns(column))
                self.found.totals.append(TotalCell(place_of(self.grid, column, row), text, sums))

    def row_group_name(self, row: int) -> str | None:
        if "group" not in self.columns.keys:
            return self.outer_group
        typed = self.key_text(row, "group")
        if typed:
            if typed != self.group:
                self.trial = None
            self.group = typed
            return typed
        if self.group is None:
            place = place_of(self.grid, self.columns.keys["group"], row)
            self.found.faults.append(
                Fault(
                    place,
                    "",
                    "the name of a group",
                    'If this row says how many pins were set up, type "Set up" here; if not, type the group.',
                )
            )
            return None
        self.filled.append(row)
        return self.group

    def row_trial_label(self, row: int, group: str | None) -> Label | None:
        column = self.columns.keys.get("trial")
        if column is None:
            return self.section_trial if self.section_trial is not None else 1
        typed = self.key_text(row, "trial")
        if typed:
            self.trial = read_trial(typed)
            return self.trial
        if all(value.heading.trial is not None for value in self.columns.values):
            return None
        if self.trial is not None and ("color" in self.columns.keys or "measure" in self.columns.keys):
            self.trials_filled.append(row)
            return self.trial
        if group is not None:
            self.found.faults.append(Fault(place_of(self.grid, column, row), "", "the trial's number", "Type which trial this row is."))
        return None

    def row_color(self, row: int) -> str | None:
        column = self.columns.keys.get("color")
        if column is None:
            return None
        typed = self.key_text(row, "color")
        if not typed or not any(character.isalpha() for character in typed):
            self.found.faults.append(
                Fault(place_of(self.grid, column, row), typed, "a color", "Type the color of the pins that this row counts.")
            )
            return None
        color, set_up = read_color(typed)
        if set_up is not None:
            self.found.set_ups.append(Statement(color, set_up, f'"{typed}" in row {row}', place_of(self.grid, column, row)))
        return color

    def extras(self, row: int) -> None:
        """The optional columns' cells of a row."""
        for role, column in self.columns.optional.items():
            if text := self.text(row, column):
                self.found.extras.setdefault(row, {})[role] = (text, place_of(self.grid, column, row), column.heading.unit)

    def say_fills(self) -> None:
        if self.filled:
            self.found.notes.append(f"Blank group cells go on with the group above them ({_rows(self.filled)}).")
        if self.trials_filled:
            self.found.notes.append(f"Blank trial cells go on with the trial above them ({_rows(self.trials_filled)}).")


def _rows(rows: list[int]) -> str:
    """ "row 5" or "rows 5, 6 and 9", cut short after six."""
    shown = [str(row) for row in rows[:6]]
    if len(rows) > 6:
        return f"rows {', '.join(shown)} and {len(rows) - 6} more"
    return f"row {shown[0]}" if len(shown) == 1 else f"rows {', '.join(shown[:-1])} and {shown[-1]}"
