"""Parts of one whole that are of some colors, and equal fractions: what is told of them, and what is asked."""

from __future__ import annotations

from mathgen.asks.expression import Expr, Op, Quantity, Stated, Value
from mathgen.exact.parse import written
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.parts import EqualFraction, PartOf, TheFraction
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Fact, Takers, Told, settled
from mathgen.reading.wanted.parts import OtherNumber, PartOfSet
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Measure, Scope


def part_of(told: Told, claim: PartOf) -> None:
    """Keep which part of a set is told to be of some colors.

    Raises:
        NotRead: it is false, no part of the whole, or it is not said what it is a part of.
    """
    if claim.again:
        if told.last_whole is None or claim.np != Np():
            raise NotRead(f"it is not said what {claim.part.text} is a part of")
        wholes = [told.last_whole]
    else:
        wholes = _sets(told, claim.np, claim.whole, claim.counted)
    fitting = []
    for whole in wholes:
        part = _of_colors(told, whole, claim.colors, claim.measure)
        if part is not None:
            counted = written(claim.part.text).form == "whole"
            expr: Expr = part if counted else Op("/", (part, whole))
            if evaluate(expr, told.counts) == claim.part.value:
                fitting.append((expr, whole))
    if len(fitting) != 1:
        raise NotRead("it is not said which color" if fitting else f"the table does not say {claim.part.text}")
    expr, whole = fitting[0]
    told.said(expr, claim.part)
    if claim.whole is not None:
        told.referred(whole, claim.whole)
    told.last_whole, told.last_portion = whole, None
    if isinstance(claim.colors, tuple):
        told.mentions.note("colors", claim.colors)


def _sets(told: Told, np: Np, number: Number | None, measure: Measure | None) -> list[Quantity]:
    """The sets that "the 12 pins" can be: where it is not said what they count, one told of before by that number, or those set up.

    Raises:
        NotRead: more than one with that number was told of, or no number says which is meant.
    """
    scopes = list(dict.fromkeys(told.scope(choice) for choice in settled(told, np)))  # all colors, named one by one, are all colors
    if measure is None:
        before = {
            fact.expr: None
            for fact in told.facts
            if isinstance(fact.expr, Quantity)
            and fact.expr.scope in scopes
            and (evaluate(fact.expr, told.counts) == number.value if number is not None else fact.expr.measure != "set_up")
        }
        if len(before) > 1 or (before and number is None):
            raise NotRead("it is not said which are meant")
        if before:
            return list(before)
    wholes = [Quantity(measure or "set_up", scope) for scope in scopes]
    if number is not None:
        true = [whole for whole in wholes if evaluate(whole, told.counts) == number.value]
        if not true:
            raise NotRead(f"the table does not say {number.text}")
        return true
    return wholes


def _of_colors(told: Told, whole: Quantity, colors: Labels, measure: Measure | None) -> Quantity | None:
    """The part of a set that is of some colors; None where that is no part of it."""
    measure = measure or whole.measure
    if whole.measure not in ("set_up", measure) or not isinstance(colors, tuple):
        return None
    every = set(whole.scope.colors or told.mentions.every("colors"))
    # Of a set of two colors, "red or blue pins knocked down" are a part; "red or blue pins" are the set itself.
    if not set(colors) <= every or (whole.measure == measure and set(colors) == every):
        return None
    return Quantity(measure, whole.scope._replace(colors=told.mentions.scope((), (), colors).colors))


def part_of_set(question: PartOfSet, told: Told, _: Scenario) -> Asked:
    fitting = []
    for whole in _sets(told, question.np, question.whole, question.counted):
        part = _of_colors(told, whole, question.colors, question.measure)
        if part is not None:
            fitting.append((part, whole))
    if len(fitting) != 1:
        raise NotRead("it is not said which color" if fitting else "the part asked for is no part of the whole")
    part, whole = fitting[0]
    if question.whole is not None:
        told.referred(whole, question.whole)
    return Asked("color part", Value(Op("/", (part, whole))), question.demand, (part, whole), looked_at=(part,))


def the_fraction(told: Told, claim: TheFraction) -> None:
    """Keep which fraction is to be found.

    Raises:
        NotRead: there are two.
    """
    if told.the_fraction not in (None, claim.measure):
        raise NotRead("two fractions are told of")
    told.the_fraction = claim.measure


def equal_fraction(told: Told, claim: EqualFraction) -> None:
    """Keep the one number that is told of an equal fraction.

    Raises:
        NotRead: there are two.
    """
    if told.equal_fraction is not None:
        raise NotRead("two equal fractions are told of")
    told.equal_fraction = claim
    told.facts.append(Fact(Stated(int(claim.number.value), f"{claim.place} number"), claim.number.text))
    told.open["equal fraction"] = claim.number.text


def other_number(question: OtherNumber, told: Told, _: Scenario) -> Asked:
    claim = told.equal_fraction
    if claim is None or claim.place == question.place:
        raise NotRead("nothing says which equal fraction is meant")
    measure, scope = fraction_told(told, claim.measure, claim.np)
    part, whole = Quantity(measure, scope), Quantity("set_up", scope)
    stated = Stated(int(claim.number.value), f"{claim.place} number")
    over, under = (part, whole) if question.place == "top" else (whole, part)
    return Asked("equal fraction", Value(Op("/", (Op("*", (stated, over)), under))), WHOLE, (part, whole), ("equal fraction",))


def fraction_told(told: Told, measure: Measure | None, np: Np) -> tuple[Measure, Scope]:
    """The fraction that another is to be equal to: the one told of, or to be found in the table."""
    last = told.last_portion
    if measure is None:
        measures = [known for known in dict.fromkeys((told.the_fraction, None if last is None else last[0])) if known is not None]
        if len(measures) != 1:
            raise NotRead("it is not said which fraction is meant")
        measure = measures[0]
    scopes = list(dict.fromkeys(told.scope(choice) for choice in settled(told, np)))
    if last is not None:
        scopes = [scope for scope in scopes if scope == last[1]]
    if len(scopes) != 1:
        raise NotRead("it is not said which fraction is meant")
    return measure, scopes[0]


ASKED: Answers = {
    PartOfSet: part_of_set,
    OtherNumber: other_number,
}


TAKEN: Takers = {
    PartOf: part_of,
    TheFraction: the_fraction,
    EqualFraction: equal_fraction,
}
