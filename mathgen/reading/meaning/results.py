"""What a told sentence means, before its gaps are filled: results above and below zero."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure


class ZeroIs(NamedTuple):
    """ "Let zero stand for a goal of 8 red pins knocked down": what results are over or under."""

    number: Number
    colors: Labels
    measure: Measure | None


class ResultIs(NamedTuple):
    """ "The result of the Owls was -3 in Trial 1": so many over or under the goal."""

    np: Np
    number: Number


class ResultsAre(NamedTuple):
    """ "The results of the Owls in 3 trials were -3, 2, and -1." """

    np: Np
    numbers: tuple[Number, ...]
