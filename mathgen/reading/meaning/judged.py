"""What a told sentence means, before its gaps are filled: statements that are judged."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.reading.meaning.scope import Labels
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure


class GreaterFraction(NamedTuple):
    """ "(that) a greater fraction of the red pins than of the blue pins was knocked down" """

    first: Labels
    second: Labels
    measure: Measure


class AgainstPart(NamedTuple):
    """ "(that) more than 1/2 of the 12 pins were knocked down" """

    sign: Literal[">", "<"]
    part: Number
    colors: Labels
    whole: Number | None
    measure: Measure


class TimesAsMany(NamedTuple):
    """ "(that) 3 times as many red pins as blue pins were knocked down" """

    times: Number
    first: Labels
    second: Labels
    measure: Measure


class MoreThanBoth(NamedTuple):
    """ "(that) more gold pins were knocked down than red and blue pins together" """

    first: Labels
    measure: Measure
    others: Labels


class PartTogether(NamedTuple):
    """ "(that) 6/16 of the 12 pins were red or gold pins knocked down"; of "these fractions", where nothing else is said."""

    part: Number
    colors: Labels = None
    whole: Number | None = None
    measure: Measure | None = None


class ChangedBy(NamedTuple):
    """ "(that) the number of red pins knocked down increased by 20%" """

    sign: int
    percent: Number
    colors: Labels = None
    measure: Measure | None = None
    trials: tuple[Labels, Labels] | None = None


class NextOne(NamedTuple):
    """ "(that) 3/8 is the estimated probability that the next red pin will be knocked down" """

    colors: Labels
    measure: Measure
    chance: Number


class LastOne(NamedTuple):
    """ "Suppose the last of the 12 red pins was knocked down." """

    whole: Number
    colors: Labels
    measure: Measure


class Stronger(NamedTuple):
    """ "(that) the Owls had the stronger result in these trials": which result is stronger, the question tells."""

    who: Labels
    than: Labels = None


Statement = GreaterFraction | AgainstPart | TimesAsMany | MoreThanBoth | PartTogether | ChangedBy | NextOne | Stronger


class Claimed(NamedTuple):
    """ "Someone says that more than 1/2 of the 12 pins were knocked down." """

    statement: Statement


class Explain(NamedTuple):
    """ "Tell why." """
