"""Slips, section B: equal fractions."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("B01", "Multiply or divide the top and the bottom by the same number. Do not add.")
def adds_the_same(top: int, bottom: int, new_bottom: int) -> Wrong:
    found = top + new_bottom - bottom
    return whole(found) if found > 0 else None


@slip("B02", "The bottom number changed. The top number must change in the same way.")
def keeps_the_top(top: int) -> Wrong:
    return whole(top)


@slip("B13", "The bottom number was multiplied or divided by that number. Do the same to the top number.")
def stops_at_the_factor(factor: int) -> Wrong:
    """Ours: the step for the bottom number is the answer."""
    return whole(factor)


@slip("B31", "Multiply or divide the top and the bottom by the same number. Do not add.")
def adds_the_same_below(top: int, bottom: int, new_top: int) -> Wrong:
    """Ours: B01 where the bottom number is asked for."""
    found = bottom + new_top - top
    return whole(found) if found > 0 else None


@slip("B32", "The top number changed. The bottom number must change in the same way.")
def keeps_the_bottom(bottom: int) -> Wrong:
    """Ours: B02 where the bottom number is asked for."""
    return whole(bottom)


@slip("B33", "The top number was multiplied or divided by that number. Do the same to the bottom number.")
def stops_at_the_factor_of_the_tops(factor: int) -> Wrong:
    """Ours: B13 where the bottom number is asked for."""
    return whole(factor)


@slip("B40", "That is how far the fraction is from 0. Count from the fraction on to 1.")
def counts_from_zero(k: int) -> Wrong:
    """Common practice, no source, as are the two below."""
    return whole(k)


@slip("B41", "Count the parts, not the marks.")
def counts_the_marks(k: int, n: int) -> Wrong:
    return whole(n - k + 1)


@slip("B42", "The last part, up to 1, counts as well.")
def counts_the_marks_between(k: int, n: int) -> Wrong:
    return whole(n - k - 1) if n - k > 1 else None


@slip("B43", "1 is as many parts as the bottom number says. How many parts make all the sets?")
def keeps_the_whole_number(count: int) -> Wrong:
    """Common practice, no source, as are the two below."""
    return whole(count)


@slip("B44", "Each whole is cut into that many parts. Multiply; do not add.")
def adds_bottom_and_whole(count: int, size: int) -> Wrong:
    return whole(count + size)


@slip("B46", "Those are the parts up to 1. Count the parts from 0 to the fraction.")
def takes_the_distance_to_one(left: int, n: int) -> Wrong:
    """Common practice, no source, as are the three below."""
    return over(left, n)


@slip("B47", "Count the parts, not the marks.")
def counts_marks_from_one(k: int, n: int) -> Wrong:
    return over(k + 1, n) if k + 1 < n else None


@slip("B48", "That is the top number. The bottom number tells how many parts make 1 set.")
def keeps_the_top_number(top: int) -> Wrong:
    return whole(top)


@slip("B49", "Do not subtract. How many times do the parts make 1 whole set?")
def takes_bottom_from_top(count: int, size: int) -> Wrong:
    return whole(count * size - size)


@slip("B45", "That makes 1 only. The fraction has to equal all the sets.")
def makes_one_whole(size: int) -> Wrong:
    return whole(size)
