"""The order of a deck's rows: cards with the same answer lie far apart."""

from __future__ import annotations

from random import Random

from mathgen.bank.check_sets import Row

APART = 8  # cards with the same answer are at least so many numbers apart, and so on different pages
_SHUFFLES = 200


def apart(rows: list[Row], rng: Random) -> list[Row] | None:
    """The rows in an order in which the same answer does not come again too soon, a short row last; None where none was found."""
    for _ in range(_SHUFFLES):
        if _far_enough(rows):
            return rows
        full, short = [row for row in rows if len(row.problems) == 4], [row for row in rows if len(row.problems) < 4]
        rng.shuffle(full)
        rows = [*full, *short]
    return None


def _far_enough(rows: list[Row]) -> bool:
    last: dict[object, int] = {}
    for place, problem in enumerate(problem for row in rows for problem in row.problems):
        answer = problem.answer
        for key in {answer.exact, answer.shown} if answer.kind not in ("name", "truth") else ():
            if place - last.get(key, -APART) < APART:
                return False
            last[key] = place
    return True
