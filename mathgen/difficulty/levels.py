"""Three levels for each grade: fixed cuts of the score, and how the cuts are found."""

from __future__ import annotations

import tomllib
from collections.abc import Iterable, Mapping
from functools import cache
from itertools import combinations
from pathlib import Path
from typing import NamedTuple

from mathgen.errors import RequestFault
from mathgen.problems.record import Level

_FILE = Path(__file__).parent / "levels.toml"


class Cuts(NamedTuple):
    """The lowest score that is on grade, and the lowest that is a challenge."""

    on_grade: int
    challenge: int


def level(score: int, grade: int) -> Level:
    """The level of a score in quarter points.

    Raises:
        RequestFault: the grade has no cuts.
    """
    known = _stored()
    if grade not in known:
        raise RequestFault(f"There are no levels for grade {grade}; the grades are {', '.join(map(str, known))}.")
    of = known[grade]
    return "support" if score < of.on_grade else "on grade" if score < of.challenge else "challenge"


def cuts(scores: Iterable[int]) -> Cuts:
    """The cuts that split scores most nearly in thirds; equal scores stay together.

    Raises:
        ValueError: there are fewer than three different scores.

    >>> cuts([0, 0, 1, 4, 5, 5, 9, 9, 12])
    Cuts(on_grade=4, challenge=9)
    """
    known = tuple(scores)
    values = sorted(set(known))
    if len(values) < 3:
        raise ValueError(f"three levels need three different scores; there are {len(values)}")
    below = {value: sum(score < value for score in known) for value in values}

    def unevenness(pair: tuple[int, int]) -> tuple[int, tuple[int, int]]:
        low, high = below[pair[0]], below[pair[1]]
        parts = (low, high - low, len(known) - high)
        # Three times the distance from a third, so that it stays whole; the lower pair wins a tie.
        return sum((3 * part - len(known)) ** 2 for part in parts), pair

    return Cuts(*min(combinations(values[1:], 2), key=unevenness))


def levels_text(by_grade: Mapping[int, Iterable[int]], date: str, source: str) -> str:
    """The text of ``levels.toml`` for the scores of some grades.

    Args:
        by_grade: the scores of each grade's pooled sample banks.
        date: of the banks, such as ``2026-11-25``.
        source: which banks they were, in a few words.
    Raises:
        ValueError: a grade has fewer than three different scores.
    """
    lines = [
        "# Lowest score, in quarter points, of the levels on grade and challenge: thirds of the pooled sample banks.",
        "# Terms that depend on the sheet are left out.",
        f"# Source: {source}. Date: {date}.",
    ]
    for grade in sorted(by_grade):
        on_grade, challenge = cuts(by_grade[grade])
        lines += ["", f"[grade.{grade}]", f"on_grade = {on_grade}", f"challenge = {challenge}"]
    return "\n".join(lines) + "\n"


@cache
def _stored() -> dict[int, Cuts]:
    with _FILE.open("rb") as file:
        data = tomllib.load(file)
    return {int(grade): Cuts(**of) for grade, of in data["grade"].items()}
