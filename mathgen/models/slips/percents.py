"""Slips, section F: percent of a number, and percent change. Percents are rates: 25% is (25, 100)."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("F01", "The percent is not a number of {items} to take away.")
def takes_away_percent(p: int, n: int) -> Wrong:
    return whole(n - p)


@slip("F02", "Dividing by 10 gives 10%. That trick is only for 10%.")
def divide_by_percent(p: int, n: int) -> Wrong:
    return whole(n // p) if p and n % p == 0 else None


@slip("F03", "That is the percent. The whole here is not 100 {items}.")
def percent_is_answer(p: int) -> Wrong:
    return whole(p)


@slip("F04", "A part of the {items} cannot be more than all the {items}.")
def no_hundred(p: int, n: int) -> Wrong:
    return whole(p * n)


@slip("F05", "That is the rest. The question asks for the part that the percent gives.")
def other_share(n: int, part: int) -> Wrong:
    return whole(n - part)


@slip("F06", "A part of the set is less than 100%.")
def whole_over_part(k: int, n: int) -> Wrong:
    return over(n, k)


@slip("F07", "Compare the change with where it started.")
def new_as_base(old: int, new: int) -> Wrong:
    return over(abs(new - old), new)


@slip("F08", "That is a number of {items}, not a percent. What part of the start is it?")
def bare_difference(old: int, new: int) -> Wrong:
    return over(abs(new - old), 100)


@slip("F09", "That is the new amount as a percent of the old. How much is the change?")
def forgot_to_take_100(old: int, new: int) -> Wrong:
    return over(new, old)


@slip("F12", "The bigger set counts more. Add the {items} first.")
def averages_the_percents(k: int, n: int, k2: int, n2: int) -> Wrong:
    return over(k * n2 + k2 * n, 2 * n * n2)


@slip("F13", "The percents are of two different sets. Add the {items}, not the percents.")
def adds_the_percents(k: int, n: int, k2: int, n2: int) -> Wrong:
    return over(k * n2 + k2 * n, n * n2)


@slip("F14", "The number in the question is only the part. The whole is bigger.")
def percent_of_the_part(p: int, part: int) -> Wrong:
    return whole(p * part // 100) if p * part % 100 == 0 else None


@slip("F15", 'The percent is of the number that comes after the word "than."')
def asked_number_as_base(base: int, number: int) -> Wrong:
    """F07 where two groups are compared: nothing started."""
    return new_as_base(base, number)


@slip("F16", "That is a number of {items}, not a percent. What part is it of the number compared with?")
def bare_gap(base: int, number: int) -> Wrong:
    """F08 where two groups are compared."""
    return bare_difference(base, number)


@slip("F17", "That is one number as a percent of the other. What percent is the difference?")
def whole_number_as_percent(base: int, number: int) -> Wrong:
    """F09 where two groups are compared."""
    return forgot_to_take_100(base, number)
