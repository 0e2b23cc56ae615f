"""Printed words cut into parts that a page can set: text, bold text, fractions with their alt text."""

from __future__ import annotations

import re
from typing import Any

from mathgen.exact.aloud import aloud
from mathgen.exact.parse import NotANumber

Part = dict[str, Any]

# "2 1/4", "9/12", and the word "not" where it is the point of a question. A slash between spaces is a division sign.
_SPECIAL = re.compile(
    r"(?<![\w/.])(?:(?P<whole>\d+) )?(?P<top>\d+)/(?P<bottom>\d+)(?![\w/])(?!\.\d)"
    r"|(?P<not>\bnot\b)"
)
_SIGNS = ((" - ", " \N{MINUS SIGN} "), (" * ", " \N{MULTIPLICATION SIGN} "), (" / ", " \N{DIVISION SIGN} "))


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


def parts(text: str, *, stress_not: bool = False) -> list[Part]:
    """Text in printing order, fractions apart.

    Args:
        text: a sentence or an answer as plain text.
        stress_not: set the word "not" in bold, as questions do.

    >>> [sorted(part) for part in parts("They knocked down 9/12 of the 12 pins.")]
    [['text'], ['alt', 'bottom', 'top', 'whole'], ['text']]
    """
    found: list[Part] = []
    end = 0
    for match in _SPECIAL.finditer(text):
        if match["not"] and not stress_not:
            continue
        if match.start() > end:
            found.append({"text": text[end : match.start()]})
        found.append({"bold": "not"} if match["not"] else fraction_part(match["whole"], match["top"], match["bottom"]))
        end = match.end()
    if end < len(text):
        found.append({"text": text[end:]})
    return found


def working(step: str) -> list[Part]:
    """A step such as ``9/12 + 3/12 = 12/12`` in a teacher's signs.

    >>> working("4 * 8 = 32")
    [{'text': '4 × 8 = 32'}]
    """
    for plain, sign in _SIGNS:
        step = step.replace(plain, sign)
    return parts(step)
