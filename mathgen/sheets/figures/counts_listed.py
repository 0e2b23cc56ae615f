"""The counts that a problem lists: their title, what the axis counts, and the numbers."""

from __future__ import annotations

from typing import NamedTuple

from sympy import Integer, Rational

from mathgen.asks.expression import Expr, Quantity
from mathgen.scenario.naming import listed, upper_first
from mathgen.sheets.figures.scene import Scene


class Counts(NamedTuple):
    """Numbers of one kind, one for each trial or for each group."""

    title: str
    axis: str
    numbers: list[Rational]


def counts_listed(scene: Scene, series: tuple[Expr, ...]) -> Counts | None:
    """The counts of a list; None for a list of anything else, such as lengths."""
    counted = [one for one in series if isinstance(one, Quantity)]
    if len(counted) < 2 or len(counted) != len(series):
        return None
    words, first = scene.words, counted[0].scope
    kind = upper_first(" ".join((*(first.colors or ()), str(words["things"]), str(words[counted[0].measure]))))
    if counted[1].scope.trials != first.trials:
        whose = "all groups" if first.groups is None else listed([words["group_labels"][group] for group in first.groups])
        where = f"{whose}, each {words['trial']}"
    else:
        when = f"all {words['trials']}" if first.trials is None else listed([words["trial_labels"][trial] for trial in first.trials])
        group = str(words["group_heading"]).lower()
        where = f"{when}, each {group}" if len(counted) == len(scene.table.groups) else f"{when}, {len(counted)} {group}s"
    return Counts(f"{kind}, {where}", f"Number of {words['things']}", [Integer(scene.count(one)) for one in counted])
