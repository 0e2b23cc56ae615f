"""Scores that the words tell of a group."""

from __future__ import annotations

import re


def score_told(text: str, name: str) -> int | None:
    """The one score told of a group: of a point, "for a score of", or "the score of"; None where there is none, or more than one."""
    group = rf"(?:[Tt]he )?{re.escape(name)}\b"
    found = [
        int(number)
        for pattern in (
            rf"\(\d+, (\d+)\) for {group}",
            rf"\bpoint for {group} was \(\d+, (\d+)\)",
            rf"\(\d+, (\d+)\) on the line for {group}",
            rf"\bOn the line for {group}, the point is \(\d+, (\d+)\)",
            rf"\bscore of {group} was (\d+)",
            rf"{group} [^.()]*? for a score of (\d+)",
        )
        for number in re.findall(pattern, text)
    ]
    return found[0] if len(found) == 1 else None
