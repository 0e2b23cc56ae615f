"""Whole numbers and the names of fraction parts in English words, both ways."""

from __future__ import annotations

from functools import lru_cache

_SMALL = (
    *("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen"),
    *("fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"),
)
_TENS = ("", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_SCALES = ((1_000_000_000, "billion"), (1_000_000, "million"), (1_000, "thousand"))
_VALUES = {word: number for number, word in enumerate(_SMALL)} | {word: 10 * tens for tens, word in enumerate(_TENS) if word}
_IRREGULAR = {
    "one": "first",
    "two": "second",
    "three": "third",
    "five": "fifth",
    "eight": "eighth",
    "nine": "ninth",
    "twelve": "twelfth",
}
_POWERS = {
    100: "hundredth",
    1_000: "thousandth",
    10_000: "ten-thousandth",
    100_000: "hundred-thousandth",
    1_000_000: "millionth",
}
LARGEST = 999_999_999_999


def _below_thousand(number: int) -> str:
    hundreds, rest = divmod(number, 100)
    parts = [f"{_SMALL[hundreds]} hundred"] if hundreds else []
    if rest:
        tens, ones = divmod(rest, 10)
        parts.append(_SMALL[rest] if rest < 20 else _TENS[tens] + (f"-{_SMALL[ones]}" if ones else ""))
    return " ".join(parts)


def cardinal(number: int) -> str:
    """The number in words, the US way (no "and").

    Args:
        number: 0 to 999,999,999,999.
    Raises:
        ValueError: the number is negative or larger than that.

    >>> cardinal(1234)
    'one thousand two hundred thirty-four'
    """
    if not 0 <= number <= LARGEST:
        raise ValueError(f"{number} is not a number from 0 to {LARGEST:,}, so it has no words here")
    if number == 0:
        return _SMALL[0]
    parts = []
    for size, name in _SCALES:
        count, number = divmod(number, size)
        if count:
            parts.append(f"{_below_thousand(count)} {name}")
    if number:
        parts.append(_below_thousand(number))
    return " ".join(parts)


def part_name(denominator: int, many: bool) -> str | None:
    """What one part, or several, of a whole cut into equal parts is called; None where people say "over" instead.

    Args:
        denominator: the number of equal parts.
        many: whether the name is for several parts.

    >>> part_name(2, many=True), part_name(12, many=False), part_name(21, many=False), part_name(120, many=True)
    ('halves', 'twelfth', 'twenty-first', None)
    """
    if denominator == 2:
        return "halves" if many else "half"
    name = _POWERS.get(denominator)
    if name is None:
        if not 3 <= denominator <= 99:
            return None
        stem, hyphen, last = cardinal(denominator).rpartition("-")
        ordinal = _IRREGULAR.get(last) or (last[:-1] + "ieth" if last.endswith("y") else last + "th")
        name = stem + hyphen + ordinal
    return name + "s" if many else name


def read_cardinal(words: tuple[str, ...]) -> int | None:
    """The whole number that these words say, hyphens taken apart; None if they are not exactly a whole number.

    >>> read_cardinal(("two", "hundred", "five")), read_cardinal(("five", "two"))
    (205, None)
    """
    total = current = 0
    scales = {name: size for size, name in _SCALES}
    for word in words:
        if word in _VALUES:
            current += _VALUES[word]
        elif word == "hundred":
            current *= 100
        elif word in scales:
            total, current = total + current * scales[word], 0
        else:
            return None
    total += current
    # The sum above is loose ("five two" would be 7); saying the number again shows whether the words were well formed.
    if not words or total > LARGEST or tuple(cardinal(total).replace("-", " ").split()) != words:
        return None
    return total


@lru_cache(maxsize=1)
def _parts() -> dict[tuple[str, ...], int]:
    names: dict[tuple[str, ...], int] = {("quarter",): 4, ("quarters",): 4}
    for denominator in (*range(2, 100), *_POWERS):
        for many in (False, True):
            name = part_name(denominator, many)
            if name is not None:
                names[tuple(name.replace("-", " ").split())] = denominator
    return names


def read_part_name(words: tuple[str, ...]) -> int | None:
    """The denominator that these words name ("twenty firsts" is 21, "quarters" 4), or None.

    >>> read_part_name(("twenty", "firsts")), read_part_name(("pins",))
    (21, None)
    """
    return _parts().get(words)
