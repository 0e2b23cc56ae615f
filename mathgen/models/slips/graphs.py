"""Slips, section J: what one picture of a graph, or one line of its scale, stands for."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip, whole


@slip("J01", "Each numbered line stands for more than 1. Read the scale.")
def line_is_one(number: int, step: int) -> Wrong:
    return whole(number // step) if number % step == 0 else None


@slip("J04", "Each picture stands for more than 1 {item}.")
def picture_is_one(pins: int) -> Wrong:
    return whole(pins)


@slip("W29", "Count how many times the key fits in. Do not take it away once.")
def key_taken_away(pins: int, each: int) -> Wrong:
    return whole(pins - each)


@slip("W30", "There are fewer pictures than {items}. Divide by the key.")
def multiplied_by_key(pins: int, each: int) -> Wrong:
    return whole(pins * each)
