"""What a key prints for a number, and the other right ways to write it that it lists."""

from __future__ import annotations

from functools import lru_cache

from sympy import Rational

from mathgen.exact.demand import Demand
from mathgen.exact.forms import decimal, decimal_places, fraction, fraction_over, mixed, percent, percent_rounded, ratio
from mathgen.exact.rounding import rounded_text

LONGEST_DECIMAL = 4  # places; a longer one is right, too, but no pupil would write it


@lru_cache(maxsize=65536)
def shown(x: Rational, demand: Demand, over: int | None = None) -> str:
    """What the key prints.

    Args:
        x: the exact answer.
        demand: the form that the words ask for.
        over: how many make the whole, where the answer was counted as part of a set: 12 for ``3/12``.
    Returns:
        The answer in the demanded form; for "any" as it was counted, or else in lowest terms.
    Raises:
        ValueError: the number has no such form (3/4 as a whole number), or a name is asked for.

    >>> shown(Rational(1, 4), Demand(), 12), shown(Rational(9, 4), Demand("mixed")), shown(Rational(2, 3), Demand("percent", 1))
    ('3/12', '2 1/4', '66.7%')
    """
    form, places = demand
    if places is not None:
        return percent_rounded(x, places) if form == "percent" else rounded_text(x, places)
    match form:
        case "any":
            return fraction(x) if over is None or x.denominator == 1 else fraction_over(x, over)
        case "simplest" | "fraction":
            return fraction(x)
        case "mixed" | "mixed:any":
            return mixed(x)
        case "decimal":
            return decimal(x)
        case "percent":
            return percent(x)
        case "ratio":
            return ratio(x.numerator, x.denominator)
        case "ratio:any":
            return fraction_over(x, x.denominator if over is None else over).replace("/", ":")
        case "whole":
            if x.denominator != 1:
                raise ValueError(f"{fraction(x)} is not a whole number")
            return fraction(x)
        case _:
            raise ValueError(f"a number can't be shown where the demand is {demand}")


def _percents(x: Rational) -> tuple[str, ...]:
    """The exact percent in short forms: ``37.5%`` and ``37 1/2%``."""
    hundredfold = x * 100
    exact = f"{mixed(hundredfold)}%"
    places = decimal_places(hundredfold)
    return (exact,) if places is None or places > LONGEST_DECIMAL - 2 else (percent(x), exact)


def _any_forms(x: Rational, over: int | None) -> tuple[str, ...]:
    forms = [fraction(x), mixed(x)]
    part_of_set = over is not None and 0 <= x <= 1
    if part_of_set and over is not None:
        forms.append(fraction_over(x, over))
    places = decimal_places(x)
    if places is not None and places <= LONGEST_DECIMAL:
        forms.append(decimal(x))
    # A share can be said as a percent. "225%" for a mean of 2 1/4 pins would be equal, but nobody would thank the key for it.
    if part_of_set or (x.denominator != 1 and 0 < x < 1):
        forms.extend(_percents(x))
    return tuple(forms)


@lru_cache(maxsize=65536)
def accepted(x: Rational, demand: Demand, over: int | None = None) -> tuple[str, ...]:
    """The right ways to write the answer that a key lists, what it prints first.

    Args and Raises:
        as for ``shown``.
    Returns:
        At most six texts, no two the same, each right under the demand.

    >>> accepted(Rational(3, 8), Demand(), 16)
    ('6/16', '3/8', '0.375', '37.5%', '37 1/2%')
    >>> accepted(Rational(3, 4), Demand("percent", 1))
    ('75.0%', '75%')
    """
    first = shown(x, demand, over)
    form, places = demand
    others: tuple[str, ...] = ()
    if places is not None:
        own = decimal_places(x * 100 if form == "percent" else x)
        if own is not None and own < places:
            others = (percent(x) if form == "percent" else decimal(x),)
    elif form == "any":
        others = _any_forms(x, over)
    elif form in ("simplest", "fraction"):
        others = (mixed(x),)
    elif form == "percent":
        others = _percents(x)
    elif form in ("ratio", "ratio:any"):
        others = (first.replace(":", " to "), first.replace(":", "/"))
        if form == "ratio:any":
            others += (ratio(x.numerator, x.denominator),)
    return tuple(dict.fromkeys((first, *others)))
