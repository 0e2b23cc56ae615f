"""What one cell of a results table holds: a count, a mark for absent, nothing, or something that is none of these."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache

from mathgen.trials.heading_words import NUMBER_WORDS, tidy

LARGEST_COUNT = 10_000  # pins in one cell; anything above is a slip of the keyboard

_ABSENT = frozenset(
    (
        "absent",
        "abs",
        "abs.",
        "ab",
        "a",
        "away",
        "sick",
        "n/a",
        "na",
        "n.a.",
        "-",
        "--",
        "---",
        "–",
        "—",
        "−",
        "did not roll",
        "did not play",
        "dnr",
        "dnp",
        "no roll",
        "no result",
        "not here",
        "not taken",
        "missing",
        "skipped",
        "no data",
    )
)
_NOTHING = frozenset(("none", "nothing", "nil", "no pins"))
_ERRORS = ("#ref!", "#div/0!", "#n/a", "#value!", "#name?", "#num!", "#null!", "#spill!", "#calc!")
_MONTH = r"(?:jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec)[a-z]*"
_DATE = re.compile(
    rf"\d{{1,2}}[-/. ]{_MONTH}(?:[-/. ,]+\d{{2,4}})?|{_MONTH}[-/. ]\d{{1,2}}(?:[-/. ,]+\d{{2,4}})?|\d{{4}}-\d{{1,2}}-\d{{1,2}}(?:[t ].*)?"
    r"|\d{1,2}[-/.]\d{1,2}[-/.]\d{2,4}(?: .*)?"
)
_OF = re.compile(r"(\d+)\s*(?:/|⁄|∕|\bof\b|\bout of\b)\s*(\d+)(?:\s*pins?)?")
_LOOKALIKES = str.maketrans({"O": "0", "o": "0", "l": "1", "I": "1", "|": "1", "S": "5", "B": "8", "Z": "2"})
_TALLY_FIVES = "𝍸卌"
_TALLY_ONE = "𝍷"


@dataclass(frozen=True, slots=True)
class Count:
    """A whole number of pins, and how many it is out of where the cell says so."""

    value: int
    out_of: int | None = None
    guess: str = ""  # how it was read, where that was a guess a person should see


@dataclass(frozen=True, slots=True)
class Absent:
    """A mark that no result was taken."""

    guess: str = ""


@dataclass(frozen=True, slots=True)
class Blank:
    """An empty cell."""


@dataclass(frozen=True, slots=True)
class Unreadable:
    """Something that is no count, and what to do about it."""

    advice: str
    expected: str = ""  # where something narrower than a count was expected


Cell = Count | Absent | Blank | Unreadable


@lru_cache(maxsize=4096)  # the same few counts stand in most cells
def read_cell(text: str, is_date: bool = False) -> Cell:
    """What the cell holds.

    Args:
        text: the cell as the spreadsheet shows it.
        is_date: whether the spreadsheet holds the cell as a date.
    Returns:
        A count, absent, blank, or unreadable with advice.

    >>> read_cell("3 of 4")
    Count(value=3, out_of=4, guess='')
    >>> read_cell("||||/ ||").value
    7
    >>> read_cell("1O").advice
    'Is the last character a letter O? If so, type 10.'
    """
    typed = tidy(text)
    lowered = typed.casefold()
    if is_date or looks_like_date(typed):
        return Unreadable(
            "The spreadsheet has turned an entry such as 3/4 into a date. Format the column as text, then type 3 of 4 (or 3/4) again.",
            "a count, not a date",
        )
    if not typed:
        return Blank()
    if lowered in _ABSENT:
        dash = not any(character.isalpha() for character in lowered)
        return Absent(f'"{typed}" is read as absent' if dash or lowered in ("a", "ab", "no data") else "")
    if lowered in _NOTHING:
        return Count(0, guess=f'"{typed}" is read as 0')
    return _number(typed, lowered) or _tally(typed) or _unreadable(typed, lowered)


def looks_like_date(text: str) -> bool:
    """Whether a text is a date as spreadsheets show one.

    >>> looks_like_date("4-Mar"), looks_like_date("3/4/2025"), looks_like_date("3/4")
    (True, True, False)
    """
    return _DATE.fullmatch(tidy(text).casefold()) is not None


def _number(typed: str, lowered: str) -> Cell | None:
    """A count in figures or words, or None."""
    bare = lowered.lstrip("'").removesuffix(" pins").removesuffix(" pin").strip()
    if bare in NUMBER_WORDS:
        return Count(NUMBER_WORDS[bare], guess=f'"{typed}" is read as {NUMBER_WORDS[bare]}')
    if re.fullmatch(r"\d{1,3}(?:,\d{3})+", bare):
        return _in_range(int(bare.replace(",", "")))
    if re.fullmatch(r"[0-9]+(?:[.,]0+)?", bare):
        whole = re.split(r"[.,]", bare)[0]
        return _in_range(int(whole) if len(whole) < 12 else LARGEST_COUNT + 1)
    if (match := _OF.fullmatch(bare)) and len(match[1]) < 12 and len(match[2]) < 12:
        part, whole_set = int(match[1]), int(match[2])
        if part > whole_set:
            return Unreadable("The first number cannot be more than the second.", f"at most {whole_set} of {whole_set}")
        if whole_set > LARGEST_COUNT:
            return _in_range(whole_set)
        autocorrected = "⁄" in typed and "/" not in typed
        return Count(part, whole_set, f'"{part}⁄{whole_set}" is read as {part} of {whole_set}' if autocorrected else "")
    return None


def _in_range(number: int) -> Cell:
    return (
        Count(number) if number <= LARGEST_COUNT else Unreadable(f"Counts here go up to {LARGEST_COUNT}. Check for a slip of the keyboard.")
    )


def _tally(typed: str) -> Cell | None:
    """A count in tally marks, or None.

    Each run of four strokes with one across is five, as ``||||/``.
    """
    marks = typed.replace(" ", "").replace("~", "").replace(",", "")
    if not marks or not set(marks) <= set("|I/\\" + _TALLY_FIVES + _TALLY_ONE):
        return None
    if set(marks) <= {"/"}:
        return Count(len(marks), guess=f'"{typed}" is read as {len(marks)} tally marks') if len(marks) > 1 else None
    total = 0
    for run in re.findall(rf"[{_TALLY_FIVES}]|{_TALLY_ONE}|[|I]+[/\\]?|[/\\]", marks):
        if run in _TALLY_FIVES:
            total += 5
        elif run[-1] not in "/\\":
            total += len(run)
        elif len(run) == 5:
            total += 5
        else:
            return None
    return Count(total, guess=f'"{typed}" is read as {total} tally mark{"" if total == 1 else "s"}')


def _unreadable(typed: str, lowered: str) -> Unreadable:
    """Why it is no count, and what to do."""
    if lowered in _ERRORS or (typed and set(typed) == {"#"}):
        return Unreadable("The spreadsheet's formula failed here, or the column is too narrow. Type the count itself in its place.")
    if typed.startswith("="):
        return Unreadable("This is a formula, not its result. Type the count itself.")
    if "%" in typed:
        return Unreadable("This is a percent. Type how many pins, not what part of them.")
    if re.fullmatch(r"[-−–]\s*\d+(?:[.,]\d+)?", typed):
        return Unreadable("A count is never below 0. Type how many pins.")
    if re.fullmatch(r"\d*[.,]\d+", typed):
        return Unreadable(
            "Pins are counted whole. If you typed 3/4, the spreadsheet worked it out: format the column as text, then type 3 of 4."
        )
    if re.search(r"\d\s*[⁄]\s*\d", typed):
        return Unreadable("Pins are counted whole.")
    figures = typed.translate(_LOOKALIKES)
    if re.fullmatch(r"\d+", figures) and len(typed) < 6 and (any(map(str.isdecimal, typed)) or typed in ("O", "o", "l", "ll")):
        return Unreadable(_lookalike_advice(typed, figures))
    if re.fullmatch(r"\d+\s*[-–to]+\s*\d+", lowered):
        return Unreadable("This names two numbers. Type one count; for 3 out of 4, type 3 of 4.")
    if lowered in ("all", "every", "everything", "strike"):
        return Unreadable("Type how many pins that was.")
    if match := re.match(r"(\d+)", typed):
        return Unreadable(f"If the count is {match[1]}, type {match[1]} alone and put the rest in a Notes column.")
    return Unreadable('Type the count as a number, or "absent" where no result was taken.')


def _lookalike_advice(typed: str, figures: str) -> str:
    """Which characters are letters that look like figures."""
    odd = [index for index, character in enumerate(typed) if not character.isdecimal()]
    index = odd[0]
    letter = typed[index]
    if len(typed) == 1:
        where = "this"
    elif index in (0, len(typed) - 1):
        where = "the first character" if index == 0 else "the last character"
    else:
        where = f"character {index + 1}"
    article = "an upright bar" if letter == "|" else f"a small letter {letter}" if letter == "l" else f"a letter {letter}"
    return f"Is {where} {article}? If so, type {figures}."
