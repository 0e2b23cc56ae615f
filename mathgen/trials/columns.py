"""What each column is for: a key (group, trial, color), counts, a total, an optional column, or nothing that is used."""

from __future__ import annotations

from dataclasses import replace

from mathgen.errors import Fault
from mathgen.trials.cells import Absent, Count, read_cell
from mathgen.trials.colorless import settle_colorless
from mathgen.trials.column_uses import Columns, place_of
from mathgen.trials.grid import Grid
from mathgen.trials.headed_columns import HeadedColumn
from mathgen.trials.header import Header
from mathgen.trials.heading_words import COLOR_WORDS, tidy, whole_measure
from mathgen.trials.labels import is_trial_label, read_color, read_trial, spelling_key, total_label
from mathgen.trials.summing import Summed, judge

_MEASURES = ("set_up", "down", "standing")
_OPTIONAL = ("target", "gap", "height", "round", "notes")


def sort_columns(grid: Grid, header: Header, named_colors: frozenset[str], outer_trial: bool, outer_group: bool) -> Columns:
    """Each column by its use.

    Args:
        grid: the sheet.
        header: its heading rows.
        named_colors: colors named elsewhere: by an option, a title line or a set-up row.
        outer_trial: whether the sheet's name or a title line names the trial.
        outer_group: whether the sheet's name names the group.
    """
    sorter = _Sorter(grid, header, named_colors, outer_trial, outer_group)
    sorter.known()
    sorter.first_columns()
    sorter.unknown()
    sorter.called_like_totals()
    sorter.stand_ins()
    settle_colorless(sorter.columns, grid, lambda column: bool(sorter.cells(column)))
    return sorter.columns


class _Sorter:
    """Sorts one sheet's columns in a few passes, each using what the passes before it settled."""

    def __init__(self, grid: Grid, header: Header, named_colors: frozenset[str], outer_trial: bool, outer_group: bool) -> None:
        self.grid, self.header = grid, header
        self.named_colors = named_colors
        self.outer_trial, self.outer_group = outer_trial, outer_group
        self.columns = Columns()
        self.waiting: list[HeadedColumn] = []  # headings that nobody has met before
        self.spare: list[HeadedColumn] = []  # not used, unless a key is missing that they can stand in for
        self.body = grid.rows[header.last_row :]

    # -- what is known about a column's cells
    def cells(self, column: HeadedColumn) -> list[str]:
        return [cell for row in self.body if (cell := tidy(row[column.number - 1]))]

    def counts(self, column: HeadedColumn) -> bool:
        """Whether most of a column's cells hold counts."""
        texts = self.cells(column)
        dates = sum(1 for row, col in self.grid.dates if col == column.number and row > self.header.last_row)
        good = sum(1 for text in texts if isinstance(read_cell(text), Count | Absent)) + dates
        return bool(texts) and 2 * good >= len(texts)

    def has(self, dimension: str) -> bool:
        """Whether a key column or a heading gives the group, trial or color."""
        if dimension in self.columns.keys:
            return True
        if (dimension == "trial" and self.outer_trial) or (dimension == "group" and self.outer_group):
            return True
        return any(getattr(column.heading, dimension) is not None for column in self.columns.values)

    # -- the passes
    def known(self) -> None:
        """Columns whose headings say what they are."""
        for column in self.header.columns:
            heading = column.heading
            role = heading.role
            if role in ("group", "trial", "color"):
                self.key("color" if role != "color" and self.names_colors(column) else role, column)
            elif role in _OPTIONAL:
                self.optional(role, column)
            elif role == "total":
                self.columns.totals.append(column)
            elif role == "timestamp":
                if not self.columns.timestamp:
                    self.columns.timestamp = column
                self.columns.notes.append(f'The time stamp column "{heading.text}" is left out.')
            elif role in ("index", "derived", "person"):
                self.spare.append(column)
            elif role in ("count", *_MEASURES) or heading.known:
                self.columns.values.append(column)
            elif heading.text or self.cells(column):
                self.waiting.append(column)

    def names_colors(self, column: HeadedColumn) -> bool:
        """Whether the cells under a heading such as "Group" are colors: then the word speaks of the labels across."""
        texts = [text for text in self.cells(column) if not total_label(text) and whole_measure(text) is None]
        colored = any(other.heading.color or other.heading.role == "color" for other in self.header.columns)
        return bool(texts) and not colored and all(set(read_color(text)[0].split()) & COLOR_WORDS for text in texts) and len(set(texts)) > 1

    def key(self, role: str, column: HeadedColumn) -> None:
        """A key column; a second one of the same kind is set aside, and said."""
        if role not in self.columns.keys:
            self.columns.keys[role] = column
            return
        if role == "trial" and column.heading.text.casefold().startswith("round"):
            self.optional("round", column)
            return
        first = self.columns.keys[role].heading.text
        if self.cells(column):
            self.columns.notes.append(f'The column "{column.heading.text}" is not used: "{first}" already names the {role}.')

    def optional(self, role: str, column: HeadedColumn) -> None:
        if role not in self.columns.optional:
            self.columns.optional[role] = column
        elif self.cells(column):
            self.columns.notes.append(
                f'The column "{column.heading.text}" is not used: "{self.columns.optional[role].heading.text}" already holds the {role}.'
            )

    def first_columns(self) -> None:
        """Columns without a heading, or with one that nobody has met, that name the rows."""
        for column in list(self.waiting):
            if column.number > 1 and any(value.number < column.number for value in self.columns.values):
                break
            texts = [text for text in self.cells(column) if not total_label(text)]
            kind = self.key_kind(column, texts)
            if kind is None or kind in self.columns.keys:
                continue
            self.waiting.remove(column)
            self.columns.keys[kind] = column
            if kind != "measure":
                named = f'"{column.heading.text}"' if column.heading.text else f"without a heading (column {column.number})"
                self.columns.notes.append(f"The column {named} is read as the {kind} column.")

    def key_kind(self, column: HeadedColumn, texts: list[str]) -> str | None:
        """What a column of labels names, told by the labels."""
        if not texts:
            return None
        if all(whole_measure(text) for text in texts) and len({whole_measure(text) for text in texts}) > 1:
            return "measure"
        labels = [text for text in texts if whole_measure(text) != "set_up"]
        if labels and all(is_trial_label(text) for text in labels) and not self.has("trial"):
            return "trial"
        if labels and all(set(read_color(text)[0].split()) & COLOR_WORDS for text in labels) and not self.has("color"):
            return "color"
        if self.counts(column):
            if (
                not column.heading.text
                and self.has("group")
                and not self.has("trial")
                and all(isinstance(read_trial(t), int) for t in labels)
            ):
                return "trial"
            return None
        return None if self.has("group") else "group"

    def unknown(self) -> None:
        """Headings that nobody has met before: kinds of pins, group names across, trial numbers across, or not used."""
        across: dict[str, list[str]] = {}
        settled_color = self.has("color")
        for column in self.waiting:
            heading = column.heading
            text = heading.text
            if not self.counts(column):
                if not text:
                    self.columns.notes.append(f"Column {column.number} has no heading; it is not used.")
                elif self.cells(column):
                    self.columns.notes.append(f'The column "{text}" is not used.')
                elif self.blank_between(column):
                    self.across(column, across, settled_color)
                continue
            self.across(column, across, settled_color)
        for kind, texts in across.items():
            if kind != "trial":
                listed = ", ".join(f'"{text}"' for text in texts)
                one = len(texts) == 1
                self.columns.notes.append(
                    f"The heading{'' if one else 's'} {listed} {'is' if one else 'are'} read as "
                    f"{('a kind' if one else 'kinds') + ' of pin' if kind == 'color' else ('a group' if one else 'groups')}."
                )
        self.columns.values.sort(key=lambda column: column.number)

    def called_like_totals(self) -> None:
        """Groups across that are called "Totals", "Average" or the like: their counts tell them from sums."""
        groups = [column for column in self.columns.values if column.heading.group and column.heading.measure != "set_up"]
        if "group" in self.columns.keys or self.outer_group or not groups:
            return
        derived = [column for column in self.spare if column.heading.role == "derived"]
        for column in [*self.columns.totals, *derived]:
            heading = column.heading
            label = next((part for part in heading.text.split(" / ") if total_label(part)), None)
            if label is None or heading.group:
                continue
            alike = [other for other in groups if heading.color in (None, other.heading.color)]
            of_trial = [other for other in alike if other.heading.trial == heading.trial]
            verdict = judge(label, [self.summed(row, column, [of_trial, alike]) for row in self.body])
            if verdict == "group":
                (self.spare if column in derived else self.columns.totals).remove(column)
                self.columns.values.append(replace(column, heading=replace(heading, role=None, group=label)))
                self.columns.notes.append(f'The heading "{label}" is read as a group: its counts do not sum up the other groups.')
            elif verdict == "unclear" and column in derived:
                advice = f'If it is a group, call it "The {label}"; if the column holds averages or the like, correct it or take it out.'
                expected = "averages or the like of the other groups, or the name of a group"
                self.columns.faults.append(Fault(place_of(self.grid, column), label, expected, advice))
        self.columns.values.sort(key=lambda column: column.number)

    def summed(self, row: tuple[str, ...], column: HeadedColumn, choices: list[list[HeadedColumn]]) -> Summed:
        """A cell of such a column, with the counts beside it that it may sum up."""
        counts = []
        for others in choices:
            cells = [read_cell(row[other.number - 1]) for other in others]
            counts.append(tuple(cell.value for cell in cells if isinstance(cell, Count)))
        return Summed(row[column.number - 1], tuple(counts))

    def blank_between(self, column: HeadedColumn) -> bool:
        """Whether an empty column is named as a color elsewhere, so that its blanks are results left out."""
        return spelling_key(column.heading.text) in self.named_colors or spelling_key(column.heading.text) in COLOR_WORDS

    def across(self, column: HeadedColumn, across: dict[str, list[str]], settled_color: bool) -> None:
        """One column of counts under a heading that nobody has met."""
        text = column.heading.text
        color, set_up = read_color(text)
        number = text.isdecimal() and len(text) < 4
        if text and color in self.named_colors:
            heading = replace(column.heading, color=color, set_up=set_up)
        elif number and ("trial" in across or not self.has("trial")):
            across.setdefault("trial", []).append(text)
            heading = replace(column.heading, trial=read_trial(text))
        elif text and not number and not settled_color and ("color" in across or self.has("group") or not self.has("trial")):
            across.setdefault("color", []).append(text)
            heading = replace(column.heading, color=color, set_up=set_up)
        elif text and "group" not in self.columns.keys and not self.outer_group:
            across.setdefault("group", []).append(text)
            heading = replace(column.heading, group=text)
        else:
            self.columns.faults.append(self.not_understood(column))
            return
        self.columns.values.append(replace(column, heading=heading))

    def not_understood(self, column: HeadedColumn) -> Fault:
        """A column of numbers that could be anything."""
        text = column.heading.text
        if not text:
            return Fault(
                place_of(self.grid, column), "", "a heading above a column of numbers",
                "Write above it what it counts, such as Red (4), or empty the column.",
            )  # fmt: skip
        # rapidfuzz is loaded only for a word that is not known as it stands.
        from mathgen.trials.spelling import nearest

        meant = nearest(text.casefold(), sorted(COLOR_WORDS | self.named_colors))
        advice = f'Did you mean "{meant}"? ' if meant else ""
        return Fault(
            place_of(self.grid, column), text, "a heading that says what the column counts",
            f"{advice}If it is a kind of pin, write how many were set up after it, as in {text} (4); if not, leave the column out.",
        )  # fmt: skip

    def stand_ins(self) -> None:
        """Columns that stand in for a key that is missing; the rest are said to be unused."""
        optional = self.columns.optional
        if "round" in optional and not self.has("trial"):
            column = optional.pop("round")
            self.columns.keys["trial"] = column
            self.columns.notes.append(f'No column names the trial; "{column.heading.text}" is read as the trial.')
        if "target" in optional and not self.has("color") and any(c.heading.role in ("count", *_MEASURES) for c in self.columns.values):
            column = optional["target"]
            self.columns.keys["color"] = column
            self.columns.notes.append(
                f'No column names the color; the target color in "{column.heading.text}" is read as the color of the pins.'
            )
        for column in self.spare:
            role = column.heading.role
            if role == "index" and not self.has("group") and self.cells(column):
                self.columns.keys["group"] = column
                self.columns.notes.append(f'The column "{column.heading.text}" is read as the group column.')
            elif self.cells(column):
                self.columns.notes.append(f'The column "{column.heading.text}" is not used.')
