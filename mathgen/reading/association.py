"""Points of a scatter plot that are told one by one: what they count, how they go together, and how far they are from a line."""

from __future__ import annotations

from sympy import Rational

from mathgen.asks.expression import Choice, Expr, Measured, Op, Quantity
from mathgen.reading.asked import NAME, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.lengths import measured_at
from mathgen.reading.meaning.lengths import OncePoint, Plotted, PlotTells, PointsFor
from mathgen.reading.meaning.scope import Np
from mathgen.reading.scatter import all_pins, line_at
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Takers, Told
from mathgen.reading.wanted.lengths import FartherPoint, Goes, OddPoint
from mathgen.scenario.naming import trial_name
from mathgen.scenario.words import Scenario

_Point = tuple[Measured, Quantity]


def plot_tells(told: Told, claim: PlotTells) -> None:
    """Keep what the second coordinate counts.

    Raises:
        NotRead: that is told twice.
    """
    if told.plot_tells is not None:
        raise NotRead("it is told twice what the points tell")
    told.plot_tells = claim
    told.open["plot"] = "what the points tell"
    if isinstance(claim.np.colors, tuple):
        told.mentions.note("colors", claim.np.colors)


def plotted(told: Told, claim: Plotted) -> None:
    """Keep the points of one group, one for each trial in the table's order.

    Raises:
        NotRead: there are more or fewer points than trials, or points of several groups.
    """
    groups, trials = (told.mentions.resolve(part, getattr(claim.np, part)) for part in ("groups", "trials"))
    if len(groups) != 1 or len(trials) != len(claim.pairs):
        raise NotRead("it is not clear which point is whose")
    told.plotted.extend(
        (str(groups[0]), trial, *pair) for trial, pair in zip(told.mentions.ordered("trials", trials), claim.pairs, strict=True)
    )
    told.open["points"] = "the points"


def points_for(told: Told, claim: PointsFor) -> None:
    """Keep the points of several groups in one trial."""
    trials = told.mentions.resolve("trials", claim.np.trials)
    if len(trials) != 1:
        raise NotRead("it is not clear of which trial the points are")
    for first, second, who in claim.points:
        [group] = told.mentions.resolve("groups", who)
        told.plotted.append((str(group), trials[0], first, second))
    told.open["points"] = "the points"


def once_point(told: Told, claim: OncePoint) -> None:
    """Keep which way the points go but for one; it is held against the points where they are asked about.

    Raises:
        NotRead: that is told twice.
    """
    if told.once is not None:
        raise NotRead("it is told twice which way the points go")
    told.once = claim
    told.open["once"] = "which way the points go"


def _points(told: Told, tells: PlotTells) -> list[_Point]:
    """Every point that was told, each true to the table."""
    found = []
    for group, trial, inches, number in told.plotted:
        space = measured_at(told, Np((group,), (trial,)))
        count = told.quantity(tells.measure, Np((group,), (trial,), tells.np.colors))
        for expr, one in ((space, inches), (count, number)):
            told.said(expr, one)
            told.coordinates.append(told.facts[-1])
        found.append((space, count))
    if len(set(found)) < len(found):
        raise NotRead("a point is told twice")
    return found


def _tells(told: Told) -> PlotTells:
    if told.plot_tells is None:
        raise NotRead("it is not said what the points tell")
    return told.plot_tells


def _x(point: _Point, told: Told) -> Rational:
    return told.counts.length(point[0])


def _y(point: _Point, told: Told) -> Rational:
    return evaluate(point[1], told.counts)


def goes(_: Goes, told: Told, __: Scenario) -> Asked:
    """Up or down: the half of the points with the widest spaces has more in all, or fewer, and hardly two points say otherwise."""
    points = sorted(_points(told, _tells(told)), key=lambda one: _x(one, told))
    half = len(points) // 2
    if half < 4 or _x(points[half - 1], told) == _x(points[half], told) or _x(points[-half - 1], told) == _x(points[-half], told):
        raise NotRead("the points show no association")
    wide, near = (tuple(count for _, count in some) for some in (points[-half:], points[:half]))
    pairs = [(one, other) for place, one in enumerate(points) for other in points[place + 1 :] if _x(other, told) > _x(one, told)]
    up = sum(1 for one, other in pairs if _y(other, told) > _y(one, told))
    down = sum(1 for one, other in pairs if _y(other, told) < _y(one, told))
    if 4 * min(up, down) > max(up, down):
        raise NotRead("the points show no clear association")
    goal = Choice(("positive", "negative"), (Op("+", wide), Op("+", near)))
    return Asked("which list", goal, NAME, tuple(count for _, count in points), ("plot", "points"))


def odd_point(question: OddPoint, told: Told, scenario: Scenario) -> Asked:
    once, tells = told.once, _tells(told)
    if once is None or once.sign == question.sign:
        raise NotRead("it is not said which way the other points go")
    if once.np is not None and once.np.colors != tells.np.colors:
        raise NotRead("the points tell something else")
    points = _points(told, tells)
    if len({space.group for space, _ in points}) != 1:
        raise NotRead("the points of one group are needed")
    rising = sorted(points, key=lambda one: _x(one, told))
    before = dict(zip(rising[1:], rising, strict=False))
    steps = [question.sign * (_y(one, told) - _y(before[one], told)) for one in rising[1:]]
    if len({_x(one, told) for one in points}) < len(points) or [step > 0 for step in steps].count(True) != 1 or 0 in steps:
        raise NotRead("the points do not go that way but for one")
    chosen = [one for one in points if one in before]
    labels = tuple(trial_name(space.trial, scenario) for space, _ in chosen)
    goal = Choice(labels, tuple(Op("-", (one[1], before[one][1])) for one in chosen), question.sign > 0)
    return Asked("which list", goal, NAME, tuple(count for _, count in points), ("plot", "points", "once"))


def farther_point(question: FartherPoint, told: Told, _: Scenario) -> Asked:
    if question.np is not None:
        all_pins(told, question.np)
    exprs: list[Expr] = []
    points = _points(told, PlotTells("down", Np(None, None, told.mentions.every("colors"))))
    if len(points) != 2 or points[0][0].group == points[1][0].group:
        raise NotRead("the points of two groups are needed")
    for space, count in points:
        line = line_at(told, space)
        exprs.append(Op("-", (count, line) if _y((space, count), told) >= evaluate(line, told.counts) else (line, count)))
    goal = Choice(tuple(space.group for space, _ in points), tuple(exprs))
    return Asked("which list", goal, NAME, tuple(count for _, count in points), ("line", "points"))


ASKED: Answers = {
    Goes: goes,
    OddPoint: odd_point,
    FartherPoint: farther_point,
}


TAKEN: Takers = {
    PlotTells: plot_tells,
    Plotted: plotted,
    PointsFor: points_for,
    OncePoint: once_point,
}
