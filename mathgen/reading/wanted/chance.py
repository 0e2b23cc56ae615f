"""What a question asks, before its gaps are filled: chance, samples and simulations."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure


class Picked(NamedTuple):
    """ "What is the probability that the pin is (not) a red pin?" """

    color: Label
    negated: bool


class NextIs(NamedTuple):
    """ "What is the probability that the next pin to be knocked down is (not) a red pin?" """

    measure: Measure
    color: Label
    negated: bool


class AllGroups(NamedTuple):
    """ "About how many pins did all the groups knock down?": going by a sample."""

    measure: Measure
    np: Np


class EstimateOff(NamedTuple):
    """ "How many pins too high is the estimate that this sample gives for the class?" """

    colors: Labels
    who: Labels
    high: bool


class InSample(NamedTuple):
    """ "How many red pins should be in the sample?" """

    colors: Labels


class SampleAlike(NamedTuple):
    """ "Does the sample have the same fraction of red pins as all 48 pins?" """

    colors: Labels
    whole: Number | None = None


class RunChance(NamedTuple):
    """ "What is the estimated probability that both of the pins will be knocked down?": by the runs of a simulation."""

    need: int
    measure: Measure


class StandFor(NamedTuple):
    """ "How many of the 10 digits should stand for a pin knocked down?" """

    measure: Measure
    np: Np
    digits: Number


class LikelierThan(NamedTuple):
    """ "Is a pin more likely to be knocked down than to be left standing?" """

    one: Measure
    other: Measure
    np: Np


class MeanGap(NamedTuple):
    """ "How much greater is the mean of the sample than the mean of the population?" """

    greater: bool


class ThanModel(NamedTuple):
    """ "How many more red pins were knocked down than the model predicts for these pins?" """

    measure: Measure
    color: Labels
    sign: int
    whole: Labels


Sort = Literal["kinds", "groups", "trials"]


class Pairs(NamedTuple):
    """How many ordered pairs of kinds, groups or trials, or pairs of two of these, there are."""

    first: Sort
    second: Sort


class TimesPicked(NamedTuple):
    """ "About how many times should a red pin be picked?": of so many picks, each put back."""

    color: Label
