"""Slips, section Y: tenths and hundredths of a dollar. After those of fractions (C, D)."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip


@slip("Y44", "That is what is spent. How much of the dollar is left?")
def stops_at_what_is_spent(cents: int) -> Wrong:
    return over(cents, 100)


@slip("Y45", "Two items are bought. Take both prices from the dollar.")
def takes_only_one(top: int, bottom: int) -> Wrong:
    return over(bottom - top, bottom)


@slip("Y46", "A tenth of a dollar is 10 hundredths. Write both prices in hundredths.")
def tenths_for_hundredths(tops: int) -> Wrong:
    """3 tenths and 25 hundredths taken for 28 hundredths."""
    return over(100 - tops, 100)
