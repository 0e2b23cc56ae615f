"""Written numbers as a US teacher says them, for alt text.

Choices, from common practice: fractions with denominators to 99 and powers of ten by the name of their parts ("three twelfths"),
others with "over"; decimals of up to three places by place value ("seventy-five hundredths", "two and five tenths"), longer ones
and percents digit by digit after "point" ("sixty-two point five percent"); "and" only before a fraction part or cents.
"""

from __future__ import annotations

import re

from mathgen.exact.number_words import LARGEST, cardinal, part_name
from mathgen.exact.parse import NotANumber, Written, repeating_block, tidy, written

_NUMBERS = re.compile(r"[0-9][0-9,]*")
_WITH_UNIT = re.compile(r"(.*[0-9%)\u0305¢]|.*\.\.\.) +([^\W\d_][^\d]*)", re.DOTALL)


def _digit_by_digit(digits: str) -> str:
    return " ".join(cardinal(int(digit)) for digit in digits)


def _parts_aloud(top: int, bottom: int) -> str:
    name = part_name(bottom, many=top != 1)
    # "One hundred twenty-fifths" would be heard as 120/5 as well as 100/25.
    if name is None or (top >= 100 and 20 < bottom < 100):
        return f"{cardinal(top)} over {cardinal(bottom)}"
    return f"{cardinal(top)} {name}"


def _point_aloud(plain: str) -> str:
    """``62.5``, ``12`` or ``.5`` with "point"."""
    whole, point, digits = plain.replace(",", "").partition(".")
    said = cardinal(int(whole or "0"))
    return f"{said} point {_digit_by_digit(digits)}" if point and digits else said


def _decimal_aloud(plain: str) -> str:
    whole, _, digits = plain.replace(",", "").rstrip(".").partition(".")
    if len(digits) > 3:
        return _point_aloud(plain)
    said = _parts_aloud(int(digits), 10 ** len(digits))
    wholes = int(whole or "0")
    return f"{cardinal(wholes)} and {said}" if wholes else said


def _repeating_aloud(plain: str) -> str:
    whole, _, rest = plain.partition(".")
    said = cardinal(int(whole or "0"))
    if "(" in rest:
        before, _, block = rest.rstrip(")").partition("(")
    elif "\u0305" in rest:
        before = re.split("[0-9]\u0305", rest, maxsplit=1)[0]
        block = rest[len(before) :].replace("\u0305", "")
    else:
        before, block = repeating_block(re.sub("[^0-9]", "", rest)) or ("", "")
    start = f" {_digit_by_digit(before)}, then" if before else ""
    return f"{said} point{start} {_digit_by_digit(block)} repeating"


def _money_aloud(number: Written) -> str:
    dollars, cents = divmod(abs(number.value) * 100, 100)
    if cents.denominator != 1:
        return _point_aloud(re.sub(r"[^0-9.]", "", tidy(number.text))) + " dollars"
    parts = []
    if dollars or not cents:
        parts.append(f"{cardinal(int(dollars))} dollar{'' if dollars == 1 else 's'}")
    if cents:
        parts.append(f"{cardinal(int(cents))} cent{'' if cents == 1 else 's'}")
    return " and ".join(parts)


def _counted_aloud(counts: list[int]) -> str:
    """A whole number, a fraction or a mixed number, from the whole numbers written in it."""
    if len(counts) == 1:
        return cardinal(counts[0])
    *wholes, top, bottom = counts
    said = _parts_aloud(top, bottom)
    return f"{cardinal(wholes[0])} and {said}" if wholes else said


def _number_aloud(number: Written) -> str:
    plain = tidy(number.text).lower().lstrip("+- ")
    counts = [int(found.replace(",", "")) for found in _NUMBERS.findall(plain)]
    if not counts:
        return plain.replace("negative ", "").replace("minus ", "")  # it was in words already
    match number.form:
        case "money":
            return _money_aloud(number)
        case "ratio":
            return " to ".join(_point_aloud(side.strip()) for side in re.split(":|to", plain.rstrip(".")))
        case "comma":
            return _point_aloud(re.sub("[^0-9.]", "", plain.replace(",", "."))) + (" percent" if re.search("%|p", plain) else "")
        case "decimal":
            return _decimal_aloud(plain)
        case "repeating":
            return _repeating_aloud(plain)
        case "percent":
            bare = re.sub(r" *(%|percent|per cent|pct)\.?$", "", plain.rstrip("."))
            if number.places is not None:
                return f"{_point_aloud(bare)} percent"
            return f"{_counted_aloud(counts) if '/' in bare else _repeating_aloud(bare)} percent"
        case "fraction" if "of" in plain:
            return f"{cardinal(counts[0])} out of {cardinal(counts[1])}"
        case _:
            return _counted_aloud(counts)


def aloud(text: str) -> str:
    """A written number said aloud; words behind it, such as its unit, stay as they are.

    Raises:
        NotANumber: the text does not begin with a number, or with one too large to say.

    >>> aloud("3/12"), aloud("2 1/4"), aloud("0.75"), aloud("62.5%"), aloud("17:7")
    ('three twelfths', 'two and one fourth', 'seventy-five hundredths', 'sixty-two point five percent', 'seventeen to seven')
    >>> aloud("9 pins")
    'nine pins'
    """
    unit = ""
    try:
        number = written(text)
    except NotANumber:
        match = _WITH_UNIT.fullmatch(text.strip())
        if match is None:
            raise
        number, unit = written(match[1]), f" {match[2]}"
    if any(int(found.replace(",", "")) > LARGEST for found in re.findall(r"(?<![.0-9])[0-9][0-9,]*", tidy(number.text))):
        raise NotANumber(f'"{text}" is too large a number to say in words')
    return ("negative " if number.value < 0 else "") + _number_aloud(number) + unit
