"""What one heading says: the words that teachers and spreadsheets use for a column, and what each stands for."""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass, replace
from typing import Literal

from mathgen.trials.scope import Label, Measure

Role = Literal[
    "group", "trial", "color", "count", "set_up", "down", "standing",
    "target", "gap", "height", "round", "notes",
    "total", "timestamp", "index", "derived", "person",
]  # fmt: skip

# A heading that is one of these, whole, is settled before its words are looked at one by one.
WHOLE_HEADINGS: dict[str, Role] = {
    phrase: role
    for role, phrases in {
        "group": "group|groups|grp|gp|team|teams|table|squad|crew|group name|name of group|team name|name of team|group number|table number|"
        "group no|grp no|team no|table no|group id|group label|table group|lab group|station|plot",
        "trial": "trial|trials|try|tries|attempt|attempts|roll|rolls|turn|turns|run|runs|throw|throws|test|trial number|trial no|try number|"
        "attempt number|roll number|turn number|run number|run no",
        "color": "color|colors|colour|colours|pin color|pin colour|color of pin|colour of pin|color of pins|colour of pins|kind|kind of pin|"
        "pin kind|type|type of pin|pin type|variety|seed|seed type|type of seed|kind of seed|seed kind|pins color|pins colour",
        "target": "target|target color|target colour|called|called color|called colour|color called|colour called|aim|aimed at|aimed for|"
        "aiming for|aiming at|goal color|goal colour|call|target called|color aimed at|colour aimed at|target pin|target pins",
        "gap": "gap|gaps|space|spacing|space between pins|spaces between pins|spacing between pins|gap between pins|distance between pins|"
        "pin spacing|pin gap|space between|gap between|pin space",
        "height": "height|release height|ramp height|drop height|height of ramp|start height|starting height|height of release",
        "round": "round|design round|design|version|iteration|prototype|round of design|design version|design number|version number",
        "notes": "note|notes|comment|comments|remark|remarks|observation|observations|what happened|what did you notice",
        "timestamp": "timestamp|time stamp|date|time|date time|date and time|submitted|submitted at|submission time|submission date|start time|"
        "completion time|last modified time|date submitted|day",
        "index": "#|no|id|row|row number|nr|index|response id|entry|entry id|submission id",
        "derived": "percent|percentage|%|average|avg|mean|median|fraction|rate|ratio|decimal|difference|rank|place|points|"
        "percent down|percent knocked down|% down|% knocked down|average down|fraction down|fraction knocked down",
        "person": "email|e mail|email address|username|student|students|pupil|pupils|recorder|your name|student name|students names|members|"
        "group members|team members|teacher|class|period|first name|last name",
        "total": "total|totals|sum|grand total|overall|all pins|all colors|all colours|total pins|in all|altogether|total number of pins",
    }.items()
    for phrase in phrases.split("|")
}  # type: ignore[assignment]

# Longest first within a measure; "not knocked down" must be met before "knocked down".
_MEASURES: tuple[tuple[Measure, str], ...] = (
    ("set_up", r"(?:were |was |pins )?set[ -]?up|standing at (?:the )?start|at (?:the )?start|started with|to start(?: with)?|starting|start|"
     r"out of|in the set|stood(?: up)?|planted|sown|set out|put up|placed"),
    ("standing", r"not (?:knocked|knock)(?: down| over)?|did not fall|not (?:down|fallen|hit)|(?:left|still) (?:standing|up|over)|standing|"
     r"stayed up|remaining|upright|did not sprout|not sprouted|left|missed"),
    ("down", r"(?:knocked|knock|knoked|nocked|knocke|kncoked) ?(?:down|over|off)?|fell(?: down| over)?|fallen|toppled|tipped(?: over)?|hits?|"
     r"down|sprouted|sprout|germinated|came up"),
)  # fmt: skip
_MEASURE_PATTERNS = tuple((measure, re.compile(rf"\b(?:{words})\b")) for measure, words in _MEASURES)

NUMBER_WORDS: dict[str, int] = {
    word: number
    for number, word in enumerate(
        "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen "
        "twenty".split()
    )
}
ORDINAL_WORDS: dict[str, int] = {
    word: number for number, word in enumerate("first second third fourth fifth sixth seventh eighth ninth tenth".split(), start=1)
}
_TRIAL_NOUN = r"(?:trials?|trails?|tirals?|trys?|tries|attempts?|rolls?|turns?|runs?|rounds?|throws?|tests?|goes?|go|bowls?)"
_NUMBER = rf"(?:\d{{1,3}}|{'|'.join(NUMBER_WORDS)})"
_TRIAL = re.compile(rf"\b(?:{_TRIAL_NOUN}\s*(?:no\.?|number|#)?\s*[#:.-]?\s*({_NUMBER})|t\s?#?(\d{{1,3}}))\b")
_ORDINAL_TRIAL = re.compile(rf"\b(?:(\d{{1,3}})(?:st|nd|rd|th)|({'|'.join(ORDINAL_WORDS)}))\s+{_TRIAL_NOUN}\b")

_SET_UP = re.compile(
    r"[(\[]\s*(?:out of|of|set[ -]?up:?|total:?|start:?|/|n\s*=|=)?\s*(\d{1,6})\s*(?:pins?|seeds?)?\s*(?:set[ -]?up|in all|total|planted)?\s*[)\]]"
    r"|(?:\bout of|\bof|/|=|:|,|\s[-–])\s*(\d{1,6})\s*(?:pins?|seeds?)?\s*(?:set[ -]?up)?\s*$"
)

COLOR_WORDS = frozenset(
    "red orange yellow green blue indigo violet purple pink brown black white gray grey gold silver teal turquoise cyan aqua magenta maroon "
    "navy tan beige lime olive coral lavender peach cream bronze copper crimson scarlet clear striped spotted dotted plain ivory mint "
    "amber rose lilac mauve".split()
)
COLOR_SHADES = frozenset("dark light pale bright neon hot royal sky deep forest and with".split())

# Words that say nothing about which column it is; forms ask in whole sentences.
_EMPTY = frozenset(
    "the of a an your our you is are was were what which how many much did do does this that for in on to at from by we they it s pins pin "
    "tubes tube seeds seed number num count counts amount please enter choose select each with out result results score scores".split()
)
_KEY_NOUNS: dict[str, Role] = {
    **dict.fromkeys("group groups grp gruop team teams table".split(), "group"),
    **dict.fromkeys("trial trials try attempt attempts roll turn run throw".split(), "trial"),
    **dict.fromkeys("color colors colour colours".split(), "color"),
}  # type: ignore[arg-type]
_KEY_COMPANY = frozenset("name names label no # id using have had called pick".split())
_TOTAL_WORDS = frozenset(("total", "totals", "sum", "subtotal"))
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
    measure: Measure | None = None
    set_up: int | None = None
    unit: Literal["in", "cm"] | None = None
    guess: str | None = None  # the word it was taken for, where its spelling was not met before

    @property
    def known(self) -> bool:
        """Whether any of it was understood."""
        return bool(self.role or self.group or self.trial is not None or self.color or self.measure or self.set_up is not None)


def tidy(text: str) -> str:
    """The text in one spelling of each character, single spaces, ends trimmed."""
    return " ".join(unicodedata.normalize("NFKC", text).split())


def plain(text: str) -> str:
    """The words of a text in lower case, with signs left out except # and %.

    >>> plain("Grp. #")
    'grp #'
    """
    return " ".join(re.findall(r"[^\W_]+|[#%]", tidy(text).casefold()))


def measure_words(text: str) -> frozenset[Measure]:
    """Each measure that a title line or a label speaks of."""
    found: set[Measure] = set()
    rest = tidy(text).casefold().replace("_", " ")
    for measure, pattern in _MEASURE_PATTERNS:
        rest, times = pattern.subn(" ", rest)
        if times:
            found.add(measure)
    return frozenset(found)


def whole_measure(text: str) -> Measure | None:
    """The measure that a label names and nothing else, as "Set up" or "pins knocked down" does."""
    heading = read_heading(text)
    return heading.measure if heading.role in ("set_up", "down", "standing") else None


def read_heading(text: str) -> Heading:
    """What a heading says: a key column, a measure, a color, a trial, how many were set up.

    >>> read_heading("Red (4)").color, read_heading("Red (4)").set_up
    ('red', 4)
    >>> read_heading("Trial 2 - blue knocked down")
    Heading(text='Trial 2 - blue knocked down', role=None, group=None, trial=2, color='blue', measure='down', set_up=None, unit=None, guess=None)
    >>> read_heading("Grp #").role
    'group'
    """
    typed = tidy(text)
    lowered = typed.casefold().replace("_", " ")
    heading = Heading(typed)
    words = plain(lowered)
    unit: Literal["in", "cm"] | None = "cm" if _CENTIMETERS.search(lowered) else "in" if _INCHES.search(lowered) else None
    for key in (words, words.removesuffix(" #"), re.sub(r" (?:in|inch|inches|cm)$", "", words), re.sub(r" in (?:in|inch|inches|cm)$", "", words)):
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
        return replace(heading, group=typed if heading.set_up is None and heading.measure is None else tidy(lowered))
    content = [word for word in plain(lowered).split() if word not in _EMPTY]
    return _with_content(heading, content, bool(plain(lowered)))


def _with_content(heading: Heading, content: list[str], had_words: bool) -> Heading:
    """The heading with what its remaining words say."""
    if any(word in _TOTAL_WORDS for word in content):
        rest = [word for word in content if word not in _TOTAL_WORDS]
        color = " ".join(rest) if rest and all(word in COLOR_WORDS for word in rest) else None
        return replace(heading, role="total", color=color)
    if content and any(word in COLOR_WORDS for word in content):
        colors = [word for word in content if word in COLOR_WORDS or word in COLOR_SHADES]
        if len(colors) == len(content) or heading.measure:
            return replace(heading, color=" ".join(colors))
    nouns = [word for word in content if word in _KEY_NOUNS]
    if len(nouns) == 1 and all(word in _KEY_COMPANY or word in nouns for word in content):
        return replace(heading, role=_KEY_NOUNS[nouns[0]])
    if not content:
        if heading.trial is not None:
            return heading
        if heading.measure is not None:
            return replace(heading, role=heading.measure)
        return replace(heading, role="count") if had_words else heading
    if heading.measure or heading.set_up is not None or heading.trial is not None:
        # "Cone (4)", "Cone down": a kind that we have no list of, told by its company.
        return replace(heading, color=" ".join(content))
    return heading
