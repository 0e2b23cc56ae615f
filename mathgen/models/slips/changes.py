"""Slips, section U: changing one number of a list."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip


def _listed(by: int, numbers: list[int]) -> Wrong:
    return ", ".join(f"{one} to {one + by}" for one in numbers) or None


@slip("U01", "Can so many, or so few, {be_down} in one {trial}?")
def forgets_what_can_be(by: int, *numbers: int) -> Wrong:
    return _listed(by, list(numbers)) if all(one + by >= 0 for one in numbers) else None


@slip("U02", "There is more than one way. Try every {trial}.")
def stops_at_the_first(by: int, most: int, *numbers: int) -> Wrong:
    return _listed(by, [one for one in numbers if 0 <= one + by <= most][:1])


@slip("U03", "The mean shares a change among all {trials}. Work with the total.")
def moves_by_the_means(by: int, most: int, *numbers: int) -> Wrong:
    """Each number moves by how far the mean has to move, where that is whole."""
    if by % len(numbers):
        return None
    step = by // len(numbers)
    return _listed(step, [one for one in numbers if 0 <= one + step <= most])
