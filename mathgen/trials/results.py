"""From the readings of all sheets to the rows of a trial table: every cell weighed, every doubt a fault or a question."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from sympy import Rational

from mathgen.errors import Fault, Place, Question
from mathgen.trials.cells import Absent, Cell, Count, Unreadable, read_cell
from mathgen.trials.heading_words import COLOR_WORDS, measure_words
from mathgen.trials.labels import spelling_key
from mathgen.trials.layout import Reading, SheetReadings
from mathgen.trials.optional_columns import gap_inches, target_color
from mathgen.trials.options import ReadOptions
from mathgen.trials.questions import ask_blank, ask_counts, ask_duplicates, ask_set_up
from mathgen.trials.scope import Label, Measure
from mathgen.trials.set_up import SetUps, Statement, unknown_colors
from mathgen.trials.table import Row, TrialTable
from mathgen.trials.totals_check import CountedCell, check_totals

_WORDS = {"down": "knocked down", "standing": "left standing", "set_up": "set up"}
_Key = tuple[str, Label, str, int]  # group, trial, color, and which of several with the same labels


@dataclass(frozen=True, slots=True)
class _Told:
    """One reading with its cell read."""

    reading: Reading
    cell: Cell


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


def weigh(sheets: list[SheetReadings], options: ReadOptions) -> Results:
    """Rows, absent results, notes, faults and questions from all sheets that are read."""
    return _Weighing(sheets, options).done()


class _Weighing:
    """Holds what the steps share; each step reads what the one before it settled."""

    def __init__(self, sheets: list[SheetReadings], options: ReadOptions) -> None:
        self.sheets, self.options = sheets, options
        self.results = Results()
        self.readings = [reading for sheet in sheets for reading in sheet.readings]
        self.told: dict[_Key, dict[Measure, _Told]] = {}
        self.counted: dict[tuple[str, int, int], CountedCell] = {}
        self.unreadable: set[tuple[str, int, int]] = set()
        self.blanks: list[Place] = []
        self.blank_measures: list[Measure] = []
        self.unset: dict[str, int] = {}
        self.guesses: dict[str, int] = {}

    def done(self) -> Results:
        if not self.readings:
            if not self.results.faults:
                place = Place(None, None, self.sheets[0].grid.sheet)
                self.results.faults.append(Fault(place, "", "results below the headings", "Add a row for each group and trial."))
            return self.results
        self.same_spellings()
        self.near_spellings()
        self.measures()
        self.lay_out()
        self.duplicates()
        self.set_ups = self.gather_set_ups()
        for key, measures in self.told.items():
            self.result(key, measures)
        self.ask()
        self.totals()
        self.missing()
        for guess, times in self.guesses.items():
            self.results.notes.append(f"{guess}{f' ({times} times)' if times > 1 else ''}.")
        return self.results

    # -- names
    def same_spellings(self) -> None:
        """Groups, trials and colors that differ only in case or spaces are one; the first spelling stands."""
        groups: dict[str, str] = {}
        trials: dict[str, Label] = {}
        variants: dict[str, list[str]] = {}
        renamed = []
        for reading in self.readings:
            group = groups.setdefault(spelling_key(reading.group), reading.group)
            if group != reading.group and reading.group not in variants.setdefault(group, []):
                variants[group].append(reading.group)
            trial = reading.trial
            if isinstance(trial, str):
                trial = trials.setdefault(spelling_key(trial), trial)
            renamed.append(replace(reading, group=group, trial=trial))
        self.readings = renamed
        for group, others in variants.items():
            if others:
                self.results.notes.append(
                    f'{", ".join(_quoted(others))} {"is" if len(others) == 1 else "are"} read as the group "{group}".'
                )

    def near_spellings(self) -> None:
        """Names a slip apart: a color is a fault, as the table has colors that are known; two groups are said."""
        times: dict[str, int] = {}
        for reading in self.readings:
            times[reading.color] = times.get(reading.color, 0) + 1
        for color in [color for color in times if color not in COLOR_WORDS and len(color) > 3]:
            # rapidfuzz is loaded only for a color that is in no list.
            from mathgen.trials.spelling import nearest

            meant = nearest(color, [other for other in times if times[other] > times[color] and other != color])
            if meant:
                for reading in self.readings:
                    if reading.color == color and color not in (reading.place.heading or "").casefold():
                        self.results.faults.append(
                            Fault(
                                Place(reading.place.row, None, reading.place.sheet), color, f"one of the colors {', '.join(c for c in times if c != color)}",
                                f'Did you mean "{meant}"?',
                            )
                        )  # fmt: skip
        groups = list(dict.fromkeys(reading.group for reading in self.readings))
        for index, group in enumerate(groups):
            for other in groups[index + 1 :]:
                if _slip_apart(group, other):
                    self.results.notes.append(f'"{group}" and "{other}" are read as two groups. If they are one, give them one spelling.')

    # -- knocked down or left standing
    def measures(self) -> None:
        """A measure for every reading that has none: from the titles, the option, or a question."""
        unsaid = [reading for reading in self.readings if reading.measure is None]
        stated = {reading.measure for reading in self.readings} - {None, "set_up"}
        wanted = self.options.counts
        if not unsaid:
            if wanted and stated and wanted not in stated:
                (other,) = stated
                self.results.faults.append(
                    Fault(
                        Place(),
                        f"--counts {wanted}",
                        f"--counts {other}: the headings say {_WORDS[str(other)]}",
                        "Leave --counts out or change it.",
                    )
                )
            return
        said: set[Measure] = set()
        by = ""
        for sheet in self.sheets:
            for text in [*sheet.titles, sheet.grid.sheet or ""]:
                words = measure_words(text) - {"set_up"}
                if words and not said:
                    by = text
                said |= words
        measure: Measure
        if wanted:
            measure = wanted
            if said and wanted not in said:
                self.results.notes.append(f'"{by}" says pins {_WORDS[said.pop()]}; --counts {wanted} is followed.')
        elif len(said) == 1:
            (measure,) = said
            self.results.notes.append(f'The counts are of pins {_WORDS[measure]}, as "{by}" says.')
        elif all(not isinstance(cell := read_cell(r.text, r.is_date), Count) or cell.out_of is not None for r in unsaid):
            measure = "down"
            self.results.notes.append("A count such as 3/4 is read as 3 knocked down of 4 set up.")
        else:
            columns = list(dict.fromkeys(f'"{r.place.heading}"' for r in unsaid if r.place.heading))
            self.results.questions.append(ask_counts(columns[:6] if len(columns) < 7 else [*columns[:6], "..."]))
            measure = "down"
        self.readings = [replace(reading, measure=reading.measure or measure) for reading in self.readings]

    # -- which readings belong to one result
    def lay_out(self) -> None:
        seen: dict[tuple[str, Label, str, Measure], int] = {}
        for reading in self.readings:
            assert reading.measure is not None
            label = (reading.group, reading.trial, reading.color, reading.measure)
            number = seen.get(label, 0)
            seen[label] = number + 1
            cell = read_cell(reading.text, reading.is_date)
            self.told.setdefault((reading.group, reading.trial, reading.color, number), {})[reading.measure] = _Told(reading, cell)

    def duplicates(self) -> None:
        """Results that are there more than once: the option decides, or a question asks."""
        doubled = list(dict.fromkeys((group, trial) for group, trial, _, number in self.told if number))
        if not doubled:
            return
        if self.options.duplicates is None:
            doubles = []
            for group, trial in doubled:
                rows = sorted(
                    {told.reading.line[1] for key, measures in self.told.items() if key[:2] == (group, trial) for told in measures.values()}
                )
                doubles.append((group, trial, rows))
            self.results.questions.append(ask_duplicates(doubles, any(sheet.timestamped for sheet in self.sheets)))
            return
        last: dict[tuple[str, Label, str], int] = {}
        for group, trial, color, number in self.told:
            last[group, trial, color] = max(number, last.get((group, trial, color), 0))
        if self.options.duplicates == "keep":
            self.keep_doubles()
            return
        keep_last = self.options.duplicates == "last"
        self.told = {
            (group, trial, color, 0): measures
            for (group, trial, color, number), measures in self.told.items()
            if number == (last[group, trial, color] if keep_last else 0)
        }
        which = "last" if keep_last else "first"
        self.results.notes.append(f"Of results that are there more than once, the {which} one counts: {_trials_listed(doubled)}.")

    def keep_doubles(self) -> None:
        """Each later one of several results becomes a further trial of its group."""
        free: dict[str, int] = {}
        for group, trial, _, _ in self.told:
            free[group] = max(free.get(group, 0), trial if isinstance(trial, int) else 0)
        further: dict[tuple[str, Label, int], int] = {}
        kept: dict[_Key, dict[Measure, _Told]] = {}
        for (group, trial, color, number), measures in self.told.items():
            if number:
                if (group, trial, number) not in further:
                    free[group] += 1
                    further[group, trial, number] = free[group]
                    self.results.notes.append(f'A further result of "{group}", {_trial(trial)}, is counted as trial {free[group]}.')
                kept[group, further[group, trial, number], color, 0] = measures
            else:
                kept[group, trial, color, 0] = measures
        self.told = kept

    # -- set-up counts
    def gather_set_ups(self) -> SetUps:
        statements = [statement for sheet in self.sheets for statement in sheet.set_ups]
        colors = tuple(dict.fromkeys(color for _, _, color, _ in self.told))
        self.results.faults.extend(unknown_colors(self.options.set_up, colors))
        for color, count in self.options.set_up:
            earlier = next((s for s in statements if s.color == color.casefold() and s.narrowness == 0), None)
            if earlier is not None and earlier.count != count:
                self.results.faults.append(
                    Fault(Place(), f"--set-up {color}={count}", f"{earlier.count} {earlier.color} pins, as {earlier.source} says", "Leave that color out, or correct the table.")
                )  # fmt: skip
            statements.append(Statement(color.casefold(), count, "--set-up", Place()))
        gathered = SetUps(statements)
        self.results.faults.extend(fault for fault in gathered.conflicts() if fault.place.row is not None)
        for statement in statements:
            if statement.count < 1:
                self.results.faults.append(
                    Fault(statement.place, str(statement.count), "at least 1 pin set up", f'Where no {statement.color} pins were set up, type "absent" as the count.')
                )  # fmt: skip
        return gathered

    def set_up_of(self, key: _Key, measures: dict[Measure, _Told]) -> tuple[int | None, str]:
        """How many were set up for one result, and what says so."""
        group, trial, color, _ = key
        sources: list[tuple[int, str]] = []
        for measure in ("down", "standing"):
            told = measures.get(measure)
            if told and isinstance(told.cell, Count) and told.cell.out_of is not None:
                sources.append((told.cell.out_of, f'"{told.reading.text}"'))
        own = measures.get("set_up")
        if own and isinstance(own.cell, Count):
            sources.append((own.cell.value, f'"{own.reading.place.heading or "set up"}"'))
        said = self.set_ups.of(group, trial, color)
        if said is not None:
            sources.append((said.count, said.source))
        if not sources:
            return None, ""
        first = sources[0]
        for count, source in sources[1:]:
            if count != first[0]:
                told = measures.get("down") or measures.get("standing") or own
                assert told is not None
                self.results.faults.append(
                    Fault(told.reading.place, told.reading.text, f"{count} {color} pins set up, as {source} says", f"{first[1]} says {first[0]}. Make them agree.")
                )  # fmt: skip
                break
        return first

    # -- one result
    def result(self, key: _Key, measures: dict[Measure, _Told]) -> None:
        """Turns the cells of one result into a row, an absent result, a fault or a part of a question."""
        group, trial, color, _ = key
        counts = {measure: told for measure, told in measures.items() if measure != "set_up"}
        set_up, _ = self.set_up_of(key, measures)
        unreadable = False
        for measure, told in measures.items():
            self.note_guess(told)
            if isinstance(told.cell, Unreadable):
                unreadable = True
                self.unreadable_cell(measure, told, set_up if measure != "set_up" else None)
            elif isinstance(told.cell, Count):
                self.counted[self.spot(told)] = CountedCell(told.cell.value, set_up if measure != "set_up" else told.cell.value)
        own = measures.get("set_up")
        if own and isinstance(own.cell, Count) and own.cell.value < 1:
            self.results.faults.append(
                Fault(
                    own.reading.place,
                    own.reading.text,
                    "at least 1 pin set up",
                    f'Where no {color} pins were set up, type "absent" as the count.',
                )
            )
            return
        if unreadable:
            return
        numbers: dict[Measure, int] = {measure: told.cell.value for measure, told in counts.items() if isinstance(told.cell, Count)}
        if not numbers:
            if not counts:
                return  # a set-up count alone is no result
            if any(isinstance(told.cell, Absent) for told in counts.values()) or self.options.blank == "absent":
                self.results.absent.append((group, trial, color))
                return
            if self.options.blank is None:
                measure, told = next(iter(counts.items()))
                self.blanks.append(told.reading.place)
                self.blank_measures.append(measure)
                return
            numbers = {next(iter(counts)): 0}
        self.row(key, counts, numbers, set_up)

    def row(self, key: _Key, counts: dict[Measure, _Told], numbers: dict[Measure, int], set_up: int | None) -> None:
        """A row, once the numbers hold together."""
        group, trial, color, _ = key
        both = len(numbers) == 2
        first_measure = next(iter(numbers))
        told = counts[first_measure]
        if set_up is None and both:
            set_up = numbers["down"] + numbers["standing"]
            self.guesses.setdefault("How many were set up is taken as knocked down and left standing together", 1)
        if set_up is None:
            self.unset[color] = max(self.unset.get(color, 0), max(numbers.values()))
            return
        for measure, number in numbers.items():
            if number > set_up:
                place = counts[measure].reading.place
                self.results.faults.append(
                    Fault(place, counts[measure].reading.text, f"a whole number from 0 to {set_up} (pins set up)", f"More pins were {_WORDS[measure]} than were set up.")
                )  # fmt: skip
                return
        if both and numbers["down"] + numbers["standing"] != set_up:
            self.results.faults.append(
                Fault(
                    counts["standing"].reading.place, counts["standing"].reading.text, f"{set_up - numbers['down']} left standing",
                    f"{numbers['down']} of {set_up} were knocked down. Correct the number that is wrong.",
                )
            )  # fmt: skip
            return
        down = numbers["down"] if "down" in numbers else set_up - numbers["standing"]
        self.results.rows.append(Row(group, trial, color, set_up, down, **self.extras(told)))

    def unreadable_cell(self, measure: Measure, told: _Told, set_up: int | None) -> None:
        assert isinstance(told.cell, Unreadable)
        self.unreadable.add(self.spot(told))
        expected = "a whole number" if set_up is None else f"a whole number from 0 to {set_up} (pins set up)"
        if measure == "set_up":
            expected = "a whole number of pins set up"
        self.results.faults.append(Fault(told.reading.place, told.reading.text, told.cell.expected or expected, told.cell.advice))

    def spot(self, told: _Told) -> tuple[str, int, int]:
        place = told.reading.place
        return place.sheet or "", place.row or 0, place.column or 0

    def note_guess(self, told: _Told) -> None:
        guess = getattr(told.cell, "guess", "")
        if guess:
            self.guesses[guess] = self.guesses.get(guess, 0) + 1

    # -- optional columns
    def extras(self, told: _Told) -> dict[str, object]:
        """The optional columns' values of the row that a result stands in."""
        sheet_name, row = told.reading.line
        sheet = next(sheet for sheet in self.sheets if (sheet.grid.sheet or "") == sheet_name)
        values: dict[str, object] = {}
        for role, (text, place, unit) in sheet.extras.get(row, {}).items():
            if role == "target":
                values["target"] = target_color(text)
            elif role == "gap":
                values["gap_inches"] = self.gap(text, place, unit)
            elif role in ("height", "round", "notes"):
                values[role] = text
        return values

    def gap(self, text: str, place: Place, unit: str | None) -> Rational | None:
        try:
            length = gap_inches(text, unit)
        except ValueError as wrong:
            fault = Fault(place, text, str(wrong), "Write halves and quarters as 1/2 and 1/4.")
            if fault not in self.results.faults:
                self.results.faults.append(fault)
            return None
        if unit == "cm" or "cm" in text.casefold():
            self.guesses.setdefault("Centimeters between pins are turned into inches (1 inch is 2.54 cm)", 1)
        return length

    # -- the end
    def ask(self) -> None:
        if self.blanks:
            measures = list(dict.fromkeys(_WORDS[measure] for measure in self.blank_measures))
            words = "counted" if any(q.id == "counts" for q in self.results.questions) else " or ".join(measures)
            self.results.questions.append(ask_blank(self.blanks, words))
        if self.unset:
            colors = list(dict.fromkeys(color for _, _, color, _ in self.told if color in self.unset))
            self.results.questions.append(ask_set_up(colors, not self.results.rows))

    def totals(self) -> None:
        if self.options.ignore_totals:
            if any(sheet.totals for sheet in self.sheets):
                self.results.notes.append("The table's own totals are not checked (--ignore-totals).")
            return
        for sheet in self.sheets:
            name = sheet.grid.sheet or ""
            counted = {(row, column): cell for (of, row, column), cell in self.counted.items() if of == name}
            for statement in sheet.set_ups:
                place = statement.place
                if place.row is not None and place.column is not None and "set-up row" in statement.source:
                    counted.setdefault((place.row, place.column), CountedCell(statement.count, statement.count))
            unreadable = {(row, column) for of, row, column in self.unreadable if of == name}
            self.results.faults.extend(check_totals(sheet.totals, counted, unreadable))

    def missing(self) -> None:
        """Results that have no cell at all, where most others have one."""
        table = self.results.table
        known = {(row.group, row.trial, row.color) for row in table.rows} | set(table.absent)
        if self.results.faults or self.results.questions:
            return
        missing = [(g, t) for g in table.groups for t in table.trials if not any((g, t, color) in known for color in table.colors)]
        if missing:
            self.results.notes.append(f"There is no row for {_trials_listed(missing)}.")


def _trial(trial: Label) -> str:
    return f"trial {trial}" if isinstance(trial, int) else trial


def _trials_listed(pairs: list[tuple[str, Label]]) -> str:
    shown = "; ".join(f"{group}, {_trial(trial)}" for group, trial in pairs[:8])
    return shown + (f" and {len(pairs) - 8} more" if len(pairs) > 8 else "")


def _quoted(names: list[str]) -> list[str]:
    return [f'"{name}"' for name in names]


def _slip_apart(first: str, second: str) -> bool:
    """Whether two group names differ by one letter, or by an s at the end."""
    one, other = sorted((spelling_key(first), spelling_key(second)), key=len)
    if len(one) < 3 or len(other) - len(one) > 1:
        return False
    if len(one) == len(other):
        unlike = [(a, b) for a, b in zip(one, other, strict=True) if a != b]
        swapped = len(unlike) == 2 and unlike[0] == unlike[1][::-1]
        whole_words = one.split()[:-1] == other.split()[:-1] and len(one.split()) > 1 and len(one.split()[-1]) == 1
        return (len(unlike) == 1 and len(one) > 3 and all(c.isalpha() for pair in unlike for c in pair) and not whole_words) or swapped
    cut = [other[:index] + other[index + 1 :] for index in range(len(other)) if not other[index].isdecimal()]
    return one in cut
