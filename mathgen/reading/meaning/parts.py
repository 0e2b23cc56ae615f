"""What a told sentence means, before its gaps are filled: fractions, decimals and percents of a set, and on a number line."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure


class PartOf(NamedTuple):
    """ "Of the 12 pins, 3/12 were red pins knocked down", "of the 8 pins knocked down, 3 were red": some colors of a set."""

    measure: Measure | None  # of the part; None for that of the whole
    np: Np  # of the whole
    part: Number
    colors: Labels  # of the part
    whole: Number | None
    counted: Measure | None  # what the whole counts, where that is said
    again: bool = False  # "3/12 were red pins knocked down": of the same whole as before


class TheFraction(NamedTuple):
    """ "... to find the fraction knocked down": of what is set up, which is meant by "the fraction"."""

    measure: Measure


class EqualFraction(NamedTuple):
    """ "An equal fraction of the red pins has the bottom number 8." """

    place: Literal["top", "bottom"]
    number: Number
    np: Np = Np()
    measure: Measure | None = None


class ScaledCount(NamedTuple):
    """ "In Trial 2, the Owls knocked down 5/4 × 8 red pins." """

    measure: Measure
    np: Np
    rate: Number
    first: Number


class NumberLine(NamedTuple):
    """ "A number line from 0 to 1 has 8 equal parts." """

    parts: Number


class FromOne(NamedTuple):
    """ "The fraction knocked down is 3 parts from 1." """

    measure: Measure
    parts: Number


class SetIsWhole(NamedTuple):
    """ "One set is the whole": of which a fraction is told."""


class TopAndBottom(NamedTuple):
    """ "These pins make a fraction with the top number 24 and the bottom number 8." """

    top: Number
    bottom: Number


class AsFraction(NamedTuple):
    """ "Write 3 as a fraction with the bottom number 4." """

    number: Number
    bottom: Number


class PartsOfSets(NamedTuple):
    """ "Each group knocked down 8/12, 5/12, 10/12, or 6/12 of the set": all the fractions that there were, each told once."""

    measure: Measure
    parts: tuple[Number, ...]


class SameInTrials(NamedTuple):
    """ "Suppose the Owls knocked down the same fraction in each of 4 trials." """

    number: Number
    np: Np
    measure: Measure | None


class ShareFraction(NamedTuple):
    """ "Suppose the number knocked down was the same in each of the 2 trials": an equal share of the fraction told last."""

    number: Number


class SomePart(NamedTuple):
    """ "The Owls knocked down a part of the red pins in Trial 1": how much is told after."""

    measure: Measure
    np: Np


class ShownPart(NamedTuple):
    """ "A calculator shows this part as 0.41666..., and the decimal does not end." """

    number: Number
