"""What a question asks, before its gaps are filled: ratios, rates, points and scores."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.reading.meaning.rates import Terms
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure


class PointsOfOne(NamedTuple):
    """ "How many points did each red pin knocked down earn?" """

    measure: Measure | None
    np: Np


class OneRack(NamedTuple):
    """ "How many pins did the Owls set up for each trial?" """

    np: Np


class OfClasses(NamedTuple):
    """ "How many red pins would the 24 classes set up in all?" """

    measure: Measure
    np: Np
    number: Number


class Score(NamedTuple):
    """ "What is the score of the Owls?": by a rule told before."""

    np: Np


class ValueOf(NamedTuple):
    """ "What is the value of 5d - 2m?", "What is the value of x?" """

    terms: Terms


class LevelWith(NamedTuple):
    """ "How many pins must each group knock down next time for the two scores to be equal?" """

    measure: Measure
    np: Np


class OfLine(NamedTuple):
    """ "How many points does each pin earn?", "What is the start value?" """

    part: Literal["slope", "start"]
    np: Np | None = None


class FewestNeeded(NamedTuple):
    """ "What is the least number of pins the Owls must knock down next time?" """

    measure: Measure
    np: Np


class UnitRate(NamedTuple):
    """How many were knocked down per trial."""

    measure: Measure
    np: Np


class ForEach(NamedTuple):
    """How many were knocked down for each one that was left standing, or the other way round."""

    measure: Measure
    other: Measure
    np: Np


class CountAhead(NamedTuple):
    """How many in so many trials at the same rate; ``same`` where the question itself says so."""

    measure: Measure
    np: Np
    trials: Number
    same: bool = False


class TrialsAhead(NamedTuple):
    """In how many trials so many would be knocked down at the same rate; ``same`` as above."""

    measure: Measure
    np: Np
    number: Number
    same: bool = False


class InRow(NamedTuple):
    """ "How many gold pins go with 12 red pins?": in another row of a ratio table."""

    np: Np  # of what is asked for
    others: Np
    number: Number


class Constant(NamedTuple):
    """ "What is the constant of proportionality?" """


class Steeper(NamedTuple):
    """ "Which group has the steeper line?"; with what is counted, "the steeper graph of the score against the number of pins"."""

    np: Np | None = None


class InProportion(NamedTuple):
    """ "Are these scores proportional to the numbers of pins knocked down?"; of points on a grid, whether they lie on one line."""

    measure: Measure | None = None
    np: Np | None = None


class Growth(NamedTuple):
    """ "How much greater is p for Trial 2 than for Trial 1?" """

    letter: str
    first: Labels
    last: Labels


class ScoreWanted(NamedTuple):
    """The score of a group that makes both scores proportional; what of, where that is said."""

    np: Np
    colors: Labels = None
    measure: Measure | None = None
    on_line: bool = False


class SlopesApart(NamedTuple):
    """How much greater the slope of one group's line is than that of another's."""

    np: Np
    other: Np
