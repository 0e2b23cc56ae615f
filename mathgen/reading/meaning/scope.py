"""Who, when and which colors, as far as the words say: None stands for what was left out."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, NamedTuple

from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label


@dataclass(frozen=True, slots=True)
class Mark:
    """A choice of labels that is not spelled out.

    ``all``: every label there is ("the class", "all 3 trials"). ``each``: one after another ("each group").
    ``these``: labels that the text has named before ("the two groups", "in 3 trials"). ``bare``: "pins" without a color.
    ``before``, ``through``: all trials before the one in ``of``; all up to it.
    """

    kind: Literal["all", "each", "these", "bare", "before", "through"]
    count: Number | None = None
    of: tuple[Label, ...] | None = None


Labels = tuple[Label, ...] | Mark | None


class Np(NamedTuple):
    """Whose pins, from which trials, of which colors, as far as the words say."""

    groups: Labels = None
    trials: Labels = None
    colors: Labels = None
