"""A pupil's text put plainly: turns of speech that mean the same as one the reader knows, before a word of it is heard.

Each rule is a pattern and what it comes to. A rule may only restate: it never drops a number, a label or a word that could change the
answer. What is understood in the end is said back to the pupil, so that nothing is restated unseen.
"""

from __future__ import annotations

import re
import tomllib
from importlib.resources import files

from mathgen.reading.pupils.scene import Scene
from mathgen.trials.table import TrialTable

_LISTS = tomllib.loads(files("mathgen.reading.pupils").joinpath("turns.toml").read_text(encoding="utf-8"))
_NAMES: dict[str, str] = {**_LISTS.pop("names"), "Q": "['’]", "S": "['’]s"}


class Plainly:
    """Puts texts about one table plainly."""

    def __init__(self, table: TrialTable, past_standing: str) -> None:
        """Args:
        table: its labels are known words.
        past_standing: what is said of pins that were not knocked down: "left standing".
        """
        self._table = table
        self._scene = Scene(table)
        groups = "|".join(re.escape(label) for label in sorted(table.groups, key=len, reverse=True)) or "(?!)"
        colors = "|".join(re.escape(color) for color in sorted(table.colors, key=len, reverse=True)) or "(?!)"
        self._not_a_color = re.compile(rf"\b(was|were|is|are)(?: not| never|n['’]?t) ({colors})\b", re.IGNORECASE)
        self._pins_not = re.compile(
            rf"\b(pins?|ones?) (?:that|which) (?:was|were|is|are)(?: not| never|n['’]?t) ({colors})\b(?! or\b)", re.IGNORECASE
        )
        self._labels = re.compile(rf"\b(?:{groups}|{colors}|\d+)s?\b", re.IGNORECASE)
        self._standing = past_standing
        names = {**_NAMES, "GROUP": rf"(?:the )?(?:{groups})(?:['’]s?)?", "COLOR": f"(?:{colors})"}
        self._turns = [
            (re.compile(re.sub("«([A-Z]+)»", lambda name: f"(?:{names[name[1]]})", said), re.IGNORECASE), plain)
            for part in _LISTS.values()
            for said, plain in part["turns"]
        ]

    def __call__(self, text: str) -> str:
        """The text, said as the reader knows it."""
        for said, plain in self._turns:
            text = said.sub(plain, text)
        text = self._scene(text)
        text = self._pins_not.sub(self._other_colors, text)
        text = self._not_a_color.sub(self._another_color, text)
        text = _DID_NOT.sub(rf"\1 were {self._standing}", text)
        text = _COMPARE.sub(self._compared, text)
        text = self._others(text)
        return _as_a_question(" ".join(text.split()))

    @staticmethod
    def parted(text: str) -> str:
        """The text with what it tells first as a sentence of its own: for where it cannot be understood as one."""
        return _SPLICED.sub(". ", text)

    def _another_color(self, match: re.Match[str]) -> str:
        """ "Were not red": were of one of the other colors."""
        others = [color for color in self._table.colors if color.casefold() != match[2].casefold()]
        return f"{match[1]} {' or '.join(others)}" if others else match[0]

    def _other_colors(self, match: re.Match[str]) -> str:
        """ "Pins that were not red": the blue and gold pins."""
        others = [color for color in self._table.colors if color.casefold() != match[2].casefold()]
        return f"{' and '.join(others)} {match[1]}" if others else match[0]

    def _compared(self, match: re.Match[str]) -> str:
        """ "Compare gold and red. How many times ...": the first sentence adds nothing where the second names the same."""
        first, rest = ({found.casefold().rstrip("s") for found in self._labels.findall(part)} for part in match.groups())
        others = re.sub(r"\b(?:the|and|with|to|pins|trials?|,)\b|\s", "", self._labels.sub("", match[1]), flags=re.IGNORECASE)
        if first and first <= rest and not others:
            return match[2]
        return f"{re.sub(r' (?:with|to) ', ' and ', match[1])}, {match[2]}" if first else match[0]

    def _others(self, text: str) -> str:
        """ "Red pins are worth 3 points, all the others 1": the other colors by name, where a worth is told."""
        if not re.search(r"\b(?:points?|pts?|worth)\b", text, re.IGNORECASE):
            return text

        def colors(match: re.Match[str]) -> str:
            named = [color for color in self._table.colors if re.search(rf"\b{re.escape(color)}", text[: match.start()], re.IGNORECASE)]
            others = [color for color in self._table.colors if color not in named]
            return match[0] if not named or not others else f"{' and '.join(others)} pins"

        return _OTHERS.sub(colors, text)


# "The Finches got red and gold pins down in trial 1, what is the ratio ...": a sentence that tells, and one that asks.
_SPLICED = re.compile(
    r"(?<=[^,.?!:;])(?<!^in)(?<!^of), (?=(?:what is|what's|whats|what was|how many|how much|which)\b)(?!.*[,.?!:;] )", re.IGNORECASE
)
# "Pins that fell to pins that didn't".
_DID_NOT = re.compile(r"\b(that|which|who) (?:did not|didn['’]?t)(?=$|[?.,]| (?:for|in|by|on) )", re.IGNORECASE)
_COMPARE = re.compile(r"^compare ([^.?!:]+)[.:!] (.+)$", re.IGNORECASE)
_OTHERS = re.compile(
    r"\b(?:all (?:of )?)?(?:the )?(?:rest|others|other (?:pins|colou?rs|ones)|remaining (?:pins|colou?rs))\b"
    r"|\b(?:every|each|any) other (?:pin|colou?r|one)\b|\ball other (?:pins|colou?rs)\b|\bother (?:pins|colou?rs)\b"
    r"|\b(?:everything|anything) else\b|\b(?:any|every|each) other\b(?= is\b| one\b|[.,;?!]|$)",
    re.IGNORECASE,
)
_OPENER = re.compile(
    r"^(?:(?:please )?(?:tell|give|show) me |i want |i need |find |(?=the sum of|sum of))(?:the )?(?:sum of (?:all )?)?", re.IGNORECASE
)
_ASKING = re.compile(
    r"\b(?:how|what|whats|wats|wat|wot|which|wich|witch|wut|waht|who|whos|whose|find|give|work out|calculate|determine|compute|state|write"
    r"|express|show"
    r"|add|tell|name|estimate|identify|count|ratio|median|range|mean|average|chance|probability|fraction|percent\w*|decimal|difference|minus"
    r"|subtract|take away|half|double|twice|triple)\b|%",
    re.IGNORECASE,
)
_TOTAL = re.compile(r"\b(?:sum of|total|in all|al+to?gether|al+togeather|put together|combined|overall|all together)\b", re.IGNORECASE)
_TRIALS = re.compile(r"\btrials? \d+(?:(?:, | and |, and | to )\d+)*", re.IGNORECASE)
_COUNT = re.compile(
    r"(?<!trial )(?<!trials )(?<!round )\b\d+\b"
    r"(?!\s*(?:st|nd|rd|th|trials?|tr[iy]e?s|goes|rolls|turns|rounds|groups|teams))",
    re.IGNORECASE,
)


def _as_a_question(text: str) -> str:
    """ "Total pins down, Swifts, last trial", "Blue pins still up after their second go?": how many, where no number is told."""
    body = _OPENER.sub("", text.rstrip(" .!?"))
    one_sentence = not re.search(r"[.!?;:]\s", body)
    if not one_sentence or _ASKING.search(body) or _COUNT.search(_TRIALS.sub("", body)):
        return text
    if text.endswith("?") and not re.match(r"(?:did|do|does|was|were|is|are|can|could|will|would|has|have|and|or)\b", body, re.IGNORECASE):
        return f"how many {body}?"
    if not _TOTAL.search(text):
        return text
    opened = body != text.rstrip(" .!?") and "sum of" not in text.casefold()  # "tell me the Owls' total"
    return f"what is {body}?" if opened else f"how many {body}?"
