"""A ratio table: two rows that grow together, to get from the results to next time."""

from __future__ import annotations

import re
from typing import NamedTuple

from mathgen.asks.expression import Expr, Op, Quantity, Stated, Value
from mathgen.sheets.figures.scene import FigureData, Scene, Support

_COLUMNS = 4


class Pair(NamedTuple):
    """Two counts that belong together, what they are called, and which of them (0 or 1) is told for next time."""

    names: list[str]
    counts: list[int]
    told: int
    number: int


def pair(scene: Scene) -> Pair | None:
    """What a problem carries on at the same rate; None where it tells of something else."""
    goal = scene.problem.ask.goal
    if not (isinstance(goal, Value) and isinstance(goal.expr, Op) and len(goal.expr.args) == 2):
        return None
    symbol, (first, second) = goal.expr
    if symbol == "*" and isinstance(first, Quantity) and isinstance(second, Op) and second.symbol == "/":
        stated, known = second.args  # as many of the one as there are for each of the other
        pairs: tuple[Expr, ...] = (first, known)
        told = 1
    else:
        rate, stated = (first, second) if symbol == "*" else (second, first)
        if symbol not in ("*", "/") or not (isinstance(rate, Op) and rate.symbol == "/"):
            return None
        pairs, told = rate.args, 1 if symbol == "*" else 0
    if not isinstance(stated, Stated) or not isinstance(pairs[0], Quantity):
        return None
    if isinstance(pairs[1], Stated) and pairs[1].meaning == "trials":
        names, counts = [str(scene.words["things"]), str(scene.words["trials"])], [scene.count(pairs[0]), pairs[1].number]
    elif isinstance(pairs[1], Quantity):
        names, counts = scene.names([pairs[0], pairs[1]]), [scene.count(pairs[0]), scene.count(pairs[1])]
    else:
        return None
    return Pair(names, counts, told, stated.number) if all(names) else None


def ratio_table(scene: Scene) -> Support | None:
    """The table of a problem that takes counts to another number at the same rate."""
    found, shown = pair(scene), scene.problem.answer.shown
    if found is None or not shown.isdigit():
        return None
    then = [shown, str(found.number)] if found.told == 1 else [str(found.number), shown]
    lines = list(zip(found.names, found.counts, then, strict=True))
    # "The ratio of red pins to gold pins" has red on top.
    ratio = re.search(r"\bratio .*", scene.problem.text)
    if ratio is not None and sorted(found.names, key=ratio[0].find)[0] == found.names[1]:
        lines.reverse()
    rows, counts, then = map(list, zip(*lines, strict=True))
    empty = f"Ratio table to fill in: rows {rows[0]} and {rows[1]}, {_COLUMNS} empty columns."
    told = f"first {counts[0]} to {counts[1]}, last {then[0]} to {then[1]}"
    blank: list[list[str]] = [[""] * _COLUMNS for _ in rows]
    worked = [[str(counts[at]), *[""] * (_COLUMNS - 2), then[at]] for at in range(2)]
    return Support(_table(rows, blank, empty), _table(rows, worked, f"Ratio table, filled in: rows {rows[0]} and {rows[1]}; {told}."))


def _table(rows: list[str], cells: list[list[str]], alt: str) -> FigureData:
    return {"kind": "ratio-table", "rows": [{"head": head, "cells": line} for head, line in zip(rows, cells, strict=True)], "alt": alt}
