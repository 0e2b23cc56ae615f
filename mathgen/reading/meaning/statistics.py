"""What a told sentence means, before its gaps are filled: means, medians, plots, graphs and two-way tables."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure


class MeanWas(NamedTuple):
    """ "The mean number of pins knocked down per trial was 8." """

    measure: Measure
    np: Np
    number: Number


class BoxPlot(NamedTuple):
    """ "A box plot is drawn for these numbers": those told before, or counts of a measure."""

    np: Np = Np()
    measure: Measure | None = None
    by: Literal["groups", "trials", ""] = ""


class Wondered(NamedTuple):
    """ "Someone asks how many pins each group knocked down in Trial 1": a question that is itself asked about."""

    measure: Measure
    np: Np
    each: bool = False  # of each group


class TwoPlots(NamedTuple):
    """ "Make a dot plot of each list over one number line." """


class OneOfTwo(NamedTuple):
    """ "The first question is how many pins each group knocked down." """

    place: Literal["first", "second"]
    wondered: Wondered


class MeanTold(NamedTuple):
    """ "A mean of 4 was written down without a heading." """

    number: Number


class LeaveOut(NamedTuple):
    """ "Leave out Trial 3", "the number for the Owls is far from the others"."""

    part: Literal["groups", "trials"]
    labels: tuple[Label, ...]
    name: str = ""  # of the statistic, where it is told beside


class NextTrial(NamedTuple):
    """ "Suppose the Owls knocked down 5 red pins in one more trial." """

    measure: Measure
    np: Np
    number: Number


class OtherRow(NamedTuple):
    """ "A two-way table has one row for red pins and one row for all the other pins." """

    colors: Labels


class Recorded(NamedTuple):
    """ "Each of 6 groups did 3 trials", "one result was written down for each trial of each group"."""

    groups: Number | None = None
    trials: Number | None = None
    kinds: Number | None = None
    one_for: Literal["", "trials", "kinds"] = ""


class PlotToMake(NamedTuple):
    """ "Draw a dot plot of these numbers": those told before, or counts of a measure."""

    kind: Literal["dots", "histogram"]
    np: Np = Np()
    measure: Measure | None = None
    by: Literal["", "groups", "trials"] = ""


class Bars(NamedTuple):
    """ "Use bars for 0 to 2, 3 to 5, and 6 to 8." """

    ends: tuple[tuple[Number, Number], ...]


class GraphToMake(NamedTuple):
    """ "Draw a bar graph for Trial 1." """

    kind: Literal["bar", "picture"]


class PictureStandsFor(NamedTuple):
    """ "Each picture stands for 2 pins." """

    number: Number
