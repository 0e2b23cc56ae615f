"""Scatter plots: a point for each pair of numbers (8.SP.A.1), and a line that is close to them (8.SP.A.2, 8.SP.A.3)."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from sympy import Integer, Rational

from mathgen.asks.expression import Choice, Measured, Quantity, Stated, Value
from mathgen.exact.forms import mixed
from mathgen.problems.draft import leaves_of
from mathgen.scenario.naming import listed, upper_first
from mathgen.sheets.figures.coordinate_grid import coordinate_grid
from mathgen.sheets.figures.plane import Point, at, places, plane
from mathgen.sheets.figures.scene import FigureData, Scene, Support
from mathgen.trials.scope import Scope

_LINE = re.compile(r"\by = (\d+) ([+-]) (\d+)x(?!\w)")  # as words print it


class Line(NamedTuple):
    """y = start + slope * x, as the words print it."""

    start: int
    slope: int
    printed: str

    def at(self, x: Rational) -> Rational:
        """The height of the line at x."""
        return self.start + self.slope * x

    def ends(self, across: int, up: int) -> list[list[list[int]]]:
        """Where the line enters and leaves a grid that starts at 0."""
        if self.slope < 0:
            last = min(Rational(across), Rational(self.start, -self.slope))
        else:
            last = min(Rational(across), Rational(up - self.start, self.slope))
        return [[at(x), at(self.at(x))] for x in (Integer(0), last)]


def scatter_plot(
    title: str,
    across: str,
    up: str,
    points: Sequence[tuple[Rational | int, Rational | int]],
    line: Line | None = None,
    path: Sequence[Point] = (),
) -> FigureData:
    """Points over two scales from 0.

    Args:
        title: of the plot.
        across: what the first number of a pair counts.
        up: what the second counts.
        points: pairs, at least one; the same pair twice is one mark.
        line: drawn through the whole grid, where there is one.
        path: drawn dashed from point to point, as a teacher shows how to read the plot.
    """
    found = sorted({(Rational(x), Rational(y)) for x, y in points})
    tall = [y for _, y in found] + ([] if line is None else [Integer(line.start)]) + [one.y for one in path]
    scales = plane(across, up, (max(x for x, _ in found), max(tall)))
    told = ", ".join(f"({mixed(x)}, {mixed(y)})" for x, y in sorted((Rational(x), Rational(y)) for x, y in points))
    alt = f"Scatter plot. {title}. Across: {across}. Up: {up}. Points: {told}."
    if line is not None:
        alt += f" A line: {line.printed}."
    if path:
        alt += f" Dashed: from {', to '.join(f'({mixed(one.x)}, {mixed(one.y)})' for one in path)}."
    return {
        "kind": "scatter-plot",
        "title": title,
        **scales,
        "points": places([Point(x, y) for x, y in found]),
        "line": [] if line is None else line.ends(*scales["tops"]),
        "path": places(path),
        "alt": alt,
    }


def spaces_and_pins(scene: Scene) -> Support | None:
    """The class's spaces and pins with the line that a problem prints; for the key the way along it."""
    found = _LINE.search(scene.problem.text)
    points = _measured(scene)
    goal = scene.problem.ask.goal
    if found is None or not points or not isinstance(goal, Value | Choice):
        return None
    words = scene.words
    line = Line(int(found[1]), int(found[3]) * (1 if found[2] == "+" else -1), found[0])
    names = f"Space between {words['things']} in inches", upper_first(f"{words['things']} {words['down']}")
    title = f"All groups, all {len(scene.table.trials)} {words['trials']}"
    path = _way(scene, line, leaves_of(goal.expr)) if isinstance(goal, Value) else []
    return Support(scatter_plot(title, *names, points, line), scatter_plot(title, *names, points, line, path) if path else None)


def points_told(scene: Scene) -> Support | None:
    """An empty grid for the points that the words tell, and the scatter plot of them for the key."""
    pairs = list(zip(scene.problem.givens[::2], scene.problem.givens[1::2], strict=False))
    if not pairs or any(not isinstance(one.expr, Measured) or not isinstance(other.expr, Quantity) for one, other in pairs):
        return None
    words, count = scene.words, pairs[0][1].expr
    assert isinstance(count, Quantity)  # seen above
    colors = f"{listed(list(count.scope.colors))} " if count.scope.colors else ""
    names = f"Space between {words['things']} in inches", upper_first(f"{colors}{words['things']} {words[count.measure]}")
    points = [Point(one.value, other.value) for one, other in pairs]
    groups = list(dict.fromkeys(str(words["group_labels"][one.expr.group]) for one, _ in pairs if isinstance(one.expr, Measured)))
    title = f"{listed(groups)}, all {len(scene.table.trials)} {words['trials']}"
    plot = scatter_plot(title, *names, [(one.x, one.y) for one in points])
    return Support(coordinate_grid(*names, points, False), plot)


def _measured(scene: Scene) -> list[tuple[Rational, Rational]]:
    found = []
    for group in scene.table.groups:
        for trial in scene.table.trials:
            gap, scope = scene.totals.gap(group, trial), Scope((group,), (trial,))
            if gap is not None and gap > 0 and scene.totals.complete(scope):
                found.append((gap, Integer(scene.totals.total("down", scope))))
    return found


def _way(scene: Scene, line: Line, leaves: tuple[object, ...]) -> list[Point]:
    """Up from a space to the line and across to the count; from a result to the line; or along the line's steps."""
    space = next((one for one in leaves if isinstance(one, Measured)), None)
    if space is not None:
        x, scope = scene.totals.gap(space.group, space.trial), space.scope
        return [] if x is None else [Point(x, Integer(scene.totals.total("down", scope))), Point(x, line.at(x))]
    x = next((Integer(one.number) for one in leaves if isinstance(one, Stated) and one.meaning == "inches"), None)
    return [] if x is None else [Point(x, Integer(0)), Point(x, line.at(x)), Point(Integer(0), line.at(x))]
