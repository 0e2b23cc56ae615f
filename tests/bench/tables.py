"""Result tables for benchmarks: the main sample, and one made far larger than any class's."""

from __future__ import annotations

from pathlib import Path
from random import Random

ROOT = Path(__file__).resolve().parents[2]
MAIN = ROOT / "samples" / "main.csv"

_COLORS = ("red", "blue", "gold", "green", "white", "black", "brown", "pink", "gray", "violet", "orange", "silver")


def large_table(groups: int = 40, trials: int = 6, colors: int = 12) -> str:
    """An invented table as CSV: sets of 2 to 12 pins, results drawn from a fixed seed."""
    rng = Random("large table")
    sizes = {color: 2 + place % 11 for place, color in enumerate(_COLORS[:colors])}
    lines = ["Pins knocked down", ",".join(["Group", "Trial", *(f"{color.title()} ({size})" for color, size in sizes.items())])]
    for group in range(1, groups + 1):
        for trial in range(1, trials + 1):
            lines.append(",".join([f"Group {group}", str(trial), *(str(rng.randint(0, size)) for size in sizes.values())]))
    return "\n".join(lines) + "\n"
