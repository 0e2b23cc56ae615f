"""What a question asks, before its gaps are filled: fractions, decimals and percents of a set, and on a number line."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.exact.demand import Demand
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure


class Which(NamedTuple):
    """Which group, trial or color had the greater part of its pins knocked down."""

    measure: Measure
    by: Literal["groups", "trials", "colors"]
    np: Np
    whole: Number | None = None
    greater: bool = True


class RatioOf(NamedTuple):
    """The ratio of one count to another, in that order."""

    first: tuple[Measure | None, Labels]  # measure and colors; without a measure, that of the second
    second: tuple[Measure, Labels]
    np: Np
    demand: Demand


class ColorPart(NamedTuple):
    """Which part of the pins knocked down were of some colors."""

    measure: Measure
    np: Np  # of all that are counted
    whole: Number | None
    colors: Labels  # of those asked about
    demand: Demand


class PartOfSet(NamedTuple):
    """ "What fraction of the 12 pins were red pins knocked down?": which part of a set was of some colors, knocked down or not."""

    measure: Measure | None  # of the part; None for that of the whole
    np: Np  # of the whole
    whole: Number | None
    counted: Measure | None  # what the whole counts, where that is said
    colors: Labels  # of the part
    demand: Demand


class OtherNumber(NamedTuple):
    """ "What is the top number of the equal fraction?" """

    place: Literal["top", "bottom"]


class ProductOrFactor(NamedTuple):
    """ "Which is greater, the product 5/4 × 8 or the factor 8?" """

    greater: bool
    factor: Number
    rate: Number | None = None
    second: Number | None = None


class PartsFromOne(NamedTuple):
    """ "How many parts are between the fraction knocked down and 1?" """

    measure: Measure | None


class WholeOfFraction(NamedTuple):
    """ "Which whole number is equal to the fraction?" """


class TopOfSets(NamedTuple):
    """ "What is the top number of the fraction?": of one that equals so many sets."""


class AgainstFactor(NamedTuple):
    """ "Is 5/4 × 8 greater than 8?", "Did the Owls knock down more pins in Trial 2 than in Trial 1?": one count is told by the other."""

    sign: int
    rate: Number | None = None
    factor: Number | None = None
    second: Number | None = None
    later: Np | None = None
    first: Np | None = None
    measure: Measure | None = None


class GreaterPart(NamedTuple):
    """Which of two colors was the greater part of the same whole."""

    measure: Measure
    one: str
    other: str


class FractionGap(NamedTuple):
    """How much greater the fraction for one trial is than for the other."""

    first: Labels
    other: Labels
    demand: Demand


class SetsInAll(NamedTuple):
    """ "How many sets of 12 pins would the Owls knock down in all?" """

    measure: Measure
    np: Np
    whole: Number


class SetsDown(NamedTuple):
    """ "How many sets of 12 pins do 30 pins make?": of the pins of one trial; those knocked down."""

    np: Np
    whole: Number
    total: Number
    demand: Demand


class FractionShare(NamedTuple):
    """ "What fraction of the 24 pins would that be for one trial?" """

    np: Np
    whole: Number


class AsFraction(NamedTuple):
    """Which fraction a repeating decimal that was told is."""

    colors: Labels


class SameValue(NamedTuple):
    """ "Is 5/12 equal to this repeating decimal?": the fraction as printed."""

    claimed: Number
