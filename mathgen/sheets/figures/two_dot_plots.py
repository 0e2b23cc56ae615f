"""Two dot plots over one number line: one above the other, so that pupils see how far they overlap."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from mathgen.asks.expression import Op, Quantity, Value
from mathgen.scenario.naming import upper_first
from mathgen.sheets.figures.scene import FigureData, Scene, Support


def two_dot_plots(title: str, axis: str, plots: Sequence[tuple[str, Sequence[int]]]) -> FigureData:
    """A row of dots for each list, over a line that goes one number further than the lists on both sides: its ends tell nothing.

    Args:
        title: of the plots.
        axis: what the numbers count.
        plots: name and numbers of each list, counts of things.
    """
    everything = [one for _, numbers in plots for one in numbers]
    line = range(max(min(everything) - 1, 0), max(everything) + 2)
    counts = [(name, Counter(numbers)) for name, numbers in plots]
    told = [", ".join(f"{one}: {count[one]}" for one in sorted(count)) for _, count in counts]
    return {
        "kind": "dot-plots",
        "title": title,
        "axis": axis,
        "labels": [str(one) for one in line],
        "most": max(max(count.values()) for _, count in counts),
        "plots": [{"label": name, "counts": [count[one] for one in line]} for name, count in counts],
        "alt": f"Two dot plots over one number line. {title}. {axis}, and how many dots. "
        + " ".join(f"{name}: {row}." for (name, _), row in zip(counts, told, strict=True)),
    }


def plots_to_complete(plots: FigureData) -> FigureData:
    """The same line with no dot drawn, and room for as many as the highest place has."""
    names = " and ".join(str(one["label"]) for one in plots["plots"])
    first, *_, last = plots["labels"]
    return {
        **plots,
        "plots": [{**one, "counts": [0] * len(plots["labels"])} for one in plots["plots"]],
        "alt": f"Two dot plots to complete over one number line. {plots['title']}. {plots['axis']}: from {first} to {last}; "
        f"no dot is drawn for {names}.",
    }


def lists_plotted(scene: Scene) -> Support | None:
    """The two lists that the words tell one after the other: a line to draw them over, and both plots for the key."""
    goal = scene.problem.ask.goal
    ends = goal.expr.args if isinstance(goal, Value) and isinstance(goal.expr, Op) and goal.expr.symbol == "-" else ()
    told = [one.expr for one in scene.problem.givens if isinstance(one.expr, Quantity)]
    half = len(told) // 2
    lists = told[:half], told[half:]
    if half < 2 or len(told) != 2 * half or len(told) != len(scene.problem.givens) or not set(ends) <= set(told):
        return None
    words, first = scene.words, told[0]
    of_groups = len({one.scope.groups for one in lists[0]}) == 1
    names = scene.names([one[0] if of_groups else one[0]._replace(scope=one[0].scope._replace(groups=None)) for one in lists])
    each = words["trial"] if of_groups else str(words["group_heading"]).lower()
    kind = upper_first(" ".join((*(first.scope.colors or ()), str(words["things"]), str(words[first.measure]))))
    numbers = [[scene.count(one) for one in some] for some in lists]
    finished = two_dot_plots(f"{kind}, each {each}", f"Number of {words['things']}", list(zip(names, numbers, strict=True)))
    return Support(plots_to_complete(finished), finished)
