"""What a question asks, before its gaps are filled: how many, how many more, and number sentences."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.asks.expression import StatName
from mathgen.exact.demand import Demand
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure


class HowMany(NamedTuple):
    """How many pins; ``whole`` where the words name a set of them by its number, ``total`` where several are to be added."""

    measure: Measure
    np: Np
    whole: Number | None = None
    total: bool = False


class HowManyOfTotal(NamedTuple):
    """ "How many of the 15 pins were red pins?": of a total told before."""

    np: Np
    whole: Number
    colors: Labels = None  # of the whole, where they are named


class Difference(NamedTuple):
    """How many more or fewer."""

    measure: Measure
    np: Np
    other: Np | None
    sign: int
    bars: bool = False  # asked of the bars of a graph


class Multiple(NamedTuple):
    """How many times as many."""

    measure: Measure
    np: Np
    other: Np | None


class Part(NamedTuple):
    """Which part of a set, as a fraction, decimal or percent."""

    measure: Measure
    np: Np
    whole: Number | None
    demand: Demand


class Most(NamedTuple):
    """Which group, trial or color had the most or the fewest pins."""

    measure: Measure
    by: Literal["groups", "trials", "colors"]
    np: Np
    most: bool
    two: bool = False  # "more" of two, not "the most" of any number


class Blank(NamedTuple):
    """ "What number is missing in 8 + __ = 18?": the sum or difference as printed, None for the blank."""

    symbol: Literal["+", "-"]
    first: Number | None
    second: Number | None
    result: Number


class IsTrue(NamedTuple):
    """ "Is 3 + 2 = 5 true?", "Is 5 = 3 + 2 true?", "Is 27 > 31 true?": the numbers as printed, those of a side to be added."""

    left: tuple[Number, ...]
    test: Literal["=", ">", "<"]
    right: tuple[Number, ...]


class IsDifference(NamedTuple):
    """ "Is 12 - 5 = 4 + 3 true?": the numbers of both sides as printed."""

    counts: tuple[Number, Number]
    claimed: tuple[Number, Number]


class IsTotal(NamedTuple):
    """ "Did the Owls knock down 12 pins in all?", "Is 12 the total number of pins knocked down?": the number as printed."""

    number: Number
    measure: Measure
    np: Np


class NextNumber(NamedTuple):
    """ "Which number comes next?", "Which number comes right before 40?": by how many it was counted."""

    by: int
    start: Number | None = None  # from which number, where the question says it
    blank: bool = False


class NextSetUp(NamedTuple):
    """How many must be set up for the next goal; ``same`` where the question itself says that the rate stays the same."""

    np: Np
    same: bool = False


class NextCount(NamedTuple):
    """How many of a next set at the same rate; ``same`` where the question itself says so."""

    measure: Measure
    np: Np
    whole: Number | None = None
    same: bool = False


class Needed(NamedTuple):
    """How many are needed in one more trial for a goal."""

    measure: Measure
    np: Np


class OneShare(NamedTuple):
    """How much one equal share is."""

    among: Literal["groups", "trials", ""]
    demand: Demand
    np: Np = Np()


class MeanOf(NamedTuple):
    """The mean or median for each group, for each trial, or of a row of numbers."""

    measure: Measure | None
    np: Np
    by: Literal["groups", "trials", ""]
    demand: Demand
    statistic: StatName = "mean"


class Change(NamedTuple):
    """By what percent a count rose (sign 1) or fell (sign -1) from one trial to another."""

    measure: Measure
    np: Np
    sign: int
    first: Labels = None
    last: Labels = None


class PercentMore(NamedTuple):
    """What percent more (sign 1) or fewer (sign -1) one count is than the other."""

    measure: Measure
    np: Np
    other: Np
    sign: int
