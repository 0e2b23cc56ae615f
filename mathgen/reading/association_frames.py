"""Rules for points of a scatter plot that are told one by one, and for how they go together."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.meaning.lengths import OncePoint, Plotted, PlotTells, PointsFor
from mathgen.reading.meaning.scope import Labels, Mark, Np
from mathgen.reading.noun_phrases import always, measured, what
from mathgen.reading.plane_frames import Pair
from mathgen.reading.wanted.lengths import FartherPoint, Goes, OddPoint
from mathgen.trials.scope import Measure


def _tells(colors: Labels, measure: Measure) -> tuple[PlotTells]:
    return (PlotTells(measured(measure, "down", "standing"), what(colors)),)


def _xy(x: str, y: str, colors: Labels, measure: Measure) -> tuple[PlotTells]:
    if (x, y) != ("x", "y"):
        raise Clash
    return _tells(colors, measure)


def _plotted(who: Labels, pairs: tuple[Pair, ...], when: Labels = None) -> tuple[Plotted]:
    return (Plotted(Np(who, when), tuple((one.first, one.second) for one in pairs)),)


def _for(when: Labels, points: tuple[tuple[Pair, Labels], ...]) -> tuple[PointsFor]:
    return (PointsFor(Np(None, when), tuple((pair.first, pair.second, who) for pair, who in points)),)


def _goes(x: str, y: str) -> Goes:
    if (x, y) != ("x", "y"):
        raise Clash
    return Goes()


def _once(y: str, sign: int) -> OncePoint:
    if y != "y":
        raise Clash
    return OncePoint(sign)


RULES: tuple[Rule, ...] = (
    rule(
        "fact",
        "make a scatter plot with LETTER for inches between ITEM and LETTER for <things> <that_outcome>",
        lambda x, _, y, c, m: _xy(x, y, c, m),
    ),
    rule(
        "fact",
        "draw a scatter plot of the inches between ITEM and the number of <things> <that_outcome>",
        lambda _, c, m: _tells(c, m),
    ),
    rule(
        "fact",
        "make a scatter plot with inches between ITEM as LETTER and <things> <that_outcome> as LETTER",
        lambda _, x, c, m, y: _xy(x, y, c, m),
    ),
    rule("points", "<point> and <point>", lambda a, b: (a, b)),
    rule("points", "<point> , <more_points>", lambda a, rest: (a, *rest)),
    rule("more_points", "<point> ,? and <point>", lambda a, b: (a, b)),
    rule("more_points", "<point> , <more_points>", lambda a, rest: (a, *rest)),
    rule("fact", "<who> had the points <points>", _plotted),
    rule("fact", "in trial order , <who> had the points <points>", lambda who, pairs: _plotted(who, pairs, Mark("all"))),
    # which way they go
    rule("ask", "is the association positive or negative", always(Goes())),
    rule("ask", "do the points show a positive or a negative association", always(Goes())),
    rule("ask", "is the association of LETTER and LETTER positive or negative", _goes),
    # the one that does not go along
    rule("goes", "up", always(1)),
    rule("goes", "down", always(-1)),
    rule("higher", "higher", always(1)),
    rule("higher", "lower", always(-1)),
    rule("larger", "greater", always(1)),
    rule("larger", "less", always(-1)),
    rule("fact", "from each space to the next wider space , LETTER goes <goes> , except once", lambda y, sign: (_once(y, sign),)),
    rule(
        "fact",
        "for each wider space , the number of <things> <that_outcome> is <larger> , except once",
        lambda c, _, sign: (OncePoint(sign, what(c)),),
    ),
    rule(
        "fact",
        "toward the right , each point but one is <higher> than the point before",
        lambda sign: (OncePoint(sign),),
    ),
    rule("ask", "in which trial does LETTER go <goes> instead", lambda y, sign: OddPoint(_once(y, sign).sign)),
    rule("ask", "for which trial is the number <larger> instead", OddPoint),
    rule("ask", "for which trial is the point <higher> instead", OddPoint),
    # the one farther from a line
    rule(
        "fact",
        "<when> , <group> plotted <point> , and <group> plotted <point>",
        lambda when, who, pair, other, second: _for(when, ((pair, who), (second, other))),
    ),
    rule("fact", "<group> plotted <point>", lambda who, pair: _for(None, ((pair, who),))),
    rule("ask", "measured straight up or down , whose point is farther from the line", always(FartherPoint())),
    rule("ask", "for which group does the line miss the point by more", always(FartherPoint())),
    rule(
        "ask",
        "for which group is the number of <things> farther from the number that the line predicts",
        lambda c: FartherPoint(what(c)),
    ),
)
