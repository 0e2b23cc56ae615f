"""A letter or two for each color, no two alike: what stands in a pin, since a copier keeps no color."""

from __future__ import annotations

from collections.abc import Sequence


def marks(colors: Sequence[str]) -> dict[str, str]:
    """The mark of every color: its first letter where no other color has it; else with a later letter that tells them apart.

    >>> marks(["red", "blue", "gold", "black", "brown"])
    {'red': 'R', 'blue': 'Bu', 'gold': 'G', 'black': 'Ba', 'brown': 'Br'}
    """
    found: dict[str, str] = {}
    for color in colors:
        rivals = [other for other in colors if other != color and _first(other) == _first(color)]
        # The first of the word's own letters that no rival has, then any; numbers where letters do not tell the names apart.
        later = sorted(color[1:].lower(), key=lambda sign: any(sign in other.lower() for other in rivals))
        ways = [_first(color)] if not rivals else [_first(color) + sign for sign in later if sign.isalnum()]
        numbered = [f"{_first(color)}{number}" for number in range(1, len(colors) + 1)]
        found[color] = next(mark for mark in (*ways, *numbered, *map(str, range(len(colors)))) if mark not in found.values())
    return found


def _first(color: str) -> str:
    return color[:1].upper()
