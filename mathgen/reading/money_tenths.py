"""Prices as parts of a dollar: what is told of them, and what is asked."""

from __future__ import annotations

from mathgen.asks.expression import DOLLAR, Choice, Op, Price, Stated, Truth, Value
from mathgen.reading.asked import ANY, NAME, TRUTH, Answers, Asked
from mathgen.reading.meaning.prices import BuysBoth, PartPaid
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Takers, Told
from mathgen.reading.wanted.prices import CostsMoreThan, PartLeft, PartsTogether, WhichCosts
from mathgen.scenario.words import Scenario


def part_paid(told: Told, claim: PartPaid) -> None:
    """Keep a price.

    Raises:
        NotRead: it is told twice, or the price list says otherwise.
    """
    if claim.item in told.buying.parts:
        raise NotRead(f"the price of the {claim.item} is told twice")
    part = Op("/", (Price(claim.item, "cents"), DOLLAR))
    told.said(part, claim.part)
    told.buying.parts[claim.item] = part


def buys_both(told: Told, _: BuysBoth) -> None:
    """Keep that the two items told of are bought.

    Raises:
        NotRead: two were not told.
    """
    if len(told.buying.parts) + len(told.buying.prices) != 2 or told.buying.bought:
        raise NotRead("it is not clear which two items are bought")
    told.buying.both = True
    told.open["both"] = "what is bought"


def _two(told: Told, named: tuple[str, str] | None = None) -> tuple[tuple[str, Op], tuple[str, Op]]:
    """The two items with their parts of a dollar, in the order in which they are named or told.

    Raises:
        NotRead: two other items are named, or not two are told.
    """
    parts = told.buying.parts
    items = tuple(parts) if named is None else named
    if len(parts) != 2 or set(items) != set(parts):
        raise NotRead("it is not clear which two prices are meant")
    one, other = items
    return (one, parts[one]), (other, parts[other])


def which_costs(question: WhichCosts, told: Told, _: Scenario) -> Asked:
    (one, part), (other, part2) = _two(told, question.items)
    return Asked("money", Choice((one, other), (part, part2), question.more), NAME, ())


def costs_more_than(question: CostsMoreThan, told: Told, _: Scenario) -> Asked:
    (_one, part), (_other, part2) = _two(told, question.items)
    return Asked("money", Truth(part, ">" if question.more else "<", part2), TRUTH, ())


def parts_together(_: PartsTogether, told: Told, _scenario: Scenario) -> Asked:
    (_one, part), (_other, part2) = _two(told)
    return Asked("money", Value(Op("+", (part, part2))), ANY, ())


def part_left(_: PartLeft, told: Told, _scenario: Scenario) -> Asked:
    if told.buying.money != DOLLAR:
        raise NotRead("it is not said that there is a dollar to pay with")
    (_one, part), (_other, part2) = _two(told)
    return Asked("money", Value(Op("-", (Stated(1, "whole"), Op("+", (part, part2))))), ANY, (), ("money", "both"))


ASKED: Answers = {
    WhichCosts: which_costs,
    CostsMoreThan: costs_more_than,
    PartsTogether: parts_together,
    PartLeft: part_left,
}


TAKEN: Takers = {
    PartPaid: part_paid,
    BuysBoth: buys_both,
}
