"""Slips, section W: dot plots and histograms. A place for a count, every dot, the ends of a bar."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip, whole


@slip("W31", "That is a number on the line. How many dots are there?")
def place_for_dots(place: int) -> Wrong:
    return whole(place)


@slip("W32", "That counts every dot. Which of them are asked for?")
def every_dot(count: int) -> Wrong:
    return whole(count)


@slip("W33", "Dots over the number itself are neither greater nor less.")
def with_the_place(count: int) -> Wrong:
    return whole(count)


@slip("W34", "The first and the last number of a bar belong to it, too.")
def without_the_ends(count: int) -> Wrong:
    return whole(count) if count else None


@slip("W35", "Count the numbers in the bar. Do not add them.")
def numbers_added(total: int) -> Wrong:
    return whole(total)


@slip("W36", "That counts every number. How many are in this bar?")
def every_number(count: int) -> Wrong:
    return whole(count)
