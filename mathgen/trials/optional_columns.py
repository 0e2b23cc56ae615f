"""Columns that a class may keep beside its counts: target color, space between pins, release height, design round, notes."""

from __future__ import annotations

import re
from dataclasses import dataclass

from sympy import Integer, Rational

from mathgen.errors import Fault, Place
from mathgen.trials.cells import looks_like_date
from mathgen.trials.heading_words import NUMBER_WORDS, tidy
from mathgen.trials.labels import read_color

_SIGNS = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅓": "1/3", "⅔": "2/3", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}
_UNIT = re.compile(r"\s*(inches|inch|ins|in\.?|[\"″”]|''|centimeters?|centimetres?|cm\.?)\s*$")
_DATE_ADVICE = "The spreadsheet has turned an entry such as 1/2 into a date. Format the column as text, then type it again."
_EXPECTED_GAP = "a length in inches such as 2, 1/2 or 2 1/4"


def target_color(text: str) -> str | None:
    """The color that the group called, in lower case; None where the cell is empty or a dash."""
    typed = tidy(text)
    return None if typed in ("", "-", "–", "—") else read_color(typed)[0]


def gap_inches(text: str, unit: str | None) -> Rational | None:
    """The space between pins, exactly, in inches.

    Args:
        text: a whole number, fraction, mixed number or decimal, with or without its unit.
        unit: the heading's unit, "in" or "cm"; inches where neither says.
    Returns:
        Inches; None for an empty cell or a dash.
    Raises:
        ValueError: it is no length; the message says what was expected.
    Source:
        One inch is 2.54 cm exactly (international inch, 1959).

    >>> gap_inches('2 1/4"', None), gap_inches("1½", "in"), gap_inches("2.5", None), gap_inches("5.08 cm", None)
    (9/4, 3/2, 5/2, 2)
    """
    typed = text.strip().casefold()
    for sign, plain in _SIGNS.items():
        typed = typed.replace(sign, f" {plain}")
    typed = tidy(typed).replace("⁄", "/")
    if typed in ("", "-", "–", "—", "n/a"):
        return None
    if match := _UNIT.search(typed):
        unit = "cm" if match[1].startswith("c") else "in"
        typed = typed[: match.start()]
    typed = re.sub(r"(?<=\d)-(?=\d)", " ", typed.replace(" and ", " "))
    if typed in NUMBER_WORDS:
        length = Integer(NUMBER_WORDS[typed])
    elif match := re.fullmatch(r"(?:(\d{1,4}) )?(\d{1,4}) ?/ ?(\d{1,4})", tidy(typed)):
        whole, part, of = int(match[1] or 0), int(match[2]), int(match[3])
        if of == 0 or (match[1] and part >= of):
            raise ValueError(_EXPECTED_GAP)
        length = Integer(whole) + Rational(part, of)
    elif re.fullmatch(r"\d{1,4}(?:\.\d{1,4})?|\.\d{1,4}", tidy(typed)):
        length = Rational(tidy(typed))
    else:
        raise ValueError(_EXPECTED_GAP)
    return length * Rational(50, 127) if unit == "cm" else length


@dataclass(frozen=True, slots=True)
class Kept:
    """The optional columns of one row, and what was found wrong in them or guessed."""

    target: str | None = None
    gap_inches: Rational | None = None
    height: str | None = None
    round: str | None = None
    notes: str | None = None
    faults: tuple[Fault, ...] = ()
    notes_said: tuple[str, ...] = ()


def kept_of_row(cells: dict[str, tuple[str, Place, str | None, bool]]) -> Kept:
    """What a row's optional columns hold: for each role its text, its place, its heading's unit and whether it is held as a date."""
    texts = {role: text for role, (text, *_) in cells.items()}
    gap, faults, said = None, [], []
    if "gap" in cells:
        text, place, unit, is_date = cells["gap"]
        try:
            gap = gap_inches("a date" if is_date else text, unit)
        except ValueError as wrong:
            advice = _DATE_ADVICE if looks_like_date(text) or is_date else "Write halves and quarters as 1/2 and 1/4."
            faults.append(Fault(place, text, str(wrong), advice))
        if gap is not None and ("cm" in text.casefold() or (unit == "cm" and not _UNIT.search(text.casefold()))):
            said.append("Centimeters between pins are turned into inches (1 inch is 2.54 cm)")
    target = target_color(texts.get("target", ""))
    return Kept(target, gap, texts.get("height"), texts.get("round"), texts.get("notes"), tuple(faults), tuple(said))
