"""What a told sentence means, before its gaps are filled: tries that hit the color that was called."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.reading.meaning.scope import Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure


class SuccessRule(NamedTuple):
    """ "A trial is a success when target-color pins and no others are knocked down." """

    measure: Measure


class TriesWere(NamedTuple):
    """ "The Seals had 5 trials." """

    np: Np
    number: Number


class SuccessesWere(NamedTuple):
    """ "4 of the 5 trials were successes." """

    np: Np
    number: Number
    tries: Number | None = None


class SuccessRate(NamedTuple):
    """ "Of the 5 trials, 4/5 were successes." """

    np: Np
    rate: Number
    tries: Number


class OtherTrials(NamedTuple):
    """ "The other trials were not successes." """


class NextTries(NamedTuple):
    """ "The Seals will do 20 more trials." """

    np: Np
    number: Number


class SuccessGoal(NamedTuple):
    """ "The goal is successes in 80% of all trials." """

    np: Np
    percent: Number


class NewSuccesses(NamedTuple):
    """ "Suppose every new trial is a success." """
