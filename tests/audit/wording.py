"""The wording rules held against one text, and what a text names: groups, trials, colors, numbers."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import NamedTuple

from tests.audit.printed import NUMBER
from tests.audit.published import CAPS, NEVER
from tests.audit.results import Label, Results, Words

_WORD = re.compile(r"\$?\d[\d,]*(?:\.\d+)?(?:/\d+)?(?:%|[a-z](?![a-z]))?|[^\W\d_]+(?:['’][^\W\d_]+)*", re.UNICODE)
_SENTENCE_END = re.compile(r"(?<=[.?!])\s+(?!Round to the |Tell why)(?=[\"“]?[A-Z\d])")
_PRONOUNS = re.compile(r"\b(it|they|them|their|theirs|he|she|him|her|his|hers)\b", re.IGNORECASE)
_WHOLE_WANTED = re.compile(
    r"\b(what|which|greater|smaller) (fraction|percent|part|ratio|decimal)|what part|as a (decimal|percent|fraction)", re.IGNORECASE
)


class Named(NamedTuple):
    """What a text names, in the order of its words."""

    groups: tuple[str, ...]
    trials: tuple[Label, ...]
    colors: tuple[str, ...]


class Occurrence(NamedTuple):
    """A number in a text that is no label."""

    text: str
    sentence: str  # the sentence, names and trials still in it
    after: str  # what follows the number in the masked sentence


def sentences(text: str) -> list[str]:
    """Split at . ? ! before a capital or a digit; how to round, or to tell why, stays with the question that it follows."""
    return _SENTENCE_END.split(text.strip())


def lengths(text: str) -> list[int]:
    """The words of each sentence, the question's last."""
    *facts, question = sentences(text)
    asked, mark, rounding = question.partition("? ")
    return list(map(word_count, [*facts, *([rounding] if mark else []), asked]))


def word_count(text: str) -> int:
    """Runs of letters, or one numeral with its %, point or slash, or with its letter (5x)."""
    return len(_WORD.findall(text))


class Texts:
    """Reads texts about one table in one activity's words."""

    def __init__(self, results: Results, words: Words) -> None:
        self.results, self.words = results, words
        named = sorted(results.groups, key=len, reverse=True)
        self._groups = {label: self._group_pattern(label) for label in named}
        one, many = re.escape(words.trial.capitalize()), re.escape(words.trials.capitalize())
        # "Trials 1, 2, and 3" is a list; "Trial 1 and 4 red pins" and "Trials 1 and 2, 24 pins" hold counts of pins.
        self._trial_list = re.compile(rf"\b(?:{one} (?P<one>\d+)|{many} (?P<many>\d+(?:(?:, \d+)+,? and \d+| and \d+)?))(?![\d/%]|\.\d)")
        self._trial_labels = {label: self._trial_pattern(label) for label in results.trials if isinstance(label, str)}

    def called_trial(self, label: Label) -> str:
        """A trial as it is printed by itself: "Trial 2" for 2, "Trial A" for A, "Round 1" for Round 1."""
        return f"{self.words.trial.capitalize()} {label}" if isinstance(label, int) or len(label) <= 2 else label

    def _trial_pattern(self, label: str) -> re.Pattern[str]:
        """A short label stands after its noun only: the "A" of "Trial A" is no article."""
        return re.compile(rf"(?<!\w){re.escape(self.called_trial(label))}(?!\w)")

    def called(self, label: str) -> str:
        """A group as it is printed by itself: "Group 7" for 7, Owls for Owls."""
        return f"{self.words.group} {label}" if label.isdigit() or len(label) == 1 else label

    def _group_pattern(self, label: str) -> re.Pattern[str]:
        text = re.escape(label)
        if self.called(label) != label:
            return re.compile(rf"\b{re.escape(self.words.group)} {text}(?!\w)")
        # A name that has its own article keeps it: "The Most" starts some sentences and ends others.
        return re.compile(rf"(?<!\w){text}(?!\w)")

    def masked(self, text: str) -> str:
        """The text with the names of groups and trials put out of sight."""
        for pattern in self._groups.values():
            text = pattern.sub("NAME", text)
        text = self._trial_list.sub("TRIAL", text)
        for pattern in self._trial_labels.values():
            text = pattern.sub("TRIAL", text)
        return text

    def spelled_out(self, text: str) -> str:
        """The text with "before Trial 3" as "before Trials 1 and 2", and a total "after Trial 3" as one of Trials 1, 2 and 3."""
        trials = self.results.trials
        for place, label in enumerate(trials):
            name = re.escape(self.called_trial(label))
            before, through = self._listed(trials[:place]), self._listed(trials[: place + 1])
            text = re.sub(rf"\b([Bb]efore) {name}(?![\w/])", rf"\1 {before}", text)
            text = re.sub(rf"\b([Aa]fter) {name}, the total\b", rf"\1 {through}, the total", text)
            text = re.sub(rf"\b{name} made the total\b", f"{through} made the total", text)
        return text

    def _listed(self, trials: tuple[Label, ...]) -> str:
        if len(trials) > 1 and all(isinstance(label, int) for label in trials):
            start = ", ".join(map(str, trials[:-1]))
            return f"{self.words.trials.capitalize()} {start}{',' if len(trials) > 2 else ''} and {trials[-1]}"
        return " and ".join(self.called_trial(label) for label in trials)

    def named(self, text: str) -> Named:
        """Groups, trials and colors that a text names."""
        text = self.spelled_out(text)
        groups, rest = [], text
        for label, pattern in self._groups.items():  # longest first, so that "Owls" is not found in "Night Owls"
            if pattern.search(rest):
                groups.append(label)
                rest = pattern.sub("NAME", rest)
        trials: list[Label] = [int(number) for found in self._trial_list.finditer(rest) for number in re.findall(r"\d+", found[0])]
        trials += [label for label, pattern in self._trial_labels.items() if pattern.search(rest)]
        where = {label: (match.start() if (match := self._groups[label].search(text)) else 0) for label in groups}
        colors = [color for color in self.results.colors if re.search(rf"(?<!\w){re.escape(color)}(?!\w)", rest, re.IGNORECASE)]
        return Named(
            tuple(sorted(groups, key=lambda label: where[label])),
            tuple(dict.fromkeys(trial for trial in trials if trial in self.results.trials)),
            tuple(colors),
        )

    def numbers(self, text: str) -> Iterator[Occurrence]:
        """Each number of a text that is no label."""
        for sentence in sentences(text):
            masked = self.masked(sentence)
            for found in NUMBER.finditer(masked):
                yield Occurrence(found[0], sentence, masked[found.end() :])

    def is_count_of_trials(self, one: Occurrence) -> bool:
        """ "2 trials", "all 3 trials", "4 groups"."""
        noun = rf"({re.escape(self.words.trials)}|{re.escape(self.words.trial)}|{re.escape(self.words.group.lower())}s?)\b"
        return re.match(rf" (?:more )?{noun}", one.after) is not None


def faults(text: str, grade: int, texts: Texts) -> Iterator[str]:
    """Each wording rule that a text breaks."""
    words = texts.words
    parts, counted = sentences(text), lengths(text)
    cap_words, cap_sentences, cap_longest, cap_question = CAPS[grade]
    if sum(counted) > cap_words:
        yield f"{sum(counted)} words, at most {cap_words}"
    if len(counted) - text.endswith(" Tell why.") > cap_sentences:  # two words that ask for the reason are no further fact
        yield f"{len(counted)} sentences, at most {cap_sentences}"
    if max(counted) > cap_longest:
        yield f"a sentence of {max(counted)} words, at most {cap_longest}"
    if counted[-1] > cap_question:
        yield f"a question of {counted[-1]} words, at most {cap_question}"
    if not re.search(r"\?( (?:Round|Add, then round) to the nearest [a-z ]+\.| Tell why\.)?$", text):
        yield "does not end in a question mark"
    if text.count("?") != 1:
        yield f"{text.count('?')} question marks"
    if "  " in text or text != text.strip():
        yield "stray spaces"
    # The dots of a repeating decimal stand between its digits and a blank or a comma, a sign between two sides of an inequality.
    if re.search(r"[{}<>]|\bNone\b|\s[,.?]|\.\.|,,", re.sub(r"(?<=\d)\.\.\.(?=[ ,])|(?<=[n\d] )[<>](?= [n\d])", "", text)):
        yield "marks that no page should print"
    for part in parts:
        if not part[:1].isupper() and not any(part.startswith(label) for label in texts.results.groups):
            yield f'a sentence starts with "{part.split()[0]}"'
    masked = texts.masked(text)
    if found := _PRONOUNS.search(masked):
        yield f'the pronoun "{found[0]}"'
    if grade <= 3 and re.search(r"\bif\b", masked, re.IGNORECASE):
        yield "an if-clause"
    standing = dict(words.after)["standing"].removeprefix("left ")
    if not texts.results.prices and re.search(rf"\bleft\b(?! over\b| end of the box\b| {re.escape(standing)})", masked, re.IGNORECASE):
        yield 'a bare "left"'
    for never in NEVER:
        if re.search(rf"(?<!interquartile )\b{never}\b", masked, re.IGNORECASE):
            yield f'"{never}", which no standard of these grades has'
    yield from _agreement(masked, texts)
    if re.search(r"\bTRIAL, [-−$(]?\d", masked):
        yield "a number follows directly on the number of a trial"
    question = texts.masked(parts[-1])
    if texts.results.prices:  # the whole is a dollar, or a price that is named
        # The base of a percent change is the price compared with.
        base = r"\b(than (the|an?) \w|(above|below) the \w+ price|will the price |(in|de)crease in the price)"
        whole = r"of (a dollar|the dollar|the (higher )?price)"
        if re.search(r"percent|fraction", question) and not re.search(f"{whole}|{base}", question):
            yield "the question does not name its whole"
        return
    # The base of a percent change is the earlier count: it has no whole.
    no_whole = r"(in|de)crease|change|percent (more|fewer)|percent is"
    if (_WHOLE_WANTED.search(question) and "percent of" not in question.lower() and not re.search(no_whole, question)) or re.search(
        r"what percent of", question, re.IGNORECASE
    ):
        yield from _whole(question, text, texts)


def _whole(question: str, text: str, texts: Texts) -> Iterator[str]:
    items = rf"({re.escape(texts.words.items)}|{re.escape(texts.words.item)})"
    if re.search(r"\bsuccess", question) and re.search(rf"\bof (the \d+|its) {re.escape(texts.words.trials)}\b", question):
        return
    kinds = "|".join(map(re.escape, texts.results.colors))
    if not re.search(rf"\bof (?:all |the |its |these )*(?:\d+ )?(?:(?:{kinds}|and|or|,) ?)*,? ?{items}\b", question, re.IGNORECASE):
        # "Which pins had the greater fraction knocked down, red or blue?", "... , the red pins or the blue pins?": two wholes, both named.
        both = re.search(rf"\bwhich .*, (the )?({kinds})( {items})? or (the )?({kinds})( {items}( [a-z ]+)?)?\?", question, re.IGNORECASE)
        if not both:
            yield "the question does not name its whole"


def _agreement(masked: str, texts: Texts) -> Iterator[str]:
    one, many = re.escape(texts.words.item), re.escape(texts.words.items)
    kinds = rf"(?:(?:{'|'.join(map(re.escape, texts.results.colors))}|more|fewer) )*"
    for found in re.finditer(rf"(?<![\d/.,%])(\d+) {kinds}({one}|{many})\b", masked, re.IGNORECASE):
        listed = re.search(r"(?<![\d/.,%])\d+,? and $", masked[: found.start()])  # "1, 4, and 1 pins": the noun is of all the numbers
        noun = texts.words.item if found[1] == "1" and not listed else texts.words.items
        if found[2].lower() != noun.lower():
            yield f'"{found[0]}" does not agree in number'
    for found in re.finditer(rf"(?<![\d/.,%])(\d+) {kinds}(?:{one}|{many}) (was|were)\b", masked, re.IGNORECASE):
        # "2 of the 3 pins were", "1 of the 3 pins was": the number that counts stands before "of".
        before = re.search(r"(\d+)(/\d+)? of (?:the )?$", masked[: found.start()])
        single = found[1] == "1" or masked[: found.start()].endswith("the last of the ")  # "the last of the 12 pins was"
        if before is None and (found[2] == "was") != single and "part of" not in masked[: found.start()][-40:]:
            yield f'"{found[0]}" does not agree in number'
    for found in re.finditer(rf"(?<![\d/.,%])(\d+) ({re.escape(texts.words.trials)}|{re.escape(texts.words.trial)})\b", masked):
        if (found[1] == "1") != (found[2] == texts.words.trial):
            yield f'"{found[0]}" does not agree in number'
