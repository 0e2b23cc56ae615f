"""The rows below the headings: results, set-up rows, totals rows, and rows that hold none of these."""

from __future__ import annotations

from mathgen.errors import Fault
from mathgen.trials.cells import Absent, Blank, Count, read_cell
from mathgen.trials.column_uses import Columns, place_of
from mathgen.trials.headed_columns import HeadedColumn
from mathgen.trials.header import Header
from mathgen.trials.heading_words import read_heading, tidy, whole_measure
from mathgen.trials.labels import heads_set_up, is_trial_label, read_color, read_trial, respelled, spelling_key, total_label, total_of
from mathgen.trials.readings import Reading, SheetReadings, TotalCell
from mathgen.trials.scope import Label
from mathgen.trials.set_up import Statement
from mathgen.trials.summing import Summed, Verdict, judge
from mathgen.trials.tidy import tidy_cell
from mathgen.trials.total_cells import ResultRow, TotalKeys, rows_summed, summed_columns

_ABSENT_MARKS = ("absent", "abs", "n/a", "-", "–", "—")  # in a trial cell; single letters there are names of trials
_LONG_SENTENCE = 30  # a lone cell longer than this below a table is a remark, not a group's name


class Body:
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
        self.results: list[ResultRow] = []
        self.last_total = 0
        self.verdicts: dict[int, Verdict] = {}  # by row
        self.judged: dict[str, Verdict] = {}  # names such as "Means" that stood beside a trial
        self.summing = ""  # such a name in the group column, where it summed up a trial and no group has followed
        self.no_trial = trial is None and "trial" not in columns.keys and any(c.heading.trial is None for c in columns.values)

    # -- cells
    def text(self, row: int, column: HeadedColumn) -> str:
        return tidy(self.grid.rows[row - 1][column.number - 1])

    def key_text(self, row: int, key: str) -> str:
        """A key cell's label, as typed."""
        column = self.columns.keys.get(key)
        return tidy_cell(self.grid.rows[row - 1][column.number - 1]) if column else ""

    def label_cells(self, row: int) -> list[str]:
        """The texts that may say what kind of row it is: its keys, and the cells left of the first count."""
        first = min((column.number for column in self.columns.values), default=len(self.grid.rows[0]) + 1)
        kept = {column.number for column in self.columns.optional.values()}  # a note that says "start" heads no set-up row
        keys = {column.number for column in self.columns.keys.values()} | (set(range(1, first)) - kept)
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
        if self.no_trial and self.section_trial is None and self.results:
            self.found.notes.append("No column names the trial: everything is read as trial 1.")

    def row(self, row: int, cells: tuple[str, ...]) -> None:
        filled = [cell for cell in cells if cell]
        labels = self.label_cells(row)
        kinds = {total_label(label) for label in labels} - {None}
        if len(filled) == 1 and is_trial_label(filled[0]) and tidy(self.key_text(row, "trial")) != filled[0]:
            self.section_trial = read_trial(filled[0])
            return
        if "measure" not in self.columns.keys and any(self.is_set_up(label) for label in labels):
            self.set_up_row(row)
        elif self.called_like_a_total(row):
            return
        elif "derived" in kinds:
            self.found.summed_rows.add(row)
            self.found.notes.append(f'Row {row} ("{labels[0]}") is not used.')
        elif "total" in kinds or self.totalled_group(row) is not None:
            self.total_row(row, labels)
        elif len(filled) == 1 and self.lone(row, filled[0]):
            return
        else:
            self.data_row(row)

    def called_like_a_total(self, row: int) -> bool:
        """Whether a row whose group is called "Totals", "Means" or the like was settled: as a group's, or as a fault.

        Beside a trial such a name may be a group's: its counts tell. Without one it sums up, and averages must agree.
        """
        typed = self.key_text(row, "group")
        trial_text = self.trial_in_block(row)
        beside_trial = bool(trial_text) and total_label(trial_text) is None and total_of(trial_text) is None
        label = typed or (self.summing if beside_trial else "")
        if typed:
            self.summing = ""
        kind = total_label(label)
        if kind is None:
            return False
        below = self.block(row)[1:]
        if typed and below and sum(1 for cell in self.grid.rows[row - 1] if tidy(cell)) == 1:
            # A name on a row of its own, above its rows.
            if judge(label, [cell for one in below for cell in self.summed_cells(one)]) == "sums up":
                self.summing = label
            else:
                self.found.notes.append(f'"{label}" (row {row}) is read as a group: its counts do not sum up the rows above it.')
                self.judged[spelling_key(label)] = "group"
                self.group, self.trial = label, None
            return True
        if row not in self.verdicts:
            rows = self.block(row) if beside_trial else [row]
            verdict = judge(label, [cell for one in rows for cell in self.summed_cells(one)])
            self.verdicts |= dict.fromkeys(rows, verdict)
        verdict = self.verdicts[row]
        key = spelling_key(label)
        if beside_trial:
            earlier = self.judged.get(key)
            if verdict == "no counts" or earlier == "group":
                verdict = "group"
            if verdict == "group" and earlier not in (None, "group"):
                verdict = "unclear"
            elif verdict == "group":
                if earlier is None:
                    self.found.notes.append(f'"{label}" (row {row}) is read as a group: its counts do not sum up the rows above it.')
                self.judged[key] = "group"
                self.data_row(row)
                return True
            self.judged.setdefault(key, verdict)
            self.summing = label
        if kind == "total" and typed and (verdict != "unclear" or self.judged.get(key) != "sums up"):
            return False  # a total that is wrong is told cell by cell
        if verdict in ("sums up", "no counts"):
            if not typed and kind == "total":
                self.total_row(row, [label])
            elif not typed:
                self.found.summed_rows.add(row)
                self.found.notes.append(f'Row {row} ("{label}") is not used.')
            return not typed
        what = "sums" if kind == "total" else "averages or the like"
        advice = f'If "{label}" is a group, call it "The {label}"; if the row holds {what}, correct it or take it out.'
        place = place_of(self.grid, self.columns.keys["group"], row)
        self.found.faults.append(Fault(place, typed, f"{what} of the rows above, or the name of a group", advice))
        return True

    def block(self, row: int) -> list[int]:
        """The rows from one on that are of the same group: its name typed again or left blank, with a trial or a color."""
        rows, name = [row], spelling_key(self.key_text(row, "group"))
        for below in range(row + 1, len(self.grid.rows) + 1):
            group = self.key_text(below, "group")
            if (group and spelling_key(group) != name) or not (self.key_text(below, "trial") or self.key_text(below, "color")):
                break
            rows.append(below)
        return rows

    def trial_in_block(self, row: int) -> str:
        """The trial beside a row; where its group or color goes on from above, the trial does so too."""
        for above in range(row, self.header.last_row, -1):
            if text := self.key_text(above, "trial"):
                return text
            if self.key_text(above, "group") or not self.key_text(above, "color"):
                break
        return ""

    def summed_cells(self, row: int) -> list[Summed]:
        """The count cells of a row, each with the counts above it that it may sum up."""
        counted = [column for column in self.columns.values if column.heading.measure != "set_up"] or self.columns.values
        choices = [*self.rows_above(row), [result.number for result in self.results]]
        return [Summed(self.text(row, column), tuple(tuple(self.counts_in(rows, column)) for rows in choices)) for column in counted]

    def counts_in(self, rows: list[int], column: HeadedColumn) -> list[int]:
        """The counts of one column in some rows."""
        cells = [read_cell(self.text(row, column), (row, column.number) in self.grid.dates) for row in rows]
        return [cell.value for cell in cells if isinstance(cell, Count)]

    def is_set_up(self, label: str) -> bool:
        """Whether a row's label heads a set-up row; "Total pins" does so above the first result."""
        return heads_set_up(label, first=not self.results)

    def totalled_group(self, row: int) -> str | None:
        """The group that a label such as "Owls total" sums up."""
        for key in ("group", "trial"):
            name = total_of(self.key_text(row, key))
            if name is not None:
                for result in self.results:
                    if spelling_key(result.group) in (spelling_key(name), spelling_key(f"the {name}")):
                        return result.group
        return None

    def lone(self, row: int, text: str) -> bool:
        """Whether a row of one cell was settled: a group's name above its rows, or a remark."""
        group = self.columns.keys.get("group")
        below = next((r for r in range(row + 1, len(self.grid.rows) + 1) if any(map(tidy, self.grid.rows[r - 1]))), None)
        if group and tidy(self.key_text(row, "group")) == text:
            if below is not None and not self.key_text(below, "group") and (self.key_text(below, "trial") or self.key_text(below, "color")):
                self.group = self.key_text(row, "group")
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
        group = self.key_text(row, "group") or None
        if group and self.is_set_up(group):
            group = None
        elif group is None and self.is_set_up(self.key_text(row, "trial")) and self.results:
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
            own_trial = heading.trial if heading.trial is not None else trial
            source = f"the set-up row (row {row})"
            self.found.set_ups.append(Statement(color, cell.value, source, place, heading.group or group, own_trial, in_row=True))
        for column in self.columns.totals:
            self.total_cell(row, column, [[(row, number) for number in numbers] for numbers in summed_columns(column, self.columns)])

    # -- totals
    def total_row(self, row: int, labels: list[str]) -> None:
        """A row of sums."""
        choices = self.rows_above(row)
        self.found.summed_rows.add(row)
        for column in self.columns.values:
            self.total_cell(row, column, [[(number, column.number) for number in rows] for rows in choices])
        for column in self.columns.totals:
            across = summed_columns(column, self.columns)
            self.total_cell(
                row, column, [[(number, other) for number in rows for other in numbers] for rows in choices for numbers in across]
            )
        self.found.notes.append(f'Row {row} ("{labels[0]}") is a totals row; it is checked against the counts and not counted itself.')
        self.last_total = row

    def rows_above(self, row: int) -> list[list[int]]:
        """Each set of rows that a totals row may be the sum of; the keys beside the word tell."""
        trial_text = self.trial_in_block(row)
        trial = read_trial(trial_text) if trial_text and total_label(trial_text) is None and total_of(trial_text) is None else None
        color_text = self.key_text(row, "color")
        color = read_color(color_text)[0] if color_text and total_label(color_text) is None else color_text
        keys = TotalKeys(self.key_text(row, "group"), trial_text, color, self.totalled_group(row), self.group)
        return rows_summed(keys, trial, self.results, self.last_total)

    def total_cell(self, row: int, column: HeadedColumn, sums: list[list[tuple[int, int]]]) -> None:
        if text := self.text(row, column):
            group = self.key_text(row, "group")
            label = group if total_label(group) else ""
            self.found.totals.append(TotalCell(place_of(self.grid, column, row), text, tuple(map(frozenset, sums)), label))

    # -- results
    def data_row(self, row: int) -> None:
        group = self.row_group_name(row)
        trial = self.row_trial_label(row, group)
        color = self.row_color(row, group, trial)
        color_column = self.columns.keys.get("color")
        color_place = place_of(self.grid, color_column, row) if color_column else None
        measure_text = self.key_text(row, "measure")
        row_measure = whole_measure(measure_text) if measure_text else read_heading(self.key_text(row, "color")).measure
        if group is None and "group" in self.columns.keys:
            return
        self.results.append(ResultRow(row, group or "", trial, color))
        absent = self.absent_once(row)
        for column in self.columns.values:
            heading = column.heading
            own_group = heading.group or group
            own_trial = heading.trial if heading.trial is not None else trial
            own_color = heading.color or color
            if own_group is None or own_trial is None or own_color is None:
                continue
            place = place_of(self.grid, column, row)
            is_date = (row, column.number) in self.grid.dates
            text = self.text(row, column)
            if absent and heading.measure != "set_up" and not text:
                text = absent
            measure = heading.measure or row_measure
            line = (self.grid.sheet or "", row)
            self.found.readings.append(Reading(place, text, is_date, own_group, own_trial, own_color, measure, line, color_place))
        self.extras(row)
        for column in self.columns.totals:
            self.total_cell(row, column, [[(row, number) for number in numbers] for numbers in summed_columns(column, self.columns)])

    def absent_once(self, row: int) -> str:
        """The mark for absent, where a row holds it once and no count beside it; "" where not."""
        texts = [self.text(row, column) for column in self.columns.values if column.heading.measure != "set_up"]
        filled = [text for text in texts if text]
        if len(texts) > 1 and len(filled) == 1 and isinstance(read_cell(filled[0]), Absent):
            self.found.notes.append(f'Row {row} says "{filled[0]}" once; its blank cells are read as absent too.')
            return filled[0]
        return ""

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
        if typed.casefold() in _ABSENT_MARKS:
            advice = f'Type the trial here and "{typed}" under each color.'
            self.found.faults.append(Fault(place_of(self.grid, column, row), typed, "the trial's number", advice))
            return None
        if typed:
            self.trial = read_trial(typed)
            return self.trial
        if all(value.heading.trial is not None for value in self.columns.values):
            return None
        if self.section_trial is not None:
            return self.section_trial
        if self.trial is not None and ("color" in self.columns.keys or "measure" in self.columns.keys):
            self.trials_filled.append(row)
            return self.trial
        if group is not None:
            self.found.faults.append(Fault(place_of(self.grid, column, row), "", "the trial's number", "Type which trial this row is."))
        return None

    def row_color(self, row: int, group: str | None, trial: Label | None) -> str | None:
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
        if respelled(color, typed):
            self.found.notes.append(f'"{typed}" is read as the color "{color}".')
        if set_up is not None:
            self.found.set_ups.append(
                Statement(
                    color,
                    set_up,
                    f'"{typed}" in row {row}',
                    place_of(self.grid, column, row),
                    group,
                    trial if "trial" in self.columns.keys else None,
                )
            )
        return color

    def extras(self, row: int) -> None:
        """The optional columns' cells of a row."""
        for role, column in self.columns.optional.items():
            if text := self.text(row, column):
                is_date = (row, column.number) in self.grid.dates
                self.found.extras.setdefault(row, {})[role] = (text, place_of(self.grid, column, row), column.heading.unit, is_date)

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
