"""Slips, section B of the catalogue. Equal fractions."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip, whole


@slip("B01", "Multiply or divide the top and the bottom by the same number. Do not add.")
def adds_the_same(top: int, bottom: int, new_bottom: int) -> Wrong:
    found = top + new_bottom - bottom
    return whole(found) if found > 0 else None


@slip("B02", "The bottom number changed. The top number must change in the same way.")
def keeps_the_top(top: int) -> Wrong:
    return whole(top)


@slip("B13", "That number leads from one bottom number to the other. Use that number on the top.")
def stops_at_the_factor(factor: int) -> Wrong:
    """Not in the research catalogue: the step for the bottom number is the answer."""
    return whole(factor)


@slip("B31", "Multiply or divide the top and the bottom by the same number. Do not add.")
def adds_the_same_below(top: int, bottom: int, new_top: int) -> Wrong:
    """Not in the research catalogue: B01 where the bottom number is asked for."""
    found = bottom + new_top - top
    return whole(found) if found > 0 else None


@slip("B32", "The top number changed. The bottom number must change in the same way.")
def keeps_the_bottom(bottom: int) -> Wrong:
    """Not in the research catalogue: B02 where the bottom number is asked for."""
    return whole(bottom)


@slip("B33", "That number leads from one top number to the other. Use that number on the bottom.")
def stops_at_the_factor_of_the_tops(factor: int) -> Wrong:
    """Not in the research catalogue: B13 where the bottom number is asked for."""
    return whole(factor)
