"""Printed numbers and printed working, read by the audit's own small parser: nothing of the program's is used."""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import cache
from typing import NamedTuple

from sympy import Rational

NUMBER = re.compile(
    r"-?(?:"
    r"\d+ \d+/\d+"  # mixed: 2 1/4
    r"|\d+/\d+"  # fraction: 3/8, no spaces
    r"|(?:\d{1,3}(?:,\d{3})+|\d*)\.\d+(?:\(\d+\)|\.\.\.)?"  # decimal, repeating in brackets or with dots
    r"|\d{1,3}(?:,\d{3})+(?!\d)|\d+"  # whole
    r")%?"
)
_TOKEN = re.compile(rf"\s*(?:({NUMBER.pattern.removeprefix('-?')})|([-+*/()=|]))")


class UnreadableError(ValueError):
    """A text that is no number, or no equality."""


class Token(NamedTuple):
    """A printed number with its form, or a sign."""

    text: str
    value: Rational | None


class Operation(NamedTuple):
    """One + - * / of a line of working: the values on both sides and how a lone number there was printed."""

    sign: str
    left: Rational
    right: Rational
    left_text: str | None  # None where the side is itself worked out
    right_text: str | None


class Line(NamedTuple):
    """One line of working: the value of each side of its equals signs, its numbers and its operations."""

    sides: tuple[Rational, ...]
    numbers: tuple[str, ...]
    operations: tuple[Operation, ...]

    @property
    def true(self) -> bool:
        return len(set(self.sides)) == 1


@cache
def value(text: str) -> Rational:
    """The exact value of a written number; a percent as its fraction, ``3 to 4`` and ``3:4`` as 3/4.

    Raises:
        UnreadableError: anything else.
    """
    text = text.strip()
    ratio = re.fullmatch(r"(\d+)(?::| to )(\d+)", text)
    if ratio:
        return Rational(int(ratio[1]), int(ratio[2]))
    if not NUMBER.fullmatch(text):
        raise UnreadableError(f'"{text}" is no number')
    if text.startswith("-"):
        return -value(text[1:])
    if text.endswith("%"):
        return value(text[:-1]) / 100
    if "/" in text:
        whole, _, part = text.rpartition(" ")
        top, bottom = map(int, part.split("/"))
        if bottom == 0:
            raise UnreadableError(f'"{text}" divides by zero')
        return Rational(int(whole or 0)) + Rational(top, bottom)
    text = text.replace(",", "")
    if "(" in text:
        start, block = text.rstrip(")").split("(")
        return _repeating(start, block)
    if text.endswith("..."):
        return _dotted(text[:-3])
    whole, _, places = text.partition(".")
    return Rational(int((whole + places) or 0), 10 ** len(places))


def _repeating(start: str, block: str) -> Rational:
    whole, _, places = start.partition(".")
    first = Rational(int((whole + places) or 0), 10 ** len(places))
    return first + Rational(int(block), (10 ** len(block) - 1) * 10 ** len(places))


def _dotted(text: str) -> Rational:
    """``0.41666``: the shortest block that stands at the end at least twice in a row, the one that stands there most often first."""
    whole, _, places = text.partition(".")
    best: tuple[int, int, int] | None = None
    for length in range(1, len(places) // 2 + 1):
        block = places[-length:]
        times = 1
        while places[: len(places) - times * length].endswith(block):
            times += 1
        # Three times a block of one or two digits, or twice a longer one, says that it repeats.
        if times >= (3 if length < 3 else 2) and best is None:
            best = (length, times, len(places) - times * length)
    if best is None:
        raise UnreadableError(f'"{text}..." does not show what repeats')
    length, _, before = best
    return _repeating(f"{whole}.{places[:before]}", places[-length:])


class _Reader:
    def __init__(self, text: str) -> None:
        self.text, self.at, self.tokens = text, 0, []
        while self.at < len(text.rstrip()):
            found = _TOKEN.match(text, self.at)
            if not found:
                raise UnreadableError(f'"{text}" has something unreadable at "{text[self.at :]}"')
            self.tokens.append(Token(found[1], value(found[1])) if found[1] else Token(found[2], None))
            self.at = found.end()
        self.at = 0
        self.operations: list[Operation] = []

    tokens: list[Token]

    def peek(self) -> str:
        return self.tokens[self.at].text if self.at < len(self.tokens) else ""

    def sides(self) -> list[Rational]:
        found = [self.sum()[0]]
        while self.peek() == "=":
            self.at += 1
            found.append(self.sum()[0])
        if self.at != len(self.tokens):
            raise UnreadableError(f'"{self.text}" goes on after its end')
        return found

    def sum(self) -> tuple[Rational, str | None]:
        return self._chain("+-", self.product)

    def product(self) -> tuple[Rational, str | None]:
        return self._chain("*/", self.atom)

    def _chain(self, signs: str, part: Callable[[], tuple[Rational, str | None]]) -> tuple[Rational, str | None]:
        left, text = part()
        while self.peek() and self.peek() in signs:
            sign = self.peek()
            self.at += 1
            right, right_text = part()
            self.operations.append(Operation(sign, left, right, text, right_text))
            if sign == "/" and right == 0:
                raise UnreadableError(f'"{self.text}" divides by zero')
            left = {"+": left + right, "-": left - right, "*": left * right, "/": left / right if right else left}[sign]
            text = None
        return left, text

    def atom(self) -> tuple[Rational, str | None]:
        if self.at >= len(self.tokens):
            raise UnreadableError(f'"{self.text}" stops short')
        token = self.tokens[self.at]
        self.at += 1
        if token.text == "(":
            inside = self.sum()
            if self.peek() != ")":
                raise UnreadableError(f'"{self.text}" has an open bracket')
            self.at += 1
            return inside
        if token.text == "|":
            inside, _ = self.sum()
            if self.peek() != "|":
                raise UnreadableError(f'"{self.text}" has an open absolute value')
            self.at += 1
            return max(inside, -inside), None
        if token.text == "-":
            number, text = self.atom()
            return -number, f"-{text}" if text else None
        if token.value is None:
            raise UnreadableError(f'"{self.text}" has "{token.text}" where a number should be')
        return token.value, token.text


@cache
def line(text: str) -> Line:
    """A line of working.

    Raises:
        UnreadableError: no chain of sides joined by equals signs.
    """
    reader = _Reader(text)
    sides = reader.sides()
    if len(sides) < 2:
        raise UnreadableError(f'"{text}" has no equals sign')
    return Line(tuple(sides), tuple(token.text for token in reader.tokens if token.value is not None), tuple(reader.operations))


def rounded_half_up(exact: Rational, places: int) -> Rational:
    """5 in the dropped place goes up, as at school."""
    unit = Rational(10) ** places
    scaled = exact * unit
    return Rational((2 * scaled.p + scaled.q) // (2 * scaled.q)) / unit


def is_tie(exact: Rational, places: int) -> bool:
    """Whether the value lies half way between two roundings."""
    scaled = exact * Rational(10) ** places
    return bool((scaled * 2).q == 1 and scaled.q != 1)


def places_of(exact: Rational) -> int | None:
    """Places of the exact decimal; None where it never ends."""
    bottom, twos, fives = exact.q, 0, 0
    while bottom % 2 == 0:
        bottom, twos = bottom // 2, twos + 1
    while bottom % 5 == 0:
        bottom, fives = bottom // 5, fives + 1
    return max(twos, fives) if bottom == 1 else None


def fraction_bottom(text: str) -> int | None:
    """The bottom number that is written in a printed number, or None: ``3/8`` 8, ``2 1/4`` 4."""
    found = re.search(r"/(\d+)%?$", text)
    return int(found[1]) if found else None


def decimals(text: str) -> int:
    """Places after the point as printed; 0 where there is no point."""
    found = re.search(r"\.(\d+)", text)
    return len(found[1]) if found else 0
