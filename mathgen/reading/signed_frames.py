"""Rules for sentences about positive and negative numbers: changes, and results over and under a goal."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims, at
from mathgen.reading.meaning.results import ResultIs, ResultsAre, ZeroIs
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.noun_phrases import Counted, always, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.results import ChangeFrom, FartherFromZero, FromZero, OfResults, ResultsApart, StandsForResult
from mathgen.trials.scope import Measure

NUMBER = "what positive or negative number"


def _goal(thing: Counted, measure: Measure | None) -> Claims:
    return (ZeroIs(thing.number, thing.colors, None if measure is None else measured(measure, "down", "standing")),)


def _zero(number: Number, goal: Claims) -> Claims:
    if number.value != 0:
        raise Clash
    return goal


def _to_zero(question: object, zero: Number) -> object:
    if zero.value != 0:
        raise Clash
    return question


def _to_make_zero(count: Number, zero: Number, many: int) -> object:
    """The result that, with the two that are told, makes zero; it is one of three."""
    if count.value != many:
        raise Clash
    return _to_zero(OfResults("opposite"), zero)


def _result(who: Labels, when: Labels, number: Number) -> Claims:
    return (ResultIs(Np(who, when), number),)


RULES: tuple[Rule, ...] = (
    rule("signed", "SIGNED", lambda number: number),
    rule("signed", "WHOLE", lambda number: number),
    rule("signed_list", "<signed> and <signed>", lambda a, b: (a, b)),
    rule("signed_list", "<signed> , <more_signed>", lambda a, rest: (a, *rest)),
    rule("more_signed", "<signed> ,? and <signed>", lambda a, b: (a, b)),
    rule("more_signed", "<signed> , <more_signed>", lambda a, rest: (a, *rest)),
    # what zero stands for
    rule("a_goal", "a goal of <counted> <that_outcome>?", _goal),
    rule("zero_is", "let WHOLE stand for <a_goal>", _zero),
    rule("zero_is", "on a number line , WHOLE stands for <a_goal>", _zero),
    rule("zero_is", "the goal was <counted> <that_outcome>?", _goal),
    rule("fact", "<zero_is>", lambda claims: claims),
    rule("fact", "<zero_is> in each trial", lambda claims: claims),
    rule("fact", "a result under the goal is a negative number", always(())),
    rule("fact", "a change down is a negative number", always(())),
    rule("fact", "a change up is a positive number , and a change down is a negative number", always(())),
    # results
    rule("result", "the result was <signed>", lambda number: _result(None, None, number)),
    rule("result", "the result of <who> was <signed>", lambda who, number: _result(who, None, number)),
    rule("result", "the result of <who> <when> was <signed>", _result),
    rule("result", "<who> had a result of <signed>", lambda who, number: _result(who, None, number)),
    rule(
        "result",
        "the result was <signed> for <who> and <signed> for <who>",
        lambda n, who, k, other: (*_result(who, None, n), *_result(other, None, k)),
    ),
    rule("fact", "<result>", lambda claims: claims),
    rule("fact", "<result> <when>", lambda claims, when: at(when, claims)),
    rule("fact", "<when> , <result>", at),
    rule("results", "<result> ,? and <result>", lambda one, other: one + other),
    rule("fact", "<results> <when>", lambda claims, when: at(when, claims)),
    rule("fact", "<when> , <results>", at),
    rule(
        "fact",
        "<result> <when> and a result of <signed> <when>",
        lambda claims, when, n, then: at(when, claims) + _result(None, then, n),
    ),
    rule("fact", "<result> <when> and <signed> <when>", lambda claims, when, n, then: at(when, claims) + _result(None, then, n)),
    rule("all_results", "the results of <who> were <signed_list>", lambda who, numbers: (ResultsAre(Np(who), numbers),)),
    rule("all_results", "the results of <who> <when> were <signed_list>", lambda who, when, n: (ResultsAre(Np(who, when), n),)),
    rule("all_results", "<who> had the results <signed_list>", lambda who, numbers: (ResultsAre(Np(who), numbers),)),
    rule("fact", "<all_results>", lambda claims: claims),
    rule("fact", "<all_results> <when>", lambda claims, when: at(when, claims)),
    rule("fact", "<when> , <all_results>", at),
    # questions
    *(rule("ask", f"{what_number} shows the change from TRIALS to TRIALS", ChangeFrom) for what_number in (NUMBER, "what number")),
    *(
        rule(
            "ask",
            f"{what_number} shows the change in <things> <that_outcome> from TRIALS to TRIALS",
            lambda c, m, first, then: ChangeFrom(first, then, c, measured(m, "down", "standing")),
        )
        for what_number in (NUMBER, "what number")
    ),
    rule("ask", f"{NUMBER} stands for this result", always(StandsForResult())),
    rule("ask", "what number stands for the result of <who>", lambda who: StandsForResult(what(None, who))),
    rule("ask", "what is the distance from this result to the goal", always(FromZero())),
    rule("ask", "what is the absolute value of this result", always(FromZero())),
    rule("ask", "how far is this result from WHOLE", lambda zero: _to_zero(FromZero(), zero)),
    rule("side", "farther from", always(True)),
    rule("side", "closer to", always(False)),
    rule("ask", "which group was <side> the goal", FartherFromZero),
    rule("ask", "which group had the result with the <size> absolute value", FartherFromZero),
    rule("ask", "which group had the result that is <side> WHOLE", lambda side, zero: _to_zero(FartherFromZero(side), zero)),
    rule("ask", "what is the sum of these results", always(OfResults("sum"))),
    rule("ask", f"{NUMBER} is the sum of the results", always(OfResults("sum"))),
    rule("ask", f"{NUMBER} is the total of both results", always(OfResults("sum"))),
    rule("ask", "what is the mean of these results", always(OfResults("mean"))),
    rule("ask", f"{NUMBER} is the mean result", always(OfResults("mean"))),
    rule("ask", "where on the number line is the mean of these results", always(OfResults("mean"))),
    rule("ask", "how much greater was the result <when> than the result <when>", lambda one, other: ResultsApart(one, other)),
    rule("ask", "by how much was the result <when> less than the result <when>", lambda less, one: ResultsApart(one, less)),
    rule("ask", "what is the distance between these results on the number line", always(ResultsApart())),
    *(
        rule("ask", pattern, lambda count, zero, many=many: _to_make_zero(count, zero, many))
        for pattern, many in (
            ("what result in one more trial makes the sum of these WHOLE results WHOLE", 3),
            ("what result in one more trial brings the sum of these WHOLE results back to WHOLE", 3),
            (f"{NUMBER} must be added to the WHOLE results to make a sum of WHOLE", 2),
        )
    ),
)
