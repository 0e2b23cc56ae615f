"""Rules for sentences that claim something of the results, and that ask whether a claim is true."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning import AgainstPart, Claimed, Explain, GreaterFraction, Labels, MoreThanBoth, Statement, TimesAsMany
from mathgen.reading.noun_phrases import always
from mathgen.reading.tokens import Number
from mathgen.reading.wanted import JudgeClaim
from mathgen.trials.scope import Measure


def _fraction(measure: Measure, first: Labels, second: Labels) -> GreaterFraction:
    return GreaterFraction(first, second, measure)


def _part(sign: str, part: Number, whole: tuple[Number | None, Labels], measure: Measure) -> AgainstPart:
    number, colors = whole
    return AgainstPart(">" if sign == ">" else "<", part, colors, number, measure)


def _says(statement: Statement) -> Claims:
    return (Claimed(statement),)


RULES: tuple[Rule, ...] = (
    rule("claim", "a greater fraction of the? <things> than of the? <things> <fell>", GreaterFraction),
    rule("claim", "the fraction <that_outcome> was greater for <things> than for <things>", _fraction),
    rule("over_or_under", "more than", always(">")),
    rule("over_or_under", "less than", always("<")),
    rule("claim", "<over_or_under> NUM <whole> <fell>", _part),
    rule("claim", "<multiple> <things> as <things> <fell>", TimesAsMany),
    rule("claim", "more <things> <fell> than <things> together", MoreThanBoth),
    rule("fact", "someone (says|writes|thinks) that <claim>", _says),
    rule("fact", "one claim is that <claim>", _says),
    rule("ask", "is (this|the) claim (true|right)", always(JudgeClaim())),
    rule("ask", "is that right", always(JudgeClaim())),
    rule("ask", "do the results support this claim", always(JudgeClaim())),
    rule("ask", "do the results show the same", always(JudgeClaim())),
    rule("fact", "tell why", always((Explain(),))),
)
