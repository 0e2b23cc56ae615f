"""Percents of prices: what is told of a sale, a tax or a price that changes, and what is asked."""

from __future__ import annotations

from typing import Literal

from mathgen.asks.expression import Op, Price, Stated, Value
from mathgen.reading import money
from mathgen.reading.asked import PERCENT, WHOLE, Answers, Asked
from mathgen.reading.meaning.prices import NewPrice, PercentOn
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.prices import PercentApart, PercentPart, PriceMoves, PriceThen
from mathgen.scenario.words import Scenario

_ALL = Stated(1, "whole")


def percent_on(told: Told, claim: PercentOn) -> None:
    """Keep by what percent prices change.

    Raises:
        NotRead: two percents are told, or one that is not whole or takes all away.
    """
    hundredths = 100 * claim.percent.value
    if told.buying.percent is not None:
        raise NotRead("two percents are told")
    if not hundredths.is_integer or not 0 < hundredths < 100:
        raise NotRead(f"{claim.percent.text} is no percent that a price changes by")
    told.buying.percent = claim
    told.buying.rate = Stated(int(hundredths), "percent", 100)
    told.facts.append(Fact(told.buying.rate, claim.percent.text))
    told.open["percent"] = "the percent"


def new_price(told: Told, claim: NewPrice) -> None:
    """Keep what an item will cost.

    Raises:
        NotRead: that is told twice, of two items, or of an item of which no price is told.
    """
    if told.buying.new is not None:
        raise NotRead("two new prices are told")
    items = money.known_items(told)
    if claim.item is None and len(items) != 1:
        raise NotRead("it is not said which price is new")
    told.buying.new = money.stated(told, claim.number, "new price")
    told.buying.new_item = claim.item or items[0]
    told.open["new price"] = "the new price"


def _percent(told: Told, why: Literal["sale", "tax", "next week", "last week"]) -> tuple[Stated, Literal["+", "-"]]:
    """The percent that was told, and whether it is added.

    Raises:
        NotRead: none was, or another kind.
    """
    claim, rate = told.buying.percent, told.buying.rate
    if claim is None or rate is None or claim.why != why:
        raise NotRead(f"no percent is told for the {why}")
    return rate, claim.sign


def _item(told: Told, named: str | None) -> Price:
    items = money.known_items(told) if named is None else (named,)
    if len(items) != 1:
        raise NotRead("it is not clear which price is meant")
    return money.price_of(told, items[0], "cents")


def price_then(question: PriceThen, told: Told, _: Scenario) -> Asked:
    price = _item(told, question.item)
    rate, sign = _percent(told, question.why)
    if question.why == "last week":
        return money.asked_for(told, Value(Op("/", (price, Op(sign, (_ALL, rate))))), WHOLE, "percent")
    return money.asked_for(told, Value(Op(sign, (price, Op("*", (rate, price))))), WHOLE, "percent")


def percent_part(question: PercentPart, told: Told, _: Scenario) -> Asked:
    price = _item(told, question.item)
    rate, _sign = _percent(told, question.why)
    return money.asked_for(told, Value(Op("*", (rate, price))), WHOLE, "percent")


def price_moves(question: PriceMoves, told: Told, _: Scenario) -> Asked:
    new = told.buying.new
    if new is None:
        raise NotRead("no new price is told")
    price = _item(told, told.buying.new_item)
    gap = _gap(told, new, price, question.up)
    return money.asked_for(told, Value(Op("/", (gap, price))), PERCENT, "new price")


def percent_apart(question: PercentApart, told: Told, _: Scenario) -> Asked:
    if question.asked is None or question.base is None:
        lower, higher = money.lower_and_higher(told)
        asked, base = (higher, lower) if question.more else (lower, higher)
    else:
        asked, base = (money.price_of(told, item, "cents") for item in (question.asked, question.base))
    if asked == base:
        raise NotRead("a price is compared with itself")
    return money.asked_for(told, Value(Op("/", (_gap(told, asked, base, question.more), base))), PERCENT)


def _gap(told: Told, number: Price | Stated, base: Price, more: bool) -> Op:
    """How far a price is over another, or under it.

    Raises:
        NotRead: it is not.
    """
    value = number.number if isinstance(number, Stated) else told.counts.price(number)
    start = told.counts.price(base)
    if value == start or (value > start) != more:
        raise NotRead(f"the price is not {'higher' if more else 'lower'}")
    return Op("-", (number, base) if more else (base, number))


ASKED: Answers = {
    PriceThen: price_then,
    PercentPart: percent_part,
    PriceMoves: price_moves,
    PercentApart: percent_apart,
}


TAKEN: Takers = {
    PercentOn: percent_on,
    NewPrice: new_price,
}
