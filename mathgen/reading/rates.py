"""Unit rates, rates carried on and ratio tables: what is told of them, and what has to be worked out."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stated, Value
from mathgen.reading.asked import ANY, WHOLE, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.rates import SameRatio
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.rates import CountAhead, ForEach, InRow, TrialsAhead, UnitRate
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Measure


def unit_rate(question: UnitRate, told: Told, _: Scenario) -> Asked:
    quantity = told.quantity(question.measure, question.np)
    return Asked("rate", Value(Op("/", (quantity, _trials(told, quantity)))), ANY, (quantity,))


def for_each(question: ForEach, told: Told, _: Scenario) -> Asked:
    scope = told.scope(question.np)
    first, second = Quantity(question.measure, scope), Quantity(question.other, scope)
    return Asked("rate", Value(Op("/", (first, second))), ANY, (first, second))


def _trials(told: Told, quantity: Quantity) -> Stated:
    """How many trials a rate per trial is of.

    Raises:
        NotRead: one alone.
    """
    size = len(quantity.scope.trials or told.mentions.every("trials"))
    if size < 2:
        raise NotRead("a rate per trial needs more than one trial")
    return Stated(size, "trials")


def _carried_on(question: CountAhead | TrialsAhead, told: Told) -> tuple[Quantity, Op]:
    if told.next_set is not None or told.next_goal is not None:
        raise NotRead("it is not said what the rate is for")
    if bool(told.same_rate) == question.same or any(rate.measure is not None for rate in told.same_rate):
        raise NotRead("nothing says that the rate stays the same, or it is said twice")
    quantity = told.quantity(question.measure, question.np)
    return quantity, Op("/", (quantity, _trials(told, quantity)))


def count_ahead(question: CountAhead, told: Told, _: Scenario) -> Asked:
    quantity, rate = _carried_on(question, told)
    ahead = _stated(told, question.trials, "trials at this rate")
    return Asked("rate carried on", Value(Op("*", (rate, ahead))), WHOLE, (quantity,), ("same rate",))


def trials_ahead(question: TrialsAhead, told: Told, _: Scenario) -> Asked:
    quantity, rate = _carried_on(question, told)
    goal = _stated(told, question.number, "goal at this rate")
    return Asked("rate carried on", Value(Op("/", (goal, rate))), WHOLE, (quantity,), ("same rate",))


def _stated(told: Told, number: Number, meaning: str) -> Stated:
    stated = Stated(int(number.value), meaning)
    fact = Fact(stated, number.text)
    if fact not in told.facts:
        told.facts.append(fact)
    return stated


def same_ratio(told: Told, claim: SameRatio) -> None:
    """Keep which ratio a table is of.

    Raises:
        NotRead: there are two.
    """
    if told.same_ratio is not None:
        raise NotRead("two ratios are told of")
    told.same_ratio = claim
    told.open["same ratio"] = "the ratio"
    for colors in (claim.first, claim.second):
        told.mentions.note("colors", colors)


def in_row(question: InRow, told: Told, _: Scenario) -> Asked:
    claim = told.same_ratio
    if claim is None or {claim.first, claim.second} != {question.np.colors, question.others.colors}:
        raise NotRead("it is not said which ratio stays the same")
    measure: Measure | None = claim.measure
    if measure is None:
        measures = {
            fact.expr.measure
            for fact in told.facts
            if isinstance(fact.expr, Quantity) and fact.expr.scope.colors in (claim.first, claim.second)
        }
        if len(measures) != 1:
            raise NotRead("it is not said what the ratio is of")
        [measure] = measures
    if measure == "set_up":
        raise NotRead("the ratio is of what was set up")
    asked, other = told.quantity(measure, question.np), told.quantity(measure, question.others)
    if evaluate(other, told.counts) == question.number.value:
        raise NotRead("that row is the first")
    row = _stated(told, question.number, "in another row")
    goal = Value(Op("/", (Op("*", (asked, row)), other)))
    return Asked("ratio table", goal, WHOLE, (asked, other), ("same ratio",))


ASKED: Answers = {
    UnitRate: unit_rate,
    ForEach: for_each,
    CountAhead: count_ahead,
    TrialsAhead: trials_ahead,
    InRow: in_row,
}


TAKEN: Takers = {
    SameRatio: same_ratio,
}
