"""The graph that chosen problems read."""

from __future__ import annotations

from mathgen.bank.builder import Candidate
from mathgen.bank.clashes import graph_spot
from mathgen.bank.desk import Desk
from mathgen.bank.plan import Graph
from mathgen.trials.scope import Scope


def graph_of(form: list[Candidate], desk: Desk) -> Graph | None:
    """The one graph that a form's problems read, or None."""
    spot = next((found for found in map(graph_spot, form) if found is not None), None)
    if spot is None:
        return None
    groups, trials = spot
    colors = desk.table.colors
    values = tuple(desk.totals.total("down", Scope(groups, trials, (color,))) for color in colors)  # type: ignore[arg-type]
    return Graph(Scope(groups, trials), colors, values)  # type: ignore[arg-type]
