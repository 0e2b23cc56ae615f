"""Rounding the school way: half up, away from zero below zero. Python's own rounding goes to even and is never used."""

from __future__ import annotations

from sympy import Rational


def _scaled(x: Rational, places: int) -> tuple[int, int]:
    """Numerator and denominator of ``x`` counted in units of the asked place."""
    return (x.numerator * 10**places, x.denominator) if places >= 0 else (x.numerator, x.denominator * 10**-places)


def rounded(x: Rational, places: int) -> Rational:
    """The number rounded half up to a place.

    Args:
        x: any exact number.
        places: digits after the point; 0 for whole numbers, -1 for tens.
    Source:
        "5 or more goes up", common practice in US schools; the standards name no rule for ties.

    >>> rounded(Rational(1, 8), 2), rounded(Rational(-1, 8), 2), rounded(Rational(25), -1)
    (13/100, -13/100, 30)
    """
    top, bottom = _scaled(x, places)
    size = (2 * abs(top) + bottom) // (2 * bottom)
    size = -size if top < 0 else size
    return Rational(size, 10**places) if places >= 0 else Rational(size * 10**-places)


def ties(x: Rational, places: int) -> bool:
    """Whether the number lies exactly half way between two neighbors at that place, where rounding rules part ways.

    >>> ties(Rational(3, 8), 2), ties(Rational(3, 8), 1)
    (True, False)
    """
    top, bottom = _scaled(x, places)
    return 2 * top % bottom == 0 and top % bottom != 0


def rounded_text(x: Rational, places: int) -> str:
    """The number rounded half up, written with exactly that many places.

    >>> rounded_text(Rational(4, 5), 2), rounded_text(Rational(2, 3), 0)
    ('0.80', '1')
    """
    number = rounded(x, places)
    if places <= 0:
        return str(number)
    units = number.numerator * (10**places // number.denominator)
    digits = str(abs(units)).zfill(places + 1)
    return f"{'-' if units < 0 else ''}{digits[:-places]}.{digits[-places:]}"
