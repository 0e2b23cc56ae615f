"""Factor pairs, and ways to split a fraction: what is told of them, and questions that ask for all there are."""

from __future__ import annotations

from mathgen.asks.expression import Changes, Listing, Op, Quantity, Stated, Truth
from mathgen.exact.demand import Demand
from mathgen.reading.asked import TRUTH, Answers, Asked
from mathgen.reading.choosing import which_sums
from mathgen.reading.evaluate import answer, evaluate, quantities
from mathgen.reading.meaning.scope import Mark, Np
from mathgen.reading.meaning.sets import InEqualRows, OneChange, SplitInto, SumOfSome
from mathgen.reading.pairs import together
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.sets import AllPairs, FactorPairs, IsSplit, Splits
from mathgen.scenario.words import Scenario

_LIST = Demand("list")


def to_list(told: Told, claim: InEqualRows | SplitInto | SumOfSome | OneChange) -> None:
    """Keep what is to be written in every way.

    Raises:
        NotRead: two things are.
    """
    if told.to_list is not None:
        raise NotRead("two things are to be written in every way")
    told.to_list = claim
    told.open["list"] = "what is to be written in every way"


def factor_pairs(question: FactorPairs, told: Told, _: Scenario) -> Asked:
    whole = together(told, question.measure, question.np)
    return Asked("pairs listed", Listing(whole, "*"), _LIST, (whole,))


def splits(question: Splits, told: Told, _: Scenario) -> Asked:
    last = told.last_portion
    if last is None:
        raise NotRead("it is not said what the fraction is a part of")
    part, whole = Quantity(last[0], last[1]), Quantity("set_up", last[1])
    rate = Op("/", (part, whole))
    told.referred(rate, question.part)
    told.referred(whole, question.bottom)
    return Asked("pairs listed", Listing(rate, "+", whole), _LIST, (part, whole))


def is_split(question: IsSplit, told: Told, _: Scenario) -> Asked:
    """Whether a fraction is the sum of some like fractions of its set.

    Raises:
        NotRead: it is not said what it is a part of, or the others are of other sets.
    """
    last = told.last_portion
    if last is None:
        raise NotRead("it is not said what the fraction is a part of")
    part, whole = Quantity(last[0], last[1]), Quantity("set_up", last[1])
    rate = Op("/", (part, whole))
    told.referred(rate, question.part)
    size = evaluate(whole, told.counts)
    claimed = []
    for number in question.claimed:
        top = number.value * size
        if top.q != 1 or not number.text.endswith(f"/{size}"):
            raise NotRead(f"{number.text} is not a fraction of the {size}")
        claim = Op("/", (Stated(int(top), "claimed"), whole))
        told.facts.append(Fact(claim, number.text))
        claimed.append(claim)
    return Asked("split claimed", Truth(rate, "=", Op("+", tuple(claimed))), TRUTH, (part, whole))


def _changes(told: Told, claim: OneChange) -> Asked:
    """Which one of the numbers of trials told of, or to be looked up, may change.

    Raises:
        NotRead: there is not one list of trials of one group, or it is not said how many pins were set up for each trial.
    """
    looks = [look for look in told.seen if look.measure is not None and look.np.trials == Mark("all")]
    if len(told.lists) == 1:
        [series] = told.lists
    elif not told.lists and len(looks) == 1:
        np = looks[0].np
        series = tuple(told.quantity(looks[0].measure or "down", np._replace(trials=(trial,))) for trial in told.mentions.every("trials"))
    else:
        raise NotRead("it is not said which numbers are meant")
    first = series[0]
    if len({one.scope.trials for one in series}) < len(series) or len({one.scope.groups for one in series}) > 1:
        raise NotRead("the numbers are not those of trials")
    if told.quantity(claim.measure, Np(None, first.scope.trials, claim.colors)) != first:
        raise NotRead("something else is to change")
    sets = [Quantity("set_up", one.scope) for one in series]
    sizes = {evaluate(one, told.counts) for one in sets}
    each = [
        fact
        for fact in told.facts
        for leaf in quantities(fact.expr)
        if leaf.measure == "set_up" and leaf.scope.colors == first.scope.colors and leaf.scope.groups == first.scope.groups
    ]
    if len(sizes) > 1 or not each:
        raise NotRead("it is not said how many were set up for each trial")
    stated = Stated(int(claim.to.value), f"wanted {claim.name}")
    told.facts.append(Fact(stated, claim.to.text))
    goal = Changes(series, claim.name, stated, sets[0])
    if answer(goal, told.counts) == "none":
        raise NotRead("no change will do")
    return Asked("changes listed", goal, _LIST, series)


def all_pairs(question: AllPairs, told: Told, scenario: Scenario) -> Asked:
    claim = told.to_list
    if isinstance(claim, InEqualRows):
        asked = factor_pairs(FactorPairs(*claim), told, scenario)
    elif isinstance(claim, SplitInto) and question.symbol is None:
        asked = splits(Splits(*claim), told, scenario)
    elif isinstance(claim, SumOfSome) and question.symbol is None:
        asked = which_sums(claim, told, scenario)
    elif isinstance(claim, OneChange) and question.symbol is None:
        asked = _changes(told, claim)
    else:
        raise NotRead("it is not said of what all are to be found")
    return asked._replace(uses=("list", *asked.uses))


ASKED: Answers = {
    IsSplit: is_split,
    AllPairs: all_pairs,
    FactorPairs: factor_pairs,
    Splits: splits,
}


TAKEN: Takers = {
    InEqualRows: to_list,
    SplitInto: to_list,
    SumOfSome: to_list,
    OneChange: to_list,
}
