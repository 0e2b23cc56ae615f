"""The number in a typed answer, and the unit that stands beside it."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import NamedTuple

from mathgen.exact.parse import NotANumber, Written, tidy, written

# The closed list: singular nouns that an answer may carry when the key's own answer names no unit.
COUNTED = (
    *("group", "time", "point", "number", "dot", "cross", "space", "picture", "part"),
    *("box", "bag", "result", "pair", "row", "outcome", "card", "way", "success", "set", "count"),
)
"""What is counted in every activity, beside its own things and trials."""
UNITS = ("pin", "trial", *COUNTED)
# Units that count only where the key's own answer names them.
_NAMED_ONLY = {
    "inches": "inch",
    "inch": "inch",
    "in": "inch",
    "in.": "inch",
    '"': "inch",
    **dict.fromkeys(("feet", "foot", "ft", "ft.", "'"), "foot"),
}
_COLORS = "red|blue|gold|green|yellow|orange|purple|violet|black|white|pink|brown|tan|teal|silver|gray|grey"
_FATE = "knocked down|left standing|set up|standing|down|as many|in all|in total|altogether"
_ABOUT = re.compile(r"(?:(?:about|around|roughly|approximately|approx\.)\s+|[~≈]\s*)(.+)", re.IGNORECASE | re.DOTALL)
_NUMBER_THEN_WORDS = re.compile(r"(.*[0-9%)\u0305])\s*([^\W\d_][^\d]*|[\"'′″°])", re.DOTALL)


class TypedNumber(NamedTuple):
    """A number as it was typed."""

    number: Written
    unit: str  # singular noun of the closed list, "money", another unit as typed, or ""
    known: bool  # whether the unit is on the list
    about: bool = False  # whether it is written as an estimate


@lru_cache(maxsize=64)
def _unit_pattern(units: tuple[str, ...]) -> re.Pattern[str]:
    nouns = "|".join(re.escape(unit) for unit in units)
    return re.compile(
        rf"(?P<number>.*?)\s*(?<=[\s0-9%)\u0305])(?:of\s+)?(?:the\s+)?(?:(?:more|fewer)\s+)?(?:(?:{_COLORS}|ordered|color)\s+)?"
        rf"(?:(?P<noun>{nouns})(?:es|s)?(?:\s+(?:per|a|(?:for\s+|in\s+)?each)\s+(?:{nouns}))?(?:\s+(?:were\s+|was\s+)?(?:{_FATE}))?|(?P<inch>inches|inch|in\.?)|more|fewer|(?:were\s+|was\s+)?(?:{_FATE}))",
        re.IGNORECASE | re.DOTALL,
    )


def read_number(typed: str, units: tuple[str, ...]) -> TypedNumber:
    """The number and the unit in a typed answer.

    Raises:
        NotANumber: there is none.
    """
    plain = re.sub(r"^(?:[a-z]\s*)?=\s*", "", tidy(typed), flags=re.IGNORECASE).rstrip()
    if (estimate := _ABOUT.fullmatch(plain)) is not None:
        return _read_plain(estimate[1], units)._replace(about=True)
    return _read_plain(plain, units)


def _read_plain(plain: str, units: tuple[str, ...]) -> TypedNumber:
    try:
        number = written(plain)
    except NotANumber as first:
        end = plain.rstrip(".!")
        match = _unit_pattern(units).fullmatch(end)
        if match is not None and match["number"]:
            try:
                noun = match["noun"]
                return TypedNumber(written(match["number"]), "inch" if match["inch"] else (noun or "").lower(), match["inch"] is None)
            except NotANumber:
                pass  # what stands before the unit is no number by itself; see whether something else does
        other = _NUMBER_THEN_WORDS.fullmatch(plain)
        if other is None:
            raise
        try:
            number = written(other[1])
        except NotANumber:
            raise first from None
        word = other[2].strip().lower()
        if word in ("bar", "repeating", "repeats", "recurring"):
            raise first from None  # 0.16 repeating: nobody can tell which digits
        return TypedNumber(number, _NAMED_ONLY.get(word, word), False)
    return TypedNumber(number, "money" if number.form == "money" else "", True)
