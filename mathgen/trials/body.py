"""The rows below the headings: results, set-up rows, totals rows, and rows that hold none of these."""

from __future__ import annotations

from mathgen.trials.body_cells import BodyCells
from mathgen.trials.column_uses import Columns
from mathgen.trials.header import Header
from mathgen.trials.heading_words import tidy
from mathgen.trials.labels import is_trial_label, read_trial, total_label
from mathgen.trials.readings import SheetReadings
from mathgen.trials.result_rows import ResultRows
from mathgen.trials.scope import Label
from mathgen.trials.set_up_rows import heads_set_up_row, read_set_up_row
from mathgen.trials.totals_rows import TotalsRows

_LONG_SENTENCE = 30  # a lone cell longer than this below a table is a remark, not a group's name


class Body:
    """Walks down one sheet's rows, and gives each to the reader of its kind."""

    def __init__(self, found: SheetReadings, header: Header, columns: Columns, trial: Label | None, group: str | None) -> None:
        self._found, self._header, self._columns, self._grid = found, header, columns, found.grid
        self._cells = BodyCells(found, header, columns)
        self._running = ResultRows(self._cells, trial, group)
        self._totals = TotalsRows(self._cells, self._running)

    def read(self) -> None:
        """Reads every row into the readings."""
        headings = [tuple(map(tidy, self._grid.rows[row - 1])) for row in range(self._header.first_row, self._header.last_row + 1)]
        for row in range(self._header.last_row + 1, len(self._grid.rows) + 1):
            cells = tuple(map(tidy, self._grid.rows[row - 1]))
            if not any(cells):
                continue
            if cells in headings:
                self._found.notes.append(f"Row {row} repeats the headings; it is passed over.")
                continue
            self._row(row, cells)
        self._running.say_what_was_filled()

    def _row(self, row: int, cells: tuple[str, ...]) -> None:
        filled = [cell for cell in cells if cell]
        labels = self._cells.label_cells(row)
        kinds = {total_label(label) for label in labels} - {None}
        if len(filled) == 1 and is_trial_label(filled[0]) and tidy(self._cells.key_text(row, "trial")) != filled[0]:
            self._running.section_trial = read_trial(filled[0])
            return
        if "measure" not in self._columns.keys and any(heads_set_up_row(self._running, label) for label in labels):
            read_set_up_row(self._cells, self._running, row)
        elif self._totals.settle_name(row):
            return
        elif "derived" in kinds:
            self._found.summed_rows.add(row)
            self._found.notes.append(f'Row {row} ("{labels[0]}") is not used.')
        elif "total" in kinds or self._totals.totalled_group(row) is not None:
            self._totals.read(row, labels)
        elif len(filled) == 1 and self._lone(row, filled[0]):
            return
        else:
            self._running.read(row)

    def _lone(self, row: int, text: str) -> bool:
        """Whether a row of one cell was settled: a group's name above its rows, or a remark."""
        group, key_text = self._columns.keys.get("group"), self._cells.key_text
        below = next((r for r in range(row + 1, len(self._grid.rows) + 1) if any(map(tidy, self._grid.rows[r - 1]))), None)
        if group and tidy(key_text(row, "group")) == text:
            if below is not None and not key_text(below, "group") and (key_text(below, "trial") or key_text(below, "color")):
                self._running.group = key_text(row, "group")
                return True
            names_row = "trial" in self._columns.keys or "color" in self._columns.keys
            if (below is None and names_row) or len(text) > _LONG_SENTENCE or text.casefold().startswith(("note", "source", "remark", "*")):
                self._found.notes.append(f'Row {row} ("{text}") holds no results; it is not used.')
                return True
            return False
        stands_in = next(number for number, cell in enumerate(self._grid.rows[row - 1], 1) if tidy(cell) == text)
        if any(column.number == stands_in for column in self._columns.values):
            return False
        self._found.notes.append(f'Row {row} ("{text}") holds no results; it is not used.')
        return True
