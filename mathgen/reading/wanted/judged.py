"""What a question asks, before its gaps are filled: statements that are judged."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.reading.meaning.judged import Statement
from mathgen.reading.meaning.scope import Labels
from mathgen.trials.scope import Measure


class JudgeClaim(NamedTuple):
    """ "Is this claim true?"; "Is it true that more than 1/2 of the 12 pins were knocked down?", where the question itself says it."""

    statement: Statement | None = None


class IsFair(NamedTuple):
    """ "Going by the means, is this claim fair?": by fractions ("fraction"), "mean"s, or counts "per trial"."""

    by: Literal["fraction", "mean", "per trial"]
    measure: Measure | None = None
    colors: Labels = None
