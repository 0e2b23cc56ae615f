"""What a question asks, before its gaps are filled: tries that hit the color that was called."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.exact.demand import Demand
from mathgen.reading.meaning.scope import Np
from mathgen.reading.tokens import Number


class SuccessCount(NamedTuple):
    """ "How many of the 5 trials were (not) successes?" """

    np: Np
    negated: bool
    tries: Number | None = None


class SuccessShare(NamedTuple):
    """ "What fraction of the 5 trials were (not) successes?" """

    negated: bool
    tries: Number
    demand: Demand


class SuccessRatio(NamedTuple):
    """ "What is the ratio of successes to other trials?" """

    negated: bool  # the other trials first


class SuccessWhich(NamedTuple):
    """ "Which group had successes in the greater fraction of its trials?" """


class ExpectSuccesses(NamedTuple):
    """ "About how many of the 20 trials should the Seals expect to be successes?" """

    np: Np
    tries: Number


class NewTrials(NamedTuple):
    """ "How many new trials are needed to reach the goal exactly?" """


class NextSuccess(NamedTuple):
    """ "What is the estimated probability that the next trial will (not) be a success?" """

    negated: bool
