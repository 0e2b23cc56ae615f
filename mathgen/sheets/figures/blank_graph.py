"""Graphs to complete: title, axis, scale or key, and labels, with no bar or picture drawn."""

from __future__ import annotations

from mathgen.asks.expression import Quantity, Stated
from mathgen.bank.plan import Graph
from mathgen.problems.draft import leaves_of
from mathgen.sheets.figures.bar_graph import graph_data
from mathgen.sheets.figures.scene import FigureData, Scene, Support
from mathgen.trials.scope import Scope


def blank_graph(graph: FigureData) -> FigureData:
    """The same graph for the pupil to draw the bars or the pictures; its title, labels and scale, or its key, are kept."""
    names = ", ".join(str(one["label"]) for one in graph["bars"])
    if graph["kind"] == "bar":
        told = f"The scale goes from 0 to {graph['top']} by {graph['step']}; no bar is drawn for {names}."
    else:
        told = f"{graph['legend']} No picture is drawn for {names}."
    return {
        **graph,
        "numbers_on_bars": False,
        "bars": [{**one, "value": 0} for one in graph["bars"]],
        "alt": f"{'Bar' if graph['kind'] == 'bar' else 'Picture'} graph to complete. {graph['title']}. {told}",
    }


def graph_to_make(scene: Scene) -> Support | None:
    """The graph of all colors that a problem's words ask for, bars or pictures: to complete, and finished for the key."""
    goal, problem = scene.problem.ask.goal, scene.problem
    leaves = leaves_of(goal.exprs[0]) if len(goal.exprs) == 1 else ()
    counted = next((one for one in leaves if isinstance(one, Quantity)), None)
    if counted is None:
        return None
    each = next((one.number for one in leaves if isinstance(one, Stated)), 1)
    colors, scope = scene.table.colors, counted.scope
    counts = tuple(scene.count(Quantity("down", Scope(scope.groups, scope.trials, (color,)))) for color in colors)
    kind = "picture" if "picture" in problem.text else "bar"
    graph = Graph(Scope(scope.groups, scope.trials), colors, counts)
    finished = graph_data(graph, scene.table, {**scene.words, "graph_kind": kind}, problem.grade)
    if kind == "picture":
        finished |= {"step": each, "legend": f"Each picture stands for {each} {scene.words['thing' if each == 1 else 'things']}."}
    return Support(blank_graph(finished), finished)
