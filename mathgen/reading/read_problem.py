"""Printed words and a results table, worked out as a pupil would who sees nothing else."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache
from itertools import product
from random import Random
from typing import NamedTuple

from sympy import Rational

from mathgen.asks.expression import Expr, Goal, Measured, Price, Quantity, parts_to_share
from mathgen.exact.demand import Demand
from mathgen.exact.rounding import rounded
from mathgen.reading.asked import Asked, whole_number
from mathgen.reading.claims import take_in
from mathgen.reading.evaluate import Cell, Counts, answer, evaluate, leaves
from mathgen.reading.goals import asked
from mathgen.reading.grammar import GRAMMAR, parse
from mathgen.reading.lexicon import lexicon
from mathgen.reading.meaning.counts import Look, Rounding
from mathgen.reading.meaning.judged import Explain
from mathgen.reading.mentions import DIMENSIONS, Mentions
from mathgen.reading.tokens import NotRead, Sentence, Tokenizer
from mathgen.reading.told import Fact, Told
from mathgen.reading.wanted import Meaning
from mathgen.scenario.words import Scenario
from mathgen.trials.table import TrialTable

_MOST_READINGS = 16
_MOST_KEPT = 4096  # sentences


class Reading(NamedTuple):
    """How a problem was understood.

    ``facts`` are the numbers that the words give, each once, with what they are the number of: numbers of table quantities are
    true of the table; of numbers that only the words give the expression is ``Stated``.
    """

    goal: Goal
    demand: Demand
    facts: tuple[Fact, ...]
    value: Rational | str  # exact, not rounded; a label for "which"
    asked: Asked
    looks: tuple[Look, ...]  # where the words say to look: table or graph, and for what
    assumed: tuple[str, ...] = ()  # "all trials": gaps that nothing in the text fills, read as all there are; none where not allowed

    @property
    def shown(self) -> Rational | str:
        """The value, rounded where the words ask for it."""
        places = self.demand.places
        if places is None or isinstance(self.value, str):
            return self.value
        return rounded(self.value, places + (2 if self.demand.form == "percent" else 0))

    def value_on(self, counts: Counts) -> Rational | str:
        """The answer to the same question on another table's counts, by the same labels; numbers that only the words give stay.

        Raises:
            NotRead: the question has no answer there.
        """
        return answer(self.goal, counts)

    def sides_on(self, counts: Counts) -> tuple[Rational, ...]:
        """What each part of the question comes to on a table's counts that a like question must share.

        Raises:
            NotRead: as ``value_on``.
        """
        return tuple([evaluate(expr, counts) for expr in parts_to_share(self.goal)[1]])


class Reader:
    """Reads problems about one table; keep it to read many."""

    def __init__(self, table: TrialTable, scenario: Scenario, whole: bool = False) -> None:
        """Args:
        table: the results.
        scenario: nouns and verbs of the activity.
        whole: whether a count over results of which one was never taken is refused.
        """
        self.table, self.scenario = table, scenario
        self._tokens = Tokenizer(lexicon(table, scenario), GRAMMAR.words)
        self.counts = Counts(table, whole)
        self._shadow: Counts | None = None
        self._meant: dict[str, list[Meaning]] = {}

    def read(self, text: str, assume: bool = False) -> Reading:
        """The one way to understand a problem.

        Args:
            text: sentences, the question last, and after it only how to round, or that a reason is to be told.
            assume: whether a gap that nothing in the text fills may be read as all groups or all trials; what was assumed is said.
        Raises:
            NotRead: there is none, or more than one; the message says why.
        """
        ways = [self._meanings(sentence) for sentence in self._tokens.sentences(text)]
        if not ways:
            raise NotRead("there are no words")
        found: list[Reading] = []
        refused: NotRead | None = None
        for number, meanings in enumerate(product(*ways)):
            if number == _MOST_READINGS:
                raise NotRead("there are too many ways to understand this")
            try:
                found.extend(self._understood(meanings, assume))
            except NotRead as err:
                refused = refused or err
        if not found:
            assert refused is not None  # each way was read or refused
            raise refused
        for other in found[1:]:
            if not self._same(found[0], other):
                raise NotRead("this can be understood in two ways")
        return found[0]

    def _meanings(self, sentence: Sentence) -> list[Meaning]:
        """What one sentence can mean; many problems have sentences in common."""
        known = self._meant.get(sentence.text)
        if known is None:
            if len(self._meant) >= _MOST_KEPT:
                self._meant.clear()
            known = self._meant[sentence.text] = parse(sentence)
        return known

    def _same(self, one: Reading, other: Reading) -> bool:
        if one.goal == other.goal and one.demand == other.demand:
            return True
        if one.demand != other.demand or one.value != other.value:
            return False
        if self._shadow is None:
            from mathgen.trials.shadow import shadow

            self._shadow = Counts(shadow(self.table, Random("two ways to understand")))
        return answer(one.goal, self._shadow) == answer(other.goal, self._shadow)

    def _understood(self, meanings: tuple[Meaning, ...], assume: bool) -> list[Reading]:
        claims = [meaning.claims for meaning in meanings if meaning.question is None]
        if any(one in claims[number + 1 :] for number, one in enumerate(claims)):
            raise NotRead("the same is said twice")
        questions = [meaning for meaning in meanings if meaning.question is not None]
        if len(questions) != 1:
            raise NotRead("there is no question" if not questions else "there are two questions")
        after = meanings[meanings.index(questions[0]) + 1 :]
        # How to round, or that a reason is to be told, is said after the question.
        if not all(meaning.claims and all(isinstance(claim, Rounding | Explain) for claim in meaning.claims) for meaning in after):
            raise NotRead("the question does not come last")
        told = Told(self.counts, Mentions(self.table))
        take_in((meaning.claims for meaning in meanings), told)
        question = questions[0].question
        assert question is not None  # chosen so above
        return [self._checked(one, told, questions[0].demand, assume) for one in asked(question, told, self.scenario)]

    def _checked(self, one: Asked, told: Told, form: Demand | None, assume: bool) -> Reading:
        told.flush_counted()
        if told.mentions.assumed and not assume:
            raise NotRead(f"it is not said that {told.mentions.assumed[0]} are meant")
        for name, what in told.open.items():
            if name not in one.uses:
                raise NotRead(f"{what} plays no part in the question")
        self._check_places(one, told)
        value = answer(one.goal, self.counts)
        if one.direct is not None and value != evaluate(one.direct, self.counts):
            raise NotRead("what is told and the table say different things")
        demand = self._demand(one, told.rounding, form)
        if demand.form == "whole" and not whole_number(value):
            raise NotRead("the answer is no whole number")
        return Reading(one.goal, demand, tuple(told.facts), value, one, tuple(told.seen), tuple(dict.fromkeys(told.mentions.assumed)))

    def _demand(self, one: Asked, rounding: Demand | None, form: Demand | None) -> Demand:
        demand = one.demand
        if form is not None:
            fixed = ("name", "expression", "truth", "quotient_remainder", "list", "rubric")
            if demand.form in fixed or (demand.form == "whole" and form.form != "whole"):
                raise NotRead("the answer cannot have that form")
            demand = form
        if rounding is not None:
            if demand.form != rounding.form or demand.places is not None:
                raise NotRead("the answer is not to be rounded so")
            demand = rounding
        return demand

    def _check_places(self, one: Asked, told: Told) -> None:
        """Everything told must be about what is asked: the same groups, trials and colors, no more and no fewer."""
        needed = [leaf for expr in one.goal.exprs for leaf in leaves(expr)]
        told_of = [leaves(fact.expr) for fact in told.facts]
        for fact, found in zip(told.facts, told_of, strict=True):
            for leaf in found:
                kind = type(leaf)
                if (kind is Price or (kind is Measured and fact not in told.coordinates)) and leaf not in needed:
                    raise NotRead(f"{fact.text} plays no part in the question")
        asked_of = [*needed, *one.subjects]
        scopes = {leaf.scope for leaf in asked_of if type(leaf) is Quantity}
        if any(type(leaf) is Quantity and leaf.scope not in scopes for found in told_of for leaf in found):
            self._check_uses(told, told_of, self._cells(needed), self._cells(asked_of))
        measures = {quantity.measure for quantity in one.subjects}
        if any(look.measure == "standing" for look in told.seen) and "standing" not in measures:
            raise NotRead("what is to be counted is not what is asked")
        if not told.looks:
            return
        cells = self._cells(asked_of)
        worked_with = self._cells(needed) | self._cells([Quantity("set_up", leaf.scope) for leaf in needed if type(leaf) is Measured])
        for part, labels in told.looks:
            place = DIMENSIONS.index(part)
            # "Look at the bar graph for the Owls. The Wrens knocked down 2 fewer": only the Owls are looked at.
            if set(labels) not in [{cell[place] for cell in some} for some in (cells, worked_with, self._cells(one.looked_at))]:
                raise NotRead(f"the question is about other {part} than those to look at")

    def _check_uses(self, told: Told, told_of: list[list[Expr]], worked_with: set[Cell], cells: set[Cell]) -> None:
        """Each fact must be of cells that are asked for, or stand in a list with those that are worked with."""
        useless = [
            number
            for number, found in enumerate(told_of)
            if not cells.issuperset(self._cells(found)) and told.facts[number] not in told.coordinates
        ]
        for number in useless:
            if not self._one_of_a_list(number, useless, told, worked_with):
                raise NotRead(f"{told.facts[number].text} plays no part in the question")

    def _one_of_a_list(self, number: int, useless: list[int], told: Told, needed: set[Cell]) -> bool:
        """Whether a count stands in a list of colors that has all that are needed: "3 red, 2 blue, and 5 gold pins"."""
        expr = told.facts[number].expr
        if not isinstance(expr, Quantity) or number >= len(told.sentence_of):
            return False
        together = [
            other for other, sentence in enumerate(told.sentence_of) if sentence == told.sentence_of[number] and other not in useless
        ]
        exprs = [told.facts[other].expr for other in together]
        alike = (expr.measure, *expr.scope[:2])
        beside = [other for other in exprs if isinstance(other, Quantity) and (other.measure, *other.scope[:2]) == alike]
        return bool(beside) and needed <= self._cells(beside)

    def _cells(self, found: Iterable[Expr]) -> set[Cell]:
        """The cells of the quantities among some leaves."""
        return set[Cell]().union(*[self.counts.covered(leaf.scope) for leaf in found if type(leaf) is Quantity])


class _ById:
    """A key for things that are costly to compare: the same object, not an equal one."""

    __slots__ = ("things",)

    def __init__(self, *things: object) -> None:
        self.things = things

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _ById) and all(one is two for one, two in zip(self.things, other.things, strict=True))

    def __hash__(self) -> int:
        return hash(tuple(map(id, self.things)))


@lru_cache(maxsize=4)
def _reader(key: _ById) -> Reader:
    table, scenario = key.things
    assert isinstance(table, TrialTable)
    assert isinstance(scenario, Scenario)
    return Reader(table, scenario)


def read_problem(text: str, table: TrialTable, scenario: Scenario) -> Reading:
    """How a printed problem is to be understood, and what it comes to.

    Args:
        text: the printed words, nothing else.
        table: the printed table.
        scenario: nouns and verbs of the activity.
    Raises:
        NotRead: a word is not known, no rules span a sentence, a number is false or has no use, something is not said, there is
            no question or more than one, or there are two ways to understand the text; the message says which.
    """
    return _reader(_ById(table, scenario)).read(text)
