"""The pins that were set up, drawn one by one, to cross off those that fell."""

from __future__ import annotations

from typing import Any

from mathgen.asks.expression import Op, Quantity, Value
from mathgen.sheets.figures.marks import marks
from mathgen.sheets.figures.part_whole import parted
from mathgen.sheets.figures.scene import Scene, Support
from mathgen.trials.scope import Scope

MOST_PINS = 20  # as far as a young pupil counts pictures gladly


def _set(scene: Scene) -> Quantity | None:
    """The set that a problem takes pins from, or of which it asks for a fraction."""
    goal, found = scene.problem.ask.goal, parted(scene)
    if found is not None:
        # Where the set itself is asked for, its picture would be the answer.
        asked = isinstance(goal, Value) and goal.expr == found.whole
        return found.whole if found.whole is not None and found.whole.measure == "set_up" and not asked else None
    if isinstance(goal, Value) and isinstance(goal.expr, Op) and goal.expr.symbol == "/":
        whole = goal.expr.args[1]
        return whole if isinstance(whole, Quantity) and whole.measure == "set_up" else None
    return None


def pins(scene: Scene) -> Support | None:
    """A picture of the whole set, by color, with a pattern and a mark for each."""
    whole = _set(scene)
    if whole is None or not 2 <= scene.count(whole) <= MOST_PINS:
        return None
    mark = marks(scene.table.colors)
    colors = scene.table.colors if whole.scope.colors is None else whole.scope.colors
    groups: list[dict[str, Any]] = []
    for color in colors:
        count = scene.count(Quantity("set_up", Scope(whole.scope.groups, whole.scope.trials, (color,))))
        if count:
            groups.append({"label": color, "mark": mark[color], "pattern": scene.table.colors.index(color), "count": count})
    words = scene.words
    told = ", ".join(f"{one['count']} {one['label']}" for one in groups)
    alt = f"Picture of the {scene.count(whole)} {words['things']} {words['set_up']}, to cross off: {told}."
    legend = [f"{one['mark']} {one['label']}" for one in groups] if any(len(one["mark"]) > 1 for one in groups) else []
    return Support({"kind": "pins", "groups": groups, "legend": legend, "alt": alt})
