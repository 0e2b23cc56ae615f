"""Scatter plots of spaces and pins knocked down, and a line close to the points."""

from __future__ import annotations

from itertools import combinations
from typing import NamedTuple

from sympy import Integer, Rational

from mathgen.asks.expression import Ask, Choice, Expr, Measured, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role

_WHOLE, _NAME = Demand("whole"), Demand("name")
_FEWEST = 8  # points that a plot needs
_CLOSE = 2  # pins: as far as the points may be from the line on average


class Fit(NamedTuple):
    """y = start + slope * x, both whole, close to the points."""

    start: int
    slope: int
    points: tuple[tuple[Measured, Quantity], ...]

    def at(self, x: Rational) -> Rational:
        """The height of the line at x."""
        return self.start + self.slope * x


def _half_up(number: Rational) -> int:
    return int((2 * number.p + number.q) // (2 * number.q))


def fit(view: TableView) -> Fit | None:
    """The line with a whole slope and start that least squares come nearest to; None where the points are few or far from it."""
    points = []
    for space in view.lengths:
        spot = Spot((space.group,), (space.trial,))
        if view.totals.complete(view.scope(spot)):
            points.append((space, view.quantity("down", spot)))
    xs, ys = [view.length(one) for one, _ in points], [Integer(view.number(down)) for _, down in points]
    count = len(points)
    if count < _FEWEST or len(set(xs)) < 4:
        return None
    x_mean, y_mean = sum(xs, Integer(0)) / count, sum(ys, Integer(0)) / count
    spread = sum(((x - x_mean) ** 2 for x in xs), Integer(0))
    slope = _half_up(sum(((x - x_mean) * (y - y_mean) for x, y in zip(xs, ys, strict=True)), Integer(0)) / spread)
    found = Fit(_half_up(y_mean - slope * x_mean), slope, tuple(points))
    off = sum((abs(y - found.at(x)) for x, y in zip(xs, ys, strict=True)), Integer(0)) / count
    # A line that falls or rises by less than 2 pins an inch has no number to read as its slope.
    return found if abs(slope) > 1 and found.start > 0 and off <= _CLOSE else None


def _line(found: Fit) -> tuple[Stated, Stated, str]:
    return Stated(found.start, "start of the line"), Stated(abs(found.slope), "pins for each inch"), "+" if found.slope > 0 else "-"


def _on_line(found: Fit, x: Expr) -> Op:
    """The number that the line has at x."""
    start, slope, sign = _line(found)
    return Op("+" if sign == "+" else "-", (start, Op("*", (slope, x))))


def _roles(found: Fit) -> dict[str, Role]:
    """What wording files print a line from."""
    start, slope, sign = _line(found)
    return {"start": start, "slope": slope, "sign": sign, "down": found.points[0][1], "any": found.points[0][0]}


@problem_model(skill="prediction by a line")
def line_predicts(view: TableView) -> AskSpace:
    """What a line that is close to the points predicts for a space."""
    found = fit(view)

    def build(fitted: Fit, x: int) -> Draft | None:
        lengths = [view.length(one) for one, _ in fitted.points]
        predicted = int(fitted.at(Integer(x)))
        if not min(lengths) < x < max(lengths) or predicted < 2 or predicted in (x, abs(fitted.slope), fitted.start):
            return None
        inches = Stated(x, "inches")
        start, slope = fitted.start, abs(fitted.slope)
        return Draft(
            ask=Ask(Value(_on_line(fitted, inches)), (), _WHOLE),
            roles={**_roles(fitted), "x": inches},
            structure="result unknown",
            slips=(("W21", (slope, x)), ("W22", (start, slope, x, fitted.slope > 0)), ("W23", (start, slope, x))),
        )

    return AskSpace(([found] if found else [], range(2, 40)), build)


@problem_model(skill="result and line compared")
def off_the_line(view: TableView) -> AskSpace:
    """How many more or fewer pins a group knocked down than a line predicts."""
    found = fit(view)

    def build(fitted: Fit, place: int) -> Draft | None:
        if place >= len(fitted.points):
            return None
        space, down = fitted.points[place]
        length, pins = view.length(space), view.number(down)
        predicted = fitted.at(length)
        gap = int(pins - predicted) if predicted.q == 1 else 0
        if gap == 0 or predicted < 2 or length.q != 1 or abs(gap) in (pins, length):
            return None
        on_line = _on_line(fitted, space)
        return Draft(
            ask=Ask(Value(Op("-", (down, on_line) if gap > 0 else (on_line, down))), (), _WHOLE),
            roles={**_roles(fitted), "space": space, "down": down, "word": "more" if gap > 0 else "fewer"},
            structure="difference unknown",
            slips=(("H07", (int(predicted),)), ("W24", (fitted.start, pins)), ("W25", (int(predicted), pins))),
            fewer=gap < 0,
        )

    return AskSpace(([found] if found else [], range(0 if found is None else len(found.points))), build)


@problem_model(skill="result and line compared")
def farther_from_line(view: TableView) -> AskSpace:
    """Which of two groups' points is farther from a line, up or down, where the higher point or the higher gap points to the other."""
    found = fit(view)
    by_trial: dict[object, list[tuple[Measured, Quantity]]] = {}
    for space, count in found.points if found else ():
        if view.length(space).q == 1:
            by_trial.setdefault(space.trial, []).append((space, count))
    twos = [two for points in by_trial.values() for two in combinations(points, 2)]

    def build(fitted: Fit, two: tuple[tuple[Measured, Quantity], ...]) -> Draft | None:
        (one, count), (other, count2) = two
        lengths = view.length(one), view.length(other)
        gap, gap2 = view.number(count) - fitted.at(lengths[0]), view.number(count2) - fitted.at(lengths[1])
        wrong = other.group if abs(gap) > abs(gap2) else one.group
        signed = one.group if gap > gap2 else other.group
        higher = one.group if view.number(count) > view.number(count2) else other.group
        if abs(gap) == abs(gap2) or lengths[0] == lengths[1] or min(map(fitted.at, lengths)) < 1 or wrong not in (signed, higher):
            return None
        lines = _on_line(fitted, one), _on_line(fitted, other)
        return Draft(
            ask=Ask(
                Choice(
                    (one.group, other.group),
                    (
                        Op("-", (count, lines[0]) if gap >= 0 else (lines[0], count)),
                        Op("-", (count2, lines[1]) if gap2 >= 0 else (lines[1], count2)),
                    ),
                ),
                (),
                _NAME,
            ),
            roles={**_roles(fitted), "spaces": (one, other), "counts": (count, count2), "space": one},
            structure="difference unknown",
            slips=(("W65", (signed,)), ("W66", (higher,))),
            unit=False,
            wanted=frozenset({"groups"}),
        )

    return AskSpace(([found] if found else [], twos), build)


@problem_model(skill="slope in context")
def wider_by(view: TableView) -> AskSpace:
    """What the slope of a line says: how many fewer (or more) pins it predicts for some more inches."""
    found = fit(view)

    def build(fitted: Fit, extra: int) -> Draft | None:
        start, slope = fitted.start, abs(fitted.slope)
        change = slope * extra
        if extra in (slope, start) or change in (start, extra) or (fitted.slope < 0 and change > start):
            return None
        inches = Stated(extra, "inches wider")
        return Draft(
            ask=Ask(Value(Op("*", (Stated(slope, "pins for each inch"), inches))), (), _WHOLE),
            roles={**_roles(fitted), "x": inches, "word": "more" if fitted.slope > 0 else "fewer"},
            structure="times",
            slips=(("W26", (slope,)), ("W27", (start, slope, extra)), ("W28", (slope, extra))),
            fewer=fitted.slope < 0,
        )

    return AskSpace(([found] if found else [], range(3, 9)), build)
