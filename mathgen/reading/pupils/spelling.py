"""Slips of the pen mended: a word that is not known, taken for the one known word that it must be."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable

_SHORTEST = 4  # letters; "rad" may be "red" and may be anything
_LONG = 7  # letters from which two slips still leave no doubt
_SAME_SOUND = (("kn", "n"), ("wh", "w"), ("ph", "f"), ("ck", "k"), ("gh", "g"), ("wr", "r"))


def folded(word: str) -> str:
    """Lower case without accents.

    >>> folded("Zoë")
    'zoe'
    """
    return "".join(sign for sign in unicodedata.normalize("NFD", word.casefold()) if not unicodedata.combining(sign))


def skeleton(word: str) -> str:
    """What a word sounds like, roughly: no vowels but a first one, no doubled letters.

    >>> skeleton("menny") == skeleton("many"), skeleton("nock") == skeleton("knock")
    (True, True)
    """
    text = folded(word)
    for written, heard in _SAME_SOUND:
        text = text.replace(written, heard)
    text = re.sub(r"c(?![eiy])", "k", text)
    text = re.sub(r"(.)\1+", r"\1", text)
    return text[:1] + re.sub(r"[aeiouy]", "", text[1:])


def mended(word: str, known: Iterable[str], spelled_right: frozenset[str]) -> str | None:
    """The one known word that a misspelled word must be; None where there is none or are several.

    Args:
        word: a word that is not known, in lower case.
        known: all words that are, of the reader and of the table.
        spelled_right: everyday words that are no slips, whatever they look like.
    """
    # Only needed for words that are misspelled, and loading it takes longer than reading a question.
    from rapidfuzz.distance import OSA

    plain = folded(word)
    if len(plain) < _SHORTEST or plain in spelled_right:
        return None
    sound = skeleton(plain)
    near: dict[str, int] = {}
    for other in known:
        shape = folded(other)
        if len(shape) < 3 or abs(len(shape) - len(plain)) > 2:
            continue
        distance = OSA.distance(plain, shape, score_cutoff=2)
        alike = sound == skeleton(shape)
        same_start = plain[0] == shape[0] or alike
        close = distance == 1 or (distance == 2 and (alike or (len(plain) >= _LONG and len(shape) >= _LONG)))
        # Sound counts for half a slip, so that "finchs" is "finches" rather than "finch's neighbor".
        if close and same_start:
            near[other] = 2 * distance - alike
    if not near:
        return None
    best = min(near.values())
    chosen = [other for other, cost in near.items() if cost == best]
    if len({folded(other).rstrip("s") for other in chosen}) > 1:
        return None
    return min(chosen, key=lambda other: (abs(len(other) - len(plain)), other))
