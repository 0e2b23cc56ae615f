"""Which rows look like heading rows: by the words in them, and by what stands above and below."""

from __future__ import annotations

from collections.abc import Callable

from mathgen.trials.cells import Count, read_cell
from mathgen.trials.grid import Grid
from mathgen.trials.headed_columns import read_spelled
from mathgen.trials.heading_words import COLOR_WORDS, KEY_ROLES, Heading, plain, read_heading, tidy, whole_measure

SEARCHED_ROWS = 40  # title lines above a header never run longer than this in a class's file
_OPTIONAL_ROLES = ("target", "gap", "height", "round", "notes", "timestamp", "total", "derived", "person", "index")


def side_headings(grid: Grid) -> tuple[int, int] | None:
    """The first and last of two or more rows in a row that each start with a key word: "Group", then "Trial", labels to their right."""
    for index in range(min(SEARCHED_ROWS, len(grid.rows))):
        last = index
        while last < len(grid.rows) and _starts_with_key(grid.rows[last]):
            last += 1
        if last - index > 1:
            return index, last - 1
    return None


def _starts_with_key(row: tuple[str, ...]) -> bool:
    return read_heading(row[0]).role in KEY_ROLES and sum(1 for cell in row if tidy(cell)) > 1


def best_row(grid: Grid, read: Callable[[str], Heading]) -> tuple[int | None, bool]:
    """The row that looks most like a heading row, the first of equals, and whether it names a key column."""
    best, best_score, keyed = None, 0, False
    for index, row in enumerate(grid.rows[:SEARCHED_ROWS]):
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
        if heading.role in KEY_ROLES:
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


def heads_counts(grid: Grid, index: int) -> bool:
    """Whether a row of words that nobody has met before, such as group names across, stands right above counts."""
    filled = {column for column, cell in enumerate(grid.rows[index]) if tidy(cell)}
    below = next((row for row in grid.rows[index + 1 :] if any(map(tidy, row))), None)
    if below is None or not filled - {0} or any(isinstance(read_cell(grid.rows[index][column]), Count) for column in filled):
        return False
    counted = {column for column, cell in enumerate(below) if tidy(cell) and isinstance(read_cell(cell), Count)}
    labelled = tidy(below[0]) and 0 not in counted
    return bool(labelled and len(counted) > 1 and counted <= filled)


def is_upper_heading(row: tuple[str, ...], below: tuple[str, ...]) -> bool:
    """Whether a row stands over a heading row as a second heading row: "Trial 1", "Pins knocked down" across columns."""
    filled = [(index, cell) for index, cell in enumerate(row) if tidy(cell)]
    if not filled or (whole_measure(filled[0][1]) == "set_up" and len(filled) > 1 and isinstance(read_cell(filled[1][1]), Count)):
        return False  # a set-up row above the headings
    if any(isinstance(read_cell(cell), Count) and not tidy(below[index]) for index, cell in filled):
        return False
    beyond = [cell for index, cell in filled if index > 0]
    if not beyond:
        # A lone cell in the first column is a title, unless it heads that column, as "Group" does.
        return not tidy(below[0]) and read_spelled(filled[0][1]).role in KEY_ROLES
    if len(beyond) == 1 and _is_sentence(beyond[0]):
        return False  # a title that stands over the middle of the table
    known = sum(1 for cell in beyond if read_spelled(cell).known or isinstance(read_cell(cell), Count))
    spans = any(index + 1 < len(row) and not tidy(row[index + 1]) and tidy(below[index + 1]) for index, _ in filled if index > 0)
    if known == len(beyond):
        return spans or len(beyond) > 1
    # Group names across ("Owls", "Hawks") are words that nobody has met before: only their reaching over columns tells.
    return spans and len(beyond) > 1 and (read_spelled(below[0]).role or read_spelled(row[0]).role) is not None


def _is_sentence(text: str) -> bool:
    """Whether a text such as "Sock ball down the ramp" only looks like a kind of pin and what was counted."""
    color = read_heading(text).color or ""
    return len(color.split()) > 1 and not set(plain(color).split()) & COLOR_WORDS


def is_lower_heading(row: tuple[str, ...], above: tuple[str, ...]) -> bool:
    """Whether a row under a heading row is a second heading row: colors, trials or measures, and no counts."""
    filled = [(index, read_heading(cell)) for index, cell in enumerate(row) if tidy(cell)]
    if not filled:
        return False
    for _, heading in filled:
        measured = heading.role in ("set_up", "down", "standing", "total")
        if not (heading.color or measured or heading.trial is not None or heading.set_up is not None):
            return False
    if any(read_heading(above[index]).role in KEY_ROLES for index, _ in filled):
        return False  # "Trial 1, red" under Trial and Color is a row of a long table whose counts were left out
    return len(filled) > 1 or not tidy(row[0])
