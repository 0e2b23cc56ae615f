"""Printed words cut into parts that a page can set: text, bold text, fractions with their alt text."""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache
from itertools import pairwise
from typing import Any

from mathgen.exact.aloud import aloud
from mathgen.exact.parse import NotANumber

Part = dict[str, Any]

# "2 1/4" and "9/12". A slash between spaces is a division sign.
_FRACTION = r"(?<![\w/.])(?:(?P<whole>\d+) )?(?P<top>\d+)/(?P<bottom>\d+)(?![\w/])(?!\.\d)"
# What one line must hold together: an equation, an expression with parentheses, a pair, a count and its noun, "Trial" and its number. A
# percent of a fraction is no count.
_SIGN = "[+×÷=<>−-]"
_TERM = r"\(?−?(?:\d*[a-z]|\d+(?:\.\d+)?|__)\)?"
_LONGEST_KEPT = 24  # a card in large print is not wider
_TOGETHER = (
    rf"(?P<kept>(?<![\w/.]){_TERM}(?: {_SIGN} {_TERM})+(?![\w/])"
    r"|\(−?(?:[\d.]+|[a-z]), −?(?:[\d.]+|[a-z])\)"
    r"|\b(?:Trial|Group|Round) \d+\b|(?<![\w/.−])−?\d+ [^\W\d_]+|\b[a-z]-[a-z]+\b)"
)
_AFTER_A_FRACTION, _BEFORE_A_FRACTION = re.compile(rf"^ ({_SIGN}) "), re.compile(rf" ({_SIGN}) $")
_UNBROKEN = " \\1 ".replace(" ", "\N{NO-BREAK SPACE}")
_NOT = r"\b(?P<not>not)\b"
_FRACTIONS = re.compile(_FRACTION)
_BELOW_ZERO = re.compile(r"(?<![\w/).,-])-(?=[\d(])")  # a minus sign, which no line ends with
_SIGNS = ((" - ", " \N{MINUS SIGN} "), (" * ", " \N{MULTIPLICATION SIGN} "), (" / ", " \N{DIVISION SIGN} "))
_AT_MOST = ((" <= ", " \N{LESS-THAN OR EQUAL TO} "), (" >= ", " \N{GREATER-THAN OR EQUAL TO} "))


def fraction_part(whole: str | None, top: str, bottom: str) -> Part:
    """A fraction to be typeset, with the words that are read aloud in its place.

    >>> fraction_part(None, "9", "12")["alt"], fraction_part("2", "1", "4")["alt"]
    ('nine twelfths', 'two and one fourth')
    """
    typed = f"{top}/{bottom}" if whole is None else f"{whole} {top}/{bottom}"
    try:
        alt = aloud(typed)
    except NotANumber:
        alt = typed.replace("/", " over ")  # in a group's name, say: "1/0" has no name as a number
    return {"whole": whole, "top": top, "bottom": bottom, "alt": alt}


@lru_cache(maxsize=64)
def _pattern(names: tuple[str, ...], running: bool, stress_not: bool) -> re.Pattern[str]:
    # A name of the table comes first: it is printed as typed, whatever stands in it.
    told = "|".join(re.escape(name) for name in names)
    ways = [
        rf"(?P<name>(?<![\w/])(?:{told})(?![\w/]))" if names else "",
        _FRACTION,
        _TOGETHER if running else "",
        _NOT if stress_not else "",
    ]
    return re.compile("|".join(way for way in ways if way))


def names_like_fractions(labels: Iterable[str]) -> tuple[str, ...]:
    """The names that hold what looks like a fraction, the longest first: a group may be called "1/2".

    >>> names_like_fractions(["Owls", "1/2", "Room 1/2"])
    ('Room 1/2', '1/2')
    """
    return tuple(sorted((label for label in dict.fromkeys(labels) if _FRACTIONS.search(label)), key=lambda label: (-len(label), label)))


def parts(text: str, names: tuple[str, ...] = ()) -> list[Part]:
    """A short text, such as an answer, in printing order; fractions apart.

    Args:
        text: the text.
        names: as ``names_like_fractions`` gives them; they are left as typed.

    >>> parts("12 pins")
    [{'text': '12 pins'}]
    """
    return _cut(text, _pattern(names, False, False))


def running_parts(text: str, *, stress_not: bool = False, names: tuple[str, ...] = ()) -> list[Part]:
    """Sentences in printing order: fractions apart, and what must stay on one line marked.

    Args:
        text: the sentences.
        stress_not: whether "not" stands in bold, as in a question whose point it is.
        names: as ``names_like_fractions`` gives them; they are left as typed.

    >>> running_parts("Look at Trial 1. Which was not blue?", stress_not=True)
    [{'text': 'Look at '}, {'kept': 'Trial 1'}, {'text': '. Which was '}, {'bold': 'not'}, {'text': ' blue?'}]
    >>> running_parts("It goes through (4, 17).")
    [{'text': 'It goes through '}, {'kept': '(4, 17)'}, {'text': '.'}]
    >>> running_parts("What number makes 12 - __ = 7 true?")
    [{'text': 'What number makes '}, {'kept': '12 − __ = 7'}, {'text': ' true?'}]
    """
    found = _cut(text, _pattern(names, True, stress_not))
    for before, after in pairwise(found):
        if "top" in before and "text" in after:
            after["text"] = _AFTER_A_FRACTION.sub(_UNBROKEN, after["text"])
        if "text" in before and "top" in after:
            before["text"] = _BEFORE_A_FRACTION.sub(_UNBROKEN, before["text"])
    return found


def _cut(text: str, special: re.Pattern[str]) -> list[Part]:
    found: list[Part] = []
    text = _BELOW_ZERO.sub("\N{MINUS SIGN}", text)
    end = 0
    for match in special.finditer(text):
        if match.start() > end:
            found.append({"text": text[end : match.start()]})
        groups = match.groupdict()
        if groups["bottom"]:
            found.append(fraction_part(groups["whole"], groups["top"], groups["bottom"]))
        elif groups.get("name"):
            found.append({"text": groups["name"]})
        elif groups["kept"]:
            kept = groups["kept"].replace(*_SIGNS[0])
            found.append({"kept" if len(kept) <= _LONGEST_KEPT else "text": kept})
        else:
            found.append({"bold": groups["not"]})
        end = match.end()
    if end < len(text):
        found.append({"text": text[end:]})
    return found


def working(step: str, names: tuple[str, ...] = ()) -> list[Part]:
    """A step such as ``9/12 + 3/12 = 12/12`` in a teacher's signs; ``names`` as for ``parts``.

    >>> working("4 * 8 = 32")
    [{'text': '4 × 8 = 32'}]
    >>> working("23 / 3 = 23/3")[0]
    {'text': '23 ÷ 3 = '}
    """
    for plain, sign in (*_SIGNS, *_AT_MOST):
        step = step.replace(plain, sign)
    return parts(step, names)
