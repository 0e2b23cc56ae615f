"""Slips, sections D and E: decimals added, taken away, multiplied and divided. All are ours."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


def _places(text: str) -> int:
    return len(text.partition(".")[2])


def _digits(text: str) -> int:
    return int(text.partition(".")[2] or "0")


@slip("D31", "That is only one of the parts. The question asks for both together.")
def one_decimal_part_only(k: int, n: int) -> Wrong:
    return over(k, n)


@slip("E31", "Line up the points. Tenths go with tenths.")
def digits_lined_up_at_the_right(one: str, other: str) -> Wrong:
    """0.2 + 0.35 as 0.37."""
    places = max(_places(one), _places(other))
    return over(_digits(one) + _digits(other), 10**places) if _places(one) != _places(other) else None


@slip("E32", "The question asks for both parts together. Add.")
def takes_away_decimals_for_a_sum(one: str, other: str) -> Wrong:
    places = max(_places(one), _places(other))
    top = abs(_digits(one) * 10 ** (places - _places(one)) - _digits(other) * 10 ** (places - _places(other)))
    return over(top, 10**places) if top else None


@slip("E33", "Line up the points. Tenths go with tenths.")
def rest_lined_up_at_the_right(one: str, other: str) -> Wrong:
    """1 - 0.2 - 0.35 as 1 - 0.37."""
    places = max(_places(one), _places(other))
    top = 10**places - _digits(one) - _digits(other)
    return over(top, 10**places) if _places(one) != _places(other) and top > 0 else None


@slip("E34", "Look at the places after the point. Is the part less than the whole?")
def point_one_place_right(number: int) -> Wrong:
    return whole(number)


@slip("E35", "The whole is more than its part. Divide; do not multiply.")
def multiplies_for_the_whole(goal: int, k: int, n: int) -> Wrong:
    return whole(goal * k // n) if goal * k % n == 0 else None


@slip("E36", "Move the point in both numbers alike before you divide.")
def point_moved_once(number: int) -> Wrong:
    """30 / 0.75 as 30 / 7.5, where that is a whole number."""
    return whole(number // 10) if number % 10 == 0 else None


@slip("E38", "Add first, then round once.")
def rounds_before_adding(k: int, k2: int, n: int) -> Wrong:
    """0.14 + 0.14 as 0.1 + 0.1, to the nearest tenth."""
    return over((20 * k + n) // (2 * n) + (20 * k2 + n) // (2 * n), 10)
