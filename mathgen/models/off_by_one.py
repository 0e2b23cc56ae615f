"""The slip of counting the start as a step."""

from __future__ import annotations

_COUNTED = 10  # further than this nobody counts on or back one by one


def off_by_one(counted: int, wrong: int) -> tuple[tuple[str, tuple[int, ...]], ...]:
    """The slip with the number that it gives, where what is counted on or back is small enough; else nothing."""
    return (("H13", (wrong,)),) if counted <= _COUNTED else ()
