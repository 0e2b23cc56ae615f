"""Slips, section T: target-color accuracy."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("T01", "If another color {was_down} too, the {trial} is not a success.", unless_told=True)
def near_success(near: int, n: int) -> Wrong:
    return over(near, n) if 0 < near < n else None


@slip("T02", "If another color {was_down} too, the {trial} is not a success.", unless_told=True)
def near_success_counted(near: int) -> Wrong:
    return whole(near)


@slip("T03", "A success is a {trial}, however many {items} {were_down}. Count {trials}.", unless_told=True)
def counts_items(items: int) -> Wrong:
    return whole(items)


@slip("T04", "The whole is all the {trials}, not only the other ones.")
def part_to_part(k: int, n: int) -> Wrong:
    return over(k, n - k) if n - k > 1 else None


@slip("T05", "That is the other part of the {trials}. Read the question again.")
def other_part(rest: int, n: int) -> Wrong:
    return over(rest, n)


@slip("T06", "You counted the part. Now say: out of how many {trials}?")
def just_the_count(k: int) -> Wrong:
    return whole(k)


@slip("T07", "Those are the other {trials}. Read the question again.")
def other_trials(rest: int) -> Wrong:
    return whole(rest)


@slip("T08", "Every new {trial} counts in the total as well.")
def total_stays(k: int, n: int, goal: int) -> Wrong:
    return whole(goal * n // 100 - k) if goal * n % 100 == 0 else None


@slip("T09", "That is how many {trials} there are in all. How many of them are new?")
def all_trials(number: int) -> Wrong:
    return whole(number)


@slip("T10", "If no {items} {were_down}, the {trial} is not a success.", unless_told=True)
def none_is_a_success(k: int, n: int) -> Wrong:
    return over(k, n) if 0 < k < n else None


@slip("T11", "If no {items} {were_down}, the {trial} is not a success.", unless_told=True)
def none_counted_as_success(k: int) -> Wrong:
    return whole(k)


@slip("T12", "That is a number of {trials}. A percent tells how many out of 100.")
def count_as_percent(k: int) -> Wrong:
    """D07 where trials are counted."""
    return over(k, 100)


@slip("T13", "The question compares two parts. Do not count all the {trials}.")
def part_to_all_trials(part: int, n: int) -> Wrong:
    """G01 where trials are counted."""
    return over(part, n)
