"""Coordinate grids of the first quadrant, on which pupils plot points (5.G.A.2)."""

from __future__ import annotations

from mathgen.asks.expression import Measured, Quantity
from mathgen.scenario.naming import upper_first
from mathgen.sheets.figures.plane import Point, places, plane
from mathgen.sheets.figures.scene import FigureData, Scene, Support

_LINES = 12


def coordinate_grid(across: str, up: str, points: list[Point], drawn: bool) -> FigureData:
    """Two scales with lines for whole numbers; the points on it, or room for them.

    Args:
        across: what the first coordinate tells.
        up: what the second tells.
        points: those that must find room.
        drawn: whether they are plotted.
    """
    scales = plane(across, up, (max(one.x for one in points), max(one.y for one in points)), _LINES)
    told = ", ".join(f"{one.label} ({one.x}, {one.y})" for one in points)
    (x_step, y_step), (x_top, y_top) = scales["steps"], scales["tops"]
    axes = f"Across: {across}, from 0 to {x_top} by {x_step}. Up: {up}, from 0 to {y_top} by {y_step}"
    alt = f"Coordinate grid. {axes}. Points: {told}." if drawn else f"Coordinate grid to plot points on. {axes}. No point is plotted."
    return {"kind": "coordinate-grid", **scales, "points": places(points) if drawn else [], "alt": alt}


def points_plotted(scene: Scene) -> Support | None:
    """The grid of a problem whose words print points of inches and pins: empty, and with the points for the key."""
    pairs = [(one, other) for one, other in zip(scene.problem.givens[::2], scene.problem.givens[1::2], strict=False)]
    kinds = [(type(one.expr), type(other.expr)) for one, other in pairs]
    if len(pairs) < 2 or len(set(kinds)) != 1 or set(kinds[0]) != {Measured, Quantity}:
        return None
    words = scene.words
    names = {Measured: f"Inches between {words['things']}", Quantity: upper_first(f"{words['things']} {words['down']}")}
    points = []
    for one, other in pairs:
        space = one.expr if isinstance(one.expr, Measured) else other.expr
        assert isinstance(space, Measured)  # one of the two is
        points.append(Point(one.value, other.value, str(words["trial_labels"][space.trial])))
    across, up = (names[kind] for kind in kinds[0])
    return Support(coordinate_grid(across, up, points, False), coordinate_grid(across, up, points, True))
