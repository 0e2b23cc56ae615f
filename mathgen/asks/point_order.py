"""Points from left to right: how the second coordinate goes from each to the next, as a choice of differences asks it."""

from __future__ import annotations

from itertools import pairwise

from mathgen.asks.expression import Choice, Expr, Op, Quantity


def points_in_order(goal: Choice) -> tuple[Quantity, ...]:
    """The counts of which each is held against the one before, the first one first; none where a choice compares anything else."""
    before: dict[Expr, Expr] = {}
    for one in goal.exprs:
        if not (isinstance(one, Op) and one.symbol == "-" and len(one.args) == 2 and all(isinstance(arg, Quantity) for arg in one.args)):
            return ()
        later, earlier = one.args
        before[earlier] = later
    found = [one for one in before if one not in before.values()]
    if len(found) != 1 or len(before) != len(goal.exprs) or len(before) < 3:
        return ()
    while found[-1] in before:
        found.append(before[found[-1]])
    return tuple(one for one in found if isinstance(one, Quantity)) if len(found) == len(before) + 1 else ()


def order_lines(values: tuple[str, ...], most: bool, verdict: str) -> tuple[str, str]:
    """What stands on the board: y of each point from left to right, and the one place where it goes against the rest.

    >>> order_lines(("19", "15", "16", "8"), True, "Trial 3")
    ('y from left to right: 19, 15, 16, 8', 'y goes up only from 15 to 16, so Trial 3')
    """
    steps = list(pairwise(values))
    one, other = next((a, b) for a, b in steps if (int(b) > int(a)) == most)
    told = f"y goes {'up' if most else 'down'} only from {one} to {other}"
    return f"y from left to right: {', '.join(values)}", f"{told}, so {verdict}"
