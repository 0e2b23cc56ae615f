"""What a title line or a sheet's name says of what was counted: only whole phrases about counting settle it."""

from __future__ import annotations

import re
import tomllib
from importlib.resources import files

from mathgen.trials.heading_words import content_words, plain
from mathgen.trials.scope import Measure

_WORDS = tomllib.loads(files("mathgen.trials").joinpath("heading_words.toml").read_text(encoding="utf-8"))["titles"]
_SEEDS = re.compile(r"\b(?:seeds?|sprout(?:s|ed|ing)?|germinated|planted|sown)\b")


def _pattern(phrases: list[str]) -> re.Pattern[str]:
    item = f"(?:{'|'.join(_WORDS['items'])})"
    return re.compile(rf"\b(?:{'|'.join(phrase.replace('ITEM', item) for phrase in phrases)})(?!\w)")


_BEFORE = _pattern(_WORDS["before"])
_PHRASES: tuple[tuple[Measure, re.Pattern[str]], ...] = (
    ("standing", _pattern(_WORDS["standing"])),
    ("down", _pattern(_WORDS["down"])),
    ("down", _pattern(_WORDS["sprouted"])),
)
_BARE: dict[str, Measure] = dict.fromkeys(_WORDS["bare_standing"], "standing") | dict.fromkeys(_WORDS["bare_down"], "down")


def title_measures(text: str) -> dict[Measure, str]:
    """Each measure that a title says was counted, with the words that say so.

    >>> title_measures("Pins knocked down"), title_measures("Sock ball down the cardboard ramp")
    ({'down': 'knocked down'}, {})
    >>> title_measures("Ball rolls standing around"), title_measures("How many are still standing?")
    ({}, {'standing': 'still standing'})
    """
    words = plain(text)
    bare = " ".join(content_words(words))
    if bare in _BARE:
        return {_BARE[bare]: bare}
    found: dict[Measure, str] = {}
    rest = _BEFORE.sub(" ", words)
    for measure, pattern in _PHRASES:
        match = pattern.search(rest)
        if match:
            found.setdefault(measure, match[0])
            rest = pattern.sub(" ", rest)
    return found


def speaks_of_seeds(texts: list[str]) -> bool:
    """Whether titles or headings speak of seeds that were planted or sprouted."""
    return any(_SEEDS.search(plain(text)) for text in texts)
