"""Text to typed tokens: labels and verb phrases longest first, numbers of every school form, words, signs."""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache
from typing import NamedTuple

from sympy import Rational

from mathgen.exact.number_words import read_cardinal
from mathgen.exact.parse import NotANumber, tidy, written
from mathgen.reading.chart import Kinds
from mathgen.reading.lexicon import EMPTY, PRONOUNS, TRIALS, Lexicon
from mathgen.trials.scope import Label


class NotRead(Exception):  # a verdict on the text
    """The text is not read; the message says why."""

    def __init__(self, reason: str) -> None:
        self.reason = reason
        super().__init__(reason)


class Number(NamedTuple):
    """A number as printed."""

    text: str
    value: Rational


class Sentence(NamedTuple):
    """One sentence's tokens: the kinds that each can be, and its value as each of them. ``end`` is the sign that closes it."""

    text: str
    kinds: tuple[Kinds, ...]
    values: tuple[tuple[object, ...], ...]
    end: str


_NUMBER = r"(?:\d{1,3}(?:,\d{3})+(?!\d)|\d+)"
_WRITTEN = rf"\$?(?:{_NUMBER}[ -]{_NUMBER}/{_NUMBER}|{_NUMBER}/{_NUMBER}|{_NUMBER}?\.\d+|{_NUMBER})(?:\.\.\.)?(?: ?%| percent(?!\w))?"
_UNITS = "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen zero"
_TENS = "twenty thirty forty fifty sixty seventy eighty ninety"
_CARDINAL = rf"(?:{'|'.join((*_UNITS.split(), *_TENS.split()))})"
_SAID = rf"{_CARDINAL}(?:[ -](?:{_CARDINAL}|hundred|thousand))*"
_PART = r"(?:hal(?:f|ves)|thirds?|fourths?|quarters?|fifths?|sixths?|sevenths?|eighths?|ninths?|tenths?|twelfths?|hundredths?)"
_WORD = re.compile(r"[^\W\d_]+(?:['’-][^\W\d_]+)*")
_LETTERS = re.compile(r"[^\W\d_]+")
_NEXT_WORD = re.compile(rf"\s*({_WORD.pattern})")
_SENTENCE_ENDS = re.compile(r" (?<=[.?!] )(?<!\.\.\. )")  # the dots of a repeating decimal end none
_TRIAL_WORDS = frozenset({"trial", "trials"})
_MOST_KEPT = 4096


def _first_letters(text: str) -> str:
    found = _LETTERS.match(text)
    return found[0] if found else ""


def _beginning(phrases: Iterable[str]) -> str:
    """A look ahead at one letter, which tells soonest that none of some phrases stands there."""
    return f"(?=[{re.escape(''.join(sorted({phrase[0] for phrase in phrases})))}])"


def _kinds_of_number(number: Number) -> str:
    form = written(number.text).form
    return "PERCENT" if form == "percent" else "WHOLE" if form == "whole" else "FRACTION"


@lru_cache(maxsize=4096)
def number_token(text: str) -> tuple[Kinds, tuple[object, ...]]:
    """The kinds and values of a number as printed, in figures or words.

    Raises:
        NotRead: the text divides by zero or is no number.
    """
    try:
        number = Number(text, written(text).value)
    except NotANumber as err:
        raise NotRead(str(err)) from err
    kind = _kinds_of_number(number)
    if text.casefold() in ("one", "two", "ten"):  # "one group", "two fractions", "the nearest ten"
        return (text.casefold(), "NUM", kind), (None, number, number)
    return ("NUM", kind), (number, number)


_PART_NAMES = re.compile(r"\b(?:numerator|denominator)(?=s?\b)", re.IGNORECASE)  # read as the plain words for them


class Tokenizer:
    """Cuts texts about one table into sentences of tokens."""

    def __init__(self, lexicon: Lexicon, words: frozenset[str]) -> None:
        """Args:
        lexicon: the words of the table and the scenario.
        words: the words that the grammar names.
        """
        self._phrases = lexicon.phrases
        self._labels = lexicon.trials
        self._kept: dict[str, Sentence] = {}
        self._words: dict[str, tuple[Kinds, tuple[object, ...]]] = {word: ((word,), (None,)) for word in words}
        for spelling, kinds in lexicon.phrases.items():
            more = ((spelling,), (None,)) if spelling in words and not any(kind == spelling for kind, _ in kinds) else ((), ())
            self._words[spelling] = (tuple(kind for kind, _ in kinds) + more[0], tuple(value for _, value in kinds) + more[1])
        label = "|".join(re.escape(one) for one in sorted(lexicon.trials, key=len, reverse=True))
        one, many = (re.escape(word) for word in lexicon.trial_words)
        last = r"(?![\w/%]|[.,]\d)"
        trials = (
            rf"(?:{many} (?:{label}){last}(?:, (?:{label}){last})*,? (?:and|through|to|or|vs\.?) (?:{label})"
            rf"|{one} (?:{label}){last} and {one} (?:{label})|{one} (?:{label})){last}"
        )
        multiword = sorted((spelling for spelling in lexicon.phrases if not _WORD.fullmatch(spelling)), key=len, reverse=True)
        # Words that nothing longer begins with: most of a text, so that they are looked for first.
        said = (*_UNITS.split(), *_TENS.split(), "half", "a half")
        longer = {_first_letters(phrase.casefold()) for phrase in (*multiword, *lexicon.trial_words, *said)}
        self._plain = {word: token for word, token in self._words.items() if _first_letters(word) not in longer}
        self._scan = re.compile(
            rf"\s*(?:(?P<trials>{_beginning(lexicon.trial_words)}{trials})"
            + (rf"|(?P<phrase>{_beginning(multiword)}(?:{'|'.join(map(re.escape, multiword))})(?!\w))" if multiword else "")
            + rf"|(?P<said>{_beginning(said)}(?:{_SAID}(?:[ -]{_PART})|one half|a half|half|{_SAID})(?!\w|-[^\W\d_]))"
            rf"|(?P<term>\d+(?:\.\d+)?[b-z])(?!\w)"
            rf"|(?P<signed>(?<![\w)])[-−]{_WRITTEN})(?![\w])"
            rf"|(?P<number>{_WRITTEN})(?![\w])"
            rf"|(?P<word>{_WORD.pattern})"
            r"|(?P<end>[.?!])|(?P<sign>\S))",
            re.IGNORECASE,
        )
        self._label = re.compile(rf"(?<!\w)(?:{label}){last}", re.IGNORECASE)  # the "d" of "and" is no trial D
        self._order = list(lexicon.trials.values())

    def sentences(self, text: str) -> list[Sentence]:
        """The text's sentences.

        Raises:
            NotRead: a word that neither the table, the scenario nor the grammar knows.
        """
        found = []
        for written_out in _SENTENCE_ENDS.split(" ".join(text.split())):
            sentence = self._kept.get(written_out)
            if sentence is None:
                if len(self._kept) >= _MOST_KEPT:
                    self._kept.clear()
                sentence = self._kept[written_out] = self._sentence(written_out)
            if sentence.kinds:
                found.append(sentence)
        return found

    def _sentence(self, text: str) -> Sentence:
        kinds: list[Kinds] = []
        values: list[tuple[object, ...]] = []
        place, end, written_out = 0, "", text
        text = _PART_NAMES.sub(lambda match: f"{'top' if match[0][0] in 'nN' else 'bottom'} number", text)
        while place < len(text):
            word = _NEXT_WORD.match(text, place)
            plain = None if word is None else self._plain.get(word[1].casefold())
            if word is not None and plain is not None:
                place = word.end()
                kinds.append(plain[0])
                values.append(plain[1])
                continue
            match = self._scan.match(text, place)
            assert match is not None  # every sign is a token
            place = match.end()
            if match.lastgroup == "end" and place == len(text):
                end = match["end"]
                break
            token = self._token(match, str(match.lastgroup))
            if token is None and not kinds and text.startswith(",", place):
                place += 1  # "Also, ...": the comma goes with the word
            if token is not None:
                kinds.append(token[0])
                values.append(token[1])
        for place, after in enumerate(kinds):
            if "NUM" in after and place and not _TRIAL_WORDS.isdisjoint(kinds[place - 1]):
                number = values[place][after.index("NUM")]
                assert isinstance(number, Number)
                raise NotRead(f"the table has no trial {number.text}")
        return Sentence(written_out, tuple(kinds), tuple(values), end)

    def _token(self, match: re.Match[str], group: str) -> tuple[Kinds, tuple[object, ...]] | None:
        text = match[group]
        if group in ("word", "phrase"):
            lowered = text.casefold()
            known = self._words.get(lowered)
            if known is not None:
                return known
            if len(text) == 1 and text == lowered:
                return ("LETTER",), (text,)  # of a rule or an equation: "x"
            if lowered in EMPTY:
                return None
            if lowered in PRONOUNS:
                raise NotRead(f'it is not said what "{text}" stands for')
            raise NotRead(f'"{text}" is no word that is known here')
        if group == "trials":
            return (TRIALS,), (self._trials(text),)
        if group == "term":  # "5x"
            return ("TERM",), ((number_token(text[:-1])[1][0], text[-1]),)
        if group == "number" and text.startswith("$"):  # only where a rule looks for money: nobody knocks down $3
            return ("MONEY",), (Number(text[1:], number_token(tidy(text))[1][0].value),)  # type: ignore[attr-defined]
        if group == "number":
            return number_token(tidy(text))
        if group == "signed":  # only where a rule looks for a number below 0: nobody knocks down -3 pins
            return ("SIGNED",), (number_token(tidy(text))[1][0],)
        if group == "said":
            words = tuple(text.casefold().replace("-", " ").split())
            if len(words) > 1 and read_cardinal(words) is None and not re.search(_PART, text, re.IGNORECASE):
                raise NotRead(f'"{text}" is not one number')
            return number_token(text.casefold())
        known = self._words.get(text)
        if known is None:
            raise NotRead(f'the sign "{text}" has no meaning here')
        return known

    def _trials(self, text: str) -> tuple[Label, ...]:
        rest = text.partition(" ")[2]
        labels = [self._labels[found.casefold()] for found in self._label.findall(rest)]
        if re.search(r" (?:through|to) ", rest) and len(labels) == 2:
            first, last = (self._order.index(label) for label in labels)
            labels = self._order[first : last + 1]
        if len(set(labels)) < len(labels) or not labels:
            raise NotRead(f'"{text}" names a trial twice')
        return tuple(labels)
