"""Slips, section D: between fractions, decimals and percents."""

from __future__ import annotations

from math import gcd

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("D01", "The part is less than the whole, so the decimal is less than 1.")
def point_for_bar(a: int, b: int) -> Wrong:
    if b % 100 == 0:
        return None  # 48.100 would be shown as 48.1, which nobody writes for 48/100
    return over(a * 10 ** len(str(b)) + b, 10 ** len(str(b)))


@slip("D02", "Do not copy the digits. A decimal shows tenths and hundredths.")
def glued_digits(a: int, b: int) -> Wrong:
    if b % 10 == 0:
        return None  # 0.610 would be shown as 0.61, which nobody writes for 6/10
    digits = f"{a}{b}"
    return over(int(digits), 10 ** len(digits))


@slip("D22", "Write all the digits. This decimal is rounded.")
def rounded_to_hundredths(k: int, n: int) -> Wrong:
    """Ours: 0.38 for 3/8."""
    return over((200 * k + n) // (2 * n), 100) if 1000 * k % n == 0 and 100 * k % n else None


@slip("D04", "Look at the bottom number: are the parts tenths?")
def top_as_decimal(a: int) -> Wrong:
    return over(a, 10) if a < 10 else None


@slip("D05", "Divide the top number by the bottom number.")
def divide_backwards(a: int, b: int) -> Wrong:
    return over(b, a)


@slip("D07", "That is a number of {items}. A percent tells how many out of 100.")
def top_as_percent(k: int) -> Wrong:
    return over(k, 100)


@slip("D09", "Divide by all the {items} {set_up}.")
def rest_percent(k: int, n: int) -> Wrong:
    return over(k, n - k)


@slip("D17", "There is a remainder. Share the remainder, too.")
def drops_the_remainder(a: int, b: int) -> Wrong:
    """Ours: only the whole number of a quotient."""
    return whole(a // b)


@slip("D18", "Tenths stand in the first place after the decimal point.")
def tenths_one_place_late(k: int, n: int) -> Wrong:
    """Ours: 7 tenths written as 0.07."""
    return (10 * k // n, 100) if 10 * k % n == 0 and 10 * k < 10 * n else None


@slip("D19", "That shares out more than there is. Share only the remainder.")
def rounds_the_share_up(a: int, b: int) -> Wrong:
    """Ours: the whole number after a quotient."""
    return whole(a // b + 1)


@slip("D20", "Which number is shared? Divide that number.")
def shares_backwards(a: int, b: int) -> Wrong:
    """D05 of a story about sharing. Only where the fraction is shown as the pupil writes it."""
    return over(b, a) if gcd(a, b) == 1 else None


@slip("D08", "A percent tells how many out of 100. The bottom number is not a percent.")
def bottom_as_percent(b: int) -> Wrong:
    return over(b, 100)


@slip("D10", "A percent counts hundredths. Is the part really less than 1%?")
def sign_stuck_on(k: int, n: int) -> Wrong:
    return over(k, 100 * n)


@slip("D11", "A percent counts hundredths, not tenths or thousandths. Look at the places again.")
def one_place_off(k: int, n: int) -> Wrong:
    return over(k, 10 * n)


@slip("D12", "Look at the places: the first two places after the point are the percent.")
def digits_as_percent(digits: int) -> Wrong:
    return over(digits, 100)


@slip("D13", "Percent means hundredths. The first place after the point is tenths.")
def percent_behind_point(p: int) -> Wrong:
    return over(p, 10) if p < 10 else None


@slip("D15", "Look at the next digit before you stop.")
def chopped(k: int, n: int) -> Wrong:
    return over(10 * k // n, 10)


@slip("D21", "The part is less than the whole, so the decimal is less than 1.")
def sign_left_off(k: int, n: int) -> Wrong:
    """Ours: 75% written as 75."""
    return over(100 * k, n)
