"""A pupil's own question about a results table: answered, asked about, or declined, each time in words for a child."""

from __future__ import annotations

import re
from collections.abc import Sequence
from contextlib import suppress
from random import Random
from typing import Literal, NamedTuple

from sympy import Rational

from mathgen.asks.expression import Ratio, Value
from mathgen.exact.accepted import LONGEST_DECIMAL
from mathgen.exact.accepted import shown as shown_as
from mathgen.exact.demand import Demand
from mathgen.exact.forms import decimal, decimal_places, fraction, mixed, percent, ratio, simplest_ratio
from mathgen.exact.rounding import rounded
from mathgen.reading.chart import Clash
from mathgen.reading.evaluate import Cell, Counts, Missing
from mathgen.reading.pupils.asked_back import change_in_place, in_place, of_a_part, of_the_greatest_change, yes_or_no
from mathgen.reading.pupils.clauses import NoQuestion, understood
from mathgen.reading.pupils.combined import combined, together
from mathgen.reading.pupils.hearing import Hearing, Token, UnknownWord
from mathgen.reading.pupils.no_result import no_result, with_results
from mathgen.reading.pupils.plainly import Plainly
from mathgen.reading.pupils.plan import Plan, quantities_of, value_of
from mathgen.reading.pupils.plans import plan as plan_of
from mathgen.reading.pupils.say_plan import sentence_of, steps_of
from mathgen.reading.pupils.span import Span
from mathgen.reading.pupils.spans import Scan
from mathgen.reading.pupils.successes import Successes
from mathgen.reading.pupils.talk import False_, Talk, TwoMeanings
from mathgen.reading.read_problem import Reader
from mathgen.reading.say_back import in_words
from mathgen.reading.tokens import NotRead
from mathgen.scenario.naming import group_name, listed, trial_name
from mathgen.scenario.words import Scenario
from mathgen.trials.shadow import shadow
from mathgen.trials.table import TrialTable

Verdict = Literal["answer", "ask", "decline"]
_MOST_WAYS = 32
_LONGEST = 60  # words; a longer text is no one question
_FORETOLD = re.compile(r"\b(will|next|gonna|going to|predict|guess|tomorrow|in the future|would (?:they|you|we) get)\b", re.IGNORECASE)
_OPINION = re.compile(
    r"\b(fair|unfair|better|best|worst|worse|should|lucky|luck|easier|easiest|harder|hardest|favorite|favourite|fun|nice|good|bad|cool|think|feel|cheat\w*|deserve\w*)\b",
    re.IGNORECASE,
)
# "The Moles got better from trial 3 to trial 4: how many more ...": a change that the counts tell.
_GOT_BETTER = re.compile(r"\b(?:got|get|gets|did|do)\s+(?:(?:way|much|a lot|a bit|even)\s+)?(?:better|worse)\b", re.IGNORECASE)
_COUNTED = re.compile(r"\bhow\s+(?:many|much|menny|meny)\b", re.IGNORECASE)
_SAID = {"true": "Yes", "false": "No"}
_YES_OR_NO_SAID = frozenset(_SAID.values())
_THOUSANDS = re.compile(r"(?<![\d,.])\d{1,3}(?:,\d{3})+(?![\d,])")  # 1,250 as US texts print it
_ELSEWHERE = re.compile(
    r"\bwhy\b|\bhow (?:fast|tall|old|heavy|far|long|big|high|wide|loud|mean|hard|strong)\b|\bwhat (?:time|day|name)\b"
    r"|\bwhat is your\b|(?<!\btrial )(?<!\bgroup )\bwhere\b"
    r"|\bignore\b|\bwhat does\b|\bhow come\b|\bhow much (?:water|money|time)\b",
    re.IGNORECASE,
)


class Outcome(NamedTuple):
    """What came of a question. Without an answer, ``value``, ``display``, ``forms`` and ``steps`` are empty."""

    verdict: Verdict
    read_as: str = ""
    value: str = ""
    display: str = ""
    forms: tuple[str, ...] = ()
    steps: tuple[str, ...] = ()
    why: str = ""


class Listener:
    """Answers questions about one table; keep it to answer many."""

    def __init__(self, table: TrialTable, scenario: Scenario) -> None:
        self.table, self.scenario = table, scenario
        self._plainly = Plainly(table, scenario.past["standing"])
        self._hearing = Hearing(table, scenario)
        # Whole counts only: the total of a group that missed a trial is never set beside the others'.
        self._reader = Reader(table, scenario, whole=True)
        self._counts = Counts(table, whole=True)
        self._successes = Successes(self._counts, scenario)
        self._shadow = Counts(shadow(table, Random("two ways to understand")), whole=True)

    def outcome(self, question: str) -> Outcome:
        """What comes of a question."""
        text = " ".join(question.split())
        if not re.search(r"\w", text):
            return Outcome("ask", why="There is no question yet. What do you want to know about the table?")
        if len(text.split()) > _LONGEST:
            return Outcome("ask", why="That is very long for one question. Can you ask just one thing, in one sentence?")
        plain = self._plainly(_THOUSANDS.sub(lambda found: found[0].replace(",", ""), text))
        declined = self._declined(plain)
        if declined is not None:
            said_what = None if _FORETOLD.search(plain) else self._of_successes(text)  # "What does success mean?"
            return self._as_printed(text) or said_what or declined
        try:
            plan, mended = self._planned(plain)
        except False_ as err:  # a sheet's "10 more pins than the Owls" may have been taken for a count: read again as printed
            return self._as_printed(text) or Outcome("ask", why=_sentence(err.reason))
        except Missing as err:
            return self._without_result(text, err.cells)
        except NotRead as err:
            return self._as_printed(text) or self._of_successes(text) or Outcome("ask", why=self._asked_back(err, text))
        missing = [cell for quantity in quantities_of(plan.goal) for cell in self._counts.missing(quantity.scope)]
        if missing:
            return self._without_result(text, missing)
        try:
            found = self._answered(plan, mended)
        except NotRead as err:
            return Outcome("ask", why=_sentence(err.reason))
        other = self._as_printed(text)
        if other is not None and other.display in _YES_OR_NO_SAID:
            return other  # "Is the total even?": a number is no answer to that
        if other is not None and found.verdict == "answer" and not _alike(found, other):
            return Outcome("ask", why="I can understand this in two ways. Please say it in another way.")
        return found

    def _planned(self, text: str) -> tuple[Plan, tuple[tuple[str, str], ...]]:
        """What has to be worked out, and the words that were mended: as one question, or else in parts."""
        parted, parts = Plainly.parted(text), combined(text)
        try:
            return self._one(text)
        except (False_, Missing, TwoMeanings):
            raise
        except NotRead:
            if parted != text:
                with suppress(NotRead):
                    return self._one(parted)
            if parts is None:
                raise
        first, mended = self._one(parts.first)
        second, others = self._one(parts.second) if parts.second else (None, ())
        return together(parts, first, second, self._counts), (*mended, *others)

    def _of_successes(self, text: str) -> Outcome | None:
        """What comes of a question with a word for successes; None for any other."""
        if not self._successes.spoken_of(text):
            return None
        plan = self._successes.plan(text)
        if plan is None:
            return Outcome("ask", why=self._successes.help)
        found = self._answered(plan, ())
        return found._replace(read_as=f"{found.read_as} {self._successes.rule}")

    def _without_result(self, question: str, cells: Sequence[Cell]) -> Outcome:
        """What is told where a result was never taken: that, and the same question about those that were, where it can be answered."""
        why = no_result(list(dict.fromkeys(cells)), self.table, self.scenario)
        ways = [way for way in with_results(question, cells, self.table, self.scenario) if self._can_be_answered(way)]
        help_ = f"You can ask: {' Or: '.join(ways)}" if ways else "Ask only about groups and trials that have a result."
        return Outcome("ask", why=f"{why}. {help_}")

    def _can_be_answered(self, question: str, true: bool = True) -> bool:
        """Whether a question gets an answer; with ``true`` off, or is told only that what it takes for granted is not so."""
        try:
            plan, _ = self._planned(self._plainly(question))
        except NotRead as err:
            return isinstance(err, False_) and not true
        else:
            return not any(self._counts.missing(quantity.scope) for quantity in quantities_of(plan.goal))

    def _asked_back(self, why: NotRead, question: str) -> str:
        """What a pupil is told, with the question in the pupil's own words where words are quoted."""
        if of_the_greatest_change(question) and not isinstance(why, UnknownWord):
            instead = change_in_place(question, self.table, self.scenario)
            if self._can_be_answered(instead):
                return f"I can tell the change of one group at a time. You can ask: {instead}"
        if yes_or_no(question) and (isinstance(why, NoQuestion) or (of_a_part(question) and not isinstance(why, UnknownWord))):
            instead = in_place(question, self.table, self.scenario)
            such = f": {instead}" if self._can_be_answered(instead, False) else ", and see for yourself."
            return f"That is a yes or no question. Ask {'what fraction it is' if of_a_part(question) else 'how many'}{such}"
        if isinstance(why, _Tangled):
            return f'I know these words, but not how they go together: "{question.rstrip("?.! ")}". Can you ask it in another way?'
        return _sentence(why.reason)

    def _one(self, text: str) -> tuple[Plan, tuple[tuple[str, str], ...]]:
        line = self._hearing.line(text)
        return self._understood(line.sentences), line.mended

    def _as_printed(self, text: str) -> Outcome | None:
        """The answer, where the text is a problem in full as a worksheet prints it, with nothing left open."""
        try:
            reading = self._reader.read(text)
        except NotRead:
            return None
        read_as = in_words(reading, self.table, self.scenario)
        shown = reading.shown
        if isinstance(shown, str):
            said = _SAID.get(shown, shown) if reading.demand.form in ("truth", "rubric") else shown
            return Outcome("answer", read_as, shown.removeprefix(f"{self.scenario.trial.capitalize()} "), said)
        if isinstance(reading.goal, Ratio):
            text_of = simplest_ratio(int(shown.numerator), int(shown.denominator))
            return Outcome("answer", read_as, text_of, text_of)
        return Outcome("answer", read_as, fraction(shown), shown_as(reading.value, reading.demand))

    def _declined(self, text: str) -> Outcome | None:
        labels = " ".join((*self.table.groups, *self.table.colors)).casefold().split()
        for pattern, why in (
            (_FORETOLD, "The table tells what has happened. Nobody can know what one next trial will bring."),
            (_OPINION, "That is a matter of opinion, and a table of counts cannot settle it. Ask me what was counted."),
            (_ELSEWHERE, "The table does not tell that. It only tells how many were set up and how many of them were knocked down."),
        ):
            found = pattern.search(_GOT_BETTER.sub("", text) if _COUNTED.search(text) else text)
            if found is not None and found[0].casefold() not in labels:
                return Outcome(
                    "decline", why=why if self.scenario.base["down"] == "knock down" else why.replace("were knocked down", "were counted")
                )
        return None

    def _understood(self, sentences: Sequence[Sequence[Token]]) -> Plan:
        """The one plan that all ways of reading the sentences lead to."""
        if len(sentences) > 8:
            raise NotRead("That is more than one question can say. Can you ask one thing?")
        plans: list[Plan] = []
        refused: list[NotRead] = []
        for way in _ways(sentences):
            try:
                plans.extend(self._plans([Scan(tokens, self.table.trials).spans() for tokens in way]))
            except Missing:
                raise
            except Clash:
                refused.append(_Tangled("the words do not go together"))
            except NotRead as err:
                refused.append(err)
        if not plans:
            raise refused[0]
        for other in plans[1:]:
            if not self._same(plans[0], other):
                raise NotRead("I can understand this in two ways. Please say it in another way.")
        return plans[0]

    def _plans(self, sentences: list[list[Span]]) -> list[Plan]:
        said = understood(sentences)
        made = []
        for wish in said.wishes:
            talk = Talk(self._counts, self.scenario)
            for one in said.told:
                talk.tell(one)
            made.append(plan_of(talk, wish, said.form))
        return made

    def _same(self, one: Plan, other: Plan) -> bool:
        if one.demand.form != other.demand.form:
            return False
        return all(value_of(one.goal, counts) == value_of(other.goal, counts) for counts in (self._counts, self._shadow))

    def _shown(self, name: str, by: str) -> str:
        if by == "groups":
            return group_name(name, self.scenario)
        trials = [trial for trial in self.table.trials if str(trial) == name]
        return trial_name(trials[0], self.scenario) if by == "trials" else name

    def _answered(self, plan: Plan, corrections: tuple[tuple[str, str], ...]) -> Outcome:
        found = value_of(plan.goal, self._counts)
        read_as = sentence_of(plan, self.table, self.scenario)
        if corrections:
            read_as += f" (I took {listed([f'{typed} for {meant}' for typed, meant in corrections])}.)"
        if plan.missed:
            left = f"the {len(series)} " if (series := getattr(getattr(plan.goal, "expr", None), "series", ())) else ""
            told = no_result(plan.missed, self.table, self.scenario)
            read_as += f" ({told}. Only {left}{self.scenario.trials} with a result are counted.)"
        steps = tuple(steps_of(plan, self._counts, self.scenario))
        if isinstance(found, tuple):
            if not found:
                return Outcome("ask", read_as, why="There is none in the table.")
            shown = [self._shown(name, plan.by) for name in found]
            if plan.kind.startswith("most") and len(found) == len(getattr(plan.goal, "labels", ())):
                return Outcome("ask", read_as, why=f"They are all the same: {listed(shown)}.")
            return Outcome("answer", read_as, " and ".join(found), listed(shown), (), steps)
        if isinstance(plan.goal, Ratio):
            first, second = (value_of(Value(expr), self._counts) for expr in (plan.goal.first, plan.goal.second))
            return _ratio(first, second, read_as, steps)
        demand = plan.demand
        value = found
        if demand.places is not None:
            value = rounded(found, demand.places + (2 if demand.form == "percent" else 0))
        if demand.form == "mixed" and (found.denominator == 1 or found < 1):
            return Outcome("ask", read_as, why="This is less than 1 or a whole number, so it has no mixed number.")
        if demand.form == "whole" and found.denominator != 1:
            demand = Demand("any")
        display = shown_as(found, demand)
        return Outcome("answer", read_as, fraction(value), display, _forms(found, display, plan.kind), steps)


def _alike(one: Outcome, other: Outcome) -> bool:
    """Whether two answers are the same, names in any order."""
    return sorted(one.value.split(" and ")) == sorted(other.value.split(" and "))


def _ratio(first: Rational, second: Rational, read_as: str, steps: tuple[str, ...]) -> Outcome:
    a, b = int(first), int(second)
    text = simplest_ratio(a, b)
    others = tuple(dict.fromkeys(other for other in (ratio(a, b), text.replace(":", " to ")) if other != text))
    return Outcome("answer", read_as, text, text, others, steps)


def _forms(x: Rational, display: str, kind: str) -> tuple[str, ...]:
    if x.denominator == 1 and kind in ("count", "difference", "points", "half", "mean", "median", "range", "times"):
        return ()
    found = [fraction(x)]
    if x > 1:
        found.append(mixed(x))
    places = decimal_places(x)
    if places is not None and places <= LONGEST_DECIMAL:
        found.append(decimal(x))
    if kind in ("part", "percent change"):
        found.append(percent(x))
    return tuple(dict.fromkeys(form for form in found if form != display))


def _ways(sentences: Sequence[Sequence[Token]]) -> list[list[list[Token]]]:
    """The sentences, once for each way to take labels that can be two things, such as a group named "Red"."""
    ways: list[list[list[Token]]] = [[]]
    for sentence in sentences:
        rows: list[list[Token]] = [[]]
        for place, token in enumerate(sentence):
            rows = [[*row, one] for row in rows for one in _readings(token, sentence[place - 1] if place else None)]
            if len(rows) > _MOST_WAYS:
                raise NotRead("I can understand this in too many ways. Please say it in another way.")
        ways = [[*way, row] for way in ways for row in rows]
        if len(ways) > _MOST_WAYS:
            raise NotRead("I can understand this in too many ways. Please say it in another way.")
    return ways


def _readings(token: Token, before: Token | None) -> list[Token]:
    """A token that is a label of two sorts, as each of them alone."""
    sorts = [kind for kind in ("GROUP", "COLOR", "NUM") if kind in token.kinds]
    if "GROUP" not in sorts or len(sorts) < 2:
        return [token]
    if before is not None and {"TRIALWORD", "group"} & set(before.kinds):
        sorts = ["NUM"] if "TRIALWORD" in before.kinds and "NUM" in sorts else ["GROUP"]
    found = []
    for sort in sorts:
        kept = [place for place, kind in enumerate(token.kinds) if kind == sort or (kind == "LABEL" and sort == "NUM")]
        found.append(Token(token.text, tuple(token.kinds[place] for place in kept), tuple(token.values[place] for place in kept)))
    return found


class _Tangled(NotRead):
    """Known words that make no question together."""


def _sentence(reason: str) -> str:
    text = reason[:1].upper() + reason[1:]
    return text if text.endswith((".", "?", "!")) else f"{text}."


def ask_the_table(question: str, table: TrialTable, scenario: Scenario) -> Outcome:
    """What comes of a pupil's question about a table.

    Args:
        question: as the pupil typed it.
        table: the results.
        scenario: nouns and verbs of the activity.
    Returns:
        An answer only where the words have one meaning, every word of them is accounted for, and what they take for granted is so.
    """
    return Listener(table, scenario).outcome(question)
