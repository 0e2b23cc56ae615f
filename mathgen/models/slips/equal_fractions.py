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
