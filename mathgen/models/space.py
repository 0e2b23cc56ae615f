"""The space of asks that a problem model offers on one table."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import prod
from typing import Any

from mathgen.problems.draft import Draft


class AskSpace:
    """Every choice along each axis, and the rule that builds a draft from one choice of each.

    Nothing is enumerated: the i-th draft is built when it is asked for. ``build`` returns None where a choice makes no
    question (a tie, a missing result, the same group twice).
    """

    def __init__(self, axes: Sequence[Sequence[Any]], build: Callable[..., Draft | None]) -> None:
        self._axes = axes
        self._build = build
        self.size = prod(map(len, axes))

    def draft(self, index: int) -> Draft | None:
        """The draft at an index from 0 to ``size - 1``, or None."""
        choices = []
        for axis in self._axes:
            index, digit = divmod(index, len(axis))
            choices.append(axis[digit])
        return self._build(*choices)
