"""Positive and negative numbers: what is told of results over and under a goal, and what is asked of them and of changes."""

from __future__ import annotations

from mathgen.asks.expression import Choice, Op, Quantity, Stated, Value
from mathgen.reading.asked import ANY, NAME, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.results import ResultIs, ResultsAre, ZeroIs
from mathgen.reading.meaning.scope import Np
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.results import ChangeFrom, FartherFromZero, FromZero, OfResults, ResultsApart, StandsForResult
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Measure, Scope


def zero_is(told: Told, claim: ZeroIs) -> None:
    """Keep the goal that results are over or under.

    Raises:
        NotRead: there are two.
    """
    if told.zero is not None:
        raise NotRead("two goals are told of")
    told.zero = claim
    told.mentions.resolve("colors", claim.colors)
    told.facts.append(Fact(_goal(told), claim.number.text))
    told.open["zero"] = claim.number.text


def _goal(told: Told) -> Stated:
    if told.zero is None:
        raise NotRead("it is not said what results are over or under")
    return Stated(int(told.zero.number.value), "goal")


def _keep(told: Told, scope: Scope, number: Number) -> None:
    goal = _goal(told)
    assert told.zero is not None  # there is a goal
    if told.zero.measure is None:
        raise NotRead("it is not said what the goal is for")
    result = Op("-", (Quantity(told.zero.measure, scope), goal))
    told.said(result, number)
    told.results.append(result)


def result_is(told: Told, claim: ResultIs) -> None:
    """Keep a result that is told.

    Raises:
        NotRead: nothing says what it is over or under, or the table says otherwise.
    """
    _keep(told, told.scope(claim.np), claim.number)


def results_are(told: Told, claim: ResultsAre) -> None:
    """Keep results that are told trial by trial.

    Raises:
        NotRead: as ``result_is``, or there are more or fewer of them than trials.
    """
    scope = told.scope(claim.np)
    trials = scope.trials or told.mentions.every("trials")
    if len(trials) != len(claim.numbers):
        raise NotRead(f"there are {len(trials)} trials, but {len(claim.numbers)} results")
    for trial, number in zip(trials, claim.numbers, strict=True):
        _keep(told, scope._replace(trials=(trial,)), number)


def _measure(told: Told, said: Measure | None) -> Measure:
    """What was counted: as the question says, or else the one thing that was told or is to be looked up."""
    looked = {look.measure for look in told.seen if look.measure is not None}
    counted = {fact.expr.measure for fact in told.facts if isinstance(fact.expr, Quantity)}
    found = ({said} if said else set()) | looked | counted
    if len(found) != 1:
        raise NotRead("it is not said what is counted")
    [measure] = found
    return measure


def change_from(question: ChangeFrom, told: Told, _: Scenario) -> Asked:
    measure, order = _measure(told, question.measure), told.mentions.every("trials")
    if len(question.first) != 1 or len(question.second) != 1:
        raise NotRead("a change is from one trial to another")
    if order.index(question.first[0]) >= order.index(question.second[0]):
        raise NotRead("the later trial comes second")
    np = Np(None, None, question.colors)
    earlier, later = (told.quantity(measure, np._replace(trials=trial)) for trial in (question.first, question.second))
    return Asked("signed", Value(Op("-", (later, earlier))), ANY, (earlier, later))


def stands_for_result(question: StandsForResult, told: Told, _: Scenario) -> Asked:
    goal = _goal(told)
    assert told.zero is not None  # there is a goal
    if told.results:
        raise NotRead("the result is told already")
    count = Quantity(_measure(told, told.zero.measure), told.scope(question.np))
    return Asked("signed", Value(Op("-", (count, goal))), ANY, (count,), ("zero",))


def _counts(told: Told) -> tuple[Quantity, ...]:
    return tuple(arg for result in told.results for arg in result.args if isinstance(arg, Quantity))


def from_zero(_: FromZero, told: Told, __: Scenario) -> Asked:
    if len(told.results) != 1:
        raise NotRead("it is not said which result is meant")
    return Asked("signed", Value(Op("abs", tuple(told.results))), ANY, _counts(told), ("zero",))


def farther_from_zero(question: FartherFromZero, told: Told, _: Scenario) -> Asked:
    counts = _counts(told)
    groups = [one.scope.groups for one in counts]
    names = tuple(str(some[0]) for some in groups if some is not None and len(some) == 1)
    if len(names) != len(counts) or len(set(names)) != len(names) or len(names) < 2 or len({one.scope[1:] for one in counts}) != 1:
        raise NotRead("it is not said which groups are compared")
    goal = Choice(names, tuple(Op("abs", (result,)) for result in told.results), question.farther)
    return Asked("signed", goal, NAME, counts, ("zero",))


def of_results(question: OfResults, told: Told, _: Scenario) -> Asked:
    results, counts = tuple(told.results), _counts(told)
    if len(results) < 2 or len({(one.scope.groups, one.scope.colors) for one in counts}) != 1:
        raise NotRead("the results of several trials of a group are needed")
    total = Op("+", results)
    if question.what == "opposite":
        if len(results) != 2:
            raise NotRead("two results are needed")
        goal = Op("opposite", (total,))
        if evaluate(total, told.counts) == 0:
            raise NotRead("the sum is zero already")
    else:
        goal = total if question.what == "sum" else Op("/", (total, Stated(len(results), "trials")))
    return Asked("signed", Value(goal), ANY, counts, ("zero",))


def results_apart(question: ResultsApart, told: Told, _: Scenario) -> Asked:
    counts, order = _counts(told), told.mentions.every("trials")
    if len(counts) != 2 or counts[0].scope._replace(trials=None) != counts[1].scope._replace(trials=None):
        raise NotRead("two results of one group are needed")
    values = [evaluate(result, told.counts) for result in told.results]
    high = 0 if values[0] > values[1] else 1
    said = tuple(one.scope.trials or order for one in (counts[high], counts[1 - high]))
    if values[0] == values[1] or (question.greater is not None and (question.greater, question.less) != said):
        raise NotRead("that result is not the greater one")
    return Asked("signed", Value(Op("-", (told.results[high], told.results[1 - high]))), ANY, counts, ("zero",))


ASKED: Answers = {
    ChangeFrom: change_from,
    StandsForResult: stands_for_result,
    FromZero: from_zero,
    FartherFromZero: farther_from_zero,
    OfResults: of_results,
    ResultsApart: results_apart,
}


TAKEN: Takers = {
    ZeroIs: zero_is,
    ResultIs: result_is,
    ResultsAre: results_are,
}
