"""Slips, section W: feet and inches. The units are mixed up, or a step is left out."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("W13", "One foot is 12 inches, not 10 inches.")
def foot_of_ten(feet: int, inches: int) -> Wrong:
    return whole(10 * feet - inches)


@slip("W14", "The question asks how much wider. Take away; do not add.")
def adds_the_inches(greater: int, less: int) -> Wrong:
    return whole(greater + less)


@slip("W15", "That is a number of inches. How many feet is that?")
def inches_for_feet(top: int, bottom: int) -> Wrong:
    return over(top, bottom)


@slip("W16", "From inches to feet, divide. A foot is longer than an inch.")
def multiplies_for_feet(inches: int) -> Wrong:
    return whole(12 * inches)


@slip("W17", "One foot is 12 inches, not 10 inches.")
def tenths_of_inches(inches: int) -> Wrong:
    return over(inches, 10)


@slip("W18", "Feet and inches are not the same. Write the feet in inches first.")
def feet_as_inches(feet: int, inches: int) -> Wrong:
    return whole(feet // inches) if feet % inches == 0 else whole(feet * inches)


@slip("W19", "That fits in one foot. How many feet are there?")
def one_foot_only(foot: int, inches: int) -> Wrong:
    return whole(foot // inches) if foot % inches == 0 else None


@slip("W45", "One foot is 12 inches, not 10 inches.")
def judges_with_ten_inches(inches: int, feet: int) -> Wrong:
    """As W17, where two lengths are compared. Common practice, no source, as are the two below."""
    return "true" if inches > 10 * feet else "false"


@slip("W46", "Feet and inches are not the same. Write the feet in inches first.")
def compares_the_bare_numbers() -> Wrong:
    return "true"


@slip("W47", "Count the spaces again. One space is missing.")
def judges_without_a_space(inches: int, feet: int) -> Wrong:
    return "true" if inches > 12 * feet else "false"
