"""Slips, section B: comparing fractions. The wrong one is chosen."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip


@slip("B05", "Look at how many {were_set_up} as well.")
def more_pins_wins(first: str, second: str, k: int, k2: int) -> Wrong:
    return None if k == k2 else (first if k > k2 else second)


@slip("B06", "Fewer {items} {standing} is not enough. Look at how many {were_set_up}.")
def fewer_left_wins(first: str, second: str, gap: int, gap2: int) -> Wrong:
    return None if gap == gap2 else (first if gap < gap2 else second)


@slip("B04", "A bigger bottom number means smaller parts, not a greater fraction.")
def bigger_bottom_wins(first: str, second: str, bottom: int, bottom2: int) -> Wrong:
    return None if bottom == bottom2 else (first if bottom > bottom2 else second)


@slip("B11", "A bigger top number is not enough. Are the parts the same size?")
def bigger_top_wins(first: str, second: str, top: int, top2: int) -> Wrong:
    """B05 where fractions of one whole are seen, not counts: what to look at is the size of the parts."""
    return more_pins_wins(first, second, top, top2)


@slip("B12", "Missing parts can differ in size. Write both fractions with the same bottom number.")
def smaller_gap_wins(first: str, second: str, gap: int, gap2: int) -> Wrong:
    """B06 where fractions of one whole are seen, not counts."""
    return fewer_left_wins(first, second, gap, gap2)


@slip("B10", "Read the question again: which one is greater?")
def smaller_is_chosen(smaller: str) -> Wrong:
    """Ours: the label that is left when the question is read the wrong way round."""
    return smaller
