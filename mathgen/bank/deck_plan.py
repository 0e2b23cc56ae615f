"""What a teacher asks for in a deck of problem cards, and what was chosen for it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from mathgen.bank.plan import Graph, SheetPlan
from mathgen.problems.record import Problem


@dataclass(frozen=True, slots=True)
class DeckPlan:
    """A teacher's wishes for a deck. Several grades are mixed in one deck."""

    grades: tuple[int, ...]
    count: int = 24
    seed: int = 1
    curriculum: str = "ccss"
    level: str | None = None
    topics: tuple[str, ...] = ()
    standards: tuple[str, ...] = ()
    skills: tuple[str, ...] = ()
    not_yet: tuple[str, ...] = ()  # topics that were not taught so far

    def of_grade(self, grade: int) -> SheetPlan:
        """The same wishes for one of the grades."""
        return SheetPlan(
            grade,
            self.seed,
            self.curriculum,
            level=self.level,
            topics=self.topics,
            standards=self.standards,
            skills=self.skills,
            not_yet=self.not_yet,
        )


class Card(NamedTuple):
    """One card: a problem that can be solved alone, and the graph that it reads."""

    number: int
    problem: Problem
    graph: Graph | None


class CheckSet(NamedTuple):
    """Cards that follow one another, and the line by which pupils check their answers together."""

    first: int
    last: int
    line: str  # "Answers 1 to 4 add up to 27."


@dataclass(frozen=True, slots=True)
class ChosenDeck:
    """The cards in the order of their numbers; rows of cards that lie side by side on the answer grid; what was done otherwise."""

    plan: DeckPlan
    mark: str  # four signs that all cards of the deck bear
    cards: tuple[Card, ...]
    rows: tuple[int, ...]  # how many cards each row of the answer grid has
    sets: tuple[CheckSet, ...]
    changes: tuple[str, ...]

    @property
    def problems(self) -> tuple[Problem, ...]:
        """The problems, card by card."""
        return tuple(card.problem for card in self.cards)
