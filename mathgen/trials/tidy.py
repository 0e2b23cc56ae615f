"""Cell text without what cannot be seen: odd spaces, zero-width characters, line breaks, empty margins."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Sequence

# Soft hyphen, zero-width space, direction marks, word joiner, byte order mark: none of them is part of a name or a number.
_UNSEEN = re.compile("[\u00ad\u200b\u200e\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff]")
# The joiners are part of the spelling in some scripts and of some emoji, but never beside a plain letter, a digit or an edge.
_STRAY_JOINER = re.compile("(?<![^\x00-\x7f])[\u200c\u200d]|[\u200c\u200d](?![^\x00-\x7f])")


def tidy_cell(text: str) -> str:
    """One cell's text as a person sees it: trimmed, single spaces, no line breaks, accents in one form.

    >>> tidy_cell("  Red\\u00a0\\r\\n(4)\\u200b ")
    'Red (4)'
    """
    if text.isascii():
        return " ".join(text.split())
    # One form for accents: macOS writes e and a mark where Windows writes one letter, and a group would be two.
    return " ".join(unicodedata.normalize("NFC", _STRAY_JOINER.sub("", _UNSEEN.sub("", text))).split())


def squared(rows: Iterable[Sequence[str]]) -> tuple[tuple[str, ...], ...]:
    """Rows of tidy cells, all of one length, without empty rows below or empty columns to the right.

    Empty rows above and empty columns to the left stay, or every row and column number would be wrong.

    >>> squared([["", ""], ["Owls", " 3 ", ""], []])
    (('', ''), ('Owls', '3'))
    """
    tidied = [[tidy_cell(cell) for cell in row] for row in rows]
    while tidied and not any(tidied[-1]):
        tidied.pop()
    width = max((number for row in tidied for number, cell in enumerate(row, 1) if cell), default=0)
    return tuple(tuple(row[:width]) + ("",) * (width - len(row)) for row in tidied)
