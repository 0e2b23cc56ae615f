"""What a question asks, before its gaps are filled: results above and below zero."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.reading.meaning.scope import Labels, Np
from mathgen.trials.scope import Label, Measure


class ChangeFrom(NamedTuple):
    """Which number tells the change from one trial to another."""

    first: tuple[Label, ...]
    second: tuple[Label, ...]
    colors: Labels = None
    measure: Measure | None = None


class StandsForResult(NamedTuple):
    """Which number stands for a count, where zero stands for a goal."""

    np: Np = Np()


class FromZero(NamedTuple):
    """How far a result is from the goal: its absolute value."""


class FartherFromZero(NamedTuple):
    """Which group was farther from the goal, or closer to it."""

    farther: bool


class ResultsApart(NamedTuple):
    """How much greater one result is than another; the trials of both, where they are said."""

    greater: Labels = None
    less: Labels = None


class OfResults(NamedTuple):
    """The sum of the results, their mean, or what brings their sum back to zero."""

    what: Literal["sum", "mean", "opposite"]
