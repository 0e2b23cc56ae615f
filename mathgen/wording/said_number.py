"""Numbers as a wording template sees them: what prints one notes that it was printed, and how."""

from __future__ import annotations

from sympy import Rational

from mathgen.asks.expression import PERCENTS, Expr, Op, Stated
from mathgen.exact.forms import mixed
from mathgen.scenario.naming import listed


class Printed:
    """What one problem's words printed: each expression with its text, in the order of printing."""

    def __init__(self) -> None:
        self.texts: dict[Expr, str] = {}

    def note(self, expr: Expr, text: str) -> str:
        """The text, once it is noted what it prints."""
        self.texts[expr] = text
        return text


class SaidNumber:
    """A number that only the words give."""

    __slots__ = ("_printed", "_stated")

    def __init__(self, printed: Printed, stated: Stated) -> None:
        self._printed, self._stated = printed, stated

    @property
    def n(self) -> str:
        """The number; a percent with its sign, a length as a mixed number."""
        number, meaning, bottom = self._stated
        return self._printed.note(self._stated, f"{number}%" if meaning in PERCENTS else mixed(Rational(number, bottom)))

    @property
    def all_n(self) -> str:
        """The number of all there are: "all 3", but "the 2"."""
        return f"{'the' if self._stated.number == 2 else 'all'} {self.n}"

    @property
    def one(self) -> bool:
        """Whether the number is 1, for was and were."""
        return self._stated.number == 1

    @property
    def inches(self) -> str:
        """Number and unit of a length; up to 1 inch the unit is "inch"."""
        return f"{self.n} {'inch' if self._stated.number <= self._stated.bottom else 'inches'}"


class SaidRuns:
    """Runs of whole numbers, each told by its first and its last: "0 to 2, 3 to 5, and 6 to 8"."""

    __slots__ = ("_ends",)

    def __init__(self, printed: Printed, ends: tuple[Stated, ...]) -> None:
        self._ends = [SaidNumber(printed, end) for end in ends]

    @property
    def n(self) -> str:
        """Each run by its two ends: "0 to 2, 3 to 5, and 6 to 8"."""
        return listed([f"{low.n} to {high.n}" for low, high in zip(self._ends[::2], self._ends[1::2], strict=True)])

    @property
    def listed(self) -> str:
        """Each number by itself: "31, 58, and 72"."""
        return listed([one.n for one in self._ends])


class SaidRate:
    """A rate of one set, printed in the form that the draft chose: "9/12", "75%"."""

    __slots__ = ("_printed", "_rate", "_text")

    def __init__(self, printed: Printed, rate: Op, text: str) -> None:
        self._printed, self._rate, self._text = printed, rate, text

    @property
    def n(self) -> str:
        """The rate in its form."""
        return self._printed.note(self._rate, self._text)


class SaidRates:
    """Several that are printed one after another: "-3, 2, and -1"."""

    __slots__ = ("_each",)

    def __init__(self, printed: Printed, rates: tuple[Op, ...], texts: tuple[str, ...]) -> None:
        self._each = [SaidRate(printed, one, text) for one, text in zip(rates, texts, strict=True)]

    @property
    def listed(self) -> str:
        """All of them: "-3, 2, and -1"."""
        return listed([one.n for one in self._each])

    @property
    def either(self) -> str:
        """As ``listed``, of each of which it was one: "8/12, 4/12, or 6/12"."""
        return listed([one.n for one in self._each], "or")
