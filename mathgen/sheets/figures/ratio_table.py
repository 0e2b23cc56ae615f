"""A ratio table: two rows that grow together, to get from the results to next time."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stated, Value
from mathgen.sheets.figures.scene import FigureData, Scene, Support

_COLUMNS = 4


def ratio_table(scene: Scene) -> Support | None:
    """The table of a problem that takes counts to a number of next time at the same rate."""
    goal, exact = scene.problem.ask.goal, scene.problem.answer.shown
    if not (isinstance(goal, Value) and isinstance(goal.expr, Op) and len(goal.expr.args) == 2):
        return None
    symbol, (first, second) = goal.expr
    known, stated = (first, second) if symbol == "*" else (second, first)
    if symbol not in ("*", "/") or not isinstance(stated, Stated) or not (isinstance(known, Op) and known.symbol == "/"):
        return None
    counts = [scene.count(arg) for arg in known.args if isinstance(arg, Quantity)]
    rows = [str(scene.words[arg.measure]) for arg in known.args if isinstance(arg, Quantity)]
    if len(counts) != 2 or len(set(rows)) != 2 or not exact.isdigit():
        return None
    then = [exact, str(stated.number)] if symbol == "*" else [str(stated.number), exact]
    empty = f"Ratio table to fill in: rows {rows[0]} and {rows[1]}, {_COLUMNS} empty columns."
    told = f"first {counts[0]} to {counts[1]}, last {then[0]} to {then[1]}"
    blank: list[list[str]] = [[""] * _COLUMNS for _ in rows]
    worked = [[str(counts[at]), *[""] * (_COLUMNS - 2), then[at]] for at in range(2)]
    return Support(_table(rows, blank, empty), _table(rows, worked, f"Ratio table, filled in: rows {rows[0]} and {rows[1]}; {told}."))


def _table(rows: list[str], cells: list[list[str]], alt: str) -> FigureData:
    return {"kind": "ratio-table", "rows": [{"head": head, "cells": line} for head, line in zip(rows, cells, strict=True)], "alt": alt}
