"""Prices, and what is bought and paid: what is told of them, and what is asked."""

from __future__ import annotations

from mathgen.asks.expression import DOLLAR, Expr, Money, Op, Price, QuotientRemainder, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.reading.asked import ANY, PERCENT, WHOLE, Answers, Asked
from mathgen.reading.meaning.prices import Bought, HasMoney, LookAtPrices, PriceIs
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.prices import CostOf, CostsMore, CostTogether, GetsBack, HowManyToBuy, Pays, PriceAs, PriceOfPrice
from mathgen.scenario.words import Scenario


def price_is(told: Told, claim: PriceIs) -> None:
    """Keep a price.

    Raises:
        NotRead: it is told twice, or the price list says otherwise.
    """
    if claim.item in told.buying.prices:
        raise NotRead(f"the price of the {claim.item} is told twice")
    price = Price(claim.item, claim.unit)
    told.said(price, claim.number)
    told.buying.prices[claim.item] = price


def bought(told: Told, claim: Bought) -> None:
    """Keep what is bought.

    Raises:
        NotRead: the same is bought twice, or not a whole number of it.
    """
    for number, item in claim.items:
        if any(item == other for _, other in told.buying.bought):
            raise NotRead(f"the {item} is bought twice")
        told.buying.bought.append((None if number is None else stated(told, number, "bought"), item))
    told.open["bought"] = "what is bought"


def has_money(told: Told, claim: HasMoney) -> None:
    """Keep what there is to pay with.

    Raises:
        NotRead: that is told twice.
    """
    if told.buying.money is not None:
        raise NotRead("it is told twice what there is to pay with")
    told.buying.money = DOLLAR if claim.dollars is None else Op("*", (stated(told, claim.dollars, "dollars"), DOLLAR))
    told.open["money"] = "the money"


def look_at_prices(told: Told, claim: LookAtPrices) -> None:
    """Keep where to look.

    Raises:
        NotRead: that is told twice, or before the price list prices are told.
    """
    if told.buying.listed is not None:
        raise NotRead("the price list is looked at twice")
    told.buying.listed = claim.items
    told.open["listed"] = "the price list"


def stated(told: Told, number: Number, meaning: str) -> Stated:
    """Take in a whole number that only the words give.

    Raises:
        NotRead: it is no whole number from 1 on.
    """
    if number.value.q != 1 or number.value < 1:
        raise NotRead(f"{number.text} is no whole number")
    stated = Stated(int(number.value), meaning)
    told.facts.append(Fact(stated, number.text))
    return stated


def price_of(told: Told, item: str, unit: Money) -> Price:
    """The price that was told, or that stands on the list, where in cents."""
    found = told.buying.prices.get(item)
    if found is None:
        listed = told.buying.listed
        if listed is None or (listed and item not in listed):
            raise NotRead(f"it is not said what the {item} costs")
        found = Price(item, "cents")
    if found.unit != unit:
        raise NotRead(f"the price of the {item} is not told in {unit}")
    return found


def known_items(told: Told) -> tuple[str, ...]:
    """Every item whose price was told, or that was to be looked at."""
    return tuple(dict.fromkeys((*told.buying.prices, *(told.buying.listed or ()))))


def _two(told: Told) -> tuple[str, str]:
    items = known_items(told)
    if len(items) != 2:
        raise NotRead("it is not clear which two prices are meant")
    return items[0], items[1]


def asked_for(told: Told, goal: Value | QuotientRemainder, demand: Demand, *uses: str) -> Asked:
    """The question, once every item that was to be looked at plays a part."""
    return Asked("money", goal, demand, (), (*uses, "listed") if _looked_at(told, goal) else uses)


def _looked_at(told: Told, goal: Value | QuotientRemainder) -> bool:
    listed = told.buying.listed
    if listed is None:
        return False
    waiting: list[Expr] = list(goal.exprs)
    for expr in waiting:
        if isinstance(expr, Op):
            waiting.extend(expr.args)
    items = {expr.item for expr in waiting if isinstance(expr, Price)}
    return items == set(listed) if listed else not items & set(told.buying.prices)


def _form(unit: Money) -> Demand:
    return WHOLE if unit == "cents" else ANY


def spent_on_all(told: Told, unit: Money) -> Expr:
    """What all that was bought costs together.

    Raises:
        NotRead: nothing is bought.
    """
    parts: list[Expr] = []
    bought = told.buying.bought or [(None, item) for item in told.buying.prices if told.buying.both]
    for number, item in bought:
        price = price_of(told, item, unit)
        parts.append(price if number is None else Op("*", (number, price)))
    if not parts:
        raise NotRead("nothing is bought")
    return parts[0] if len(parts) == 1 else Op("+", tuple(parts))


def pays(question: Pays, told: Told, _: Scenario) -> Asked:
    spent = _with_percent(told, spent_on_all(told, question.unit))
    if isinstance(spent, Price):
        raise NotRead("only the price is asked for")
    return asked_for(told, Value(spent), _form(question.unit), "bought", "percent")


def _with_percent(told: Told, cost: Expr) -> Expr:
    """What is paid where a sale or a tax is told of: the cost, and its percent added or taken off."""
    claim, rate = told.buying.percent, told.buying.rate
    if claim is None or rate is None:
        return cost
    if claim.why not in ("sale", "tax"):
        raise NotRead("it is not said that the price is another now")
    return Op(claim.sign, (cost, Op("*", (rate, cost))))


def cost_together(question: CostTogether, told: Told, _: Scenario) -> Asked:
    prices = tuple(price_of(told, item, question.unit) for item in _two(told))
    return asked_for(told, Value(Op("+", prices)), _form(question.unit))


def cost_of(question: CostOf, told: Told, _: Scenario) -> Asked:
    number = stated(told, question.number, "bought")
    return asked_for(told, Value(Op("*", (number, price_of(told, question.item, question.unit)))), _form(question.unit))


def gets_back(question: GetsBack, told: Told, _: Scenario) -> Asked:
    money = told.buying.money
    if money is None:
        raise NotRead("it is not said what there is to pay with")
    if question.unit == "dollars":
        if not isinstance(money, Op):
            raise NotRead("the dollars are not told as a number")
        money = money.args[0]
    return asked_for(told, Value(Op("-", (money, spent_on_all(told, question.unit)))), _form(question.unit), "bought", "money", "both")


def costs_more(question: CostsMore, told: Told, _: Scenario) -> Asked:
    one, other = (price_of(told, item, question.unit) for item in _two(told))
    if question.item not in (None, one.item, other.item):
        raise NotRead("another item is asked about")
    dearer, cheaper = (one, other) if told.counts.price(one) > told.counts.price(other) else (other, one)
    if question.item not in (None, dearer.item):
        raise NotRead(f"the {question.item} does not cost more")
    return asked_for(told, Value(Op("-", (dearer, cheaper))), _form(question.unit))


def price_as(question: PriceAs, told: Told, _: Scenario) -> Asked:
    items = known_items(told) if question.item is None else (question.item,)
    if len(items) != 1:
        raise NotRead("it is not clear which price is meant")
    told_price = told.buying.prices.get(items[0])
    if told_price is not None and told_price.unit == "dollars":
        if question.demand.form != "fraction":
            raise NotRead("the price is told so already")
        return asked_for(told, Value(told_price), question.demand)
    return asked_for(told, Value(Op("/", (price_of(told, items[0], "cents"), DOLLAR))), question.demand)


def lower_and_higher(told: Told) -> tuple[Price, Price]:
    """The two prices that are told, the lower first.

    Raises:
        NotRead: there are more, or fewer, or they are equal.
    """
    one, other = (price_of(told, item, "cents") for item in _two(told))
    cents, others = (told.counts.price(price) for price in (one, other))
    if cents == others:
        raise NotRead("neither price is lower")
    return (one, other) if cents < others else (other, one)


def price_of_price(question: PriceOfPrice, told: Told, _: Scenario) -> Asked:
    if question.part is None or question.whole is None:
        part, whole = lower_and_higher(told)
    else:
        part, whole = (price_of(told, item, "cents") for item in (question.part, question.whole))
    return asked_for(told, Value(Op("/", (part, whole))), PERCENT)


def how_many_to_buy(question: HowManyToBuy, told: Told, _: Scenario) -> Asked:
    if told.buying.money is None:
        raise NotRead("it is not said what there is to pay with")
    goal = QuotientRemainder(told.buying.money, price_of(told, question.item, "cents"))
    return asked_for(told, goal, Demand("quotient_remainder"), "money")


ASKED: Answers = {
    Pays: pays,
    CostTogether: cost_together,
    CostOf: cost_of,
    GetsBack: gets_back,
    CostsMore: costs_more,
    PriceAs: price_as,
    PriceOfPrice: price_of_price,
    HowManyToBuy: how_many_to_buy,
}


TAKEN: Takers = {
    PriceIs: price_is,
    Bought: bought,
    HasMoney: has_money,
    LookAtPrices: look_at_prices,
}
