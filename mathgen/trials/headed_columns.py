"""What the heading rows together say of each column: upper headings reach over columns, labels stand beside a word."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from mathgen.trials.grid import Grid
from mathgen.trials.heading_words import KEY_ROLES, SPELLED, Heading, plain, read_heading, tidy
from mathgen.trials.labels import read_color, read_trial
from mathgen.trials.tidy import tidy_cell


@dataclass(frozen=True, slots=True)
class HeadedColumn:
    """One column with all that the heading rows above it say."""

    number: int  # from 1
    heading: Heading  # the heading rows put together; its text is theirs joined by " / "
    row: int  # the heading row in which it is written, from 1


def columns_beside(grid: Grid, first: int, last: int) -> tuple[HeadedColumn, ...]:
    """Columns whose labels stand right of the word that says what they are: groups in one row, trials in the next."""
    columns = [HeadedColumn(1, Heading(""), last + 1)]
    for column in range(1, len(grid.rows[first])):
        heading = Heading("")
        for index in range(first, last + 1):
            text = tidy_cell(grid.rows[index][column])
            if not text and any(tidy(grid.rows[below][column]) for below in range(first, last + 1)):
                text = next((tidy_cell(cell) for cell in reversed(grid.rows[index][1:column]) if tidy(cell)), "")
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


def numbered_colors(columns: tuple[HeadedColumn, ...], notes: list[str]) -> tuple[HeadedColumn, ...]:
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


def columns_below(grid: Grid, first: int, last: int, notes: list[str]) -> tuple[HeadedColumn, ...]:
    """Each column with its heading rows put together."""
    width = len(grid.rows[first])
    columns = []
    for column in range(width):
        parts: list[Heading] = []
        row = last
        for index in range(first, last + 1):
            text = tidy(grid.rows[index][column])
            if not text and index < last:
                text = _from_the_left(grid, index, column, last)
            elif text:
                row = index
            if text:
                parts.append(read_spelled(text))
        heading = _together(parts)
        if heading.guess and not any(f'"{heading.text}"' in note for note in notes):
            notes.append(f'The heading "{heading.text}" is read as "{heading.guess}".')
        columns.append(HeadedColumn(column + 1, heading, row + 1))
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
        elif part.role is None and not part.known and whole.role in KEY_ROLES:
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
