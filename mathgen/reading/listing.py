"""Factor pairs, and ways to split a fraction: what is told of them, and questions that ask for all there are."""

from __future__ import annotations

from mathgen.asks.expression import Listing, Op, Quantity, Stated, Truth
from mathgen.exact.demand import Demand
from mathgen.reading.asked import TRUTH, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning import InEqualRows, SplitInto
from mathgen.reading.pairs import together
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Told
from mathgen.reading.wanted import AllPairs, FactorPairs, IsSplit, Splits
from mathgen.scenario.words import Scenario

_LIST = Demand("list")


def to_list(told: Told, claim: InEqualRows | SplitInto) -> None:
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


def all_pairs(question: AllPairs, told: Told, scenario: Scenario) -> Asked:
    claim = told.to_list
    if isinstance(claim, InEqualRows):
        asked = factor_pairs(FactorPairs(*claim), told, scenario)
    elif isinstance(claim, SplitInto) and question.symbol is None:
        asked = splits(Splits(*claim), told, scenario)
    else:
        raise NotRead("it is not said of what all are to be found")
    return asked._replace(uses=("list",))
