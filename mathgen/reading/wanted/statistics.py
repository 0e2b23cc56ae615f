"""What a question asks, before its gaps are filled: means, medians, plots, graphs and two-way tables."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.asks.expression import StatName
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure


class BoxPart(NamedTuple):
    """ "At what number is the right end of the box?", "How long is the box?" """

    statistic: StatName


class MeanThen(NamedTuple):
    """ "What would be the mean number of pins knocked down in the 4 trials?" """

    measure: Measure
    np: Np
    trials: Number


class WhichList(NamedTuple):
    """ "Which group had the greater range?": of two lists, one for each group or trial."""

    statistic: StatName
    by: Literal["groups", "trials"]
    greater: bool


class MeanOrMedian(NamedTuple):
    """ "Which is greater, the mean or the median of these numbers?" """

    measure: Measure | None
    np: Np
    by: Literal["groups", "trials", ""]
    greater: bool


class Overlap(NamedTuple):
    """ "How long is the stretch between least and greatest that both groups cover?" """

    by: Literal["groups", "trials"] | None = None  # None: lists, or dot plots, of either


class WhichStatistical(NamedTuple):
    """ "Which is a statistical question, the first or the second?" """


class MeanCounts(NamedTuple):
    """ "Is that the mean number of pins left standing?" """

    measure: Measure
    np: Np


class CenterWithout(NamedTuple):
    """ "Without this number, how much greater is the mean?" """

    name: StatName
    greater: bool
    measure: Measure | None
    np: Np
    by: Literal["", "groups", "trials"] = ""


class IsStatistical(NamedTuple):
    """ "Is that a statistical question?" """


class OtherThan(NamedTuple):
    """ "How many pins other than the red pins were left standing?"; None where a row for the other pins was told of."""

    measure: Measure
    colors: Labels


class HowManyRecorded(NamedTuple):
    """ "How many results were written down in all?": for each trial, or for each kind in each trial."""

    one_for: Literal["trials", "kinds"]


class Dots(NamedTuple):
    """How many dots are stacked over a number, or stand for greater or lesser numbers."""

    test: Literal["=", ">", "<"]
    number: Number


class InBar(NamedTuple):
    """How many numbers a bar of a histogram takes in."""

    low: Number
    high: Number


class PicturesFor(NamedTuple):
    """How many pictures of a picture graph stand for the pins of one color."""

    color: Label


class MeansApart(NamedTuple):
    """How many times the mean absolute deviation of one of two lists their means are apart."""

    by: Literal["groups", "trials"]
    np: Np


class BehindMean(NamedTuple):
    """ "How many trials did the Owls have?": as often as the mean goes into the total."""

    np: Np = Np()
