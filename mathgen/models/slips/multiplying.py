"""Slips, section M: equal groups, multiplied and divided."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip, whole

_FACTS = 12  # the largest factor of a product that is known by heart


@slip("M01", "The number is the same each time. Multiply, do not add.")
def adds_for_product(groups: int, size: int) -> Wrong:
    return whole(groups + size)


@slip("M02", "You are one group short. How many groups are there?")
def one_group_short(groups: int, size: int) -> Wrong:
    return whole((groups - 1) * size)


@slip("M03", "The total is known. Divide it into equal parts, do not take away.")
def takes_away_for_quotient(total: int, known: int) -> Wrong:
    return whole(total - known)


@slip("M04", "The answer cannot be more than the total. Divide.")
def multiplies_for_quotient(total: int, known: int) -> Wrong:
    return whole(total * known) if total * known <= 100 else None


@slip("M05", "You are 1 away. Check: multiply your answer by the other number.", unless_printed=True)
def one_group_off(quotient: int, other: int) -> Wrong:
    """A fact that is not quite known; nobody is 1 away from 144 / 2 = 72."""
    return whole(quotient - 1) if max(quotient, other) <= _FACTS else None


@slip("M06", "Tens times ones gives tens. Did you leave out a zero?")
def loses_the_zero(product: int) -> Wrong:
    return whole(product // 10) if product % 10 == 0 else None


@slip("M07", "Did you add the tens that you carried?")
def drops_what_is_carried(one: int, other: int) -> Wrong:
    """One number has a single digit: each digit of the other is multiplied, and only the first column is written out whole."""
    single, long = sorted((one, other))
    if single >= 10 or long < 10:
        return None
    first, *rest = [single * int(digit) for digit in str(long)]
    return whole(int("".join([str(first), *(str(column % 10) for column in rest)])))


@slip("M08", "The second row multiplies tens. Write a 0 in the ones place first.")
def forgets_to_shift(one: int, other: int) -> Wrong:
    """Both numbers have two digits or more: the row of the tens is written as if they were ones."""
    top, bottom = max(one, other), min(one, other)
    return whole(sum(top * int(digit) for digit in str(bottom))) if bottom >= 10 else None


@slip("M09", "Look at each place of the quotient. Is a 0 missing?")
def leaves_out_a_zero(quotient: int) -> Wrong:
    digits = str(quotient)
    return whole(int(digits.replace("0", ""))) if "0" in digits and quotient >= 10 else None
