"""Rows of sums and averages; and rows whose group is called like one, of which the counts tell what they are."""

from __future__ import annotations

from mathgen.errors import Fault
from mathgen.trials.body_cells import BodyCells
from mathgen.trials.column_uses import place_of
from mathgen.trials.labels import read_color, read_trial, spelling_key, total_label, total_of
from mathgen.trials.result_rows import ResultRows
from mathgen.trials.summing import Summed, Verdict, judge
from mathgen.trials.total_cells import TotalKeys, rows_summed, summed_columns


class TotalsRows:
    """Tells totals from groups, and keeps each total with what it may be the sum of."""

    def __init__(self, cells: BodyCells, running: ResultRows) -> None:
        self._cells, self._running = cells, running
        self._found, self._columns = cells.found, cells.columns
        self._last_total = 0
        self._verdicts: dict[int, Verdict] = {}  # by row
        self._judged: dict[str, Verdict] = {}  # names such as "Means" that stood beside a trial
        self._summing = ""  # such a name in the group column, where it summed up a trial and no group has followed

    def settle_name(self, row: int) -> bool:
        """Whether a row whose group is called "Totals", "Means" or the like was settled: as a group's, or as a fault.

        Beside a trial such a name may be a group's: its counts tell. Without one it sums up, and averages must agree.
        """
        typed = self._cells.key_text(row, "group")
        trial_text = self._cells.trial_in_block(row)
        beside_trial = bool(trial_text) and total_label(trial_text) is None and total_of(trial_text) is None
        label = typed or (self._summing if beside_trial else "")
        if typed:
            self._summing = ""
        kind = total_label(label)
        if kind is None:
            return False
        below = self._cells.block(row)[1:]
        if typed and below and self._cells.has_one_cell(row):
            # A name on a row of its own, above its rows.
            if judge(label, [cell for one in below for cell in self._summed_cells(one)]) == "sums up":
                self._summing = label
            else:
                self._say_group(label, row)
                self._judged[spelling_key(label)] = "group"
                self._running.group, self._running.trial = label, None
            return True
        if row not in self._verdicts:
            rows = self._cells.block(row) if beside_trial else [row]
            verdict = judge(label, [cell for one in rows for cell in self._summed_cells(one)])
            self._verdicts |= dict.fromkeys(rows, verdict)
        verdict = self._verdicts[row]
        key = spelling_key(label)
        if beside_trial:
            earlier = self._judged.get(key)
            if verdict == "no counts" or earlier == "group":
                verdict = "group"
            if verdict == "group" and earlier not in (None, "group"):
                verdict = "unclear"
            elif verdict == "group":
                if earlier is None:
                    self._say_group(label, row)
                self._judged[key] = "group"
                self._running.read(row)
                return True
            self._judged.setdefault(key, verdict)
            self._summing = label
        if kind == "total" and typed and (verdict != "unclear" or self._judged.get(key) != "sums up"):
            return False  # a total that is wrong is told cell by cell
        if verdict in ("sums up", "no counts"):
            if not typed and kind == "total":
                self.read(row, [label])
            elif not typed:
                self._found.summed_rows.add(row)
                self._found.notes.append(f'Row {row} ("{label}") is not used.')
            return not typed
        what = "sums" if kind == "total" else "averages or the like"
        advice = f'If "{label}" is a group, call it "The {label}"; if the row holds {what}, correct it or take it out.'
        place = place_of(self._cells.grid, self._columns.keys["group"], row)
        self._found.faults.append(Fault(place, typed, f"{what} of the rows above, or the name of a group", advice))
        return True

    def _say_group(self, label: str, row: int) -> None:
        self._found.notes.append(f'"{label}" (row {row}) is read as a group: its counts do not sum up the rows above it.')

    def _summed_cells(self, row: int) -> list[Summed]:
        """The count cells of a row, each with the counts above it that it may sum up."""
        counted = [column for column in self._columns.values if column.heading.measure != "set_up"] or self._columns.values
        choices = [*self._rows_above(row), [result.number for result in self._running.results]]
        return [
            Summed(self._cells.text(row, column), tuple(tuple(self._cells.counts_in(rows, column)) for rows in choices))
            for column in counted
        ]

    def totalled_group(self, row: int) -> str | None:
        """The group that a label such as "Owls total" sums up."""
        for key in ("group", "trial"):
            name = total_of(self._cells.key_text(row, key))
            if name is not None:
                for result in self._running.results:
                    if spelling_key(result.group) in (spelling_key(name), spelling_key(f"the {name}")):
                        return result.group
        return None

    def read(self, row: int, labels: list[str]) -> None:
        """Keeps a row of sums, to be checked against the counts."""
        choices = self._rows_above(row)
        self._found.summed_rows.add(row)
        for column in self._columns.values:
            self._cells.total_cell(row, column, [[(number, column.number) for number in rows] for rows in choices])
        for column in self._columns.totals:
            across = summed_columns(column, self._columns)
            self._cells.total_cell(
                row, column, [[(number, other) for number in rows for other in numbers] for rows in choices for numbers in across]
            )
        self._found.notes.append(f'Row {row} ("{labels[0]}") is a totals row; it is checked against the counts and not counted itself.')
        self._last_total = row

    def _rows_above(self, row: int) -> list[list[int]]:
        """Each set of rows that a totals row may be the sum of; the keys beside the word tell."""
        trial_text = self._cells.trial_in_block(row)
        trial = read_trial(trial_text) if trial_text and total_label(trial_text) is None and total_of(trial_text) is None else None
        color_text = self._cells.key_text(row, "color")
        color = read_color(color_text)[0] if color_text and total_label(color_text) is None else color_text
        keys = TotalKeys(self._cells.key_text(row, "group"), trial_text, color, self.totalled_group(row), self._running.group)
        return rows_summed(keys, trial, self._running.results, self._last_total)
