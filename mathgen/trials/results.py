"""From the readings of all sheets to the rows of a trial table: every cell weighed, every doubt a fault or a question."""

from __future__ import annotations

from dataclasses import dataclass, field

from mathgen.errors import Fault, Place, Question
from mathgen.trials.cells import Absent, Cell, Count, Unreadable, read_cell
from mathgen.trials.duplicates import settle_duplicates, trials_listed
from mathgen.trials.measures import MEASURE_WORDS, settle_measures
from mathgen.trials.names import misspelled_colors, near_colors, near_groups, one_spelling, unclear_groups
from mathgen.trials.no_results import all_absent, not_filled_in
from mathgen.trials.optional_columns import Kept, kept_of_row
from mathgen.trials.options import ReadOptions
from mathgen.trials.questions import ask_blank, ask_set_up
from mathgen.trials.readings import Reading, SheetReadings
from mathgen.trials.scope import Label, Measure
from mathgen.trials.set_up import SetUps, Statement, against_option, unknown_colors
from mathgen.trials.table import Row, TrialTable
from mathgen.trials.titles import speaks_of_seeds
from mathgen.trials.totals_check import CountedCell, check_totals


@dataclass(slots=True)
class Results:
    """What the readings came to."""

    rows: list[Row] = field(default_factory=list)
    absent: list[tuple[str, Label, str]] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)
    questions: list[Question] = field(default_factory=list)

    @property
    def table(self) -> TrialTable:
        """The trial table."""
        return TrialTable(tuple(self.rows), tuple(self.absent))

    def take(
        self, notes: tuple[str, ...] | list[str] = (), faults: tuple[Fault, ...] | list[Fault] = (), question: Question | None = None
    ) -> None:
        """Adds what one step said."""
        self.notes.extend(notes)
        self.faults.extend(faults)
        if question is not None:
            self.questions.append(question)


@dataclass(frozen=True, slots=True)
class _Told:
    """One reading with its cell read."""

    reading: Reading
    cell: Cell


def weigh(sheets: list[SheetReadings], options: ReadOptions) -> Results:
    """Rows, absent results, notes, faults and questions from all sheets that are read."""
    results = Results()
    readings = [reading for sheet in sheets for reading in sheet.readings]
    if not readings:
        if not any(sheet.faults for sheet in sheets):
            place = Place(None, None, sheets[0].grid.sheet)
            results.take(faults=[Fault(place, "", "results below the headings", "Add a row for each group and trial.")])
        return results
    if untouched := not_filled_in(sheets, readings):
        results.take(faults=[untouched])
        return results
    readings = one_spelling(readings, results.notes)
    results.take([*near_groups(readings), *near_colors(readings), *unclear_groups(readings)], misspelled_colors(readings))
    titles = [text for sheet in sheets for text in (*sheet.titles, sheet.grid.sheet or "")]
    settled = settle_measures(readings, titles, options.counts)
    results.take(settled.notes, settled.faults, settled.question)
    headings = dict.fromkeys(reading.place.heading or "" for reading in readings)
    if options.scenario in (None, "ramp") and speaks_of_seeds([*titles, *headings]):
        results.take(["The table speaks of seeds; --scenario seeds gives words about seeds."])
    single = settle_duplicates(settled.readings, options.duplicates, any(sheet.timestamped for sheet in sheets))
    results.take(single.notes, question=single.question)
    weighing = _Weighing(sheets, options, results)
    weighing.set_ups_for(single.readings)
    # Doubles that are left out or asked about are still cells that a total has added up.
    weighing.remember(settled.readings)
    for readings_once in (single.readings, *single.later):  # whichever is to count, what is wrong in the others is told now
        for (group, trial, color), measures in _by_result(readings_once).items():
            weighing.result(group, trial, color, measures)
    weighing.ask(bool(settled.question))
    weighing.totals()
    weighing.say()
    if not (results.rows or results.faults or results.questions):
        results.take(faults=[all_absent(len(results.absent), sheets[0].grid.sheet)])
    return results


def _by_result(readings: list[Reading]) -> dict[tuple[str, Label, str], dict[Measure, _Told]]:
    told: dict[tuple[str, Label, str], dict[Measure, _Told]] = {}
    for reading in readings:
        assert reading.measure is not None
        told.setdefault((reading.group, reading.trial, reading.color), {})[reading.measure] = _Told(
            reading, read_cell(reading.text, reading.is_date)
        )
    return told


class _Weighing:
    """Weighs one result after another; remembers what is to be asked and said at the end."""

    def __init__(self, sheets: list[SheetReadings], options: ReadOptions, results: Results) -> None:
        self.sheets, self.options, self.results = sheets, options, results
        self.set_ups = SetUps([])
        self.counted: dict[tuple[str, int, int], CountedCell] = {}
        self.unreadable: set[tuple[str, int, int]] = set()
        self.blanks: dict[Place, Measure] = {}
        self.unset: list[str] = []
        self.guesses: dict[str, int] = {}
        self.kept: dict[tuple[str, int], Kept] = {}

    def set_ups_for(self, readings: list[Reading]) -> None:
        """Gathers what the table and the option say about set-up counts."""
        stated = [statement for sheet in self.sheets for statement in sheet.set_ups]
        colors = tuple(dict.fromkeys(reading.color for reading in readings))
        self.results.take(faults=unknown_colors(self.options.set_up, colors))
        self.results.take(faults=against_option(self.options.set_up, stated))
        optional = [Statement(color.casefold(), count, "--set-up", Place()) for color, count in self.options.set_up]
        self.set_ups = SetUps([*stated, *optional])
        self.results.take(faults=SetUps(stated).conflicts())
        self.results.take(faults=[_none_set_up(statement.place, statement.color) for statement in stated if statement.count < 1])

    def remember(self, readings: list[Reading]) -> None:
        """The number in every count cell, for the totals."""
        for reading in readings:
            cell = read_cell(reading.text, reading.is_date)
            if isinstance(cell, Count):
                said = self.set_ups.of(reading.group, reading.trial, reading.color)
                set_up = cell.value if reading.measure == "set_up" else cell.out_of or (said.count if said else None)
                self.counted[_spot(reading.place)] = CountedCell(cell.value, set_up)

    def result(self, group: str, trial: Label, color: str, measures: dict[Measure, _Told]) -> None:
        """Turns the cells of one result into a row, an absent result, a fault or a part of a question."""
        counts: dict[Measure, _Told] = {measure: told for measure, told in measures.items() if measure != "set_up"}
        set_up = self.set_up_of(group, trial, color, measures)
        unreadable = [(measure, told) for measure, told in measures.items() if isinstance(told.cell, Unreadable)]
        for told in measures.values():
            if guess := getattr(told.cell, "guess", ""):
                self.guesses[guess] = self.guesses.get(guess, 0) + 1
        for measure, told in unreadable:
            self.unreadable_cell(measure, told, set_up)
        own = measures.get("set_up")
        if own and isinstance(own.cell, Count) and own.cell.value < 1:
            self.results.take(faults=[_none_set_up(own.reading.place, color)])
        elif not unreadable and counts:
            numbers = self.numbers(counts)
            if numbers is None:
                self.results.absent.append((group, trial, color))
            elif numbers:
                self.row(group, trial, color, counts, numbers, set_up)
            elif set_up is None:
                self.unset.append(color)  # asked for along with the blank, so that one answer is not followed by another question

    def numbers(self, counts: dict[Measure, _Told]) -> dict[Measure, int] | None:
        """The counts of one result; None where it is absent, nothing where blanks are asked about."""
        numbers: dict[Measure, int] = {measure: told.cell.value for measure, told in counts.items() if isinstance(told.cell, Count)}
        if numbers:
            return numbers
        if any(isinstance(told.cell, Absent) for told in counts.values()) or self.options.blank == "absent":
            return None
        measure, told = next(iter(counts.items()))
        if self.options.blank == "none":
            return {measure: 0}
        self.blanks[told.reading.place] = measure
        return {}

    def set_up_of(self, group: str, trial: Label, color: str, measures: dict[Measure, _Told]) -> int | None:
        """How many were set up for one result; a fault where two places disagree."""
        sources: list[tuple[int, str, _Told | None]] = []
        for measure, told in measures.items():
            if isinstance(told.cell, Count):
                if measure == "set_up":
                    sources.append((told.cell.value, f'the column "{told.reading.place.heading or "set up"}"', told))
                elif told.cell.out_of is not None:
                    sources.append((told.cell.out_of, f'"{told.reading.text}"', told))
        said = self.set_ups.of(group, trial, color)
        if said is not None:
            sources.append((said.count, said.source, None))
        if not sources:
            return None
        count, source, told_first = sources[0]
        for other, by, _ in sources[1:]:
            if other != count and told_first is not None:
                advice = f"{source[0].upper()}{source[1:]} says {count}. Make them agree."
                expected = f"{other} {color} pins set up, as {by} says"
                self.results.take(faults=[Fault(told_first.reading.place, told_first.reading.text, expected, advice)])
                break
        return count

    def row(
        self, group: str, trial: Label, color: str, counts: dict[Measure, _Told], numbers: dict[Measure, int], set_up: int | None
    ) -> None:
        """Adds a row, where the numbers hold together."""
        both = len(numbers) == 2
        if set_up is None and both:
            set_up = sum(numbers.values())
            self.guesses.setdefault("How many were set up is taken as knocked down and left standing together", 1)
        if set_up is None:
            self.unset.append(color)
            return
        for measure, number in numbers.items():
            if number > set_up:
                reading = counts[measure].reading
                expected = f"a whole number from 0 to {set_up} (pins set up)"
                advice = f"More pins were {MEASURE_WORDS[measure]} than were set up."
                self.results.take(faults=[Fault(reading.place, reading.text, expected, advice)])
                return
        if both and sum(numbers.values()) != set_up:
            reading = counts["standing"].reading
            advice = f"{numbers['down']} of {set_up} were knocked down. Correct the number that is wrong."
            self.results.take(faults=[Fault(reading.place, reading.text, f"{set_up - numbers['down']} left standing", advice)])
            return
        down = numbers["down"] if "down" in numbers else set_up - numbers["standing"]
        kept = self.kept_of(next(iter(counts.values())).reading)
        self.results.rows.append(Row(group, trial, color, set_up, down, kept.target, kept.gap_inches, kept.height, kept.round, kept.notes))

    def unreadable_cell(self, measure: Measure, told: _Told, set_up: int | None) -> None:
        """A fault for a cell that is no count."""
        assert isinstance(told.cell, Unreadable)
        self.unreadable.add(_spot(told.reading.place))
        expected = "a whole number" if set_up is None else f"a whole number from 0 to {set_up} (pins set up)"
        if measure == "set_up":
            expected = "a whole number of pins set up"
        self.results.take(faults=[Fault(told.reading.place, told.reading.text, told.cell.expected or expected, told.cell.advice)])

    def kept_of(self, reading: Reading) -> Kept:
        """The optional columns of the row that a result stands in, read once a row."""
        if reading.line not in self.kept:
            name, row = reading.line
            sheet = next(sheet for sheet in self.sheets if (sheet.grid.sheet or "") == name)
            self.kept[reading.line] = kept_of_row(sheet.extras.get(row, {}))
            self.results.take(faults=self.kept[reading.line].faults)
            for note in self.kept[reading.line].notes_said:
                self.guesses.setdefault(note, 1)
        return self.kept[reading.line]

    def ask(self, counts_asked: bool) -> None:
        """The questions that the results left open."""
        if self.blanks:
            words = " or ".join(dict.fromkeys(MEASURE_WORDS[measure] for measure in self.blanks.values()))
            self.results.take(question=ask_blank(list(self.blanks), "counted" if counts_asked else words))
        if self.unset:
            self.results.take(question=ask_set_up(list(dict.fromkeys(self.unset)), not self.results.rows))

    def totals(self) -> None:
        """Checks the table's own totals against its counts."""
        if self.options.ignore_totals:
            if any(sheet.totals for sheet in self.sheets):
                self.results.take(["The table's own totals are not checked (--ignore-totals)."])
            return
        for sheet in self.sheets:
            name = sheet.grid.sheet or ""
            counted = {(row, column): cell for (of, row, column), cell in self.counted.items() if of == name}
            for statement in sheet.set_ups:
                if statement.in_row and statement.place.row and statement.place.column:
                    counted.setdefault((statement.place.row, statement.place.column), CountedCell(statement.count, statement.count))
            unreadable = {(row, column) for of, row, column in self.unreadable if of == name}
            self.results.take(faults=check_totals(sheet.totals, counted, unreadable))

    def say(self) -> None:
        """The guesses that cells needed, and results that have no row at all."""
        self.results.take([f"{guess}{f' ({times} times)' if times > 1 else ''}." for guess, times in self.guesses.items()])
        if self.results.faults or self.results.questions:
            return
        table = self.results.table
        known = {(row.group, row.trial) for row in table.rows} | {(group, trial) for group, trial, _ in table.absent}
        missing = [(group, trial) for group in table.groups for trial in table.trials if (group, trial) not in known]
        if missing:
            self.results.take([f"There is no row for {trials_listed(missing)}."])


def _spot(place: Place) -> tuple[str, int, int]:
    return place.sheet or "", place.row or 0, place.column or 0


def _none_set_up(place: Place, color: str) -> Fault:
    return Fault(
        place, "0", "at least 1 pin set up", f'Where no {color} pins were set up, type "absent" as the count and leave this cell empty.'
    )
