"""Rules for sentences that say where to look, what to compare, and how to round."""

from __future__ import annotations

from mathgen.exact.demand import Demand
from mathgen.reading.chart import Rule, rule
from mathgen.reading.meaning import Claim
from mathgen.reading.meaning.counts import Against, Look, Rounding
from mathgen.reading.meaning.parts import TheFraction
from mathgen.reading.meaning.scope import Labels, Mark, Np
from mathgen.reading.noun_phrases import always, what
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure

Claims = tuple[Claim, ...]


def _look(source: str, who: Labels = None, when: Labels = None) -> Claims:
    return (Look(Np(who, when), "graph" if source == "graph" else "table"),)


def _count(measure: Measure, np: Np, whole: Number | None = None) -> Claims:
    return (Look(np, "table", whole, measure),)


def from_source(source: str, claims: Claims) -> Claims:
    """The claims, their numbers looked up there."""
    return tuple(claim._replace(source=source) if isinstance(claim, Look) else claim for claim in claims)  # type: ignore[arg-type]


def _compare(first: Np, second: Np) -> Claims:
    return (Against(first, second),)


def _compare_trials(first: Labels, second: Labels, who: Labels = None) -> Claims:
    return (Look(Np(who), "table"), Against(Np(None, first), Np(None, second)))


RULES: tuple[Rule, ...] = (
    rule("source", "the results? table", always("table")),
    rule("source", "the bar graph", always("graph")),
    rule("at", "(look|use) at? <source>", lambda source: source),
    rule("fact", "<at>", _look),
    rule("fact", "the headings show the ITEM SET", always(())),  # where they stand: nothing is counted by it
    rule("fact", "<at> for <who>", _look),
    rule("fact", "<at> (in|for) <trials>", lambda source, when: _look(source, None, when)),
    rule("fact", "<at> for <who> <when>", _look),
    rule("turn", "look at", always(None)),
    rule("turn", "think about", always(None)),
    rule("fact", "<turn> <trials>", lambda _, when: (Look(Np(None, when)),)),
    rule("fact", "<turn> <who>", lambda _, who: (Look(Np(who)),)),
    rule("fact", "<turn> <who> <when>", lambda _, who, when: (Look(Np(who, when)),)),
    rule("fact", "find <who> in <source> <when>?", lambda who, source, when: _look(source, who, when)),
    # to do what
    rule("fact", "<at> to <job>", lambda source, claims: from_source(source, claims)),
    rule("fact", "count the <colors> ITEM together", lambda colors, _: (Look(what(colors)),)),
    rule("job", "count the <things> <that_outcome> <when>?", lambda c, m, when: _count(m, what(c, None, when))),
    rule("job", "find the number of <things> <that_outcome> <when>?", lambda c, m, when: _count(m, what(c, None, when))),
    rule("job", "count the <either> ITEM <that_outcome> <when>?", lambda c, _, m, when: _count(m, what(c, None, when))),
    rule("job", "count all? the <things> that? <who> <outcome> <when>?", lambda c, who, m, when: _count(m, what(c, who, when))),
    rule("job", "count all the <things> <that_outcome> <when>?", lambda c, m, when: _count(m, what(c, None, when))),
    rule("job", "see how many <things> <who> <outcome> <when>?", lambda c, who, m, when: _count(m, what(c, who, when))),
    rule("job", "see how many <things> <who> <outcome> <each_trial>", lambda c, who, m, _: _count(m, what(c, who, Mark("all")))),
    rule("job", "see how many <things> each group <outcome> <when>?", lambda c, m, when: _count(m, what(c, Mark("all"), when))),
    rule("job", "see how many of these <things> <who> <outcome>", lambda c, who, m: _count(m, what(c, who))),
    rule("job", "see how many of the WHOLE <things> <who> <outcome>", lambda n, c, who, m: _count(m, what(c, who), n)),
    rule("job", "add the <things> <who> <outcome> <when>?", lambda c, who, m, when: _count(m, what(c, who, when))),
    rule("job", "find the fraction of the WHOLE <things> <that_outcome>", lambda n, c, m: (*_count(m, what(c), n), TheFraction(m))),
    rule("job", "find the fraction <that_outcome>", lambda m: (*_count(m, Np()), TheFraction(m))),
    rule("job", "compare <groups> <when>?", lambda groups, when: (Look(Np(groups, when), "table"),)),
    rule("job", "compare TRIALS", lambda trials: (Look(Np()), Against(Np(None, trials[:1]), Np(None, trials[1:])))),
    rule("job", "compare TRIALS with TRIALS", _compare_trials),
    rule("job", "compare TRIALS with TRIALS for <who>", _compare_trials),
    # compare
    rule("fact", "compare <group> (with|and|to) <group> <when>?", lambda a, b, when: _compare(Np(a, when), Np(b, when))),
    rule("fact", "compare TRIALS (with|to) TRIALS", lambda a, b: _compare(Np(None, a), Np(None, b))),
    rule("fact", "compare TRIALS", lambda trials: _compare(Np(None, trials[:1]), Np(None, trials[1:]))),
    rule("fact", "compare the <colors> ITEM with all the? ITEM", lambda c, _, __: _compare(what(c), what(Mark("all")))),
    rule("fact", "compare the COLOR ITEM (with|and|to) the COLOR ITEM", lambda a, _, b, __: _compare(what((a,)), what((b,)))),
    rule("fact", "compare the COLOR bar (with|and|to) the COLOR bar", lambda a, b: _compare(what((a,)), what((b,)))),
    rule("fact", "compare the WHOLE groups", lambda n: (Look(Np(Mark("these", n))),)),
    rule("fact", "compare the WHOLE trials", lambda n: (Look(Np(None, Mark("these", n))),)),
    # rounding
    rule("fact", "round the? (answer|percent)? to the nearest <place> of a percent", lambda n: (Rounding(Demand("percent", n)),)),
    rule("fact", "round the? (answer|percent)? to the nearest whole percent", always((Rounding(Demand("percent", 0)),))),
    rule("fact", "round the? answer? to the nearest <tens>", lambda n: (Rounding(Demand("whole", n)),)),
    rule("fact", "add , then round to the nearest <place>", lambda n: (Rounding(Demand("decimal", n)),)),
    rule("fact", "round the? (answer|decimal)? to the nearest <place>", lambda n: (Rounding(Demand("decimal", n)),)),
)
