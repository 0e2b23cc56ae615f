"""A board that tells how y goes from point to point: read from its text, and held against the differences of the choice."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from mathgen.asks.expression import Choice
from mathgen.proof.step_numbers import NotTrue, Pair

_POINTS = re.compile(r"y from left to right: (\d+(?:, \d+){3,})")
_ONCE = re.compile(r"y goes (up|down) only from (\d+) to (\d+)")


def tells_points(board: Sequence[str]) -> bool:
    """Whether a board begins with the points of a plot from left to right."""
    return board[0].startswith("y from left to right")


def check_point_order(board: Sequence[str], told: str, goal: Choice, winner: str, sides: Sequence[Pair]) -> set[Pair]:
    """The numbers that the board works with.

    Args:
        board: its lines.
        told: the last of them, without what follows from it.
        goal: what is chosen.
        winner: the label of the key.
        sides: the differences that the choice compares.
    Raises:
        NotTrue: the points are others, or y goes that way elsewhere too.
    """
    points, once = _POINTS.fullmatch(board[0]), _ONCE.fullmatch(told)
    if len(board) != 2 or points is None or once is None:
        raise NotTrue(f"{' | '.join(board)} does not show how the points go")
    values = [int(one) for one in points[1].split(", ")]
    steps = [(other - one, 1) for one, other in pairwise(values)]
    if sorted(steps) != sorted(sides):
        raise NotTrue(f"{board[0]!r} has other steps than the choice")
    up = once[1] == "up"
    odd = [(one, other) for one, other in pairwise(values) if (other > one) == up]
    if odd != [(int(once[2]), int(once[3]))] or goal.most != up:
        raise NotTrue(f"{told!r} is not so")
    if sides[goal.labels.index(winner)] != (int(once[3]) - int(once[2]), 1):
        raise NotTrue(f"y does not go {once[1]} at {winner}")
    return {(one, 1) for one in values}
