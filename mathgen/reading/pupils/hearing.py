"""From a pupil's line of text to typed tokens: spelling, contractions, synonyms and the labels of the table."""

from __future__ import annotations

import re
import tomllib
import unicodedata
from importlib.resources import files
from itertools import pairwise
from typing import NamedTuple

from sympy import Integer, Rational

from mathgen.exact.number_words import read_cardinal
from mathgen.reading.chart import Kinds
from mathgen.reading.pupils.spelling import folded, mended
from mathgen.reading.tokens import NotRead, Number
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Measure
from mathgen.trials.table import TrialTable

_LISTS = tomllib.loads(files("mathgen.reading.pupils").joinpath("words.toml").read_text(encoding="utf-8"))
_EMPTY = tuple(_LISTS["empty"]["words"])
SPELLED_RIGHT = frozenset[str](_LISTS["mend"]["words"])
_SLIPS: dict[str, str] = _LISTS["slips"]
_CONTRACTIONS = {
    **{f"{verb}nt": f"{verb} not" for verb in ("did", "do", "does", "was", "were", "is", "are", "have", "had", "has")},
    **{f"{word}s": f"{word} is" for word in ("what", "who", "how", "where")},
    "im": "i am", "ill": "i will", "theyre": "they are", "cant": "can not", "wont": "will not", "couldnt": "could not",
    "wats": "what is", "howmany": "how many", "wots": "what is",
    "where": "that", "lets": "let us", "u": "you", "thats": "that is", "id": "i would", "n": "and", "nd": "and", "theres": "there is",
}  # fmt: skip
CUES = frozenset[str](_LISTS["cues"])
_SMALL = frozenset[str](_LISTS["small"]["words"])
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
_MARKS = re.compile(r"\d+(?:\.\d+)?|[^\W\d_]+|[.?!]+|\S")
_SPLIT = re.compile(r"(?<=[^\d])[.;](?=\s|$)|(?<=\d)[.;](?=\s|$)|[?!]+|\.{2,}|(?<=[\w)]):(?=\s)")


class Token(NamedTuple):
    """A word, a phrase or a number: each kind it can be, and its value as each of them."""

    text: str
    kinds: Kinds
    values: tuple[object, ...]


class Line(NamedTuple):
    """A pupil's text as sentences of tokens, with the words that were mended."""

    sentences: tuple[tuple[Token, ...], ...]
    mended: tuple[tuple[str, str], ...]


class UnknownWord(NotRead):
    """A word that neither the table nor the reader knows."""

    def __init__(self, word: str, reason: str) -> None:
        self.word = word
        super().__init__(reason)


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


class Hearing:
    """Turns pupils' lines about one table into tokens."""

    def __init__(self, table: TrialTable, scenario: Scenario) -> None:
        """Args:
        table: its labels are known words.
        scenario: nouns and verbs of the activity.
        """
        self.table = table
        self.targets = any(row.target is not None for row in table.rows)
        self._phrases: dict[tuple[str, ...], dict[str, object]] = {}
        for kind, spellings in (*_LISTS["cues"].items(), *_LISTS["phrases"].items()):
            if kind in ("STANDING", "SETUP", "FELLDOWN"):
                continue  # words of pins, not of every activity
            name, value = ("ORDER", int(kind[-1])) if kind.startswith("ORDER") else (kind, None)
            for spelling in spellings:
                self._know(spelling, name, value)
        for spelling in _LISTS["phrases"]["ALLTRIALS"]:
            self._know(f"in {spelling}", "ALLTRIALS", None)  # "in all" is no part of it
        for spelling in _EMPTY:
            self._know(spelling, "", None)
        for word in _SMALL:
            self._know(word, word, None)
        self._verbs(scenario)
        self._nouns(scenario)
        self.exact: dict[tuple[str, ...], tuple[tuple[str, ...], str]] = {}  # labels that only their capitals tell from common words
        self._labels()
        self._words = {word for phrase in self._phrases for word in phrase}
        # A slip is never taken for a word that carries no meaning: that would be dropping a word unseen.
        self._targets = sorted(self._words - {word for phrase in _EMPTY for word in phrase.split()} - (_SMALL - _MENDED_SMALL))
        self._longest = max(map(len, self._phrases))

    def _know(self, spelling: str, kind: str, value: object) -> None:
        words = tuple(folded(spelling).replace("-", " ").split())
        if words:
            self._phrases.setdefault(words, {}).setdefault(kind, value)

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
            for spelling in _LISTS["phrases"]["STANDING"]:
                if spelling.startswith("miss") and self.targets:
                    continue  # the target missed, or all of them?
                self._know(spelling, "VERB", "standing")
            for spelling in _LISTS["phrases"]["FELLDOWN"]:
                self._know(spelling, "FELLDOWN", None)
        if scenario.base["set_up"] == "set up":
            for spelling in _LISTS["phrases"]["SETUP"]:
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
            common = all((word,) in self._phrases for word in words) and not group.isdigit()
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

    def line(self, text: str) -> Line:
        """The tokens of a text.

        Raises:
            UnknownWord: a word that is not known and cannot be mended.
        """
        plain = unicodedata.normalize("NFC", text).replace("’", "'").replace("‘", "'").replace("`", "'")
        corrections: list[tuple[str, str]] = []
        sentences = []
        plain = re.sub(r"[()]|\s[-–—]+\s|—", " . ", plain)
        for part in _SPLIT.split(plain):
            tokens = self._sentence(part, corrections)
            if tokens:
                sentences.append(tuple(tokens))
        return Line(tuple(sentences), tuple(dict.fromkeys(corrections)))

    def _sentence(self, text: str, corrections: list[tuple[str, str]]) -> list[Token]:
        text = re.sub(r"(?<=[^\W\d_])n't\b", "nt", text, flags=re.IGNORECASE)
        text = re.sub(r"\b(what|who|how)'s\b", r"\1 is", text, flags=re.IGNORECASE)
        text = re.sub(r"'s\b|(?<=s)'(?=\s|$|,)", "", text, flags=re.IGNORECASE)
        text = re.sub(r"(?<=[^\W\d_])-(?=[^\W\d_])", " ", text)
        words: list[tuple[str, str]] = []  # as typed, in the spelling that is known
        marks = _MARKS.findall(text)
        priced = re.search(r"\b(?:points?|worth|pts?)\b", text, re.IGNORECASE) is not None
        for place, mark in enumerate(marks):
            before = marks[place - 1] if place else ""
            after_price = priced and mark == "," and (before.isdigit() or read_cardinal((folded(before),)) is not None)
            if after_price and "".join(marks[place + 1 : place + 2]).isalpha():
                words.append((mark, mark))  # "gold is worth 2, blue ...": not 2 blue ones
            if mark in (",", '"', "#", "'"):
                continue
            lowered = {"&": "and", "+": "and", "=": "is"}.get(mark, folded(mark))
            if lowered in _CONTRACTIONS and (lowered,) not in self._phrases:
                words.extend((mark, word) for word in _CONTRACTIONS[lowered].split())
            else:
                words.append((mark, lowered))
        known = [self._spelled(typed, word, corrections) for typed, word in words]
        return self._tokens([typed for typed, _ in words], known)

    def _spelled(self, typed: str, word: str, corrections: list[tuple[str, str]]) -> str:
        if word in self._words or not word.isalpha() or any(word in words for words in self.exact):
            return word
        if read_cardinal((word,)) is not None:
            return word
        better = _SLIPS.get(word) or mended(word, self._targets, SPELLED_RIGHT)
        if better is None:
            return word
        corrections.append((typed, better))
        return better

    def _tokens(self, typed: list[str], words: list[str]) -> list[Token]:
        found: list[Token] = []
        place = 0
        while place < len(words):
            size, token = self._longest_at(typed, words, place)
            place += size
            if token is not None:
                found.append(token)
        return self._settled(found)

    def _longest_at(self, typed: list[str], words: list[str], place: int) -> tuple[int, Token | None]:
        for label, (capitals, group) in self.exact.items():
            size = len(label)
            if tuple(words[place : place + size]) == label and tuple(typed[place : place + size]) == capitals:
                return size, Token(group, ("GROUP",), (group,))
        for size in range(min(self._longest, len(words) - place), 0, -1):
            phrase = tuple(words[place : place + size])
            kinds = self._phrases.get(phrase)
            if kinds is None:
                continue
            if "" in kinds:
                return size, None
            text = " ".join(typed[place : place + size])
            number = self._number(phrase[0], text) if size == 1 else None
            whole = {**kinds, **({} if number is None else self._kinds_of(number))}
            return size, Token(text, tuple(whole), tuple(whole.values()))
        number = self._number(words[place], typed[place])
        if number is not None:
            kinds = self._kinds_of(number)
            return 1, Token(typed[place], tuple(kinds), tuple(kinds.values()))
        if words[place] in (":", "/", ","):
            return 1, Token(words[place], (words[place],), (None,))
        raise self._unknown(typed[place], words[place])

    def _kinds_of(self, number: Number) -> dict[str, object]:
        trials = [trial for trial in self.table.trials if isinstance(trial, int) and number.value == trial]
        return {"NUM": number, **({"LABEL": trials[0]} if trials else {})}

    def _number(self, word: str, text: str) -> Number | None:
        if re.fullmatch(r"\d+(?:\.\d+)?", word):
            return Number(text, Rational(word))
        value = read_cardinal((word,))
        return None if value is None else Number(text, Integer(value))

    def _unknown(self, typed: str, word: str) -> UnknownWord:
        if len(word) == 1 and len(self.initials.get(word, ())) > 1:
            return UnknownWord(typed, f'"{typed}" can be {" or ".join(self.initials[word])}. Which color do you mean?')
        several = [color for color in self.table.colors if " " in color and word in color.split()]
        if several:
            return UnknownWord(typed, f"Which do you mean: {' or '.join(several)}?")
        if word in ("hit", "hits", "hitting") and self.targets:
            return UnknownWord(typed, 'In this table, "hit" can mean knocked down, or hit the target color. Which do you mean?')
        return UnknownWord(typed, f'I do not know what "{typed}" means in a question about this table. Can you say it another way?')

    def _settled(self, tokens: list[Token]) -> list[Token]:
        """ "r" and "u" as pupils write them: a color before a noun or verb, "are" after one."""
        found = []
        for place, token in enumerate(tokens):
            if token.text.casefold() == "r" and "COLOR" in token.kinds and place and {"ITEM", "COLOR"} & set(tokens[place - 1].kinds):
                token = Token("r", ("are",), (None,))
            elif token.text.casefold() == "a" and "LABEL" in token.kinds and place and "TRIALWORD" in tokens[place - 1].kinds:
                kept = token.kinds.index("LABEL")
                token = Token("a", ("LABEL",), (token.values[kept],))
            found.append(token)
        for before, after in pairwise(found):
            if "TRIALWORD" in before.kinds and "NUM" in after.kinds and "LABEL" not in after.kinds:
                labels = ", ".join(str(trial) for trial in self.table.trials)
                raise NotRead(f"The table has no trial {after.text}. Its trials are {labels}.")
        return found
