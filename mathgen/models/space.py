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


class _EndToEnd(Sequence[Draft | None]):
    """The drafts of several spaces, one space after the other, each built when it is asked for."""

    def __init__(self, spaces: tuple[AskSpace, ...]) -> None:
        self._spaces = spaces

    def __len__(self) -> int:
        return sum(space.size for space in self._spaces)

    def __getitem__(self, index: Any) -> Any:
        for space in self._spaces:
            if index < space.size:
                return space.draft(index)
            index -= space.size
        raise IndexError(index)


def joined(*spaces: AskSpace) -> AskSpace:
    """Several spaces as one.

    Groups, trials and colors have axes of their own: one product of all axes would be nearly empty, and drawing from it slow.
    """
    return AskSpace((_EndToEnd(spaces),), lambda draft: draft)
