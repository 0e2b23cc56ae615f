"""A hundred grid: one whole as 100 equal squares, to shade a decimal or a percent."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Value
from mathgen.sheets.figures.scene import FigureData, Scene, Support, summed

WHOLES = (10, 20, 25, 50, 100)  # of which each pin is a whole number of squares, and few enough to shade


def hundred_grid(scene: Scene) -> Support | None:
    """The grid of a problem that asks what part of 10 or 100 pins (or 20, 25, 50) was meant."""
    goal = scene.problem.ask.goal
    if not (isinstance(goal, Value) and isinstance(goal.expr, Op) and goal.expr.symbol == "/" and len(goal.expr.args) == 2):
        return None
    counted, whole = summed(goal.expr.args[0]), goal.expr.args[1]
    if counted is None or not isinstance(whole, Quantity) or scene.count(whole) not in WHOLES:
        return None
    size = scene.count(whole)
    squares = sum(map(scene.count, counted)) * (100 // size)
    of = f"the {size} {scene.words['trials' if whole.measure == 'trials' else 'things']} as 100 equal squares in 10 rows of 10"
    return Support(_grid(0, f"Hundred grid to shade: {of}, none shaded."), _grid(squares, f"Hundred grid: {of}, {squares} shaded."))


def _grid(shaded: int, alt: str) -> FigureData:
    return {"kind": "hundred-grid", "shaded": shaded, "alt": alt}
