"""Rules for sentences about successes: trials in which pins of the target color fell, and no others."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.counts import Look
from mathgen.reading.meaning.hits import (
    NewSuccesses,
    NextTries,
    OtherTrials,
    SuccessesWere,
    SuccessGoal,
    SuccessRate,
    SuccessRule,
    TriesWere,
)
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.noun_phrases import always, measured
from mathgen.reading.questions import GREATER
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.hits import ExpectSuccesses, NewTrials, NextSuccess, SuccessCount, SuccessRatio, SuccessShare, SuccessWhich
from mathgen.trials.scope import Measure


def _rule_of(plural: int, measure: Measure) -> Claims:
    if not plural:
        raise Clash
    return (SuccessRule(measured(measure, "down")),)


def _one(number: Number) -> Number:
    if number.value != 1:
        raise Clash
    return number


def _several(number: Number) -> Number:
    if number.value == 1:
        raise Clash
    return number


def _had(who: Labels, tries: Number, hits: Number | None = None) -> Claims:
    told: Claims = (TriesWere(Np(who), tries),)
    return told if hits is None else (*told, SuccessesWere(Np(who), hits))


def _of_these(hits: Number, tries: Number) -> Claims:
    return (SuccessesWere(Np(), hits, tries),)


def _ratio(first: bool, second: bool) -> SuccessRatio:
    if first == second:
        raise Clash
    return SuccessRatio(first)


TOLD: tuple[Rule, ...] = (
    rule("fact", "a trial is a success when target-color ITEM and no others <falls>", _rule_of),
    rule("fact", "in a success , target-color ITEM and no others <falls>", _rule_of),
    rule("falls", "are <outcome>", lambda measure: measure),
    rule("falls", "<outcome_base>", lambda measure: measure),
    rule("tries", "WHOLE trials", _several),
    rule("hits", "WHOLE success", _one),
    rule("hits", "WHOLE successes", _several),
    rule("fact", "<who> had <tries> <in_all>?", lambda who, tries, _: _had(who, tries)),
    rule("fact", "<who> had <hits> in <tries> <in_all>?", lambda who, hits, tries, _: _had(who, tries, hits)),
    rule("fact", "in <tries> <in_all>? , <who> had <hits>", lambda tries, _, who, hits: _had(who, tries, hits)),
    rule("fact", "of the <tries> , WHOLE was a success", lambda tries, hits: _of_these(_one(hits), tries)),
    rule("fact", "of the <tries> , WHOLE were successes", lambda tries, hits: _of_these(_several(hits), tries)),
)

TO_COME: tuple[Rule, ...] = (
    rule("fact", "of the <tries> , FRACTION were successes", lambda tries, rate: (SuccessRate(Np(), rate, tries),)),
    rule("fact", "<who> had successes in FRACTION of all <tries>", lambda who, rate, tries: (SuccessRate(Np(who), rate, tries),)),
    rule("fact", "in FRACTION of all <tries> , <who> had successes", lambda rate, tries, who: (SuccessRate(Np(who), rate, tries),)),
    rule("fact", "the other trials were not successes", always((OtherTrials(),))),
    rule("fact", "<who> had <tries> , and <who> had <tries>", lambda a, n, b, m: (*_had(a, n), *_had(b, m))),
    rule("fact", "<who> had <hits> , and <who> had <hits>", lambda a, n, b, m: (SuccessesWere(Np(a), n), SuccessesWere(Np(b), m))),
    rule("fact", "<who> will do WHOLE more trials", lambda who, number: (NextTries(Np(who), number),)),
    rule("fact", "suppose the relative frequency stays the same for WHOLE more trials", lambda number: (NextTries(Np(), number),)),
    rule("fact", "use the relative frequency of successes as the probability", always(())),
    rule("fact", "use the results table for the <tries> so far", lambda tries: (Look(Np(), "table"), TriesWere(Np(), tries))),
    rule("fact", "the goal is successes in PERCENT of all trials", lambda percent: (SuccessGoal(Np(), percent),)),
    rule("fact", "<who> would like successes in PERCENT of all trials", lambda who, percent: (SuccessGoal(Np(who), percent),)),
    rule("fact", "suppose every new trial is a success", always((NewSuccesses(),))),
    rule(
        "fact",
        "suppose every new trial is a success until PERCENT of all trials are successes",
        lambda percent: (NewSuccesses(), SuccessGoal(Np(), percent)),
    ),
)

ASKED: tuple[Rule, ...] = (
    rule("meant", "were successes", always(False)),
    rule("meant", "were not successes", always(True)),
    rule("be_meant", "will be a success", always(False)),
    rule("be_meant", "will not be a success", always(True)),
    rule("ask", "how many successes did <who> have in <tries>", lambda who, tries: SuccessCount(Np(who), False, tries)),
    rule("ask", "how many of the <tries> <meant>", lambda tries, negated: SuccessCount(Np(), negated, tries)),
    rule("ask", "how many trials of <who> <meant>", lambda who, negated: SuccessCount(Np(who), negated)),
    rule("ask", "<form_of_part> of the <tries> <meant>", lambda demand, tries, negated: SuccessShare(negated, tries, demand)),
    rule("sort", "successes", always(False)),
    rule("sort", "other trials", always(True)),
    rule("ask", "(what|find) (is|was)? the ratio of <sort> to <sort>", _ratio),
    rule("ask", f"which group had successes in the {GREATER} of (its|their) trials", always(SuccessWhich())),
    rule("ask", "about how many of the <tries> should <who> expect to be successes", lambda n, who: ExpectSuccesses(Np(who), n)),
    rule("ask", "how many new trials are needed to reach the goal", always(NewTrials())),
    rule("ask", "how many new trials is that", always(NewTrials())),
    rule("chance", "<probability> the next trial <be_meant>", lambda _, negated: NextSuccess(negated)),
)

RULES: tuple[Rule, ...] = (*TOLD, *TO_COME, *ASKED)
