"""Where a sheet's heading rows are, below any title lines, and what each column's heading says."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, replace

from mathgen.trials.cells import Count, read_cell
from mathgen.trials.grid import Grid
from mathgen.trials.heading_words import SPELLED, Heading, plain, read_heading, tidy, whole_measure
from mathgen.trials.labels import read_color, read_trial

_SEARCHED_ROWS = 40  # title lines above a header never run longer than this in a class's file
_KEY_ROLES = ("group", "trial", "color")
_OPTIONAL_ROLES = ("target", "gap", "height", "round", "notes", "timestamp", "total", "derived", "person", "index")


@dataclass(frozen=True, slots=True)
class HeadedColumn:
    """One column with all that the heading rows above it say."""

    number: int  # from 1
    heading: Heading  # the heading rows put together; its text is theirs joined by " / "
    row: int  # the heading row in which it is written, from 1
    spanned: bool = False  # whether an upper heading reaches over it from the left


@dataclass(frozen=True, slots=True)
class Header:
    """The heading rows of one sheet."""

    first_row: int
    last_row: int
    columns: tuple[HeadedColumn, ...]
    titles: tuple[tuple[int, str], ...]  # row and text of each filled cell above the heading rows
    notes: tuple[str, ...] = ()


def find_header(grid: Grid) -> Header | None:
    """The heading rows of a sheet, or None where no row looks like one."""
    best, keyed = _best_row(grid, read_heading)
    if not keyed:
        # Only now are words typed wrong looked at: doing so for every cell of a clear table would load the spelling for nothing.
        best, _ = _best_row(grid, read_spelled)
    if best is None:
        best = next((index for index in range(min(_SEARCHED_ROWS, len(grid.rows) - 1)) if _heads_counts(grid, index)), None)
    side = _side_headings(grid)
    if side is not None and (best is None or side[0] <= best <= side[1]):
        return Header(side[0] + 1, side[1] + 1, _columns_beside(grid, *side), _titles(grid, side[0]))
    if best is None:
        return None
    first = last = best
    while first > 0 and _is_upper_heading(grid.rows[first - 1], grid.rows[first]):
        first -= 1
    while last + 1 < len(grid.rows) and last - first < 2 and _is_lower_heading(grid.rows[last + 1], grid.rows[last]):
        last += 1
    notes: list[str] = []
    columns = _numbered_colors(_columns(grid, first, last, notes), notes)
    return Header(first + 1, last + 1, columns, _titles(grid, first), tuple(notes))


def _titles(grid: Grid, first: int) -> tuple[tuple[int, str], ...]:
    return tuple((index + 1, tidy(cell)) for index in range(first) for cell in grid.rows[index] if tidy(cell))


def _side_headings(grid: Grid) -> tuple[int, int] | None:
    """The first and last of two or more rows in a row that each start with a key word: "Group", then "Trial", labels to their right."""
    for index in range(min(_SEARCHED_ROWS, len(grid.rows))):
        last = index
        while last < len(grid.rows) and _starts_with_key(grid.rows[last]):
            last += 1
        if last - index > 1:
            return index, last - 1
    return None


def _starts_with_key(row: tuple[str, ...]) -> bool:
    return read_heading(row[0]).role in _KEY_ROLES and sum(1 for cell in row if tidy(cell)) > 1


def _columns_beside(grid: Grid, first: int, last: int) -> tuple[HeadedColumn, ...]:
    """Columns whose labels stand right of the word that says what they are: groups in one row, trials in the next."""
    columns = [HeadedColumn(1, Heading(""), last + 1)]
    for column in range(1, len(grid.rows[first])):
        heading = Heading("")
        for index in range(first, last + 1):
            text = tidy(grid.rows[index][column])
            if not text and any(tidy(grid.rows[below][column]) for below in range(first, last + 1)):
                text = next((tidy(cell) for cell in reversed(grid.rows[index][1:column]) if tidy(cell)), "")
            if not text:
                continue
            heading = replace(heading, text=f"{heading.text} / {text}" if heading.text else text)
            role = read_spelled(grid.rows[index][0]).role
            if read_spelled(text).role == "total":
                heading = replace(heading, role="total")
            elif role == "group":
                heading = replace(heading, group=text)
            elif role == "trial":
                heading = replace(heading, trial=read_trial(text))
            else:
                color, set_up = read_color(text)
                heading = replace(heading, color=color, set_up=set_up)
        columns.append(HeadedColumn(column + 1, heading, last + 1))
    return tuple(columns)


def _numbered_colors(columns: tuple[HeadedColumn, ...], notes: list[str]) -> tuple[HeadedColumn, ...]:
    """Headings such as "Red 1": a trial where one color has several of them, else how many were set up; a guess either way."""
    numbered: dict[int, tuple[str, int]] = {}
    for column in columns:
        match = None if column.heading.known else re.fullmatch(r"(.*[^\W\d])[ -]*([0-9]{1,3})", column.heading.text)
        named = read_heading(match[1]) if match else None
        if match and named and named.color and named.trial is None and not named.measure:
            numbered[column.number] = (named.color, int(match[2]))
    colors = [color for color, _ in numbered.values()]
    changed = []
    for column in columns:
        heading = column.heading
        if column.number in numbered:
            color, number = numbered[column.number]
            if colors.count(color) > 1:
                heading = replace(heading, color=color, trial=number)
                notes.append(f'"{heading.text}" is read as {color} pins in trial {number}.')
            else:
                heading = replace(heading, color=color, set_up=number)
                notes.append(f'"{heading.text}" is read as {color} pins, {number} set up.')
        changed.append(replace(column, heading=heading))
    return tuple(changed)


def _best_row(grid: Grid, read: Callable[[str], Heading]) -> tuple[int | None, bool]:
    """The row that looks most like a heading row, the first of equals, and whether it names a key column."""
    best, best_score, keyed = None, 0, False
    for index, row in enumerate(grid.rows[:_SEARCHED_ROWS]):
        score, keys = _score(row, read)
        if score > best_score:
            best, best_score, keyed = index, score, keys > 0
    return best, keyed


def _score(row: tuple[str, ...], read: Callable[[str], Heading]) -> tuple[int, int]:
    """How much a row looks like a heading row, 0 where it does not; and how many key columns it names."""
    filled = [cell for cell in row if tidy(cell)]
    if len(filled) < 2:
        return 0, 0
    score = keys = 0
    numbers = [tidy(cell) for cell in filled if tidy(cell).isdecimal()]
    # 1, 2, 3 across are trials; any other numbers are counts.
    trials_across = numbers == [str(number) for number in range(1, len(numbers) + 1)] and len(numbers) > 1
    for cell in filled:
        heading = read(cell)
        if heading.role in _KEY_ROLES:
            score, keys = score + 6, keys + 1
        elif heading.role in ("set_up", "down", "standing", "count") or (heading.color and (heading.set_up is not None or heading.measure)):
            score += 4
        elif heading.color or heading.trial is not None or heading.group:
            score += 3
        elif heading.role in _OPTIONAL_ROLES:
            score += 2
        elif isinstance(read_cell(cell), Count) and not trials_across:
            score -= 3
    # A data row of a long table may hold a trial and a color; a heading row holds at least one key, or nothing but values.
    labels = sum(1 for cell in filled if read_heading(cell).known)
    return (score, keys) if score >= 6 and (keys or labels >= 2) else (0, 0)


def _heads_counts(grid: Grid, index: int) -> bool:
    """Whether a row of words that nobody has met before, such as group names across, stands right above counts."""
    filled = {column for column, cell in enumerate(grid.rows[index]) if tidy(cell)}
    below = next((row for row in grid.rows[index + 1 :] if any(map(tidy, row))), None)
    if below is None or not filled - {0} or any(isinstance(read_cell(grid.rows[index][column]), Count) for column in filled):
        return False
    counted = {column for column, cell in enumerate(below) if tidy(cell) and isinstance(read_cell(cell), Count)}
    labelled = tidy(below[0]) and 0 not in counted
    return bool(labelled and len(counted) > 1 and counted <= filled)


def _is_upper_heading(row: tuple[str, ...], below: tuple[str, ...]) -> bool:
    """Whether a row stands over a heading row as a second heading row: "Trial 1", "Pins knocked down" across columns."""
    filled = [(index, cell) for index, cell in enumerate(row) if tidy(cell)]
    if not filled or (whole_measure(filled[0][1]) == "set_up" and len(filled) > 1 and isinstance(read_cell(filled[1][1]), Count)):
        return False  # a set-up row above the headings
    if any(isinstance(read_cell(cell), Count) and not tidy(below[index]) for index, cell in filled):
        return False
    beyond = [cell for index, cell in filled if index > 0]
    if not beyond:
        # A lone cell in the first column is a title, unless it heads that column, as "Group" does.
        return not tidy(below[0]) and read_spelled(filled[0][1]).role in _KEY_ROLES
    known = sum(1 for cell in beyond if read_spelled(cell).known or isinstance(read_cell(cell), Count))
    spans = any(index + 1 < len(row) and not tidy(row[index + 1]) and tidy(below[index + 1]) for index, _ in filled if index > 0)
    if known == len(beyond):
        return spans or len(beyond) > 1
    # Group names across ("Owls", "Hawks") are words that nobody has met before: only their reaching over columns tells.
    return spans and len(beyond) > 1 and (read_spelled(below[0]).role or read_spelled(row[0]).role) is not None


def _is_lower_heading(row: tuple[str, ...], above: tuple[str, ...]) -> bool:
    """Whether a row under a heading row is a second heading row: colors, trials or measures, and no counts."""
    filled = [(index, read_heading(cell)) for index, cell in enumerate(row) if tidy(cell)]
    if not filled:
        return False
    for _, heading in filled:
        measured = heading.role in ("set_up", "down", "standing", "total")
        if not (heading.color or measured or heading.trial is not None or heading.set_up is not None):
            return False
    if any(read_heading(above[index]).role in _KEY_ROLES for index, _ in filled):
        return False  # "Trial 1, red" under Trial and Color is a row of a long table whose counts were left out
    return len(filled) > 1 or not tidy(row[0])


def read_spelled(text: str) -> Heading:
    """A heading, with a word typed wrong taken for its neighbor."""
    heading = read_heading(text)
    words = plain(text)
    if heading.known or len(words) < 4:
        return heading
    # rapidfuzz is loaded only for a word that is not known as it stands.
    from mathgen.trials.spelling import nearest

    meant = nearest(words, SPELLED)
    if meant is None:
        return heading
    return replace(read_heading(meant), text=heading.text, guess=meant)


def _columns(grid: Grid, first: int, last: int, notes: list[str]) -> tuple[HeadedColumn, ...]:
    """Each column with its heading rows put together."""
    width = len(grid.rows[first])
    columns = []
    for column in range(width):
        parts: list[Heading] = []
        row = last
        spanned = False
        for index in range(first, last + 1):
            text = tidy(grid.rows[index][column])
            if not text and index < last:
                text = _from_the_left(grid, index, column, last)
                spanned = spanned or bool(text)
            elif text:
                row = index
            if text:
                parts.append(read_spelled(text))
        heading = _together(parts)
        if heading.guess and not any(f'"{heading.text}"' in note for note in notes):
            notes.append(f'The heading "{heading.text}" is read as "{heading.guess}".')
        columns.append(HeadedColumn(column + 1, heading, row + 1, spanned))
    return tuple(columns)


def _from_the_left(grid: Grid, index: int, column: int, last: int) -> str:
    """The upper heading that reaches over a column: from a merged cell, or from the nearest filled cell to the left."""
    for top, left, bottom, right in grid.merged:
        if top <= index + 1 <= bottom and left <= column + 1 <= right:
            return tidy(grid.rows[top - 1][left - 1]) if top == index + 1 else ""
    if not any(tidy(grid.rows[below][column]) for below in range(index + 1, last + 1)):
        return ""
    for left in range(column - 1, -1, -1):
        text = tidy(grid.rows[index][left])
        if text:
            if any(top <= index + 1 <= bottom and first <= left + 1 <= right for top, first, bottom, right in grid.merged):
                return ""  # that cell says itself how far it reaches
            # "Group" over an empty cell heads its own column and no other.
            alone = not any(tidy(grid.rows[below][left]) for below in range(index + 1, last + 1))
            return "" if alone else text
    return ""


def _together(parts: list[Heading]) -> Heading:
    """Upper and lower headings as one; the lower one wins where both speak."""
    if not parts:
        return Heading("")
    whole = parts[0]
    for part in parts[1:]:
        text = f"{whole.text} / {part.text}"
        role = part.role
        if part.role is None and whole.role in ("set_up", "down", "standing", "total"):
            role = whole.role if whole.role == "total" else None
        elif part.role in ("set_up", "down", "standing") and (whole.color or whole.trial is not None or whole.group or not whole.known):
            role = None
        elif part.role is None and not part.known and whole.role in _KEY_ROLES:
            role = whole.role
        measure = part.measure or whole.measure
        whole = Heading(
            text=text,
            role=role,
            group=part.group or whole.group or (whole.text if not whole.known and part.known else None),
            trial=part.trial if part.trial is not None else whole.trial,
            color=part.color or whole.color,
            measure=measure,
            set_up=part.set_up if part.set_up is not None else whole.set_up,
            unit=part.unit or whole.unit,
            guess=part.guess or whole.guess,
        )
    return whole
