"""Rules for sentences that tell one count as a fraction times another, and ask which is greater."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.counts import Count
from mathgen.reading.meaning.parts import ScaledCount
from mathgen.reading.meaning.scope import Labels
from mathgen.reading.noun_phrases import Counted, Tail, always, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.parts import AgainstFactor, ProductOrFactor
from mathgen.trials.scope import Measure


def _scaled(measure: Measure, rate: Number, first: Number, colors: Labels, tail: Tail | None = None) -> Claims:
    return (ScaledCount(measured(measure, "down", "standing"), what(colors, None, None if tail is None else tail.trials), rate, first),)


def _both(measure: Measure, thing: Counted, one: Labels, rate: Number, first: Number, colors: Labels, other: Labels) -> Claims:
    return (Count(measure, what(thing.colors, None, one), thing.number), *_scaled(measure, rate, first, colors, Tail(other)))


def _more(who: Labels, measure: Measure, sign: int, colors: Labels, later: Labels, first: Labels) -> AgainstFactor:
    measured(measure, "down", "standing")
    return AgainstFactor(sign, later=what(colors, who, later), first=what(colors, who, first), measure=measure)


RULES: tuple[Rule, ...] = (
    rule("vp", "<past> FRACTION × WHOLE <things> <tail>?", _scaled),
    rule("vp", "<past> <counted> <when> and FRACTION × WHOLE <things> <when>", _both),
    rule(
        "fact",
        "<when> , the number of <things> <that_outcome> was FRACTION × WHOLE",
        lambda when, colors, m, rate, first: _scaled(m, rate, first, colors, Tail(when)),
    ),
    rule("fact", "do not multiply", always(())),
    rule("against", "greater than", always(1)),
    rule("against", "less than", always(-1)),
    rule("greater_one", "greater", always(True)),
    rule("greater_one", "less", always(False)),
    rule(
        "ask",
        "which is <greater_one> , the product FRACTION × WHOLE or the factor WHOLE",
        lambda most, rate, second, factor: ProductOrFactor(most, factor, rate, second),
    ),
    rule("ask", "without multiplying , which is <greater_one> , the product or the factor WHOLE", ProductOrFactor),
    rule("ask", "which number is <greater_one> , the product or the factor WHOLE", ProductOrFactor),
    rule("ask", "did <who> <outcome_base> <sign> <things> <when> than <when>", _more),
    rule("ask", "without multiplying , is the product <against> the factor WHOLE", lambda sign, factor: AgainstFactor(sign, None, factor)),
    rule("ask", "without multiplying , is FRACTION × WHOLE <against> WHOLE", lambda rate, a, sign, b: AgainstFactor(sign, rate, b, a)),
)
