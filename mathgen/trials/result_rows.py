"""Rows of results: the group, trial and color of each, typed in the row or gone on with from above."""

from __future__ import annotations

from mathgen.errors import Fault
from mathgen.trials.body_cells import BodyCells
from mathgen.trials.cells import Absent, read_cell
from mathgen.trials.column_uses import place_of
from mathgen.trials.heading_words import read_heading, whole_measure
from mathgen.trials.labels import read_color, read_trial, respelled
from mathgen.trials.readings import Reading
from mathgen.trials.scope import Label
from mathgen.trials.set_up import Statement
from mathgen.trials.total_cells import ResultRow

_ABSENT_MARKS = ("absent", "abs", "n/a", "-", "–", "—")  # in a trial cell; single letters there are names of trials


class ResultRows:
    """Reads rows of results one after another; remembers what blank key cells go on from."""

    def __init__(self, cells: BodyCells, trial: Label | None, group: str | None) -> None:
        """``trial`` and ``group`` are those that the sheet or its name gives to every row."""
        self._cells, self._found, self._columns = cells, cells.found, cells.columns
        self._outer_group = group
        self.section_trial = trial  # of the rows below a line that names it
        self.group: str | None = None
        self.trial: Label | None = None
        self.results: list[ResultRow] = []
        self._filled: list[int] = []
        self._trials_filled: list[int] = []
        self._no_trial = trial is None and "trial" not in self._columns.keys and any(c.heading.trial is None for c in self._columns.values)

    def read(self, row: int) -> None:
        """Keeps the counts of a row, with what else it tells."""
        group = self._group_name(row)
        trial = self._trial_label(row, group)
        color = self._color(row, group, trial)
        color_column = self._columns.keys.get("color")
        color_place = place_of(self._cells.grid, color_column, row) if color_column else None
        measure_text = self._cells.key_text(row, "measure")
        row_measure = whole_measure(measure_text) if measure_text else read_heading(self._cells.key_text(row, "color")).measure
        if group is None and "group" in self._columns.keys:
            return
        self.results.append(ResultRow(row, group or "", trial, color))
        absent = self._absent_once(row)
        for column in self._columns.values:
            heading = column.heading
            own_group = heading.group or group
            own_trial = heading.trial if heading.trial is not None else trial
            own_color = heading.color or color
            if own_group is None or own_trial is None or own_color is None:
                continue
            place = place_of(self._cells.grid, column, row)
            is_date = self._cells.is_date(row, column)
            text = self._cells.text(row, column)
            if absent and heading.measure != "set_up" and not text:
                text = absent
            measure = heading.measure or row_measure
            line = (self._cells.grid.sheet or "", row)
            self._found.readings.append(Reading(place, text, is_date, own_group, own_trial, own_color, measure, line, color_place))
        self._extras(row)
        self._cells.totals_across(row)

    def _absent_once(self, row: int) -> str:
        """The mark for absent, where a row holds it once and no count beside it; "" where not."""
        texts = [self._cells.text(row, column) for column in self._columns.values if column.heading.measure != "set_up"]
        filled = [text for text in texts if text]
        if len(texts) > 1 and len(filled) == 1 and isinstance(read_cell(filled[0]), Absent):
            self._found.notes.append(f'Row {row} says "{filled[0]}" once; its blank cells are read as absent too.')
            return filled[0]
        return ""

    def _group_name(self, row: int) -> str | None:
        if "group" not in self._columns.keys:
            return self._outer_group
        typed = self._cells.key_text(row, "group")
        if typed:
            if typed != self.group:
                self.trial = None
            self.group = typed
            return typed
        if self.group is None:
            place = place_of(self._cells.grid, self._columns.keys["group"], row)
            self._found.faults.append(
                Fault(
                    place,
                    "",
                    "the name of a group",
                    'If this row says how many pins were set up, type "Set up" here; if not, type the group.',
                )
            )
            return None
        self._filled.append(row)
        return self.group

    def _trial_label(self, row: int, group: str | None) -> Label | None:
        column = self._columns.keys.get("trial")
        if column is None:
            return self.section_trial if self.section_trial is not None else 1
        typed = self._cells.key_text(row, "trial")
        if typed.casefold() in _ABSENT_MARKS:
            advice = f'Type the trial here and "{typed}" under each color.'
            self._found.faults.append(Fault(place_of(self._cells.grid, column, row), typed, "the trial's number", advice))
            return None
        if typed:
            self.trial = read_trial(typed)
            return self.trial
        if all(value.heading.trial is not None for value in self._columns.values):
            return None
        if self.section_trial is not None:
            return self.section_trial
        if self.trial is not None and ("color" in self._columns.keys or "measure" in self._columns.keys):
            self._trials_filled.append(row)
            return self.trial
        if group is not None:
            place = place_of(self._cells.grid, column, row)
            self._found.faults.append(Fault(place, "", "the trial's number", "Type which trial this row is."))
        return None

    def _color(self, row: int, group: str | None, trial: Label | None) -> str | None:
        column = self._columns.keys.get("color")
        if column is None:
            return None
        typed = self._cells.key_text(row, "color")
        if not typed or not any(character.isalpha() for character in typed):
            self._found.faults.append(
                Fault(place_of(self._cells.grid, column, row), typed, "a color", "Type the color of the pins that this row counts.")
            )
            return None
        color, set_up = read_color(typed)
        if respelled(color, typed):
            self._found.notes.append(f'"{typed}" is read as the color "{color}".')
        if set_up is not None:
            self._found.set_ups.append(
                Statement(
                    color,
                    set_up,
                    f'"{typed}" in row {row}',
                    place_of(self._cells.grid, column, row),
                    group,
                    trial if "trial" in self._columns.keys else None,
                )
            )
        return color

    def _extras(self, row: int) -> None:
        """The optional columns' cells of a row."""
        for role, column in self._columns.optional.items():
            if text := self._cells.text(row, column):
                is_date = self._cells.is_date(row, column)
                self._found.extras.setdefault(row, {})[role] = (text, place_of(self._cells.grid, column, row), column.heading.unit, is_date)

    def say_what_was_filled(self) -> None:
        """Notes what was gone on with from above, and a trial that nothing named."""
        if self._filled:
            self._found.notes.append(f"Blank group cells go on with the group above them ({_rows(self._filled)}).")
        if self._trials_filled:
            self._found.notes.append(f"Blank trial cells go on with the trial above them ({_rows(self._trials_filled)}).")
        if self._no_trial and self.section_trial is None and self.results:
            self._found.notes.append("No column names the trial: everything is read as trial 1.")


def _rows(rows: list[int]) -> str:
    """ "row 5" or "rows 5, 6 and 9", cut short after six."""
    shown = [str(row) for row in rows[:6]]
    if len(rows) > 6:
        return f"rows {', '.join(shown)} and {len(rows) - 6} more"
    return f"row {shown[0]}" if len(shown) == 1 else f"rows {', '.join(shown[:-1])} and {shown[-1]}"
