"""What a told sentence means, before its gaps are filled: how many, how many more, and number sentences."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.exact.demand import Demand
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure


class Count(NamedTuple):
    """ "The Owls knocked down 7 red pins in Trial 1." """

    measure: Measure
    np: Np
    number: Number


class EachTrial(NamedTuple):
    """ "The Owls set up 4 red pins for each trial, 8 in all." """

    measure: Measure
    np: Np
    number: Number
    total: Number | None


class Portion(NamedTuple):
    """ "The Owls knocked down 7 of the 8 red pins", "3/4 of the red pins were left standing": part, and whole where told."""

    measure: Measure
    np: Np
    part: Number
    whole: Number | None


class Series(NamedTuple):
    """ "The Owls knocked down 3, 1, and 4 pins in Trials 1, 2, and 3": one number for each label."""

    measure: Measure
    np: Np
    numbers: tuple[Number, ...]


class More(NamedTuple):
    """ "The Owls knocked down 2 more red pins than the Wrens." Of ``other``, what is left out is as in ``np``."""

    measure: Measure
    np: Np
    other: Np
    number: Number
    sign: int  # 1 for more, -1 for fewer


class Times(NamedTuple):
    """ "The Owls knocked down 3 times as many red pins as the Wrens." """

    measure: Measure
    np: Np
    other: Np
    number: Number


class NextSet(NamedTuple):
    """ "The Owls will set up 40 red pins next time." """

    np: Np
    number: Number


class NextGoal(NamedTuple):
    """ "The goal for next time is 40 red pins knocked down." """

    measure: Measure
    np: Np
    number: Number


class CountOn(NamedTuple):
    """ "Count on by ones: 38, 39, __.", "Start at 38 and count back one.", "Count these pins by ones": by how many, and what is said."""

    by: int
    start: Number | None = None
    following: Number | None = None
    colors: Labels = None  # of "these pins"


class SameRate(NamedTuple):
    """ "Suppose the fraction stays the same." """

    np: Np = Np()
    measure: Measure | None = None


class Points(NamedTuple):
    """ "Each red pin knocked down earns a point." """

    measure: Measure
    np: Np


class PointsEarned(NamedTuple):
    """ "8 points in all" """

    number: Number


class ShareOut(NamedTuple):
    """ "The 3 groups share the points equally." """

    among: Literal["groups", "trials"]
    number: Number | None
    points: Number | None
    np: Np = Np()


class GoalMean(NamedTuple):
    """ "The goal is a mean of 9 pins per trial for 4 trials." """

    np: Np
    number: Number
    trials: Number | None


class OneMoreTrial(NamedTuple):
    """ "One trial is still to come." """

    trials: Number | None = None


class TrialCount(NamedTuple):
    """ "There were 3 trials." """

    number: Number


class AllTheOthers(NamedTuple):
    """ "All the other red pins were left standing." """

    measure: Measure
    np: Np


class Some(NamedTuple):
    """ "... and some red pins": counted, but not told how many."""

    measure: Measure
    np: Np


class TheseWere(NamedTuple):
    """ "These were 3 red, 5 gold, and some blue pins": of those counted last."""

    numbers: tuple[Number, ...]
    colors: tuple[Label, ...]  # of the numbers, then of the rest


class TotalWas(NamedTuple):
    """ "The total was 15 pins": of all that was counted before, with the pins of ``np`` where it names some."""

    np: Np
    number: Number
    colors: Labels = None  # "15 red and blue pins": of which colors, where that is said once more


class Look(NamedTuple):
    """Where to look, and of whom the text speaks from here on."""

    np: Np
    source: Literal["table", "graph", ""] = ""
    whole: Number | None = None  # "of the 5 gold pins"
    measure: Measure | None = None  # what is to be counted there


class Against(NamedTuple):
    """Which two are compared: "Compare Trial 2 with Trial 1." """

    first: Np
    second: Np


class Rounding(NamedTuple):
    """ "Round the answer to the nearest tenth of a percent." """

    demand: Demand


class About(NamedTuple):
    """ "About what part of the 12 pins was knocked down?": the answer is to be rounded."""
