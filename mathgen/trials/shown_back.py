"""What was understood of a table, shown back: in plain words, and as JSON."""

from __future__ import annotations

from mathgen.errors import Fault, Question, TableFaults, TableQuestions
from mathgen.trials.reading import ReadResult
from mathgen.trials.table import Row, TrialTable


def as_json(outcome: ReadResult | TableFaults | TableQuestions) -> dict[str, object]:
    """The object that ``mathgen read --json`` prints; with faults or questions it holds no rows."""
    rows: list[dict[str, object]] = []
    absent: list[dict[str, object]] = []
    notes: tuple[str, ...] = ()
    questions: tuple[Question, ...] = ()
    faults: tuple[Fault, ...] = ()
    if isinstance(outcome, ReadResult):
        rows = [_row(row) for row in outcome.table.rows]
        absent = [{"group": group, "trial": trial, "color": color} for group, trial, color in outcome.table.absent]
        notes = outcome.notes
    elif isinstance(outcome, TableQuestions):
        questions, notes = outcome.questions, outcome.notes
    else:
        faults, questions = outcome.faults, outcome.questions
    prices = outcome.table.prices if isinstance(outcome, ReadResult) else ()
    return {
        "rows": rows,
        **({"prices": [{"item": one.item, "cents": one.cents} for one in prices]} if prices else {}),
        "absent": absent,
        "notes": list(notes),
        "questions": [
            {
                "id": question.id,
                "text": question.text,
                "answers": [{"option": answer.option, "means": answer.means} for answer in question.answers],
            }
            for question in questions
        ],
        "faults": [_fault(fault) for fault in faults],
    }


def _row(row: Row) -> dict[str, object]:
    shown: dict[str, object] = {"group": row.group, "trial": row.trial, "color": row.color, "set_up": row.set_up, "down": row.down}
    for key in ("target", "gap_inches", "height", "round", "notes"):
        value = getattr(row, key)
        if value is not None:
            shown[key] = str(value)
    return shown


def _fault(fault: Fault) -> dict[str, object]:
    place = fault.place
    return {
        "sheet": place.sheet,
        "row": place.row,
        "column": place.column,
        "cell": place.cell,
        "found": fault.found,
        "expected": fault.expected,
        "advice": fault.advice,
        "message": str(fault),
    }


def understood(result: ReadResult, counted: str = "pins knocked down", notes_most: int | None = None) -> str:
    """The table in plain words, then every guess that was made.

    Args:
        result: the table, as read.
        counted: what its counts are of, in the words of the activity.
        notes_most: how many guesses are told where they share a screen with other things; the rest is counted.

    >>> table = TrialTable((Row("Owls", 1, "red", 4, 3), Row("Owls", 1, "blue", 3, 0)))
    >>> print(understood(ReadResult(table)))
    1 group: Owls
    1 trial: 1
    2 colors: red (4 set up), blue (3 set up)
    2 results: 3 of 7 pins knocked down
    """
    table = result.table
    if table.prices:
        return "\n".join([f"A price list of {_many(len(table.prices), 'item')}:", *_price_lines(table), *_guesses(result, notes_most)])
    down, set_up = sum(row.down for row in table.rows), sum(row.set_up for row in table.rows)
    lines = [
        f"{_many(len(table.groups), 'group')}: {', '.join(table.groups)}",
        f"{_many(len(table.trials), 'trial')}: {', '.join(map(str, table.trials))}",
        f"{_many(len(table.colors), 'color')}: {', '.join(_color(table, color) for color in table.colors)}",
        f"{_many(len(table.rows), 'result')}: {down} of {set_up} {counted}",
    ]
    if table.absent:
        lines.append(f"{_many(len(table.absent), 'result')} absent: {_absent(table)}")
    lines += [f"Also kept: {kept}." for kept in [_kept(table)] if kept]
    return "\n".join([*lines, *_guesses(result, notes_most)])


def _guesses(result: ReadResult, notes_most: int | None) -> list[str]:
    if not result.notes:
        return []
    more = len(result.notes[notes_most:]) if notes_most is not None else 0
    told = ["How it was read:", *(f"  - {note}" for note in result.notes[:notes_most])]
    return [*told, f"  and {more} more, which mathgen read tells"] if more else told


def _price_lines(table: TrialTable) -> list[str]:
    return [f"  {one.item}: {one.cents}¢" for one in table.prices]


def _many(number: int, noun: str) -> str:
    return f"{number} {noun}" if number == 1 else f"{number} {noun}s"


def _color(table: TrialTable, color: str) -> str:
    counts = sorted({row.set_up for row in table.rows if row.color == color})
    if len(counts) == 1:
        return f"{color} ({counts[0]} set up)"
    return f"{color} (from {counts[0]} to {counts[-1]} set up)" if counts else color


def _absent(table: TrialTable) -> str:
    shown = [f"{group}, {f'trial {trial}' if isinstance(trial, int) else trial}, {color}" for group, trial, color in table.absent[:8]]
    return "; ".join(shown) + (f" and {len(table.absent) - 8} more" if len(table.absent) > 8 else "")


def _kept(table: TrialTable) -> str:
    names = {
        "target": "target color",
        "gap_inches": "space between pins",
        "height": "release height",
        "round": "design round",
        "notes": "notes",
    }
    return ", ".join(words for key, words in names.items() if any(getattr(row, key) is not None for row in table.rows))
