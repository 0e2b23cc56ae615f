"""Rules for sentences about rates: so much for one, at the same rate, and rows of a ratio table."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims, at, of
from mathgen.reading.meaning.counts import Count
from mathgen.reading.meaning.rates import SameRatio
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.noun_phrases import measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.rates import CountAhead, ForEach, InRow, TrialsAhead, UnitRate
from mathgen.trials.scope import Measure


def _unit(colors: Labels, measure: Measure, who: Labels = None) -> UnitRate:
    return UnitRate(measured(measure, "down", "standing"), what(colors, who))


def _for_each(colors: Labels, measure: Measure, one: Labels, other: Measure) -> ForEach:
    if measure == other or "set_up" in (measure, other) or colors != one:
        raise Clash
    return ForEach(measure, other, what(colors))


def _ratio_of(first: Labels, second: Labels, measure: Measure | None = None) -> Claims:
    if not isinstance(first, tuple) or not isinstance(second, tuple) or set(first) & set(second):
        raise Clash
    return (SameRatio(first, second, measure),)


def _in_row(colors: Labels, number: Number, others: Labels) -> InRow:
    if not isinstance(colors, tuple) or not isinstance(others, tuple) or set(colors) & set(others):
        raise Clash
    return InRow(Np(None, None, colors), Np(None, None, others), number)


def _parts(
    colors: Labels, other: Labels, measure: Measure, one: Number, two: Number, who: Labels = None, first: Measure | None = None
) -> Claims:
    """A ratio as it was counted: 3 to 5 are 3 of the one and 5 of the other."""
    measures = measured(first or measure, "down", "standing"), measured(measure, "down", "standing")
    if (measures[0], colors) == (measures[1], other):
        raise Clash
    return (Count(measures[0], what(colors, who), one), Count(measures[1], what(other, who), two))


RULES: tuple[Rule, ...] = (
    # a ratio that is told
    rule(
        "told_ratio",
        "the ratio of <things> <that_outcome> to <things> <that_outcome> was WHOLE to WHOLE",
        lambda a, m, b, m2, n, k: _parts(a, b, m2, n, k, None, m),
    ),
    rule("told_ratio", "the ratio of <things> to <things> <that_outcome> was WHOLE to WHOLE", _parts),
    rule(
        "told_ratio",
        "the ratio of <things> to <things> <who> <past> was WHOLE to WHOLE",
        lambda a, b, who, m, n, k: _parts(a, b, m, n, k, who),
    ),
    rule("fact", "<told_ratio>", lambda claims: claims),
    rule("fact", "for <who> <when>? , <told_ratio>", lambda who, when, claims: of(who, at(when, claims) if when else claims)),
    rule("fact", "<when> , <told_ratio>", at),
    rule("fact", "<told_ratio> for <who>", lambda claims, who: of(who, claims)),
    rule("vp", "<past> <things> and <things> in the ratio WHOLE to WHOLE", lambda m, a, b, n, k: _parts(a, b, m, n, k)),
    # so much for one
    rule("ask", "(what|find) (is|was)? the unit rate of <things> <that_outcome> per trial", lambda c, m: _unit(c, m)),
    rule("ask", "how many <things> did <who> <base> per trial , as a unit rate", lambda c, who, m: _unit(c, m, who)),
    rule("ask", "how many <things> <fell> for (each|every) <thing> <that_outcome>", _for_each),
    # at the same rate
    rule("ahead", "how many <things> would <who> <base> in WHOLE trials", lambda c, w, m, n: CountAhead(m, what(c, w), n)),
    rule(
        "ahead",
        "in how many trials would <who> <base> <counted>",
        lambda who, m, thing: TrialsAhead(m, what(thing.colors, who), thing.number),
    ),
    rule("ask", "<ahead>", lambda question: question),
    rule("ask", "at this rate , <ahead>", lambda question: question._replace(same=True)),
    # rows of a ratio table
    rule("fact", "make a ratio table of all? the? <things> to all? the? <things> <that_outcome>?", _ratio_of),
    rule("fact", "suppose the ratio of <things> to <things> stays the same", _ratio_of),
    rule("fact", "a ratio table of <things> to <things> keeps the same ratio all along", _ratio_of),
    rule("ask", "how many <things> go with WHOLE <things>", lambda c, n, others: _in_row(c, n, others)),
    rule("ask", "for WHOLE <things> , how many <things> are there", lambda n, others, c: _in_row(c, n, others)),
)
