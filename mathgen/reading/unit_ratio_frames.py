"""Rules for unit rates of two lengths: a space and its drawing, or two spaces."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.meaning.lengths import OnDrawing
from mathgen.reading.meaning.scope import Labels
from mathgen.reading.noun_phrases import always
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.lengths import ForDrawnInch, ForEachInch


def _one(number: Number) -> ForDrawnInch:
    if number.value != 1:
        raise Clash
    return ForDrawnInch()


def _turned(base: Labels, asked: Labels) -> ForEachInch:
    return ForEachInch(asked, base)


RULES: tuple[Rule, ...] = (
    rule("fact", "on a drawing , this space is <inches> long", lambda number: (OnDrawing(number),)),
    rule("fact", "a drawing shows this space as <inches>", lambda number: (OnDrawing(number),)),
    rule("fact", "the length of this space on a drawing is <inches>", lambda number: (OnDrawing(number),)),
    rule("ask", "how many inches of space does each inch on the drawing stand for", always(ForDrawnInch())),
    rule("ask", "for <inches> on the drawing , how many inches were between the ITEM", lambda number, _: _one(number)),
    rule("ask", "what is the unit rate , in inches of space for each inch on the drawing", always(ForDrawnInch())),
    rule("ask", "for each inch of space for <group> , how many inches of space were there for <group>", _turned),
    rule("ask", "how many inches for <group> go with each inch for <group>", ForEachInch),
    rule("ask", "what is the unit rate , in inches for <group> for each inch for <group>", ForEachInch),
)
