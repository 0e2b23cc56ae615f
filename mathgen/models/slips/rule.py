"""What a slip is: a common pupil error, the wrong answer that it leads to, and a line of feedback.

Every wrong value is worked out from the numbers that the pupil sees, as (top, bottom); None where it is undefined or no
possible answer (a count that is not whole, a negative). A slip that equals the key is dropped later, in every accepted form.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

Pair = tuple[int, int]
Wrong = Pair | str | None


class SlipRule(NamedTuple):
    """How a slip comes about, and what to say to the pupil; names in braces come from the scenario.

    ``unless_printed``: not where the wrong number stands in the problem, for then it was copied, not miscounted.
    ``sources``: where the numbers may stand ("words", "table" or "graph") for the slip to come about; empty for anywhere.
    ``unless_told``: not where the words tell how many successes there were, for then no trial is judged.
    """

    id: str
    wrong: Callable[..., Wrong]
    line: str
    unless_printed: bool = False
    unless_told: bool = False
    sources: tuple[str, ...] = ()


RULES: dict[str, SlipRule] = {}


def slip(
    slip_id: str, line: str, *, unless_printed: bool = False, unless_told: bool = False, sources: tuple[str, ...] = ()
) -> Callable[[Callable[..., Wrong]], Callable[..., Wrong]]:
    """Files a rule under its id: the letter of its section and a number."""

    def file(wrong: Callable[..., Wrong]) -> Callable[..., Wrong]:
        if slip_id in RULES:
            raise ValueError(f"two slips are named {slip_id}")
        RULES[slip_id] = SlipRule(slip_id, wrong, line, unless_printed, unless_told, sources)
        return wrong

    return file


def over(top: int, bottom: int) -> Wrong:
    """A fraction, where it can be an answer."""
    return (top, bottom) if bottom > 0 and top >= 0 else None


def whole(number: int) -> Wrong:
    """A count, where it can be an answer."""
    return (number, 1) if number >= 0 else None
