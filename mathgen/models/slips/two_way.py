"""Slips, section J: cells and totals of two-way tables."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("J20", "Those are the {items} {standing} of every kind. Take away those of the one kind.")
def row_not_taken_away(total: int) -> Wrong:
    """Ours: H07, in a two-way table."""
    return whole(total)


@slip("J21", "Those are the {items} {down}. The question asks for the {items} {standing}.")
def other_column(count: int) -> Wrong:
    """Ours: A03, in a two-way table."""
    return whole(count)


@slip("J22", "That is the total of the row. Take away the {items} {down}.")
def total_of_the_row(count: int) -> Wrong:
    """Ours: H07, in a two-way table."""
    return whole(count)


@slip("J23", "That is out of the {items} {set_up} of one kind.")
def out_of_its_row(k: int, size: int) -> Wrong:
    """Ours: A19, between the totals of a two-way table."""
    return over(k, size)


@slip("J24", "That is out of all the {items} {down}.")
def out_of_its_column(k: int, size: int) -> Wrong:
    """As above."""
    return over(k, size)


@slip("J25", "That is out of all the {items} {set_up}.")
def out_of_all(k: int, size: int) -> Wrong:
    """As above."""
    return over(k, size)
