"""A graph as plain data: bars, scale, and the alt text that tells the data and not the answer."""

from __future__ import annotations

from typing import Any

from mathgen.bank.graph_scale import UNIT_LINES, scale_step, scale_top
from mathgen.bank.plan import Graph
from mathgen.scenario.naming import listed
from mathgen.trials.table import TrialTable


def where_it_counts(graph: Graph, table: TrialTable, words: dict[str, Any]) -> str:
    """Over which groups and trials a graph counts: ``all groups, Trial 1``; ``Owls, all 3 trials``."""
    scope, count = graph.scope, len(table.trials)
    groups = "all groups" if scope.groups is None else " and ".join(words["group_labels"][group] for group in scope.groups)
    if scope.trials is not None:
        if len(scope.trials) > 1 and all(isinstance(trial, int) for trial in scope.trials):
            return f"{groups}, {words['trials'].capitalize()} {listed([str(trial) for trial in scope.trials])}"
        return f"{groups}, {listed([words['trial_labels'][trial] for trial in scope.trials])}"
    return groups if count == 1 else f"{groups}, {'all' if count > 2 else 'the'} {count} {words['trials']}"


def graph_data(graph: Graph, table: TrialTable, words: dict[str, Any], grade: int, large_print: bool = False) -> dict[str, Any]:
    """Bars in table order, each with its fixed pattern and its word; ``top`` is the scale's highest line."""
    kind = words.get("graph_kind", "bar")
    highest = max(graph.values, default=0)
    step = scale_step(highest, grade, large_print)
    top = scale_top(highest, step)
    numbered = top > UNIT_LINES
    if numbered:
        top += step  # room for the number on the highest bar
    where = where_it_counts(graph, table, words)
    title = f"{words['graph_title']}, {where}"
    pairs = list(zip(graph.colors, graph.values, strict=True))
    listing = ", ".join(f"{color} {value}" for color, value in pairs)
    return {
        "kind": kind,
        "title": title,
        "title_lines": [f"{words['graph_title']},", where],  # where one line is too long
        "axis": words["graph_axis"],
        "step": step,
        "top": top,
        # A bar that ends between two lines of the scale could not be read exactly.
        "unit_lines": step > 1 and not numbered,
        "numbers_on_bars": numbered,
        "legend": f"Each picture stands for {step} {words['thing'] if step == 1 else words['things']}.",
        "bars": [{"label": color, "value": value, "pattern": table.colors.index(color)} for color, value in pairs],
        "alt": f"{'Bar' if kind == 'bar' else 'Picture'} graph. {title}. {listing}.",
    }
