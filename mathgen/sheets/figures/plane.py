"""What a grid of two scales needs: steps and tops that hold the points, and positions as pairs of whole numbers."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from sympy import Rational

from mathgen.bank.graph_scale import scale_step
from mathgen.sheets.figures.scene import FigureData


class Point(NamedTuple):
    """Across and up, exact; ``label`` stands beside the point where there is one."""

    x: Rational
    y: Rational
    label: str = ""


_UNIT_LINES = 26  # up to here a fine line for every whole number can be told apart


def plane(across: str, up: str, most: tuple[Rational, Rational], lines: int = 10) -> FigureData:
    """Two scales from 0, with fine lines for whole numbers where there is room.

    Args:
        across: what the first number of a pair tells.
        up: what the second tells.
        most: the greatest numbers that must find room.
        lines: how many numbered lines a scale may have.
    """
    highest = [int(-(-number // 1)) for number in most]
    steps = [1 if number < lines else scale_step(number, 6) for number in highest]
    tops = [step * (number // step + 1) for step, number in zip(steps, highest, strict=True)]
    fine = [step > 1 and top <= _UNIT_LINES for step, top in zip(steps, tops, strict=True)]
    return {"across": across, "up": up, "steps": steps, "tops": tops, "fine": fine}


def at(number: Rational) -> list[int]:
    """A number as a page gets it: top and bottom."""
    return [int(number.p), int(number.q)]


def places(points: Sequence[Point]) -> list[dict[str, object]]:
    """Points as a page gets them."""
    return [{"x": at(point.x), "y": at(point.y), "label": point.label} for point in points]
