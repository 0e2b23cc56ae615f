"""What one heading says: the words that teachers and spreadsheets use for a column, and what each stands for."""

from __future__ import annotations

import re
import tomllib
import unicodedata
from dataclasses import dataclass, replace
from functools import lru_cache
from importlib.resources import files
from typing import Literal

from mathgen.trials.scope import Label, OfPins
from mathgen.trials.tidy import tidy_cell

Role = Literal[
    "group", "trial", "color", "count", "set_up", "down", "standing",
    "target", "gap", "height", "round", "notes",
    "total", "timestamp", "index", "derived", "person",
]  # fmt: skip

KEY_ROLES = ("group", "trial", "color")

_WORDS = tomllib.loads(files("mathgen.trials").joinpath("heading_words.toml").read_text(encoding="utf-8"))
WHOLE_HEADINGS: dict[str, Role] = {phrase: role for role, phrases in _WORDS["whole"].items() for phrase in phrases}
COLOR_WORDS: frozenset[str] = frozenset(_WORDS["words"]["colors"])
SPELLED: tuple[str, ...] = tuple(_WORDS["words"]["spelled"])
_MEASURE_PATTERNS: tuple[tuple[OfPins, re.Pattern[str]], ...] = tuple(
    (measure, re.compile(rf"\b(?:{'|'.join(patterns)})\b")) for measure, patterns in _WORDS["measures"].items()
)
_KEY_NOUNS: dict[str, Role] = {word: role for role, words in _WORDS["nouns"].items() for word in words}
_BESIDE_NOUN = frozenset(_WORDS["words"]["beside_noun"])
_EMPTY = frozenset(_WORDS["words"]["empty"])
_SHADES = frozenset(_WORDS["words"]["shades"])
_TOTAL_WORDS = frozenset(_WORDS["words"]["total"])

_NUMBERS = (
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
    "twenty",
)
_ORDINALS = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")
NUMBER_WORDS: dict[str, int] = {word: number for number, word in enumerate(_NUMBERS)}
ORDINAL_WORDS: dict[str, int] = {word: number for number, word in enumerate(_ORDINALS, start=1)}
_TRIAL_NOUN = r"(?:trials?|trails?|tirals?|trys?|tries|attempts?|rolls?|turns?|runs?|rounds?|throws?|tests?|goes?|go|bowls?)"
_NUMBER = rf"(?:\d{{1,3}}|{'|'.join(NUMBER_WORDS)})"
_TRIAL = re.compile(rf"\b(?:{_TRIAL_NOUN}\s*(?:no\.?|number|#)?\s*[#:.-]?\s*({_NUMBER})|t\s?#?(\d{{1,3}}))\b")
_ORDINAL_TRIAL = re.compile(rf"\b(?:(\d{{1,3}})(?:st|nd|rd|th)|({'|'.join(ORDINAL_WORDS)}))\s+{_TRIAL_NOUN}\b")

_SET_UP = re.compile(
    r"[(\[]\s*(?:out of|of|set[ -]?up:?|total:?|start:?|/|n\s*=|=)?\s*(\d{1,6})\s*(?:pins?|seeds?)?\s*"
    r"(?:set[ -]?up|in all|total|planted)?\s*[)\]]"
    r"|(?:\bout of|\bof|/|=|:|,|\s[-–])\s*(\d{1,6})\s*(?:pins?|seeds?)?\s*(?:set[ -]?up)?\s*$"
)

_FRACTION_SIGN = re.compile("[½¼¾⅐-⅞]")
_RAISED_OR_LOWERED = re.compile("([⁰¹²³⁴-⁹₀-₉]+)")  # X² is no X2, and 3² is not 32
_NUMBERED_GROUP = re.compile(r"(?:group|team|table|grp)\s*[#:.-]?\s*(?:\d{1,3}|[a-z])\b", re.IGNORECASE)
_INCHES = re.compile(r"\b(?:in|ins|inch|inches)\b|[\"″”]")
_CENTIMETERS = re.compile(r"\b(?:cm|centimet(?:er|re)s?)\b")


@dataclass(frozen=True, slots=True)
class Heading:
    """What one heading says. All of it may be None: a heading that nobody has met before."""

    text: str
    role: Role | None = None
    group: str | None = None
    trial: Label | None = None
    color: str | None = None
    measure: OfPins | None = None
    set_up: int | None = None
    unit: Literal["in", "cm"] | None = None
    guess: str | None = None  # the word it was taken for, where its spelling was not met before

    @property
    def known(self) -> bool:
        """Whether any of it was understood."""
        return bool(self.role or self.group or self.trial is not None or self.color or self.measure or self.set_up is not None)


def tidy(text: str) -> str:
    """The text in one spelling of each character, single spaces, ends trimmed."""
    if text.isascii():
        return " ".join(text.split())
    # A fraction sign becomes 1⁄2; without a space before it, 1½ would become 11⁄2.
    parts = _RAISED_OR_LOWERED.split(_FRACTION_SIGN.sub(r" \g<0>", text))
    return " ".join("".join(part if odd % 2 else unicodedata.normalize("NFKC", part) for odd, part in enumerate(parts)).split())


def plain(text: str) -> str:
    """The words of a text in lower case, with signs left out except # and %.

    >>> plain("Grp. #")
    'grp #'
    """
    return " ".join(re.findall(r"[^\W_]+|[#%]", tidy(text).casefold()))


def content_words(lowered: str) -> list[str]:
    """The words of a text in lower case that say something: "how many of the pins" has none."""
    return [word for word in plain(lowered).split() if word not in _EMPTY]


def measure_words(text: str) -> frozenset[OfPins]:
    """Each measure that the heading of a total, or a line about set-up counts, speaks of."""
    found: set[OfPins] = set()
    rest = tidy(text).casefold().replace("_", " ")
    for measure, pattern in _MEASURE_PATTERNS:
        rest, times = pattern.subn(" ", rest)
        if times:
            found.add(measure)
    return frozenset(found)


def whole_measure(text: str) -> OfPins | None:
    """The measure that a label names and nothing else, as "Set up" or "pins knocked down" does."""
    heading = read_heading(text)
    return heading.measure if heading.role in ("set_up", "down", "standing") else None


# A long table says the same few words on each row; remembering them reads 2,880 rows in a third of the time.
@lru_cache(maxsize=4096)
def read_heading(text: str) -> Heading:
    """What a heading says: a key column, a measure, a color, a trial, how many were set up.

    >>> read_heading("Red (4)").color, read_heading("Red (4)").set_up
    ('red', 4)
    >>> heading = read_heading("Trial 2 - blue knocked down")
    >>> heading.trial, heading.color, heading.measure
    (2, 'blue', 'down')
    >>> read_heading("Grp #").role
    'group'
    """
    typed = tidy_cell(text)  # a label stays as it was typed; what it means is read from the plainer spelling
    lowered = tidy(text).casefold().replace("_", " ")
    heading = Heading(typed)
    words = plain(lowered)
    unit: Literal["in", "cm"] | None = "cm" if _CENTIMETERS.search(lowered) else "in" if _INCHES.search(lowered) else None
    without_unit = re.sub(r"(?: in)? (?:in|inch|inches|cm|centimeters|centimetres)$", "", words)
    for key in (words, words.removesuffix(" #"), without_unit):
        if key in WHOLE_HEADINGS:
            return replace(heading, role=WHOLE_HEADINGS[key], unit=unit)
    stated = _SET_UP.search(lowered)
    trial_first = _TRIAL.search(lowered)
    if stated and not (trial_first and trial_first.end() >= stated.end()):
        heading = replace(heading, set_up=int(stated[1] or stated[2]))
        lowered = lowered[: stated.start()] + " " + lowered[stated.end() :]
    for measure, pattern in _MEASURE_PATTERNS:
        if pattern.search(lowered):
            heading = replace(heading, measure=measure)
            lowered = pattern.sub(" ", lowered)
            break
    if match := _TRIAL.search(lowered):
        heading = replace(heading, trial=NUMBER_WORDS.get(match[1] or match[2]) or int(match[1] or match[2]))
        lowered = lowered[: match.start()] + " " + lowered[match.end() :]
    elif match := _ORDINAL_TRIAL.search(lowered):
        heading = replace(heading, trial=int(match[1]) if match[1] else ORDINAL_WORDS[match[2]])
        lowered = lowered[: match.start()] + " " + lowered[match.end() :]
    elif re.fullmatch(r"(?:group|team|table|grp)\s*[#:.-]?\s*(?:\d{1,3}|[a-z])", lowered.strip()):
        alone = heading.set_up is None and heading.measure is None
        match = None if alone else _NUMBERED_GROUP.search(typed)
        return replace(heading, group=match[0] if match else typed)
    return _with_content(heading, content_words(lowered), lowered)


def _span(words: list[str], lowered: str) -> str:
    """The text from the first of some words to the last, with what stands between them: "glow-in-the-dark", not "glow dark"."""
    places = [match for match in re.finditer(r"[^\W_]+|[#%]", lowered) if match[0] in words]
    return " ".join(lowered[places[0].start() : places[-1].end()].split()) if places else " ".join(words)


def _with_content(heading: Heading, content: list[str], lowered: str) -> Heading:
    """The heading with what its remaining words say.

    Args:
        heading: what was found so far.
        content: the words that are left and mean something.
        lowered: all that is left, in lower case.
    """
    if any(word in _TOTAL_WORDS for word in content):
        rest = [word for word in content if word not in _TOTAL_WORDS]
        color = " ".join(rest) if rest and all(word in COLOR_WORDS for word in rest) else None
        return replace(heading, role="total", color=color)
    if content and any(word in COLOR_WORDS for word in content):
        colors = [word for word in content if word in COLOR_WORDS or word in _SHADES]
        if len(colors) == len(content) or heading.measure:
            return replace(heading, color=_span(colors, lowered))
    nouns = [word for word in content if word in _KEY_NOUNS]
    if len(nouns) == 1 and all(word in _BESIDE_NOUN or word in nouns for word in content):
        return replace(heading, role=_KEY_NOUNS[nouns[0]])
    if not content:
        if heading.trial is not None:
            return heading
        if heading.measure is not None:
            return replace(heading, role=heading.measure)
        return replace(heading, role="count") if plain(lowered) else heading
    if heading.measure or heading.set_up is not None or heading.trial is not None:
        # "Cone (4)", "Cone down": a kind that we have no list of, told by its company.
        return replace(heading, color=_span(content, lowered))
    return heading
