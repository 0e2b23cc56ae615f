"""What a told sentence means, before its gaps are filled: ratios, rates, points and scores."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.reading.meaning.scope import Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure


class SamePoints(NamedTuple):
    """ "Each red pin knocked down earned the same number of points"; of ``whole`` pins, where the words say so again."""

    measure: Measure | None
    np: Np
    whole: Number | None = None


class SameRacks(NamedTuple):
    """ "Each trial had the same number of red pins": set up, in so many trials where that is told."""

    np: Np
    number: Number | None = None


class OneSet(NamedTuple):
    """ "Each trial had one set": of those told of before."""


class Classes(NamedTuple):
    """ "Suppose 24 classes each set up the same number of red pins." """

    measure: Measure
    np: Np
    number: Number


class Term(NamedTuple):
    """A term of a rule or an equation: "5x", "x", or "10"."""

    number: Number | None  # None for a letter alone
    letter: str | None
    sign: int = 1


Terms = tuple[Term, ...]


class RuleIs(NamedTuple):
    """ "The rule 5d - 2m gives a score." """

    terms: Terms


class EquationIs(NamedTuple):
    """ "The equation is 5x + 10 = 45." """

    left: Terms
    right: Terms


class LetterIs(NamedTuple):
    """ "Let d be the number of pins knocked down." Without a measure, that of the letter before."""

    letter: str
    measure: Measure | None
    np: Np


class PointsEach(NamedTuple):
    """ "Each red pin knocked down earns 5 points", "... left standing loses 2 points". Of a group, where one is told."""

    measure: Measure
    np: Np
    number: Number
    sign: int = 1


class BonusPoints(NamedTuple):
    """ "One bonus of 10 points is added at the end", "... and then got one bonus of 10 points". """

    number: Number


class ScoreIs(NamedTuple):
    """ "The Owls earned 45 points in Trial 1", "45 points in all"."""

    np: Np
    number: Number


class StartingScores(NamedTuple):
    """ "Each of these pins earned a point": the counts told are the scores so far."""

    np: Np
    at_rates: bool = False  # "each pin knocked down earns 5 points for ...": the pins so far earned as much as those to come


class OneLine(NamedTuple):
    """ "A score is a start value plus the same number of points for each pin knocked down." """

    measure: Measure
    np: Np


class GoalScore(NamedTuple):
    """ "The goal is a total score of more than 50." """

    np: Np
    number: Number
    passes: bool  # more than; else at least


class SameRatio(NamedTuple):
    """ "Make a ratio table of red pins to gold pins": two colors whose counts grow together."""

    first: tuple[Label, ...]
    second: tuple[Label, ...]
    measure: Measure | None


class Proportional(NamedTuple):
    """ "A score is proportional to the number of pins knocked down." """

    measure: Measure
    np: Np
    each: bool = False  # "for each group": each at its own rate


class Grid(NamedTuple):
    """ "Each point on a grid shows a number of pins knocked down and a score." """

    measure: Measure
    np: Np


class Growing(NamedTuple):
    """ "The equation p = 5d gives the points p for d pins knocked down." """

    measure: Measure
    np: Np
    number: Number
    letter: str  # of the points


class ScoreGrew(NamedTuple):
    """ "From Trial 1 to Trial 2, the score of the Owls grew by 20", "between these numbers, the line rises by 20"."""

    number: Number
    trials: tuple[tuple[Label, ...], tuple[Label, ...]] | None = None
    np: Np = Np()
