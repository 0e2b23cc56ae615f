"""The words a pupil may use of one table: the activity's nouns and verbs, the table's own labels, cues and small words."""

from __future__ import annotations

import re
import tomllib
from importlib.resources import files

from mathgen.reading.pupils.spelling import folded
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Measure
from mathgen.trials.table import TrialTable

LISTS = tomllib.loads(files("mathgen.reading.pupils").joinpath("words.toml").read_text(encoding="utf-8"))
_EMPTY = tuple(LISTS["empty"]["words"])
CUES = frozenset[str](LISTS["cues"])
_SMALL = frozenset[str](LISTS["small"]["words"])
_MENDED_SMALL = frozenset(["than", "each", "both", "only"])  # small words that a slip is taken for
_TRIAL_WORDS = ("trial", "trials", "try", "tries", "go", "goes", "turn", "turns", "attempt", "attempts", "roll", "rolls")
_GROUP_WORDS = {"group": "group", "groups": "groups", "grp": "group", "grps": "groups", "team": "group", "teams": "groups"}
_MEASURES: dict[str, Measure] = {"down": "down", "standing": "standing", "set_up": "set_up"}
# First words of verbs that change their vowel: past, then the other forms.
_STRONG = {
    "fell": ("fall", "falls", "fallen", "falling"),
    "came": ("come", "comes", "coming"),
    "grew": ("grow", "grows", "grown"),
    "hit": ("hits", "hitting"),
    "got": (),
    "stood": ("stand", "stands", "standing"),
    "sown": ("sow", "sows", "sowed"),
    "set": ("sets", "setting"),
    "went": ("go", "goes"),
}
_MORE_DOWN = {
    "knocked down": (
        "knocked over",
        "fell over",
        "falls down",
        "tipped",
        "tumbled",
        "tumbled over",
        "flattened",
        "went down",
        "go down",
        "going down",
        "toppled",
        "toppled over",
        "bowled over",
    )
}


def _forms(phrase: str) -> list[str]:
    """A past form and what pupils make of it: "knocked down", "knock down", "knocks down", "knocking down"."""
    first, _, rest = phrase.partition(" ")
    heads = [first]
    if first in _STRONG:
        heads.extend(_STRONG[first])
    elif first.endswith("ed") and len(first) > 4:
        stem = first[:-2]
        stem = stem[:-1] if len(stem) > 3 and stem[-1] == stem[-2] and stem[-1] in "pt" else stem
        heads.extend((stem, f"{stem}s", f"{first[:-2]}ing", f"{stem}e"))
    return [f"{head} {rest}".strip() for head in heads]


class Vocabulary:
    """Known words and phrases with what each can be, for one table."""

    def __init__(self, table: TrialTable, scenario: Scenario) -> None:
        """Args:
        table: its labels are known words.
        scenario: nouns and verbs of the activity.
        """
        self.table = table
        self.targets = any(row.target is not None for row in table.rows)
        self.phrases: dict[tuple[str, ...], dict[str, object]] = {}
        for kind, spellings in (*LISTS["cues"].items(), *LISTS["phrases"].items()):
            if kind in ("STANDING", "SETUP", "FELLDOWN"):
                continue  # words of pins, not of every activity
            name, value = ("ORDER", int(kind[-1])) if kind.startswith("ORDER") else (kind, None)
            for spelling in spellings:
                self._know(spelling, name, value)
        for spelling in LISTS["phrases"]["ALLTRIALS"]:
            self._know(f"in {spelling}", "ALLTRIALS", None)  # "in all" is no part of it
        for spelling in _EMPTY:
            self._know(spelling, "", None)
        for word in _SMALL:
            self._know(word, word, None)
        self._verbs(scenario)
        self._nouns(scenario)
        self.exact: dict[tuple[str, ...], tuple[tuple[str, ...], str]] = {}  # labels that only their capitals tell from common words
        self._labels()
        self.words = {word for phrase in self.phrases for word in phrase}
        # A slip is never taken for a word that carries no meaning: that would be dropping a word unseen.
        self.mendable = sorted(self.words - {word for phrase in _EMPTY for word in phrase.split()} - (_SMALL - _MENDED_SMALL))
        self.longest = max(map(len, self.phrases))

    def _know(self, spelling: str, kind: str, value: object) -> None:
        words = tuple(folded(spelling).replace("-", " ").split())
        if words:
            self.phrases.setdefault(words, {}).setdefault(kind, value)

    def _verbs(self, scenario: Scenario) -> None:
        for key, measure in _MEASURES.items():
            spellings = [
                scenario.past[key],
                scenario.base[key],
                scenario.after_noun[key].removeprefix("that "),
                *scenario.synonyms.get(key, ()),
            ]
            spellings.extend(_MORE_DOWN.get(scenario.past[key], ()))
            for spelling in spellings:
                if measure == "set_up" and spelling == "at the start":
                    continue
                if measure == "standing" and spelling in ("standing",):
                    continue  # a list of its own says what it goes with
                # "Standing up" is no form of "stood up", set up at the start.
                for form in [spelling] if spelling.startswith("stood") else _forms(spelling):
                    if self.targets and form.startswith("hit"):
                        continue  # the target hit, or any pin?
                    self._know(form, "VERB", measure)
        for phrase in (scenario.past["down"], scenario.base["down"]):
            head, _, rest = phrase.partition(" ")
            if rest:  # "knocked the most pins down"
                for form in _forms(head):
                    self._know(form, "GOT", None)
        if scenario.past["standing"].startswith("left"):
            for spelling in LISTS["phrases"]["STANDING"]:
                if spelling.startswith("miss") and self.targets:
                    continue  # the target missed, or all of them?
                self._know(spelling, "VERB", "standing")
            for spelling in LISTS["phrases"]["FELLDOWN"]:
                self._know(spelling, "FELLDOWN", None)
        if scenario.base["set_up"] == "set up":
            for spelling in LISTS["phrases"]["SETUP"]:
                self._know(spelling, "VERB", "set_up")

    def _nouns(self, scenario: Scenario) -> None:
        for word in (scenario.item, scenario.items, *scenario.synonyms.get("item", ())):
            if not (word == "target" and self.targets):
                self._know(word, "ITEM", None)
                self._know(f"{word}s", "ITEM", None)
        rounds = any(row.round is not None for row in self.table.rows)
        for word in (scenario.trial, scenario.trials, *_TRIAL_WORDS, *(() if rounds else ("round", "rounds"))):
            self._know(word, "TRIALWORD", None)
        for word, name in {**_GROUP_WORDS, scenario.group: "group", f"{scenario.group}s": "groups"}.items():
            self._know(word, name, None)

    def _labels(self) -> None:
        table = self.table
        for group in table.groups:
            words = tuple(re.findall(r"\w+", folded(group)))
            if not words:
                continue  # a label of signs alone can not be typed as a word
            common = all((word,) in self.phrases for word in words) and not group.isdigit()
            if common and group.casefold() not in table.colors:
                self.exact[words] = (tuple(re.findall(r"\w+", group)), group)
                continue
            self._know(" ".join(words), "GROUP", group)
            if len(words) == 1 and group.endswith("s") and len(group) > 3:
                self._know(words[0][:-1], "GROUP", group)
            elif len(words) == 1 and group.isalpha() and len(group) > 2:
                self._know(f"{words[0]}s", "GROUP", group)
        initials: dict[str, list[str]] = {}
        for color in table.colors:
            initials.setdefault(folded(color)[0], []).append(color)
            for form in {color, f"{color}s", f"{color}es" if color.endswith("s") else color, color.removesuffix("s")}:
                self._know(form, "COLOR", color)
            if "gray" in color:
                self._know(color.replace("gray", "grey"), "COLOR", color)
        for letter, colors in initials.items():
            if len(colors) == 1:
                self._know(letter, "COLOR", colors[0])
        for trial in table.trials:
            self._know(str(trial), "LABEL", trial)
        self.initials = initials
