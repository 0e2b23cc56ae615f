"""Slips of feet and inches. Not in the research catalogue: the units are mixed up, or a step is left out."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("W13", "One foot is 12 inches, not 10 inches.")
def foot_of_ten(feet: int, inches: int) -> Wrong:
    return whole(10 * feet - inches)


@slip("W14", "The question asks how much wider. Take away; do not add.")
def adds_the_inches(greater: int, less: int) -> Wrong:
    return whole(greater + less)


@slip("W15", "That is a number of inches. How many feet are that?")
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
