"""Slips, sections E and N: decimals compared and rounded, and decimals that go on without end."""

from __future__ import annotations

from math import gcd

from mathgen.exact.forms import period
from mathgen.models.slips.comparing_fractions import fewer_left_wins, more_pins_wins
from mathgen.models.slips.rule import Wrong, over, slip, whole


def _digits(text: str) -> int:
    return int(text.partition(".")[2])


@slip("E01", "More digits do not make a decimal greater. Compare the tenths first.")
def longer_is_larger(first: str, second: str, one: str, other: str) -> Wrong:
    return more_pins_wins(first, second, _digits(one), _digits(other))


@slip("E02", "More digits do not make a decimal smaller. Compare the tenths first.")
def shorter_is_larger(first: str, second: str, one: str, other: str) -> Wrong:
    return fewer_left_wins(first, second, len(one), len(other))


@slip("E11", "Which place did the question ask for?")
def wrong_place(k: int, n: int) -> Wrong:
    """The neighboring place of tenths: ones. To hundredths a pupil would be right, but for the place."""
    return whole((2 * k + n) // (2 * n))


@slip("E12", "Round up only where the next digit is 5 or more.")
def always_up(k: int, n: int) -> Wrong:
    """Ours: D15 the other way round."""
    return over(10 * k // n + 1, 10)


def _digits_of(k: int, n: int) -> tuple[int, int, int]:
    """Digits before the repeating ones and those that repeat, as one number; how many there are of each."""
    before, block = period(n // gcd(k, n))
    return k * 10 ** (before + block) // n, before, block


@slip("N01", "The digits go on. A decimal that stops here is a little less.")
def cuts_the_repeating_decimal(k: int, n: int) -> Wrong:
    digits, before, block = _digits_of(k, n)
    return over(digits, 10 ** (before + block))


@slip("N06", "The digits go on. A decimal that stops here is a little less.")
def stops_after_two_places(k: int, n: int) -> Wrong:
    """N01, where the decimal is the answer: 0.66 for 0.666..., 0.16 for 0.1666..."""
    _, before, block = _digits_of(k, n)
    places = max(2, before + block)
    return over(k * 10**places // n, 10**places) if block else None


@slip("N02", "Only some of the digits repeat. Take away those that do not.")
def all_digits_over_nines(k: int, n: int) -> Wrong:
    digits, before, block = _digits_of(k, n)
    return over(digits, 10 ** (before + block) - 1)


@slip("N03", "The digits before the repeating ones count, too.")
def only_the_repeating_digits(k: int, n: int) -> Wrong:
    digits, _, block = _digits_of(k, n)
    return over(digits % 10**block, 10**block - 1)


@slip("N04", "That part {was_down}. The question asks for the rest.")
def part_for_the_rest(k: int, n: int) -> Wrong:
    return over(k, n)


@slip("N05", "The digits go on. Multiply so that the repeating digits line up, then subtract.")
def cuts_or_repeats_too_much(judged: str) -> Wrong:
    """N01 and N02, where a fraction is to be judged."""
    return judged
