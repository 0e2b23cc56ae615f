"""Slips, section S: multiplying as scaling."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip


@slip("S01", "Multiplying by a fraction less than 1 makes a number smaller.")
def always_makes_bigger(asks_more: int) -> Wrong:
    return "true" if asks_more else "false"


@slip("S02", "Multiplying by a fraction greater than 1 makes a number bigger.")
def always_makes_smaller(asks_more: int) -> Wrong:
    return "false" if asks_more else "true"


@slip("S03", "Multiplying by a fraction less than 1 makes a number smaller.")
def product_is_taken_for_greater(label: str) -> Wrong:
    """As S01, where one of the two is to be named."""
    return label


@slip("S04", "Multiplying by a fraction greater than 1 makes a number bigger.")
def product_is_taken_for_less(label: str) -> Wrong:
    """As S02, where one of the two is to be named."""
    return label
