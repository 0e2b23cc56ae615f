"""Problem, Answer, Given, Step and Slip: named tuples, for a bank builds thousands of them."""

from __future__ import annotations

from hashlib import blake2b
from typing import Literal, NamedTuple

from sympy import Rational

from mathgen.asks.expression import Ask, Expr
from mathgen.exact.demand import Demand
from mathgen.trials.scope import Label, Scope

Where = Literal["words", "table", "graph"]
Cell = tuple[str, Label, str]  # group, trial, color; of a price list: item, PRICE, unit
PRICE = "price"
Level = Literal["support", "on grade", "challenge"]


class Given(NamedTuple):
    """A number that a pupil needs: printed in the words, or to be read from the table or the graph."""

    number: str  # as printed, or as counted from the table: "3", "9/12", "75%"
    value: Rational
    expr: Expr  # what it is a number of
    quantity: str  # the same in words: "red pins knocked down"
    scope: Scope | None  # None for a number that only the words give
    where: Where


class Step(NamedTuple):
    """One line of working in ASCII, such as ``9/12 + 3/12 = 12/12``: a true equality."""

    text: str


class Slip(NamedTuple):
    """A likely mistake: the wrong answer that it leads to, and one line of feedback for the pupil."""

    id: str
    value: str
    line: str


class Reason(NamedTuple):
    """A number that the reason for a verdict has to name."""

    value: Rational
    shown: str  # "7/12"
    quantity: str  # what it is a number of: "red pins knocked down out of red pins set up"


class Answer(NamedTuple):
    """The key.

    ``exact`` is the unrounded number (of a ratio its value), the name, "true" or "false" (of a rubric the verdict), "7 r 1", or
    "1 * 12, 2 * 6, 3 * 4";
    ``shown`` is what a pupil should write.
    """

    kind: Literal["number", "name", "ratio", "truth", "quotient_remainder", "list", "rubric"]
    exact: Rational | str
    shown: str  # "3/12", "12", "62.5%", "Owls", "17:7"
    display: str  # with its unit: "9 pins"
    accepted: tuple[str, ...]  # other right ways to write it, ``shown`` first
    demand: Demand
    because: str = ""  # what shows a name or a repeating decimal to be right: "8/10 > 6/10", "2/3 = 0.666..."
    reasons: tuple[Reason, ...] = ()  # of a rubric: what a full reason names, each of it proved


class Problem(NamedTuple):
    """One ask in words, with all that paper and marking need."""

    grade: int
    curriculum: str
    standards: tuple[str, ...]
    skill: str
    strand: str
    model: str
    level: Level
    difficulty: int  # in quarter points
    ask: Ask
    frame: str  # which way of saying it
    facts: str  # sentences, "" where the table says it all
    question: str  # one sentence that ends in "?", and how to round where the answer is to be rounded
    cells: tuple[Cell, ...]  # table cells that a pupil must read
    answer: Answer
    steps: tuple[Step, ...]  # each a true equality; the last ends in the exact answer
    board: tuple[str, ...]  # the steps as a teacher writes them, up to the answer as it is written
    relation: str  # "lhs = rhs" in x
    givens: tuple[Given, ...]
    slips: tuple[Slip, ...]  # none of them equal to the answer
    must_not_show: tuple[Scope, ...]  # totals that would give the answer away if printed beside the problem
    proof: tuple[tuple[str, str], ...]  # route, verdict

    @property
    def id(self) -> str:
        """A hash of model, canonical ask, grade and curriculum: the same for the same problem, always.

        Two models may have one ask: the percent of 3 of 8 pins, and 0.375 of 8 pins as a percent.
        """
        return blake2b(f"{self.model}|{self.ask!r}|{self.grade}|{self.curriculum}".encode(), digest_size=8).hexdigest()

    @property
    def text(self) -> str:
        """The printed words."""
        return f"{self.facts} {self.question}".strip()

    @property
    def needs_table(self) -> bool:
        """Whether some given must be read from the table or the graph."""
        return any(given.where != "words" for given in self.givens)
