"""From a pupil's line of text to typed tokens: spelling, contractions, synonyms and the labels of the table."""

from __future__ import annotations

import re
import unicodedata
from itertools import pairwise
from typing import NamedTuple

from sympy import Integer, Rational

from mathgen.exact.number_words import read_cardinal
from mathgen.reading.chart import Kinds
from mathgen.reading.pupils.spelling import folded, mended
from mathgen.reading.pupils.vocabulary import LISTS, Vocabulary
from mathgen.reading.tokens import NotRead, Number
from mathgen.scenario.words import Scenario
from mathgen.trials.table import TrialTable

SPELLED_RIGHT = frozenset[str](LISTS["mend"]["words"])
_SLIPS: dict[str, str] = LISTS["slips"]
_CONTRACTIONS = {
    **{f"{verb}nt": f"{verb} not" for verb in ("did", "do", "does", "was", "were", "is", "are", "have", "had", "has")},
    **{f"{word}s": f"{word} is" for word in ("what", "who", "how", "where")},
    "im": "i am", "ill": "i will", "theyre": "they are", "cant": "can not", "wont": "will not", "couldnt": "could not",
    "wats": "what is", "howmany": "how many", "wots": "what is",
    "where": "that", "lets": "let us", "u": "you", "thats": "that is", "id": "i would", "n": "and", "nd": "and", "theres": "there is",
}  # fmt: skip
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


class Hearing:
    """Turns pupils' lines about one table into tokens."""

    def __init__(self, table: TrialTable, scenario: Scenario) -> None:
        """Args:
        table: its labels are known words.
        scenario: nouns and verbs of the activity.
        """
        self._table, self._known = table, Vocabulary(table, scenario)

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
            if lowered in _CONTRACTIONS and (lowered,) not in self._known.phrases:
                words.extend((mark, word) for word in _CONTRACTIONS[lowered].split())
            else:
                words.append((mark, lowered))
        known = [self._spelled(typed, word, corrections) for typed, word in words]
        return self._tokens([typed for typed, _ in words], known)

    def _spelled(self, typed: str, word: str, corrections: list[tuple[str, str]]) -> str:
        if word in self._known.words or not word.isalpha() or any(word in words for words in self._known.exact):
            return word
        if read_cardinal((word,)) is not None:
            return word
        better = _SLIPS.get(word) or mended(word, self._known.mendable, SPELLED_RIGHT)
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
        for label, (capitals, group) in self._known.exact.items():
            size = len(label)
            if tuple(words[place : place + size]) == label and tuple(typed[place : place + size]) == capitals:
                return size, Token(group, ("GROUP",), (group,))
        for size in range(min(self._known.longest, len(words) - place), 0, -1):
            phrase = tuple(words[place : place + size])
            kinds = self._known.phrases.get(phrase)
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
        trials = [trial for trial in self._table.trials if isinstance(trial, int) and number.value == trial]
        return {"NUM": number, **({"LABEL": trials[0]} if trials else {})}

    def _number(self, word: str, text: str) -> Number | None:
        if re.fullmatch(r"\d+(?:\.\d+)?", word):
            return Number(text, Rational(word))
        value = read_cardinal((word,))
        return None if value is None else Number(text, Integer(value))

    def _unknown(self, typed: str, word: str) -> UnknownWord:
        if len(word) == 1 and len(self._known.initials.get(word, ())) > 1:
            return UnknownWord(typed, f'"{typed}" can be {" or ".join(self._known.initials[word])}. Which color do you mean?')
        several = [color for color in self._table.colors if " " in color and word in color.split()]
        if several:
            return UnknownWord(typed, f"Which do you mean: {' or '.join(several)}?")
        if word in ("hit", "hits", "hitting") and self._known.targets:
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
                labels = ", ".join(str(trial) for trial in self._table.trials)
                raise NotRead(f"The table has no trial {after.text}. Its trials are {labels}.")
        return found
