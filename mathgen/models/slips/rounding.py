"""Slips, section R: rounding whole numbers."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip, whole


@slip("R01", "Look at the digit to the right of the place you round to. 5 or more rounds up.")
def always_down(number: int, unit: int) -> Wrong:
    return whole(number // unit * unit)


@slip("R02", "Look at the digit to the right of the place you round to. Less than 5 rounds down.")
def always_up(number: int, unit: int) -> Wrong:
    return whole((number // unit + 1) * unit)


@slip("R03", "Which place did the question ask for?")
def another_place(number: int, unit: int) -> Wrong:
    """E11 for whole numbers: the place below, or above where ten is asked for."""
    other = unit // 10 if unit > 10 else 100
    return whole((2 * number + other) // (2 * other) * other) if other <= number else None


@slip("R04", "The digits to the right of the place you round to turn into zeros. Write the zeros.")
def leaves_out_the_zeros(number: int, unit: int) -> Wrong:
    return whole((2 * number + unit) // (2 * unit))
