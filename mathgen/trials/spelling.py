"""The known word that a word typed wrong was most likely meant to be."""

from __future__ import annotations

from collections.abc import Iterable

from rapidfuzz.distance import OSA


def nearest(word: str, known: Iterable[str]) -> str | None:
    """The one known word within a slip of the fingers, or None.

    One slip (a letter too many, too few, wrong, or two swapped) is forgiven in a word of 3 to 6 letters, two in a longer one.

    >>> nearest("gruop", ["group", "trial"])
    'group'
    >>> nearest("cone", ["group", "note"])
    """
    if len(word) < 3:
        return None
    allowed = 1 if len(word) < 7 else 2
    distances = sorted((OSA.distance(word, other), other) for other in known if len(other) >= 4)
    close = [pair for pair in distances if 0 < pair[0] <= allowed]
    if not close or (len(close) > 1 and close[0][0] == close[1][0]):
        return None
    return close[0][1]
