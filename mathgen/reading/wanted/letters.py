"""What a question asks, before its gaps are filled: expressions, equations and inequalities with a letter."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.reading.meaning.letters import Bracket, LetterEquation, TheExpression
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.counts import HowMany
from mathgen.reading.wanted.rates import PointsOfOne
from mathgen.trials.scope import Measure


class AnyExpression(NamedTuple):
    """An expression of numbers, right or not: how it is built, and its numbers in order."""

    built: Literal["(a + b) × c", "a × (b + c)", "a + b × c", "a × b + c × d", "a × b + c"]
    numbers: tuple[Number, ...]


class RightExpression(NamedTuple):
    """ "Does (3 + 2) × 5 give the number of points the Owls earned?" """

    np: Np
    expression: AnyExpression


class HowManyPoints(NamedTuple):
    """ "How many points did the Owls earn for the red pins?" """

    np: Np
    whole: Number | None = None  # "the 7 red pins"
    measure: Measure | None = None  # "... knocked down", where the question says so again
    expression: TheExpression | None = None  # where the question itself says it
    by_expression: bool = False  # whether the expression told before is asked about


class WhatIsLetter(NamedTuple):
    """ "What is n, the number of red pins the Owls knocked down?"; None where a sentence before says what n is."""

    letter: str
    asked: HowMany | PointsOfOne | None
    equation: LetterEquation | None = None  # where the question itself says it


class WhichInequality(NamedTuple):
    """Which inequality tells a goal; its letter, where it is said."""

    letter: str | None = None


class WhichExpression(NamedTuple):
    """Which expression gives a rest, a total, or is the same as the points in all."""

    kind: str  # "rest", "total" or "same"
    measure: Measure | None = None
    colors: Labels = None
    letter: str | None = None
    bracket: Bracket | None = None


class MostAllowed(NamedTuple):
    """ "What is the greatest number of pins that may be left standing next time?" """

    measure: Measure
    np: Np


class WhichRecords(NamedTuple):
    """ "Which expression gives the points?": of those to choose from."""

    np: Np
