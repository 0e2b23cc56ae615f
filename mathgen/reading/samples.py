"""Samples and simulations: what is told of them, and what a question about them comes to."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stat, Stated, Truth, Value
from mathgen.reading.asked import ANY, TRUTH, WHOLE, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.chance import Digits, Drawn, Sample, SampleHas, SampleLike, UniformModel
from mathgen.reading.meaning.scope import Labels, Mark, Np
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.chance import AllGroups, EstimateOff, InSample, LikelierThan, MeanGap, SampleAlike, StandFor, ThanModel
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Measure


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


def _from_sample(told: Told) -> tuple[tuple[Quantity, ...], Op]:
    """The groups' counts in the sample, and the estimate that they give for all the groups."""
    claim = told.sample
    if claim is None or len(told.lists) != 1:
        raise NotRead("it is not said which sample is meant")
    [series] = told.lists
    groups = [one.scope.groups for one in series]
    alike = {one._replace(scope=one.scope._replace(groups=None)) for one in series}
    if len(series) != claim.size.value or len(alike) != 1 or any(one is None or len(one) != 1 for one in groups):
        raise NotRead(f"the sample does not have {claim.size.text} groups")
    one_group = Op("/", (Op("+", series), Stated(len(series), "in the sample")))
    return series, Op("*", (one_group, Stated(len(told.mentions.every("groups")), "groups")))


def _same_but_for_groups(whole: Quantity, series: tuple[Quantity, ...]) -> None:
    if whole._replace(scope=whole.scope._replace(groups=None)) != series[0]._replace(scope=series[0].scope._replace(groups=None)):
        raise NotRead("the sample is of something else than what is asked")


def all_groups(question: AllGroups, told: Told, _: Scenario) -> Asked:
    series, estimate = _from_sample(told)
    whole = told.quantity(question.measure, question.np)
    _same_but_for_groups(whole, series)
    return Asked("sample", Value(estimate), WHOLE, (*series, whole), ("sample",))


def estimate_off(question: EstimateOff, told: Told, _: Scenario) -> Asked:
    series, estimate = _from_sample(told)
    first = series[0]
    known = told.quantity(first.measure, Np(question.who, first.scope.trials, question.colors))
    if known.scope.groups is not None or not any(fact.expr == known for fact in told.facts):
        raise NotRead("it is not said how many all the groups had")
    _same_but_for_groups(known, series)
    goal = Op("-", (estimate, known) if question.high else (known, estimate))
    if evaluate(goal, told.counts) <= 0:
        raise NotRead("the estimate is not on that side")
    return Asked("sample off", Value(goal), WHOLE, (*series, known), ("sample",))


def sample_like(told: Told, claim: SampleLike) -> None:
    """Keep how many are in a sample that is like its population.

    Raises:
        NotRead: there are two.
    """
    if told.sample_like is not None:
        raise NotRead("two samples are told of")
    told.sample_like = claim
    told.open["sample like"] = "the sample"
    told.facts.append(Fact(Stated(int(claim.size.value), "in the sample"), claim.size.text))


def sample_has(told: Told, claim: SampleHas) -> None:
    """Keep how many of a color a sample has.

    Raises:
        NotRead: there are two samples, or it has more of the color than there are in all.
    """
    if told.sample_has is not None or claim.number.value > claim.size.value:
        raise NotRead("two samples are told of, or one that cannot be")
    told.sample_has = claim
    told.open["sample has"] = "the sample"
    told.facts.append(Fact(Stated(int(claim.size.value), "in the sample"), claim.size.text))
    told.facts.append(Fact(Stated(int(claim.number.value), "of the color"), claim.number.text))


def _population(told: Told, measure: Measure | None, colors: Labels) -> tuple[Quantity, Quantity]:
    """How many of the color there are among all that were counted, and how many in all."""
    counted = {fact.expr.measure for fact in told.facts if isinstance(fact.expr, Quantity)}
    if counted - {measure or "down"} or not isinstance(colors, tuple) or len(colors) > 1:
        raise NotRead("it is not said what the sample is of, or which color is meant")
    whole = told.quantity(measure or "down", Np(None, None, Mark("all")))
    return told.quantity(measure or "down", Np(None, None, colors)), whole


def sample_alike(question: SampleAlike, told: Told, _: Scenario) -> Asked:
    claim = told.sample_has
    if claim is None or claim.colors != question.colors:
        raise NotRead("it is not said how many of the color the sample has")
    part, whole = _population(told, claim.measure, question.colors)
    if question.whole is not None:
        told.referred(whole, question.whole)
    of_sample = Op("/", (Stated(int(claim.number.value), "of the color"), Stated(int(claim.size.value), "in the sample")))
    return Asked("sample alike", Truth(of_sample, "=", Op("/", (part, whole))), TRUTH, (part, whole), ("sample has",))


def in_sample(question: InSample, told: Told, _: Scenario) -> Asked:
    claim = told.sample_like
    if claim is None:
        raise NotRead("it is not said what the sample is of")
    part, whole = _population(told, claim.measure, question.colors)
    if claim.whole is not None:
        told.referred(whole, claim.whole)
    goal = Op("*", (Op("/", (part, whole)), Stated(int(claim.size.value), "in the sample")))
    return Asked("sample like", Value(goal), WHOLE, (part, whole), ("sample like",))


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
    if told.digits is None or told.digits.number.value != question.digits.value:
        raise NotRead("no simulation is told of, or one of another number of digits")
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


def drawn(told: Told, claim: Drawn) -> None:
    """Keep which groups are the sample.

    Raises:
        NotRead: two samples, or the table has another number of groups.
    """
    every = told.mentions.every("groups")
    if told.drawn is not None or claim.number.value != len(every) or not set(claim.groups) < set(every):
        raise NotRead(f"the table has {len(every)} groups, or it is not clear which are the sample")
    told.drawn = claim
    told.open["drawn"] = "the sample"
    told.facts.append(Fact(Stated(len(every), "groups"), claim.number.text))


def mean_gap(question: MeanGap, told: Told, _: Scenario) -> Asked:
    if told.drawn is None:
        raise NotRead("no sample is told of")
    every = told.mentions.every("groups")
    if told.lists:
        [population] = told.lists if len(told.lists) == 1 else [()]
    else:
        looks = [look for look in told.seen if look.measure is not None and look.np.groups == Mark("all")]
        if len(looks) != 1:
            raise NotRead("it is not said which numbers are meant")
        [look] = looks
        population = tuple(told.quantity(look.measure or "down", look.np._replace(groups=(group,))) for group in every)
    if tuple(one.scope.groups for one in population) != tuple((group,) for group in every):
        raise NotRead("it is not said what the population is")
    sample = tuple(one for one in population if set(one.scope.groups or ()) <= set(told.drawn.groups))
    means = Stat("mean", sample), Stat("mean", population)
    goal = Op("-", means if question.greater else means[::-1])
    if evaluate(goal, told.counts) <= 0:
        raise NotRead("the mean of the sample is not on that side")
    return Asked("sample gap", Value(goal), ANY, population, ("drawn",))


def uniform_model(told: Told, claim: UniformModel) -> None:
    """Keep how many kinds are equally likely.

    Raises:
        NotRead: two models, or the table has another number of kinds.
    """
    every = told.mentions.every("colors")
    if told.uniform is not None or claim.number.value != len(every):
        raise NotRead(f"the table has {len(every)} kinds, not {claim.number.text}")
    told.uniform = claim
    told.open["model"] = "the model"
    told.facts.append(Fact(Stated(len(every), "kinds"), claim.number.text))


def than_model(question: ThanModel, told: Told, _: Scenario) -> Asked:
    if told.uniform is None or not isinstance(question.color, tuple):
        raise NotRead("no model is told of, or it is not said which kind is meant")
    if told.uniform.measure != question.measure or question.whole != Mark("bare"):
        raise NotRead("the model is of other things than those asked about")
    whole = told.quantity(question.measure, Np(None, None, Mark("all")))
    part = told.quantity(question.measure, Np(None, None, question.color))
    model = Op("/", (whole, Stated(len(told.mentions.every("colors")), "kinds")))
    goal = Op("-", (part, model) if question.sign > 0 else (model, part))
    if len(question.color) > 1 or evaluate(goal, told.counts) <= 0:
        raise NotRead("the results are not on that side of the model")
    return Asked("model gap", Value(goal), WHOLE, (part, whole), ("model",))


ASKED: Answers = {
    AllGroups: all_groups,
    EstimateOff: estimate_off,
    InSample: in_sample,
    SampleAlike: sample_alike,
    MeanGap: mean_gap,
    ThanModel: than_model,
    StandFor: stand_for,
    LikelierThan: likelier_than,
}


TAKEN: Takers = {
    Sample: sample,
    SampleLike: sample_like,
    SampleHas: sample_has,
    Digits: digits,
    Drawn: drawn,
    UniformModel: uniform_model,
}
