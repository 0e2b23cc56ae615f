"""Slips of picture graphs: what one picture stands for."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip, whole


@slip("J04", "Each picture stands for more than 1 pin.")
def picture_is_one(pins: int) -> Wrong:
    return whole(pins)


@slip("W29", "Count how many times the key fits in. Do not take it away once.")
def key_taken_away(pins: int, each: int) -> Wrong:
    return whole(pins - each)


@slip("W30", "There are fewer pictures than pins. Divide by the key.")
def multiplied_by_key(pins: int, each: int) -> Wrong:
    return whole(pins * each)
