"""Two-way tables: counts by two kinds of labels, and empty ones to fill in or to list pairs in."""

from __future__ import annotations

from collections.abc import Sequence

from mathgen.asks.expression import Op, Quantity, Truth, Value
from mathgen.problems.draft import leaves_of
from mathgen.sheets.figures.scene import FigureData, Scene, Support


def two_way_table(title: str, corner: str, columns: Sequence[str], rows: Sequence[tuple[str, Sequence[int | None]]]) -> FigureData:
    """A true table with head cells, which is read cell by cell and needs no alt text.

    Args:
        title: printed above it.
        corner: what the rows are.
        columns: their names.
        rows: a name and a count for each column; None leaves a cell to write in.
    """
    return {
        "kind": "two-way-table",
        "title": title,
        "corner": corner,
        "columns": list(columns),
        "rows": [{"head": head, "cells": ["" if cell is None else str(cell) for cell in cells]} for head, cells in rows],
        "alt": "",
    }


def kinds_by_results(scene: Scene) -> Support | None:
    """The table of kinds by results of a problem that sorts both ways: empty to fill in, and with every count and total for the key."""
    goal = scene.problem.ask.goal
    if not isinstance(goal, Value | Truth):
        return None
    counted = [one for expr in goal.exprs for one in leaves_of(expr) if isinstance(one, Quantity)]
    if not counted:
        return None
    of, words = counted[0], scene.words
    one_kind = sorted({color for one in counted for color in one.scope.colors or ()})
    colors = scene.table.colors
    if isinstance(goal, Truth):  # of the kinds that are compared, as they are told
        colors = tuple(dict.fromkeys(color for one in counted for color in one.scope.colors or ()))
    kinds: list[tuple[str, tuple[str, ...]]] = [(color, (color,)) for color in colors]
    if isinstance(goal, Value) and len(one_kind) == 1 and isinstance(goal.expr, Op) and goal.expr.symbol == "-":
        kinds = [(one_kind[0], (one_kind[0],)), ("others", tuple(color for color in colors if color != one_kind[0]))]
    rows = [(name, _counts(scene, of, some)) for name, some in (*kinds, ("total", colors))]
    head = ("Two-way table", "Kind", [str(words["down"]), str(words["standing"]), "total"])
    return Support(two_way_table(*head, [(name, [None] * len(counts)) for name, counts in rows]), two_way_table(*head, rows))


def _counts(scene: Scene, of: Quantity, colors: tuple[str, ...]) -> list[int | None]:
    scope = of.scope._replace(colors=None if len(colors) == len(scene.table.colors) else colors)
    down, every = (scene.count(Quantity(measure, scope)) for measure in ("down", "set_up"))
    return [down, every - down, every]
