"""Each kind of line on a board that is no verdict and no rounding: read from its text, and held to be true."""

from __future__ import annotations

import re
from collections.abc import Callable
from itertools import pairwise

from mathgen.proof.by_board.in_x import check_tells_x, sides_of, speaks_of_x
from mathgen.proof.by_board.line_numbers import LIST, NUMBER, is_cut, numbers_in, side_of
from mathgen.proof.step_numbers import NotTrue, Pair, in_turn, number

COUNT = re.compile(rf"count {LIST}: \d+")
BOUND = re.compile(r"the (least|greatest) number is (\d+)")
SO = ", so "  # before what follows from a line


class LineReader:
    """Reads lines one after another.

    ``known`` grows, ``end`` is what the last line led to, and ``text`` how it is written there; ``ordered``, ``apart`` and
    ``counted`` are the lists that were put in order, of distances, and of what is counted.
    """

    def __init__(self, known: set[Pair], x: Pair) -> None:
        self.x = x
        self.known = known | {(1, 1)}
        self.end: Pair | None = None
        self.text = ""
        self.ordered: list[tuple[Pair, ...]] = []
        self.apart: list[tuple[Pair, ...]] = []
        self.counted: list[tuple[Pair, ...]] = []
        self.listed: tuple[Pair, ...] = ()  # the list, or the half of one, that the next line tells the middle of

    def need(self, *numbers: Pair) -> None:
        """
        Raises:
            NotTrue: one of the numbers is not known yet.
        """
        for one in numbers:
            if one not in self.known:
                raise NotTrue(f"the board works with {one[0]}/{one[1]}, which nobody gave")

    def led_to(self, result: Pair, text: str) -> None:
        """Takes in the result of a line, and how it is written."""
        self.known.add(result)
        self.end, self.text = result, text

    def read(self, line: str) -> None:
        """
        Raises:
            NotTrue: the line cannot be read, is not true, or works with a number from nowhere.
        """
        if " = " not in line:
            for pattern, take in _IN_WORDS.items():
                if found := pattern.fullmatch(line):
                    take(self, found)
                    return
        if speaks_of_x(line):
            _in_x(self, line)
        elif SO in line:
            _halves(self, *line.split(SO))
        else:
            _equality(self, line)


def _order(reader: LineReader, found: re.Match[str]) -> None:
    reader.listed = numbers_in(found[1])
    if any(one[0] * other[1] > other[0] * one[1] for one, other in pairwise(reader.listed)):
        raise NotTrue(f"{found[0]!r} is not in order")
    reader.ordered.append(reader.listed)


def _half(reader: LineReader, found: re.Match[str]) -> None:
    whole, half = reader.ordered[-1] if reader.ordered else (), numbers_in(found[2])
    size = len(whole) // 2
    if half != (whole[:size] if found[1] == "lower" else whole[len(whole) - size :]):
        raise NotTrue(f"{found[0]!r} is no half of the list")
    reader.listed = half


def _middle(reader: LineReader, found: re.Match[str]) -> None:
    middle = number(found[1])
    if len(reader.listed) % 2 == 0 or reader.listed[len(reader.listed) // 2] != middle:
        raise NotTrue(f"{found[0]!r} does not tell the middle of the list")
    reader.led_to(middle, found[1])


def _distances(reader: LineReader, found: re.Match[str]) -> None:
    far = (number(found[1]), *numbers_in(found[2]))
    reader.need(*far)
    reader.apart.append(far)


def _count(reader: LineReader, found: re.Match[str]) -> None:
    counted, last = numbers_in(found[1]), found[0].rpartition(": ")[2]
    if (len(counted), 1) != number(last):
        raise NotTrue(f"{found[0]!r} counts wrong")
    reader.counted.append(counted)
    reader.led_to(number(last), last)


def _part(reader: LineReader, found: re.Match[str]) -> None:
    if (found[1], found[2] or found[3]) != (found[5], found[6]):
        raise NotTrue(f"{found[0]!r} is not true")
    reader.need(number(found[5]), number(found[6]))
    reader.led_to(number(found[4]), found[4])


def _ratio(reader: LineReader, found: re.Match[str]) -> None:
    if (found[1], found[2]) != (found[4], found[5]):
        raise NotTrue(f"{found[0]!r} is not true")
    reader.need(number(found[1]), number(found[2]))
    reader.led_to(number(f"{found[1]}/{found[2]}"), found[3])


def _opposite(reader: LineReader, found: re.Match[str]) -> None:
    top, bottom = number(found[1])
    reader.need((top, bottom))
    if number(found[2]) != (-top, bottom):
        raise NotTrue(f"{found[0]!r} is not true")
    reader.led_to((-top, bottom), found[2])


def _less(reader: LineReader, found: re.Match[str]) -> None:
    less, apart, greater, result = map(number, found.groups())
    reader.need(less, apart, greater)
    if in_turn("-", [greater, less]) != apart or result != (-apart[0], apart[1]):
        raise NotTrue(f"{found[0]!r} is not true")
    reader.led_to(result, found[4])


def _bound(reader: LineReader, found: re.Match[str]) -> None:
    if number(found[2]) != reader.x:
        raise NotTrue(f"{found[2]} is not the {found[1]} number")
    reader.led_to(reader.x, found[2])


def _in_x(reader: LineReader, line: str) -> None:
    """True for the number that x is, and not for the next one."""
    left, sign, right = sides_of(line)
    if left == "x" and right.endswith("..."):
        reader.need(number(right))
        reader.x = number(right)
    check_tells_x(line, reader.x)
    if left == "x" and sign == "=":
        reader.led_to(reader.x, right)


def _halves(reader: LineReader, told: str, result: str) -> None:
    """6 + 6 = 12, so 6."""
    left, _, total = told.partition(" = ")
    if left != f"{result} + {result}" or in_turn("+", [number(result)] * 2) != number(total):
        raise NotTrue(f"{told!r} does not lead to {result}")
    reader.need(number(total))
    reader.led_to(number(result), result)


def _equality(reader: LineReader, line: str) -> None:
    first, *others = line.split(" = ")
    if not others:
        raise NotTrue(f"{line!r} is no equality")
    if first in others:
        raise NotTrue(f"{line!r} says nothing")
    value, numbers = side_of(first)
    reader.need(*numbers)
    turned = {(one[1], one[0]) for one in numbers if one[0] > 0} if " / " in first else set()
    for side in others:
        if "..." in side and "..." not in first:
            if not is_cut(side, value):
                raise NotTrue(f"{side} does not begin {first}")
            continue
        other, used = side_of(side)
        if other != value:
            raise NotTrue(f"{line!r} is not true")
        if len(used) > 1:  # to divide by a fraction is to multiply by it turned over
            reader.known |= turned
            reader.need(*used)
    reader.led_to(value, others[-1])


_IN_WORDS: dict[re.Pattern[str], Callable[[LineReader, re.Match[str]], None]] = {
    re.compile(rf"in order: {LIST}"): _order,
    re.compile(rf"(upper|lower) half: {LIST}"): _half,
    re.compile(rf"the middle number is {NUMBER}"): _middle,
    re.compile(rf"distances from {NUMBER}: {LIST}"): _distances,
    COUNT: _count,
    re.compile(r"(\d+) (?:of (\d+) equal parts|out of (\d+)): ((\d+)/(\d+))"): _part,
    re.compile(r"(\d+) to (\d+): ((\d+):(\d+))"): _ratio,
    re.compile(rf"the opposite of {NUMBER} is {NUMBER}"): _opposite,
    re.compile(rf"{NUMBER} is {NUMBER} less than {NUMBER}, so {NUMBER}"): _less,
    BOUND: _bound,
}
