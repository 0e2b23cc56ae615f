"""Samples and simulations: what is told of them, and what a question about them comes to."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stated, Truth, Value
from mathgen.reading.asked import TRUTH, WHOLE, Asked
from mathgen.reading.meaning import Digits, Sample
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Told
from mathgen.reading.wanted import AllGroups, LikelierThan, StandFor
from mathgen.scenario.words import Scenario


def sample(told: Told, claim: Sample) -> None:
    """Keep how many groups were drawn, of how many.

    Raises:
        NotRead: two samples, or the table has another number of groups.
    """
    every = told.mentions.every("groups")
    if told.sample is not None or claim.groups.value != len(every):
        raise NotRead(f"the table has {len(every)} groups, not {claim.groups.text}, or two samples are told of")
    told.sample = claim
    told.open["sample"] = "the sample"
    told.facts.append(Fact(Stated(int(claim.size.value), "in the sample"), claim.size.text))
    told.facts.append(Fact(Stated(len(every), "groups"), claim.groups.text))


def all_groups(question: AllGroups, told: Told, _: Scenario) -> Asked:
    claim = told.sample
    if claim is None or len(told.lists) != 1:
        raise NotRead("it is not said which sample is meant")
    [series] = told.lists
    groups = [one.scope.groups for one in series]
    alike = {(one.measure, one.scope.trials, one.scope.colors) for one in series}
    if len(series) != claim.size.value or len(alike) != 1 or any(one is None or len(one) != 1 for one in groups):
        raise NotRead(f"the sample does not have {claim.size.text} groups")
    whole = told.quantity(question.measure, question.np)
    if (whole.measure, whole.scope.trials, whole.scope.colors) not in alike:
        raise NotRead("the sample is of something else than what is asked")
    one_group = Op("/", (Op("+", series), Stated(len(series), "in the sample")))
    goal = Op("*", (one_group, Stated(len(told.mentions.every("groups")), "groups")))
    return Asked("sample", Value(goal), WHOLE, (*series, whole), ("sample",))


def digits(told: Told, claim: Digits) -> None:
    """Keep how many digits a simulation has.

    Raises:
        NotRead: there are two simulations.
    """
    if told.digits is not None:
        raise NotRead("two simulations are told of")
    told.digits = claim
    told.open["digits"] = "the simulation"
    told.facts.append(Fact(Stated(int(claim.number.value), "digits"), claim.number.text))


def stand_for(question: StandFor, told: Told, _: Scenario) -> Asked:
    if told.digits is None:
        raise NotRead("no simulation is told of")
    scope = told.scope(question.np)
    part, whole = Quantity(question.measure, scope), Quantity("set_up", scope)
    goal = Op("*", (Op("/", (part, whole)), Stated(int(told.digits.number.value), "digits")))
    return Asked("simulation", Value(goal), WHOLE, (part, whole), ("digits",))


def likelier_than(question: LikelierThan, told: Told, _: Scenario) -> Asked:
    if question.one == question.other:
        raise NotRead("something is compared with itself")
    scope = told.scope(question.np)
    one, other = Quantity(question.one, scope), Quantity(question.other, scope)
    return Asked("likelier", Truth(one, ">", other), TRUTH, (one, other, Quantity("set_up", scope)))
