"""The numbers of printed steps as pairs of whole numbers, top and bottom in lowest terms."""

from __future__ import annotations

import re
from collections.abc import Sequence

_NUMBER = re.compile(r"(?:(\d+) )?(\d+)/(\d+)(%?)|(\d+)(?:\.(\d+))?(%?)")
_REPEATING = re.compile(r"(\d+)\.(\d+)\.\.\.")
Pair = tuple[int, int]


class NotTrue(ValueError):
    """A step that is no true equality, is idle, works with a number from nowhere, or does not lead to the answer."""


def lowest(top: int, bottom: int) -> Pair:
    """The pair without common factors."""
    a, b = top, bottom
    while b:
        a, b = b, a % b
    return (top // a, bottom // a) if a else (0, 1)


def number(text: str) -> Pair:
    """A number of a step as a pair of whole numbers in lowest terms.

    Raises:
        NotTrue: no number.
    """
    if text.isdecimal():
        return int(text), 1
    if text[:1] == "-" and text[1:2].isdigit():
        size = number(text[1:])
        return -size[0], size[1]
    endless = _REPEATING.fullmatch(text)
    if endless is not None:
        return _repeating(*endless.groups())
    found = _NUMBER.fullmatch(text)
    if found is None:
        raise NotTrue(f"{text!r} is no number")
    whole, top, bottom, percent, units, decimals, percent_too = found.groups()
    if top is not None:
        a, b = int(whole or 0) * int(bottom) + int(top), int(bottom)
    else:
        a, b = int(units + (decimals or "")), 10 ** len(decimals or "")
    if percent or percent_too:
        b *= 100
    if b == 0:
        raise NotTrue(f"{text!r} divides by zero")
    return lowest(a, b)


def in_turn(sign: str, numbers: Sequence[Pair]) -> Pair:
    """What numbers come to by one sign, from left to right.

    Raises:
        NotTrue: it divides by zero.
    """
    top, bottom = numbers[0]
    for a, b in numbers[1:]:
        if sign in "+-":
            top, bottom = top * b + (a if sign == "+" else -a) * bottom, bottom * b
        elif sign == "*":
            top, bottom = top * a, bottom * b
        elif a == 0:
            raise NotTrue("divides by zero")
        else:
            top, bottom = top * b, bottom * a
    return lowest(top, bottom)


def compared(one: Pair, other: Pair) -> str:
    """The sign that stands between two numbers: ``>``, ``<`` or ``=``."""
    apart = one[0] * other[1] - other[0] * one[1]
    return ">" if apart > 0 else "<" if apart < 0 else "="


def _repeating(units: str, digits: str) -> Pair:
    """A decimal without end: what stands at the end twice in a row goes on, over as many nines."""
    turns = [size for size in range(1, len(digits) // 2 + 1) if digits[-size:] == digits[-2 * size : -size]]
    if not turns:
        raise NotTrue(f"{units}.{digits}... does not show what repeats")
    size = turns[0]
    start = len(digits) - size
    while start > 0 and digits[start - 1] == digits[start - 1 + size]:
        start -= 1
    first, further = int(units + digits[:start]), int(units + digits[: start + size])
    return lowest(further - first, 10**start * (10**size - 1))
