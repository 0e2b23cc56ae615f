"""What is bought for some cents, a price that is shared, and dollar bills to pay with: what is told, and what is asked."""

from __future__ import annotations

from mathgen.asks.expression import DOLLAR, Op, QuotientRemainder, Value
from mathgen.reading import money
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.meaning.prices import SharedBy, Spent
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Takers, Told
from mathgen.reading.wanted.prices import BillsNeeded, EachPays, HowManyBought, TimesAsMuch
from mathgen.scenario.words import Scenario


def spent(told: Told, claim: Spent) -> None:
    """Keep how many cents are spent, and on what.

    Raises:
        NotRead: that is told twice.
    """
    if told.buying.spent is not None:
        raise NotRead("it is told twice what is spent")
    told.buying.spent = money.stated(told, claim.number, "spent"), claim.item
    told.open["spent"] = "what is spent"


def shared_by(told: Told, claim: SharedBy) -> None:
    """Keep how many groups share a price.

    Raises:
        NotRead: that is told twice.
    """
    if told.buying.shared is not None:
        raise NotRead("two prices are shared")
    told.buying.shared = money.stated(told, claim.number, "shared by"), claim.item
    told.open["shared"] = "the groups"


def how_many_bought(question: HowManyBought, told: Told, _: Scenario) -> Asked:
    if told.buying.spent is None:
        raise NotRead("it is not said what is spent")
    amount, item = told.buying.spent
    if item not in (None, question.item):
        raise NotRead("something else is bought")
    return money.asked_for(told, Value(Op("/", (amount, money.price_of(told, question.item, "cents")))), WHOLE, "spent")


def each_pays(_: EachPays, told: Told, _scenario: Scenario) -> Asked:
    if told.buying.shared is None:
        raise NotRead("it is not said how many share the price")
    groups, item = told.buying.shared
    items = money.known_items(told) if item is None else (item,)
    if len(items) != 1:
        raise NotRead("it is not clear which price is shared")
    return money.asked_for(told, Value(Op("/", (money.price_of(told, items[0], "cents"), groups))), WHOLE, "shared")


def times_as_much(question: TimesAsMuch, told: Told, _: Scenario) -> Asked:
    lower, higher = money.lower_and_higher(told)
    if question.item not in (None, higher.item):
        raise NotRead(f"the {question.item} does not cost more")
    if question.other not in (None, lower.item):
        raise NotRead(f"the {question.other} does not cost less")
    return money.asked_for(told, Value(Op("/", (higher, lower))), WHOLE)


def bills_needed(question: BillsNeeded, told: Told, _: Scenario) -> Asked:
    if question.number is None or question.item is None:
        cost = money.spent_on_all(told, "cents")
        uses: tuple[str, ...] = ("bought",)
    else:
        cost = Op("*", (money.stated(told, question.number, "bought"), money.price_of(told, question.item, "cents")))
        uses = ()
    return money.asked_for(told, QuotientRemainder(cost, DOLLAR, "needed"), WHOLE, *uses)


ASKED: Answers = {
    HowManyBought: how_many_bought,
    EachPays: each_pays,
    TimesAsMuch: times_as_much,
    BillsNeeded: bills_needed,
}


TAKEN: Takers = {
    Spent: spent,
    SharedBy: shared_by,
}
