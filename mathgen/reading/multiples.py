"""A letter for a number of pins, and what becomes of it: left as a multiple of itself, or held against a limit."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stat, Stated, Tally, Value
from mathgen.reading.asked import ANY, WHOLE, Answers, Asked
from mathgen.reading.meaning.scope import Np
from mathgen.reading.meaning.sets import LeftIs, LetterAhead, OneTerm, ResultLimit
from mathgen.reading.means import mean
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.counts import MeanOf
from mathgen.reading.wanted.sets import HowManyFit, TimesLetter
from mathgen.scenario.words import Scenario


def letter_ahead(told: Told, claim: LetterAhead) -> None:
    """Keep what a letter stands for next time.

    Raises:
        NotRead: two letters are told of.
    """
    if told.letter_ahead is not None:
        raise NotRead("two letters stand for numbers")
    told.letter_ahead = claim
    told.open["letter ahead"] = claim.letter


def left_is(told: Told, claim: LeftIs) -> None:
    """Keep the expression for what is left.

    Raises:
        NotRead: told twice.
    """
    if told.left_is is not None:
        raise NotRead("it is said twice what is left")
    told.left_is = claim
    told.open["left"] = "what is left"


def one_term(told: Told, claim: OneTerm) -> None:
    """Keep that an expression is to be written shorter.

    Raises:
        NotRead: told twice, or of no expression that is told of.
    """
    if told.one_term is not None or told.left_is is None or told.left_is.written != claim.written:
        raise NotRead("it is not said which expression is meant")
    told.one_term = claim
    told.open["one term"] = "the one term"


def times_letter(question: TimesLetter, told: Told, _: Scenario) -> Asked:
    left, ahead = told.left_is, told.letter_ahead
    if left is None or ahead is None or (question.written is None) != (told.one_term is not None):
        raise NotRead("it is not said what is left, or of what")
    written = left.written
    if question.written not in (None, written) or {written.letter, written.again, ahead.letter, question.letter} != {ahead.letter}:
        raise NotRead("it is not clear which expression or which letter is meant")
    rates = [fact.expr for fact in told.facts if isinstance(fact.expr, Op) and all(isinstance(arg, Quantity) for arg in fact.expr.args)]
    if len(rates) != 1 or not any(fact.expr == rates[0] and fact.text == written.part.text for fact in told.facts):
        raise NotRead(f"it is not said what {written.part.text} is a part of")
    part, whole = rates[0].args
    assert isinstance(part, Quantity)
    assert isinstance(whole, Quantity)
    if {part.measure, left.measure} != {"down", "standing"}:
        raise NotRead("the expression is for something else than the rest")
    for np in (ahead.np, ahead.np._replace(colors=left.colors if left.colors is not None else ahead.np.colors)):
        if told.scope(np)._replace(trials=None) != whole.scope._replace(trials=None):
            raise NotRead("the letter stands for other things than those told of")
    goal = Op("-", (Stated(1, "whole"), rates[0]))
    uses = ("letter ahead", "left", "one term")
    return Asked("as fraction", Value(goal), ANY, (part, whole), uses)


def result_limit(told: Told, claim: ResultLimit) -> None:
    """Keep what a letter stands for, and its limit where it is told.

    Raises:
        NotRead: told twice, or the limit is for another letter.
    """
    if told.result_limit is not None or (claim.limit is not None and claim.limit.letter != claim.letter):
        raise NotRead("it is not clear what the letter stands for")
    told.result_limit = claim
    told.open["limit"] = "the limit"


def how_many_fit(question: HowManyFit, told: Told, scenario: Scenario) -> Asked:
    claim = told.result_limit
    if claim is None or (question.means and question.means != claim.means):
        raise NotRead("it is not said what the letter stands for, or what the limit is of")
    limits = {one for one in (claim.limit, question.limit) if one is not None}
    if len(limits) != 1:
        raise NotRead("it is not clear what the limit is")
    [limit] = limits
    if limit.letter != claim.letter:
        raise NotRead("it is not said what the letter stands for")
    goal = mean(MeanOf(claim.measure, Np(None, None, claim.colors), claim.by, ANY, "mean"), told, scenario).goal
    assert isinstance(goal, Value)
    assert isinstance(goal.expr, Stat)
    series = tuple(one for one in goal.expr.series if isinstance(one, Quantity))
    stated = Stated(int(limit.number.value), "limit")
    told.facts.append(Fact(stated, limit.number.text))
    return Asked("tally", Value(Tally(series, limit.test, stated)), WHOLE, series, ("limit",))


ASKED: Answers = {
    TimesLetter: times_letter,
    HowManyFit: how_many_fit,
}


TAKEN: Takers = {
    LetterAhead: letter_ahead,
    LeftIs: left_is,
    OneTerm: one_term,
    ResultLimit: result_limit,
}
