"""Slips, section K of the catalogue. Chance."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("K01", "Two outcomes need not be equally likely. Use the results.")
def fifty_fifty(number: int) -> Wrong:
    return over(number, 2) if number % 2 == 0 else None


@slip("K06", "Multiply the part as many times as the whole has grown. Do not add.")
def expected_by_adding(k: int, n: int, number: int) -> Wrong:
    return whole(k + number - n)


@slip("K12", "That is how many to expect {standing}. Read the question again.")
def expects_the_rest(number: int, part: int) -> Wrong:
    """Not in the research catalogue: the part that the question does not ask for."""
    return whole(number - part)
