"""Rules for sentences about successes: trials in which all that fell was of the target color."""

from __future__ import annotations

from mathgen.exact.demand import Demand
from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning import Labels, Np, SuccessesWere, SuccessRule, TriesWere
from mathgen.reading.noun_phrases import always, measured
from mathgen.reading.tokens import Number
from mathgen.reading.wanted import NextSuccess, SuccessCount, SuccessShare
from mathgen.trials.scope import Measure

PROBABILITY = Demand("any")


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


TOLD: tuple[Rule, ...] = (
    rule("fact", "a trial is a success when only ITEM of the target color are <outcome>", _rule_of),
    rule("fact", "in a success , only ITEM of the target color are <outcome>", _rule_of),
    rule("tries", "WHOLE trials", _several),
    rule("hits", "WHOLE success", _one),
    rule("hits", "WHOLE successes", _several),
    rule("fact", "<who> had <tries> <in_all>?", lambda who, tries, _: _had(who, tries)),
    rule("fact", "<who> had <hits> in <tries> <in_all>?", lambda who, hits, tries, _: _had(who, tries, hits)),
    rule("fact", "in <tries> <in_all>? , <who> had <hits>", lambda tries, _, who, hits: _had(who, tries, hits)),
    rule("fact", "of the <tries> , WHOLE was a success", lambda tries, hits: _of_these(_one(hits), tries)),
    rule("fact", "of the <tries> , WHOLE were successes", lambda tries, hits: _of_these(_several(hits), tries)),
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
    rule("chance", "<probability> the next trial <be_meant>", lambda _, negated: NextSuccess(negated)),
)

RULES: tuple[Rule, ...] = (*TOLD, *ASKED)
