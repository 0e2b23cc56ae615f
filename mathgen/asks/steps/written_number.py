"""A number as it is written: a pair of whole numbers (top, bottom) beside its text, so that 9/12 stays 9/12."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise
from math import gcd, lcm
from typing import NamedTuple


class Number(NamedTuple):
    """A number as written: its value top/bottom, and its text."""

    top: int
    bottom: int
    text: str


def whole(number: int) -> Number:
    """A whole number."""
    return Number(number, 1, str(number))


def over(top: int, bottom: int) -> Number:
    """A fraction as it stands, passing 1 or not; a whole number where the bottom is 1."""
    return Number(top, bottom, f"{top}/{bottom}" if bottom != 1 else str(top))


def lowest(top: int, bottom: int) -> tuple[int, int]:
    """Top and bottom in lowest terms."""
    shared = gcd(top, bottom)
    return top // shared, bottom // shared


def mixed(top: int, bottom: int) -> Number:
    """A fraction as a mixed number where it passes 1."""
    wholes, rest = divmod(top, bottom)
    if rest == 0:
        return whole(wholes)
    return Number(top, bottom, f"{wholes} {rest}/{bottom}" if wholes else f"{rest}/{bottom}")


def terminating(top: int, bottom: int) -> str | None:
    """The decimal of top/bottom where it ends within four places, else None."""
    for places in range(5):
        scaled, rest = divmod(top * 10**places, bottom)
        if rest == 0:
            digits = str(scaled).rjust(places + 1, "0")
            return f"{digits[:-places]}.{digits[-places:]}" if places else digits
    return None


def percent(top: int, bottom: int) -> str:
    """The exact percent of top/bottom: ``62.5%``, or ``41 2/3%`` where the decimal does not end."""
    decimal = terminating(100 * top, bottom)
    return f"{decimal if decimal is not None else mixed(*lowest(100 * top, bottom)).text}%"


def dollars(cents: int) -> str:
    """An amount with its two places: ``0.25``."""
    return f"{cents // 100}.{cents % 100:02}"


def through_mixed(top: int, bottom: int) -> list[str]:
    """A fraction as a mixed number, then that in lowest terms: 84/8 = 10 4/8, 10 4/8 = 10 1/2."""
    wholes, rest = divmod(top, bottom)
    forms = [f"{top}/{bottom}"]
    if wholes and rest:
        forms.append(f"{wholes} {rest}/{bottom}")
    forms.append(mixed(*lowest(top, bottom)).text)
    return [f"{one} = {other}" for one, other in pairwise(forms) if one != other]


def listed(numbers: Sequence[Number]) -> str:
    """``6, 8, 9``."""
    return ", ".join(one.text for one in numbers)


def by_size(numbers: Sequence[Number]) -> Callable[[Number], int]:
    """What to sort numbers by: their tops over one bottom number."""
    bottom = lcm(*(one.bottom for one in numbers))
    return lambda one: one.top * (bottom // one.bottom)


def side_by_side(numbers: list[Number]) -> list[Number]:
    """The numbers over one bottom number, or with as many places."""
    places = max(len(one.text.partition(".")[2]) for one in numbers)
    if places:
        padded = [one.text + "0" * (places - len(one.text.partition(".")[2])) for one in numbers]
        return [one._replace(text=text) if "." in text else one for one, text in zip(numbers, padded, strict=True)]
    ready = [one for one in numbers if "/" in one.text or one.bottom == 1]  # a mean that comes out whole is ready
    bottom = lcm(*(one.bottom for one in ready))
    return [over(one.top * (bottom // one.bottom), bottom) if one in ready and one.bottom != bottom else one for one in numbers]
