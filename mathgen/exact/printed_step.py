"""Printed numbers and printed steps of working, read as integer pairs that remember how each number was written.

``12/12 - 9/12 = 3/12``: ``a/b`` without spaces is a written fraction, ``a / b`` with spaces is a division. Gate and difficulty
look at the form of the numbers ("in twelfths", "two places"), which a value alone would have lost.
"""

from __future__ import annotations

import re
from functools import lru_cache
from math import gcd, lcm
from typing import Literal, NamedTuple

Kind = Literal["whole", "fraction", "mixed", "decimal"]

_NUMBER = re.compile(
    r"(?P<minus>-?)(?:"
    r"(?P<whole>\d+) (?P<mixed_top>\d+)/(?P<mixed_bottom>\d+)"
    r"|(?P<top>\d+)/(?P<bottom>\d+)"
    r"|(?P<units>\d{1,3}(?:,\d{3})+|\d*)\.(?P<places>\d*)(?:\((?P<block>\d+)\))?(?P<dots>\.\.\.)?"
    r"|(?P<count>\d{1,3}(?:,\d{3})+(?!\d)|\d+)"
    r")(?P<percent>%?)"
)
_SPACE = re.compile(r"\s*")


class Printed(NamedTuple):
    """A number as printed. ``top / bottom`` is its value, a percent already out of 100, not in lowest terms."""

    kind: Kind
    percent: bool
    top: int
    bottom: int
    written_top: int = 0  # of a written fraction or of the fraction of a mixed number
    written_bottom: int = 1  # 1 where no fraction is written
    places: int = 0  # after the point, as printed
    repeats: bool = False

    @property
    def is_whole(self) -> bool:
        """Whether the value, not the form, is a whole number."""
        return self.top % self.bottom == 0

    @property
    def negative(self) -> bool:
        """Whether the value is below 0."""
        return self.top < 0


class Operation(NamedTuple):
    """One + - * / of a step, with both of its numbers and its result."""

    symbol: str
    left: Printed
    right: Printed
    result: Printed
    sums_on: bool  # carries on from a sum: the second + of ``2 + 2 + 5`` or of a chain


class PrintedStep(NamedTuple):
    """A step, read: its numbers in print order, its operations, and the value of its last side."""

    numbers: tuple[Printed, ...]
    operations: tuple[Operation, ...]
    first: Printed  # the first number of the step
    end: Printed
    longest_sum: int  # addends in its longest sum


class UnreadableStepError(ValueError):
    """Working that is no equality of printed numbers: a fault of the program that printed it."""


@lru_cache(maxsize=65536)
def printed_number(text: str) -> Printed | None:
    """The number that a text is as a whole, or None where it is none (a name, say).

    >>> printed_number("2 1/4")
    Printed(kind='mixed', percent=False, top=9, bottom=4, written_top=1, written_bottom=4, places=0, repeats=False)
    >>> printed_number("Owls") is None
    True
    """
    found = _NUMBER.fullmatch(text)
    return _printed(found) if found else None


@lru_cache(maxsize=65536)
def printed_step(text: str) -> PrintedStep:
    """A step of working, read.

    Raises:
        UnreadableStepError: the text is no chain of sides joined by `` = ``.

    >>> [operation.symbol for operation in printed_step("2 + 2 + 5 = 9").operations]
    ['+', '+']
    >>> printed_step("12/12 - 9/12 = 3/12").end.written_bottom
    12
    """
    return _plain_step(text) or _Reader(text).step()


def _plain_step(text: str) -> PrintedStep | None:
    """The common kind of step, ``numbers joined by one sign = number``, read without a grammar; None for any other kind."""
    left, equals, right = text.partition(" = ")
    pieces = left.split(" ")
    # Pieces go number, sign, number ...: a mixed number has a blank of its own, and is left to the grammar.
    symbol = pieces[1] if len(pieces) > 1 else ""
    if not equals or len(pieces) % 2 == 0 or symbol not in "+-*/" or any(other != symbol for other in pieces[3::2]):
        return None
    end = printed_number(right)
    numbers = [printed_number(piece) for piece in pieces[::2]]
    if end is None or None in numbers:
        return None
    held, done = numbers[0], []
    for place, number in enumerate(numbers[1:]):
        result = _result(symbol, held, number)  # type: ignore[arg-type]
        if result is None:
            return None
        done.append(Operation(symbol, held, number, result, symbol == "+" and place > 0))  # type: ignore[arg-type]
        held = result
    longest = len(numbers) if symbol == "+" else 0
    return PrintedStep((*numbers, end), tuple(done), numbers[0], end, longest)  # type: ignore[arg-type]


def lowest(top: int, bottom: int) -> tuple[int, int]:
    """A value in lowest terms, bottom above 0."""
    shared = gcd(top, bottom) or 1
    sign = -1 if bottom < 0 else 1
    return sign * top // shared, sign * bottom // shared


def repeat_length(top: int, bottom: int) -> int:
    """How many digits of the decimal repeat; 0 where it ends.

    >>> repeat_length(5, 12), repeat_length(3, 8), repeat_length(1, 7)
    (1, 0, 6)
    """
    rest = lowest(top, bottom)[1]
    for prime in (2, 5):
        while rest % prime == 0:
            rest //= prime
    if rest == 1:
        return 0
    length, power = 1, 10 % rest
    while power != 1:
        length, power = length + 1, power * 10 % rest
    return length


def _printed(found: re.Match[str]) -> Printed | None:
    sign = -1 if found["minus"] else 1
    percent = bool(found["percent"])
    hundred = 100 if percent else 1
    if found["mixed_bottom"]:
        top, bottom = int(found["mixed_top"]), int(found["mixed_bottom"])
        if not bottom:
            return None
        return Printed("mixed", percent, sign * (int(found["whole"]) * bottom + top), bottom * hundred, top, bottom)
    if found["bottom"]:
        top, bottom = int(found["top"]), int(found["bottom"])
        return Printed("fraction", percent, sign * top, bottom * hundred, top, bottom) if bottom else None
    if found["count"]:
        return Printed("whole", percent, sign * int(found["count"].replace(",", "")), hundred)
    units, digits, block = found["units"].replace(",", ""), found["places"], found["block"] or ""
    if not (units + digits + block):
        return None
    top, bottom = int(units + digits or "0"), 10 ** len(digits)
    if block:
        nines = 10 ** len(block) - 1
        top, bottom = top * nines + int(block), bottom * nines
    repeats = bool(block or found["dots"])
    return Printed("decimal", percent, sign * top, bottom * hundred, places=len(digits + block), repeats=repeats)


class _Reader:
    """Reads one step: sides joined by =, each with the usual order of operations."""

    def __init__(self, text: str) -> None:
        self.text, self.at = text, 0
        self.numbers: list[Printed] = []
        self.operations: list[Operation] = []
        self.longest_sum = 0

    def step(self) -> PrintedStep:
        end = self._sum()
        sides = 1
        while self._take("="):
            end = self._sum()
            sides += 1
        if self.at != len(self.text) or sides < 2:
            raise UnreadableStepError(f'"{self.text}" is no equality: stopped at "{self.text[self.at :]}"')
        return PrintedStep(tuple(self.numbers), tuple(self.operations), self.numbers[0], end, self.longest_sum)

    def _sum(self) -> Printed:
        left, addends = self._product(), 1
        while symbol := self._take("+", "-"):
            right = self._product()
            addends = addends + 1 if symbol == "+" else 1
            left = self._operate(symbol, left, right, sums_on=symbol == "+" and addends > 2)
            self.longest_sum = max(self.longest_sum, addends if symbol == "+" else 0)
        return left

    def _product(self) -> Printed:
        left = self._atom()
        while symbol := self._take("*", "/"):
            left = self._operate(symbol, left, self._atom(), sums_on=False)
        return left

    def _atom(self) -> Printed:
        if self._take("("):
            inside = self._sum()
            if not self._take(")"):
                raise UnreadableStepError(f'"{self.text}" has an open bracket')
            return inside
        if self._take("|"):
            inside = self._sum()
            if not self._take("|"):
                raise UnreadableStepError(f'"{self.text}" has an open absolute value')
            return inside._replace(top=abs(inside.top))
        if self.text.startswith("-(", self.at):
            self.at += 1
            inside = self._atom()
            return inside._replace(top=-inside.top)
        self._skip()
        found = _NUMBER.match(self.text, self.at)
        number = _printed(found) if found and found.end() > self.at else None
        if found is None or number is None:
            raise UnreadableStepError(f'"{self.text}" has no number at "{self.text[self.at :]}"')
        self.at = found.end()
        self.numbers.append(number)
        return number

    def _operate(self, symbol: str, left: Printed, right: Printed, *, sums_on: bool) -> Printed:
        result = _result(symbol, left, right)
        if result is None:
            raise UnreadableStepError(f'"{self.text}" divides by zero')
        self.operations.append(Operation(symbol, left, right, result, sums_on))
        return result

    def _skip(self) -> None:
        space = _SPACE.match(self.text, self.at)
        self.at = space.end() if space else self.at

    def _take(self, *symbols: str) -> str:
        self._skip()
        for symbol in symbols:
            if self.text.startswith(symbol, self.at):
                self.at += 1
                return symbol
        return ""


def _result(symbol: str, left: Printed, right: Printed) -> Printed | None:
    """What an operation gives, in the form in which a pupil would hold it on the way: like bottoms stay as they are."""
    if symbol in "+-":
        bottom = lcm(left.bottom, right.bottom)
        sign = 1 if symbol == "+" else -1
        top = left.top * (bottom // left.bottom) + sign * right.top * (bottom // right.bottom)
    else:
        across = symbol == "*"
        top = left.top * (right.top if across else right.bottom)
        bottom = left.bottom * (right.bottom if across else right.top)
        if bottom == 0:
            return None
        top, bottom = lowest(top, bottom)
    if left.percent and right.percent and symbol in "+-":
        return Printed("whole" if top * 100 % bottom == 0 else "decimal", True, top, bottom)
    if "decimal" in (left.kind, right.kind):
        return Printed("whole" if top % bottom == 0 else "decimal", False, top, bottom, places=_places(top, bottom))
    # 9/12 + 3/12 stays 12/12 on the way; 5/8 x 40 is 25.
    if top % bottom == 0 and (symbol in "*/" or left.written_bottom == right.written_bottom == 1):
        return Printed("whole", False, top // bottom, 1)
    return Printed("fraction", False, top, bottom, top, bottom)


def _places(top: int, bottom: int) -> int:
    """Places after the point of a decimal that ends; 0 for one that repeats, which no decimal can print."""
    bottom = lowest(top, bottom)[1]
    twos = fives = 0
    while bottom % 2 == 0:
        bottom, twos = bottom // 2, twos + 1
    while bottom % 5 == 0:
        bottom, fives = bottom // 5, fives + 1
    return max(twos, fives) if bottom == 1 else 0
