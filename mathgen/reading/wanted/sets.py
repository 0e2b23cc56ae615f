"""What a question asks, before its gaps are filled: pairs, rows, boxes, factors and multiples."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.asks.expression import Want
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.meaning.sets import Limit, Reduced
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure


class Paired(NamedTuple):
    """ "Can all of these red pins be put in pairs?", "Is the number of red pins knocked down an odd number?" """

    measure: Measure | None  # None where "these" says it
    np: Np
    even: bool


class Partners(NamedTuple):
    """ "Does every pin have a partner?": of those that were put in pairs."""

    all_have: bool


class Shared(NamedTuple):
    """ "Can all of these red pins be put in equal rows of 4?", "Is the number of red pins knocked down a multiple of 4?" """

    measure: Measure | None  # None where "these" says it
    np: Np
    number: Number


class AllFull(NamedTuple):
    """ "Is every box full?": of those that something was put in."""

    box: str


class IsSplit(NamedTuple):
    """ "Is 5/8 = 1/8 + 2/8 + 2/8 true?": the numbers as printed."""

    part: Number
    claimed: tuple[Number, ...]


class FactorPairs(NamedTuple):
    """ "What are all factor pairs of the number of red pins knocked down?" """

    measure: Measure | None
    np: Np


class Splits(NamedTuple):
    """ "Which pairs of fractions with the bottom number 8 have the sum 5/8?" """

    part: Number
    bottom: Number


class AllPairs(NamedTuple):
    """ "Which factor pairs show all the ways?", "What are all the ways?": of what was to be written in every way."""

    symbol: Literal["*"] | None = None  # where factors are asked for


class Doubled(NamedTuple):
    """ "How many pairs are there?", "How many pins are in each row?": half of what is put in pairs, or in two rows."""

    of_two: Literal["pairs", "rows", "blanks"]
    colors: Labels = None


class Boxed(NamedTuple):
    """ "How many boxes are full, and how many pins remain?": of those that were put in boxes."""

    want: Want
    box: str | None  # None where only what is left over is asked for
    colors: Labels = None  # of what remains, where that is named


class TimesLetter(NamedTuple):
    """ "What number times n is the same as n − 0.4n?": None where the expression is told of before."""

    letter: str
    written: Reduced | None = None


class HowManyFit(NamedTuple):
    """How many results fit a limit: "reach the goal", or make an inequality true."""

    limit: Limit | None = None
    means: str = ""


class GreatestBoxes(NamedTuple):
    """The greatest number of boxes that are all alike."""

    box: str


class LeastBoth(NamedTuple):
    """The least total that two groups both reach."""

    measure: Measure | None = None
    colors: Labels = None
