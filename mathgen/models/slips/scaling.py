"""Slips, section S: multiplying as scaling. Not in the research catalogue; common practice, no source."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip


@slip("S01", "Multiplying by a fraction less than 1 makes a number smaller.")
def always_makes_bigger(asks_more: int) -> Wrong:
    return "true" if asks_more else "false"


@slip("S02", "Multiplying by a fraction greater than 1 makes a number bigger.")
def always_makes_smaller(asks_more: int) -> Wrong:
    return "false" if asks_more else "true"
