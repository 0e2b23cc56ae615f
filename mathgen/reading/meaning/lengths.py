"""What a told sentence means, before its gaps are filled: spaces between things, points on a grid, scatter plots and lines."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure


class Apart(NamedTuple):
    """ "The Owls set the pins 2 1/4 inches apart in Trial 1." """

    np: Np
    number: Number


class ApartEach(NamedTuple):
    """ "The spaces were 1, 2, and 1 1/2 inches": of all groups in one trial."""

    numbers: tuple[Number, ...]


class LinePlot(NamedTuple):
    """ "Make a line plot of the spaces." """


class MadeEqual(NamedTuple):
    """ "Suppose all the spaces were made equal with the same total." """


class FootIs(NamedTuple):
    """ "One foot is 12 inches." """

    number: Number


class InFeet(NamedTuple):
    """ "Next time, the Owls will set the pins 2 feet apart", "a row with spaces of this size is 6 feet long"."""

    number: Number
    next_time: bool
    np: Np = Np()


class Axes(NamedTuple):
    """ "On a grid, first coordinates are inches between pins, and second coordinates are pins knocked down." """

    inches_first: bool
    of: Literal["both", "first", "second"] = "both"  # which coordinate the sentence tells of


class PointAt(NamedTuple):
    """ "For the Owls, plot (5, 14) for Trial 3." """

    np: Np
    first: Number
    second: Number


class ScatterPlot(NamedTuple):
    """ "A scatter plot shows the space x in inches and the number y of pins knocked down." """

    x: str
    y: str
    np: Np


class OnDrawing(NamedTuple):
    """ "On a drawing, this space is 3/4 inch long." """

    number: Number


class PlotTells(NamedTuple):
    """ "Draw a scatter plot of the inches between pins and the number of red pins knocked down." """

    measure: Measure
    np: Np


class Plotted(NamedTuple):
    """ "The Owls had the points (2, 14), (3, 12), and (5, 9)": a point for each trial."""

    np: Np
    pairs: tuple[tuple[Number, Number], ...]


class PointsFor(NamedTuple):
    """ "The points for Trial 3 are (2, 14) for the Owls and (3, 12) for the Wrens." """

    np: Np
    points: tuple[tuple[Number, Number, Labels], ...]


class OncePoint(NamedTuple):
    """ "From each space to the next wider space, y goes down, except once." """

    sign: int
    np: Np | None = None


class LineCloseBy(NamedTuple):
    """ "The line y = 24 - 2x is close to the points." """

    y: str
    start: Number
    slope: Number
    x: str
    sign: Literal["+", "-"]


class Spaces(NamedTuple):
    """ "A row of pins has 3 spaces of this size." """

    number: Number
