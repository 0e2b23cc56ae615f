"""A length as a wording template sees it."""

from __future__ import annotations

from sympy import Rational

from mathgen.asks.expression import Measured
from mathgen.exact.forms import mixed
from mathgen.scenario.naming import listed
from mathgen.wording.said_many import SaidMany
from mathgen.wording.said_number import Printed
from mathgen.wording.said_place import SaidPlace
from mathgen.wording.speaker import Speaker


class SaidLength(SaidPlace):
    """The space between pins in one trial of a group: "2 1/4 inches", "3/4 inch"."""

    __slots__ = ("_length", "_measured", "_printed")

    def __init__(self, speaker: Speaker, printed: Printed, measured: Measured, length: Rational) -> None:
        super().__init__(speaker, measured.scope)
        self._printed, self._measured, self._length = printed, measured, length

    @property
    def inches(self) -> str:
        """Number and unit; up to 1 inch the unit is "inch"."""
        return f"{self.n} {'inch' if self._length <= 1 else 'inches'}"

    @property
    def n(self) -> str:
        """The bare number."""
        return self._printed.note(self._measured, mixed(self._length))

    @property
    def items(self) -> str:
        """What the length is between: "pins"."""
        return self._speaker.scenario.items


class SaidLengths:
    """The spaces that all groups measured in one trial, or one group in all trials: "1 1/4, 2, and 1 1/2"."""

    __slots__ = ("_each",)

    def __init__(self, speaker: Speaker, printed: Printed, series: tuple[Measured, ...], lengths: tuple[Rational, ...]) -> None:
        self._each = [SaidLength(speaker, printed, one, length) for one, length in zip(series, lengths, strict=True)]

    @property
    def first(self) -> SaidLength:
        """The first of them."""
        return self._each[0]

    @property
    def last(self) -> SaidLength:
        """The last of them."""
        return self._each[-1]

    @property
    def numbers(self) -> str:
        """All in their order, without a unit: "1 1/4, 2, and 1 1/2"."""
        return listed([one.n for one in self._each])

    def beside(self, counts: SaidMany) -> str:
        """Each as the first number of a point, beside its count: "(1 1/4, 22), (2, 19), and (5, 12)"."""
        return listed([f"({one.n}, {count.n})" for one, count in zip(self._each, counts, strict=True)])

    def plotted_by(self, counts: SaidMany) -> str:
        """Whose each point is: "the Plovers plotted (3, 21), and the Terns plotted (5, 12)"."""
        both = [f"{one.who} plotted ({one.n}, {count.n})" for one, count in zip(self._each, counts, strict=True)]
        return ", and ".join(both)
