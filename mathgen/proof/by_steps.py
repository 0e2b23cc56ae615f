"""Route 1: the printed steps, read from their text and checked in pairs of whole numbers.

Each step has to be a true equality; every number it works with has to be a printed or counted given, an earlier result, or
one whole; and the last one has to end in the answer.
"""

from __future__ import annotations

import re
from functools import lru_cache

_PAIR = tuple[int, int]
_NUMBER = re.compile(r"(?:(\d+) )?(\d+)/(\d+)(%?)|(\d+)(?:\.(\d+))?(%?)")
_OPERATOR = re.compile(r" ([-+*/]) ")


class NotTrue(ValueError):
    """A step that is no true equality, works with a number from nowhere, or does not lead to the answer."""


def _lowest(top: int, bottom: int) -> _PAIR:
    a, b = top, bottom
    while b:
        a, b = b, a % b
    return (top // a, bottom // a) if a else (0, 1)


def number(text: str) -> _PAIR:
    """A number of a step as a pair of whole numbers in lowest terms.

    Raises:
        NotTrue: no number.
    """
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
    return _lowest(a, b)


@lru_cache(maxsize=65536)
def _read(step: str) -> tuple[tuple[_PAIR, ...], _PAIR]:
    """The numbers that a step works with, and its result, once its equality is known to be true."""
    left, equals, right = step.partition(" = ")
    if not equals:
        raise NotTrue(f"{step!r} is no equality")
    pieces = _OPERATOR.split(left)
    numbers = tuple(number(piece) for piece in pieces[::2])
    operators = pieces[1::2]
    if len(set(operators)) > 1:
        raise NotTrue(f"{step!r} mixes operations")
    top, bottom = numbers[0]
    for sign, (other_top, other_bottom) in zip(operators, numbers[1:], strict=True):
        if sign == "+":
            top, bottom = top * other_bottom + other_top * bottom, bottom * other_bottom
        elif sign == "-":
            top, bottom = top * other_bottom - other_top * bottom, bottom * other_bottom
        elif sign == "*":
            top, bottom = top * other_top, bottom * other_bottom
        elif other_top == 0:
            raise NotTrue(f"{step!r} divides by zero")
        else:
            top, bottom = top * other_bottom, bottom * other_top
    result = number(right)
    if _lowest(top, bottom) != result:
        raise NotTrue(f"{step!r} is not true")
    return numbers, result


def follow(steps: tuple[str, ...], givens: tuple[str, ...], operations: int) -> tuple[_PAIR, ...]:
    """The result of each step, each one true and made from what is known.

    Args:
        steps: equalities in ASCII.
        givens: numbers that the pupil has, as printed or counted.
        operations: how many operations the ask has; there are at least as many results.
    Raises:
        NotTrue: see above.
    """
    known = {number(given) for given in givens}
    known.add((1, 1))
    results = []
    done = 0
    for step in steps:
        numbers, result = _read(step)
        for one in numbers:
            if one not in known:
                raise NotTrue(f"{step!r} works with a number that nobody gave")
        done += max(len(numbers) - 1, 0)
        known.add(result)
        results.append(result)
    if done < operations:
        raise NotTrue(f"{operations} operations, but steps for {done}")
    return tuple(results)

