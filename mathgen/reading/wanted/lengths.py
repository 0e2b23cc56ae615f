"""What a question asks, before its gaps are filled: spaces between things, points on a grid, scatter plots and lines."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure


class LongerThan(NamedTuple):
    """ "Are 5 of these spaces longer than 3 feet end to end?" """

    feet: Number
    spaces: Number | None = None


class Farther(NamedTuple):
    """ "How many inches farther apart did the Owls set the pins?": of two spaces that were told; without ``np`` how far these differ."""

    np: Np | None
    sign: int  # 1 for farther apart, -1 for closer together
    than: Np | None = None  # the other one, where that is said


class EndToEnd(NamedTuple):
    """ "How many inches long are 3 of these spaces in all?" """

    number: Number


class Predicted(NamedTuple):
    """ "How many pins does the line predict for a space of 5 inches?" """

    number: Number
    np: Np


class OffLine(NamedTuple):
    """ "How many more pins did the Owls knock down than the line predicts?" """

    measure: Measure
    np: Np
    sign: int


class LineChange(NamedTuple):
    """ "How many fewer pins does the line predict when the space is 3 inches wider?" """

    sign: int
    number: Number
    np: Np


class NextWider(NamedTuple):
    """ "How many inches wider will the space be?": the next one, told in feet."""


class EndToEndFeet(NamedTuple):
    """ "How many feet do 6 of these spaces make end to end?" """

    number: Number


class SpacesIn(NamedTuple):
    """ "How many of these spaces make 6 feet end to end?"; without a number, of the row that was told."""

    number: Number | None = None


class CrossesAbove(NamedTuple):
    """ "How many crosses are stacked over the number 1 1/4?" """

    number: Number


class SpacesBeyond(NamedTuple):
    """ "How many of the spaces are wider than 1 1/2 inches?" """

    test: Literal[">", "<"]
    number: Number


class MoreCrosses(NamedTuple):
    """ "How many more crosses are stacked over 3 than over 5?" """

    number: Number
    than: Number


class WidestGap(NamedTuple):
    """ "How many inches wider was the widest space than the narrowest space?"; of a line plot, from the first cross to the last."""

    plotted: bool = False


class AllEndToEnd(NamedTuple):
    """ "What is the total length of all the spaces in inches?": those of a line plot."""


class EachEqual(NamedTuple):
    """ "How many inches wide would each space be?": of all made equal."""

    plotted: bool = False


class ForDrawnInch(NamedTuple):
    """ "How many inches of space does each inch on the drawing stand for?" """


class ForEachInch(NamedTuple):
    """ "How many inches for the Owls go with each inch for the Wrens?" """

    asked: Labels
    base: Labels


class Goes(NamedTuple):
    """ "Is the association positive or negative?" """


class OddPoint(NamedTuple):
    """ "In which trial does y go up instead?" """

    sign: int


class FartherPoint(NamedTuple):
    """ "Whose point is farther from the line, up or down?" """

    np: Np | None = None
