"""Rules for points on a grid, whose coordinates are inches between pins and pins knocked down."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.meaning.lengths import Axes, PointAt
from mathgen.reading.meaning.scope import Labels, Mark, Np
from mathgen.reading.noun_phrases import always
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure


class Pair(NamedTuple):
    """ "(5, 14)" """

    first: Number
    second: Number


def _axes(first: Measure | None, second: Measure | None) -> tuple[Axes]:
    if (first is None) == (second is None):
        raise Clash
    return (Axes(first is None),)


def _one(coordinate: Measure | None, first: bool) -> tuple[Axes]:
    return (Axes((coordinate is None) == first, "first" if first else "second"),)


def _point(who: Labels, pair: Pair, trials: Labels) -> PointAt:
    return PointAt(Np(who, trials, Mark("bare")), *pair)


RULES: tuple[Rule, ...] = (
    rule("coordinate", "inches between ITEM", always(None)),
    rule("coordinate", "ITEM DOWN", lambda _, measure: measure),
    rule("fact", "on a grid , first coordinates are <coordinate> , and second coordinates are <coordinate>", _axes),
    rule("fact", "on a grid , the x-axis shows <coordinate> , and the y-axis shows <coordinate>", _axes),
    rule("fact", "the first number of each point tells <coordinate>", lambda one: _one(one, True)),
    rule("fact", "the second number tells <coordinate>", lambda one: _one(one, False)),
    rule("point", "(() NUM , NUM )", Pair),
    rule("fact", "for <who> , plot <point> for <trials>", lambda who, pair, trials: (_point(who, pair, trials),)),
    rule(
        "fact",
        "for <who> , plot the points <point> for <trials> and <point> for <trials>",
        lambda who, one, when, other, then: (_point(who, one, when), _point(who, other, then)),
    ),
)
