"""Number to text, in each school form. Each form here is exact; rounded forms are made from ``rounding`` and say so by name."""

from __future__ import annotations

from functools import lru_cache
from math import gcd

from sympy import Rational

from mathgen.exact.parse import repeating_block
from mathgen.exact.rounding import rounded_text


def fraction(x: Rational) -> str:
    """Lowest terms; a whole number as such.

    >>> fraction(Rational(9, 12)), fraction(Rational(4))
    ('3/4', '4')
    """
    return f"{x.numerator}" if x.denominator == 1 else f"{x.numerator}/{x.denominator}"


def fraction_over(x: Rational, denominator: int) -> str:
    """The number as a count of parts of a set, such as 9 of 12.

    Raises:
        ValueError: the number is not a whole count of such parts.

    >>> fraction_over(Rational(3, 4), 12)
    '9/12'
    """
    if denominator <= 0 or denominator % x.denominator:
        raise ValueError(f"{fraction(x)} is not a whole number of parts over {denominator}")
    return f"{x.numerator * (denominator // x.denominator)}/{denominator}"


def mixed(x: Rational) -> str:
    """A whole number and a proper fraction in lowest terms; only the one where there is no other.

    >>> mixed(Rational(9, 4)), mixed(Rational(3, 4)), mixed(Rational(-8, 4))
    ('2 1/4', '3/4', '-2')
    """
    wholes, parts = divmod(abs(x.numerator), x.denominator)
    if parts == 0 or wholes == 0:
        return fraction(x)
    return f"{'-' if x.numerator < 0 else ''}{wholes} {parts}/{x.denominator}"


@lru_cache(maxsize=4096)
def period(denominator: int) -> tuple[int, int]:
    """Digits before the repeating block and length of the block, of a fraction with this denominator in lowest terms.

    A block of length 0 means that the decimal ends; the first number is then its number of places.

    >>> period(12), period(8), period(7)
    ((2, 1), (3, 0), (0, 6))
    """
    if denominator < 1:
        raise ValueError(f"{denominator} is not a denominator")
    before = 0
    while (shared := gcd(denominator, 10)) > 1:
        denominator //= shared
        before += 1
    if denominator == 1:
        return before, 0
    length, remainder = 1, 10 % denominator
    while remainder != 1:
        remainder = remainder * 10 % denominator
        length += 1
    return before, length


def decimal_places(x: Rational) -> int | None:
    """Places after the point of the exact decimal; None if it does not end.

    >>> decimal_places(Rational(3, 8)), decimal_places(Rational(4)), decimal_places(Rational(1, 3))
    (3, 0, None)
    """
    # Endless blocks can be long, and here only their being there matters: divide out the 2s and 5s, count no remainders.
    rest, places = x.denominator, 0
    while (shared := gcd(rest, 10)) > 1:
        rest //= shared
        places += 1
    return places if rest == 1 else None


def repeating(x: Rational) -> tuple[str, str]:
    """The decimal up to its repeating block, and the block ("" where it ends).

    >>> repeating(Rational(5, 12)), repeating(Rational(3, 4)), repeating(Rational(1, 3))
    (('0.41', '6'), ('0.75', ''), ('0.', '3'))
    """
    before, length = period(x.denominator)
    wholes, remainder = divmod(abs(x.numerator), x.denominator)
    digits = str(remainder * 10 ** (before + length) // x.denominator).zfill(before + length) if before + length else ""
    sign = "-" if x.numerator < 0 else ""
    return f"{sign}{wholes}{'.' if digits else ''}{digits[:before]}", digits[before:]


def decimal(x: Rational, places: int | None = None) -> str:
    """The exact decimal; where it does not end, as a pupil writes it, the block written out and then dots.

    Args:
        x: any exact number.
        places: write exactly this many places, with zeros behind; the number must fit.
    Raises:
        ValueError: the number has more places than asked for. Rounding is ``rounded_text``.

    >>> decimal(Rational(3, 4)), decimal(Rational(4, 5), 2), decimal(Rational(5, 12)), decimal(Rational(1, 7))
    ('0.75', '0.80', '0.41666...', '0.142857142857...')
    """
    if places is not None:
        own = decimal_places(x)
        if own is None or own > places:
            raise ValueError(f"{fraction(x)} has no exact decimal with {places} places")
        return rounded_text(x, places)
    start, block = repeating(x)
    if not block:
        return start
    times = 3 if len(block) < 3 else 2
    before = start.partition(".")[2]
    # After a longer start two turns can look like another block: 0.0110 101 101 is 0.01101 01101, too.
    while repeating_block(before + block * times) != (before, block):
        times += 1
    return f"{start}{block * times}..."


def percent(x: Rational) -> str:
    """The exact percent: a decimal where it ends, a mixed number where it does not.

    >>> percent(Rational(5, 8)), percent(Rational(5, 12))
    ('62.5%', '41 2/3%')
    """
    hundredfold = x * 100
    return f"{mixed(hundredfold) if decimal_places(hundredfold) is None else decimal(hundredfold)}%"


def percent_rounded(x: Rational, places: int) -> str:
    """The percent rounded half up, written with exactly that many places.

    >>> percent_rounded(Rational(2, 3), 1), percent_rounded(Rational(3, 4), 1)
    ('66.7%', '75.0%')
    """
    return f"{rounded_text(x * 100, places)}%"


def ratio(a: int, b: int) -> str:
    """Two counts in order, as they were counted.

    >>> ratio(6, 8)
    '6:8'
    """
    return f"{a}:{b}"


def simplest_ratio(a: int, b: int) -> str:
    """Two counts in order, divided by what they share.

    Raises:
        ValueError: both are zero.

    >>> simplest_ratio(6, 8), simplest_ratio(0, 5)
    ('3:4', '0:1')
    """
    shared = gcd(a, b)
    if shared == 0:
        raise ValueError("0:0 has no simplest form")
    return ratio(a // shared, b // shared)


def money(x: Rational) -> str:
    """Dollars and cents.

    Raises:
        ValueError: the number is not a whole number of cents.

    >>> money(Rational(5, 4)), money(Rational(-1, 2))
    ('$1.25', '-$0.50')
    """
    text = decimal(x, 2)
    return f"-${text[1:]}" if text.startswith("-") else f"${text}"


def cut_decimal(number: Rational, places: int) -> str:
    """The first digits of a decimal, not rounded.

    >>> cut_decimal(Rational(11, 21), 4)
    '0.5238...'
    """
    whole, rest = divmod(int(number * 10**places), 10**places)
    return f"{whole}.{str(rest).rjust(places, '0')}..."
