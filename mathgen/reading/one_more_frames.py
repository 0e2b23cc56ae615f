"""Rules for sentences about what one more trial would do to a mean."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.meaning import NextTrial
from mathgen.reading.wanted import MeanThen

RULES: tuple[Rule, ...] = (
    rule("fact", "suppose one more trial brings <counted>", lambda thing: (NextTrial(thing.number, thing.colors),)),
    rule("fact", "suppose the next trial brings <counted>", lambda thing: (NextTrial(thing.number, thing.colors),)),
    rule("mean_then", "what would be the mean for all? WHOLE trials", MeanThen),
    rule("ask", "<mean_then>", lambda question: question),
    rule("ask", "with the next trial , <mean_then>", lambda question: question),
)
