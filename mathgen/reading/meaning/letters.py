"""What a told sentence means, before its gaps are filled: expressions, equations and inequalities with a letter."""

from __future__ import annotations

from typing import Any, Literal, NamedTuple

from mathgen.reading.meaning.scope import Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure


class ToChooseFrom(NamedTuple):
    """ "Look at (3 + 2) × 5, 3 + 2 × 5, and 3 × 5 + 2.": how each is built, and its numbers."""

    options: tuple[tuple[str, tuple[Number, ...]], ...]


class LetterEquation(NamedTuple):
    """ "n × 6 = 24": a factor beside the letter and the product; "n = 4 × 6": both factors and no product."""

    letter: str
    factor: Number
    product: Number | None
    other: Number | None = None


class LetterFor(NamedTuple):
    """ "Let n be the number of red pins the Owls knocked down": the question that the letter stands for."""

    letter: str
    asked: NamedTuple


class TheExpression(NamedTuple):
    """ "Use the expression (3 + 4) × 5." """

    symbol: Literal["+", "-"]
    numbers: tuple[Number, Number, Number]


class Written(NamedTuple):
    """An expression as it is written: a number, a letter, a term such as 5n, or two parts with a sign between them."""

    sign: str
    parts: tuple[Any, ...]


class NextLetter(NamedTuple):
    """ "Next time, the Owls would like to knock down n pins, more than in Trial 1." """

    letter: str
    measure: Measure
    np: Np


class ExpressionsAre(NamedTuple):
    """ "Here are the expressions 12 − n, n − 12, and n + 12." """

    options: tuple[Written, ...]


class Bracket(NamedTuple):
    """ "5(8 + n)" """

    points: Number
    known: Number
    letter: str


class LetterCount(NamedTuple):
    """ "In Trial 2, the Owls knocked down n pins." """

    letter: str
    measure: Measure
    np: Np


class SumTimes(NamedTuple):
    """ "5(8 + n) gives the points in all." """

    bracket: Bracket


class LossLimit(NamedTuple):
    """ "The loss must be at most 20 points after one more trial." """

    np: Np
    number: Number
    strict: bool  # less than; else at most
