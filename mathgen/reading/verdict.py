"""A pupil's own question about a results table: answered, asked about, or declined, each time in words for a child."""

from __future__ import annotations

import re
from functools import lru_cache
from random import Random
from typing import Literal, NamedTuple

from sympy import Rational

from mathgen.asks.expression import Ratio, Value
from mathgen.exact.accepted import LONGEST_DECIMAL
from mathgen.exact.accepted import shown as shown_as
from mathgen.exact.demand import Demand
from mathgen.exact.forms import decimal, decimal_places, fraction, mixed, percent, ratio, simplest_ratio
from mathgen.exact.rounding import rounded
from mathgen.reading.asking import Hearing, Token
from mathgen.reading.chart import Clash, Grammar, build
from mathgen.reading.evaluate import Counts
from mathgen.reading.plan import Plan, value_of
from mathgen.reading.pupil_questions import RULES, Wish
from mathgen.reading.read_problem import Reader
from mathgen.reading.say_back import in_words
from mathgen.reading.say_plan import sentence_of, steps_of
from mathgen.reading.talk import False_, Talk
from mathgen.reading.tokens import NotRead
from mathgen.reading.wishes import plan as plan_of
from mathgen.scenario.naming import group_name, listed, trial_name
from mathgen.scenario.words import Scenario
from mathgen.trials.shadow import shadow
from mathgen.trials.table import TrialTable

Verdict = Literal["answer", "ask", "decline"]
_LONGEST = 60  # words; a longer text is no one question
_FORETOLD = re.compile(r"\b(will|next|gonna|going to|predict|guess|tomorrow|in the future|would (?:they|you|we) get)\b", re.IGNORECASE)
_OPINION = re.compile(
    r"\b(fair|unfair|better|best|worst|worse|should|lucky|luck|easier|easiest|harder|hardest|favorite|favourite|fun|nice|good|bad|cool|think|feel|cheat\w*|deserve\w*)\b",
    re.IGNORECASE,
)
_ELSEWHERE = re.compile(
    r"\bwhy\b|\bhow (?:fast|tall|old|heavy|far|long|big|high|wide|loud|mean|hard|strong)\b|\bwhat (?:time|day|name)\b"
    r"|\bwhat is your\b|\bwhere\b"
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


@lru_cache(maxsize=1)
def _grammar() -> Grammar:
    return Grammar(RULES)


class Listener:
    """Answers questions about one table; keep it to answer many."""

    def __init__(self, table: TrialTable, scenario: Scenario) -> None:
        self.table, self.scenario = table, scenario
        self._hearing = Hearing(table, scenario, _grammar().words)
        self._reader = Reader(table, scenario)
        self._counts = Counts(table)
        self._shadow = Counts(shadow(table, Random("two ways to understand")))

    def outcome(self, question: str) -> Outcome:
        """What comes of a question."""
        text = " ".join(question.split())
        if not re.search(r"\w", text):
            return Outcome("ask", why="There is no question yet. What do you want to know about the table?")
        if len(text.split()) > _LONGEST:
            return Outcome("ask", why="That is very long for one question. Can you ask just one thing, in one sentence?")
        declined = self._declined(text)
        if declined is not None:
            return self._as_printed(text) or declined
        try:
            line = self._hearing.line(text)
            plan = self._understood([list(sentence) for sentence in line.sentences])
        except False_ as err:
            return Outcome("ask", why=_sentence(err.reason))
        except NotRead as err:
            return self._as_printed(text) or Outcome("ask", why=_sentence(err.reason))
        try:
            found = self._answered(plan, line.mended)
        except NotRead as err:
            return Outcome("ask", why=_sentence(err.reason))
        other = self._as_printed(text)
        if other is not None and found.verdict == "answer" and not _alike(found, other):
            return Outcome("ask", why="I can understand this in two ways. Please say it in another way.")
        return found

    def _as_printed(self, text: str) -> Outcome | None:
        """The answer, where the text is a problem in full as a worksheet prints it, with nothing left open."""
        try:
            reading = self._reader.read(text)
        except NotRead:
            return None
        read_as = in_words(reading, self.table, self.scenario)
        shown = reading.shown
        if isinstance(shown, str):
            return Outcome("answer", read_as, shown.removeprefix(f"{self.scenario.trial.capitalize()} "), shown)
        if isinstance(reading.goal, Ratio):
            text_of = simplest_ratio(int(shown.numerator), int(shown.denominator))
            return Outcome("answer", read_as, text_of, text_of)
        return Outcome("answer", read_as, fraction(shown), shown_as(reading.value, reading.demand))

    def _declined(self, text: str) -> Outcome | None:
        labels = " ".join((*self.table.groups, *self.table.colors)).casefold().split()
        for pattern, why in (
            (_FORETOLD, "The table tells what has happened. Nobody can know what one next trial will bring."),
            (_OPINION, "That is a matter of opinion, and a table of counts can not settle it. Ask me what was counted."),
            (_ELSEWHERE, "The table does not tell that. It only tells how many were set up and how many of them were knocked down."),
        ):
            found = pattern.search(text)
            if found is not None and found[0].casefold() not in labels:
                return Outcome(
                    "decline", why=why if self.scenario.base["down"] == "knock down" else why.replace("were knocked down", "were counted")
                )
        return None

    def _understood(self, sentences: list[list[Token]]) -> Plan:
        """The one plan that all ways of reading the sentences lead to."""
        if len(sentences) > 6:
            raise NotRead("That is more than one question can say. Can you ask one thing?")
        ways: list[tuple[list[Wish], list[tuple[Wish, Demand | None]], list[Demand]]] = []
        for sentence in sentences:
            kinds = tuple(token.kinds for token in sentence)
            values = [token.values for token in sentence]
            ways.append(
                (
                    _built("tell", kinds, values),  # type: ignore[arg-type]
                    _built("question", kinds, values),
                    _built("order", kinds, values),
                )
            )
        asked = [place for place, (tells, questions, orders) in enumerate(ways) if questions and not tells and not orders]
        if len(asked) > 1:
            raise NotRead("There are two questions. Please ask one at a time.")
        if not asked:
            asked = [place for place, (_, questions, _) in enumerate(ways) if questions]
        if len(asked) != 1 and any(not any(way) for way in ways):
            raise NotRead(_not_understood(sentences))
        if len(asked) != 1:
            raise NotRead("What do you want to know? Ask one question, such as: how many?")
        [place] = asked
        form: Demand | None = None
        for after in ways[place + 1 :]:
            orders = after[2]
            if not orders or form is not None:
                raise NotRead(
                    "I understand the question, but not what comes after it. Can you ask one thing?"
                    if not after[1]
                    else "There are two questions. Please ask one at a time."
                )
            form = orders[0]
        plans: list[Plan] = []
        refused: NotRead | None = None
        for told in _products([way[0] for way in ways[:place]]):
            for wish, own in ways[place][1]:
                if own is not None and form is not None:
                    raise NotRead("You ask for two forms. Which one do you want?")
                talk = Talk(self._counts, self.scenario)
                try:
                    for one in told:
                        talk.tell(one)
                    plans.append(plan_of(talk, wish, own or form))
                except (NotRead, Clash) as err:
                    # A false premise under one reading is no reason to take another reading for granted.
                    refused = refused or (err if isinstance(err, NotRead) else NotRead("Please say it another way."))
        if not plans:
            raise refused or NotRead(_not_understood(sentences))
        distinct = list({repr(plan): plan for plan in plans}.values())
        for other in distinct[1:]:
            if not self._same(distinct[0], other):
                raise NotRead("I can understand this in two ways. Please say it in another way.")
        return distinct[0]

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
        steps = tuple(steps_of(plan, self._counts, self.scenario))
        if isinstance(found, tuple):
            if not found:
                return Outcome("ask", read_as, why="There is none in the table.")
            if plan.kind.startswith("most") and len(found) == len(getattr(plan.goal, "labels", ())):
                return Outcome("ask", read_as, why=f"They are all the same: {listed(list(found))}.")
            shown = [self._shown(name, plan.by) for name in found]
            return Outcome("answer", read_as, " and ".join(found), " and ".join(shown), (), steps)
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
    if x.denominator == 1 and kind in ("count", "difference", "points", "half", "mean", "median", "times"):
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


def _built(name: str, kinds: tuple[tuple[str, ...], ...], values: list[tuple[object, ...]]) -> list[object]:
    found: dict[str, object] = {}
    for node in _grammar().parse(name, kinds):
        try:
            made = build(node, values)
        except Clash:
            continue
        found.setdefault(repr(made), made)
        if len(found) > 40:
            raise NotRead("I can understand this in too many ways. Please say it in another way.")
    return list(found.values())


def _products(lists: list[list[Wish]]) -> list[list[Wish]]:
    rows: list[list[Wish]] = [[]]
    for some in lists:
        rows = [[*row, one] for row in rows for one in some]
    return rows[:16]


def _not_understood(sentences: list[list[Token]]) -> str:
    heard = " ".join(token.text for sentence in sentences for token in sentence)
    return f'I know these words, but not how they go together: "{heard}". Can you ask it in another way?'


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
