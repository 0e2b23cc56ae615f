"""Slips, section C: several times a fraction, its equal shares, and two parts held side by side. All are ours."""

from __future__ import annotations

from math import gcd, lcm

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("C40", "The bottom number says how big the parts are. Multiply the top number only.")
def multiplies_the_bottom(top: int, bottom: int, times: int) -> Wrong:
    return over(top, bottom * times)


@slip("C41", "Several times the same fraction: multiply; do not add.")
def adds_the_number(top: int, bottom: int, times: int) -> Wrong:
    return over(times * bottom + top, bottom)


@slip("C42", "That is the number of parts, not of sets. Keep the bottom number.")
def drops_the_bottom(top: int, times: int) -> Wrong:
    return whole(top * times)


@slip("C45", "Read the question again: {items} {down} or {items} {standing}?")
def the_other_fraction_repeated(top: int, bottom: int) -> Wrong:
    shared = gcd(top, bottom)
    return over(top // shared, bottom // shared)


@slip("C46", "A share is smaller than the fraction. Divide; do not multiply.")
def multiplies_for_a_share_of_a_fraction(bottom: int, shares: int) -> Wrong:
    return over(shares, bottom)


@slip("C47", "Each part is cut into smaller ones. Multiply the bottom number.")
def divides_the_bottom(bottom: int, shares: int) -> Wrong:
    return over(1, bottom // shares) if bottom % shares == 0 and bottom > shares else None


@slip("C48", "Each part is cut into smaller ones. Multiply the bottom number; do not add.")
def adds_to_the_bottom(bottom: int, shares: int) -> Wrong:
    return over(1, bottom + shares)


@slip("C43", '"How much greater" asks for the difference. Take away.')
def adds_for_a_difference(a: int, b: int, c: int, d: int) -> Wrong:
    bottom = lcm(b, d)
    return over(a * (bottom // b) + c * (bottom // d), bottom)


@slip("C44", "That is the greater part itself. How much greater is that part than the other?")
def greater_part_for_a_difference(a: int, b: int) -> Wrong:
    return over(a, b)


@slip("B34", "The whole is all the {items} {set_up}, of every color.")
def own_set_wins(winner: str) -> Wrong:
    """The color of which the greater part of its own set was knocked down."""
    return winner


@slip("E37", "Line up the points. Tenths go with tenths.")
def difference_lined_up_at_the_right(one: str, other: str) -> Wrong:
    """0.75 - 0.5 as 0.70, and 0.3 - 0.22 as 0.19: the greater number of digits first."""
    digits, digits2 = one.partition(".")[2], other.partition(".")[2]
    top = abs(int(digits or "0") - int(digits2 or "0"))
    return over(top, 10 ** max(len(digits), len(digits2))) if len(digits) != len(digits2) and top else None


@slip("E39", "You cannot switch the digits. Trade 1 from the place on the left.")
def smaller_digit_from_larger(one: str, other: str) -> Wrong:
    """0.3 - 0.22 as 0.12: in each place the smaller digit is taken from the larger one."""
    places = max(len(text.partition(".")[2]) for text in (one, other))
    digits, digits2 = (text.partition(".")[2].ljust(places, "0") for text in (one, other))
    switched = any(a < b for a, b in zip(digits, digits2, strict=True))
    apart = "".join(str(abs(int(a) - int(b))) for a, b in zip(digits, digits2, strict=True))
    return over(int(apart), 10**places) if switched else None


@slip("C49", "That is the part of all trials. One set is what is {set_up} for one trial.")
def total_over_all_trials(part: int, total: int) -> Wrong:
    return over(part, total)


@slip("C50", "There is a remainder. What part of one more set is that?")
def only_the_full_sets(part: int, size: int) -> Wrong:
    """D17 where sets are counted and nothing is shared."""
    return whole(part // size)


@slip("C51", "The last set is not full. What part of that set is there?")
def last_set_taken_as_full(part: int, size: int) -> Wrong:
    """D19 where sets are counted and nothing is shared."""
    return whole(part // size + 1)


@slip("C52", "That is a number of {items}. How many sets do those make?")
def counts_no_sets(part: int) -> Wrong:
    return whole(part)
