"""Rules for sentences about graphs that pupils make, and what is asked of their pictures."""

from __future__ import annotations

from typing import Literal

from mathgen.reading.chart import Rule, rule
from mathgen.reading.meaning import Claim
from mathgen.reading.meaning.counts import Look
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.meaning.statistics import GraphToMake, PictureStandsFor
from mathgen.reading.noun_phrases import always
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.statistics import PicturesFor


def _for(kind: Literal["bar", "picture"], when: Labels) -> tuple[Claim, ...]:
    return (GraphToMake(kind), Look(Np(None, when)))


def _stands_for(number: Number) -> tuple[Claim, ...]:
    return (PictureStandsFor(number),)


RULES: tuple[Rule, ...] = (
    rule("graph_kind", "a bar graph", always("bar")),
    rule("graph_kind", "a picture graph", always("picture")),
    rule("fact", "(draw|make) <graph_kind> for <trials>", _for),
    rule("fact", "(draw|make) <graph_kind> by color", lambda kind: (GraphToMake(kind),)),
    rule("fact", "(draw|make) <graph_kind> by color for <trials>", _for),
    rule("fact", "(draw|make) <graph_kind> of these (numbers|results)", lambda kind: (GraphToMake(kind),)),
    rule("fact", "each picture stands for WHOLE ITEM", lambda number, _: _stands_for(number)),
    rule("fact", "let one picture stand for WHOLE ITEM", lambda number, _: _stands_for(number)),
    rule(
        "fact",
        "in <graph_kind> of these numbers , each picture stands for WHOLE ITEM",
        lambda kind, number, _: (GraphToMake(kind), *_stands_for(number)),
    ),
    rule("ask", "how many pictures go in the COLOR row", PicturesFor),
    rule("ask", "how many pictures does the COLOR row need", PicturesFor),
    rule("ask", "how many pictures stand for the COLOR ITEM", lambda color, _: PicturesFor(color)),
)
