"""Percents of prices: a sale, a tax, a price that goes up or down, and one price held against another."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Expr, Op, Price, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace, joined
from mathgen.models.view import TableView
from mathgen.problems.draft import Draft

_WHOLE = Demand("whole")
_ANY = Demand("any")
_PERCENT = Demand("percent")
_TWO_PLACES = Demand("decimal", 2)

_ALL = Stated(1, "whole")  # of a price: 100%
_OFF = (10, 15, 20, 25, 30, 40, 60, 75)  # of a sale; at 50% what is taken off is what is left
_TAX = (5, 8, 10, 15, 20)
_UP = (20, 25, 30, 40, 50, 60, 75)
_CHANGES = (10, 15, 20, 25, 30, 40, 60, 75)

_MORE = {"way": "more", "side": "higher", "beyond": "above", "other": "lower"}
_LESS = {"way": "less", "side": "lower", "beyond": "below", "other": "higher"}


def _percent(number: int) -> Stated:
    return Stated(number, "percent", 100)


def _part(rate: Stated, of: Expr) -> Op:
    return Op("*", (rate, of))


@problem_model(skill="percent of a price", table="price list")
def percent_of_price(view: TableView) -> AskSpace:
    """How many cents a tax is, or what a sale takes off."""

    def build(price: Price, number: int, way: str) -> Draft | None:
        cents = view.cents(price)
        amount, over = divmod(number * cents, 100)
        if over or cents == 100 or amount == number:  # of 100 cents, the percent is the answer
            return None
        rate = _percent(number)
        return Draft(
            ask=Ask(Value(_part(rate, price)), (), _WHOLE),
            roles={"price": price, "rate": rate},
            structure="part from rate",
            slips=(("Y31", (cents + amount if way == "tax" else cents - amount,)), ("Y32", (number,)), ("F02", (number, cents))),
            features=frozenset({"percent"}),
            wanted=frozenset({way}),
            unit="cents",
        )

    return joined(
        AskSpace((view.prices("cents"), _TAX, ("tax",)), build),
        AskSpace((view.prices("cents"), _OFF, ("sale",)), build),
    )


@problem_model(skill="price in a sale", table="price list")
def sale_price(view: TableView) -> AskSpace:
    """What an item costs when a percent of its price is taken off."""

    def build(price: Price, number: int) -> Draft | None:
        cents = view.cents(price)
        amount, over = divmod(number * cents, 100)
        if over or cents in (100, number) or cents - amount in (number, amount):
            return None
        rate = _percent(number)
        return Draft(
            ask=Ask(Value(Op("-", (price, _part(rate, price)))), (), _WHOLE),
            roles={"price": price, "rate": rate},
            structure="result unknown",
            slips=(("Y33", (amount,)), ("Y34", (cents, -number)), ("Y35", (cents, amount))),
            features=frozenset({"percent", "percent_change"}),
            unit="cents",
        )

    return AskSpace((view.prices("cents"), _OFF), build)


@problem_model(skill="price with a percent added", table="price list")
def price_with_more(view: TableView) -> AskSpace:
    """What an item costs when a tax is added, or when its price goes up by a percent."""

    def build(price: Price, number: int, way: str) -> Draft | None:
        cents = view.cents(price)
        amount, over = divmod(number * cents, 100)
        if over or cents in (100, number) or cents + amount in (number, 100):
            return None
        rate = _percent(number)
        return Draft(
            ask=Ask(Value(Op("+", (price, _part(rate, price)))), (), _WHOLE),
            roles={"price": price, "rate": rate},
            structure="result unknown",
            slips=(("Y36", (amount,)), ("Y34", (cents, number)), ("Y37", (cents, amount))),
            features=frozenset({"percent", "percent_change"}),
            wanted=frozenset({way}),
            unit="cents",
        )

    return joined(
        AskSpace((view.prices("cents"), _TAX, ("tax",)), build),
        AskSpace((view.prices("cents"), _UP, ("up",)), build),
    )


@problem_model(skill="price before a percent change", table="price list")
def price_last_week(view: TableView) -> AskSpace:
    """What an item cost before its price went up or down by a percent. No price list holds that price."""

    def build(price: Price, number: int, way: int) -> Draft | None:
        cents = view.cents(price)
        before, over = divmod(100 * cents, 100 + way * number)
        if over or 100 in (cents, before) or number in (cents, before):
            return None
        # The likeliest mistake, to take the percent of today's price, has to lead somewhere.
        if cents * (100 - way * number) % 100 and cents <= way * number:
            return None
        rate = _percent(number)
        then = Op("+" if way > 0 else "-", (_ALL, rate))
        return Draft(
            ask=Ask(Value(Op("/", (price, then))), (), _WHOLE),
            roles={"price": price, "rate": rate, "way": "more" if way > 0 else "less", "moved": "up" if way > 0 else "down"},
            structure="whole from part",
            slips=(("Y38", (cents, -way * number)), ("Y60", (cents, -way * number)), ("Y39", (cents, way * number))),
            features=frozenset({"percent", "percent_change"}),
            clash=True,
            unit="cents",
        )

    return AskSpace((view.prices("cents"), _CHANGES, (1, -1)), build)


@problem_model(skill="percent that a price changes", table="price list")
def price_change(view: TableView) -> AskSpace:
    """By what percent a price goes up or down next week."""

    def build(price: Price, number: int, way: int) -> Draft | None:
        cents = view.cents(price)
        change, over = divmod(number * cents, 100)
        new = cents + way * change
        if over or cents < 4 or 100 in (cents, new) or number in (cents, new):
            return None
        told = Stated(new, "new price")
        gap = Op("-", (told, price) if way > 0 else (price, told))
        return Draft(
            ask=Ask(Value(Op("/", (gap, price))), (), _PERCENT),
            roles={"price": price, "new": told, "moved": "up" if way > 0 else "down", "way": "increase" if way > 0 else "decrease"},
            structure="percent change",
            slips=(("F07", (cents, new)), ("Y40", (change,)), ("F09", (cents, new))),
            features=frozenset({"percent", "percent_change"}),
            unit=False,
        )

    return AskSpace((view.prices("cents"), _CHANGES, (1, -1)), build)


@problem_model(skill="percent between two prices", table="price list")
def percent_apart(view: TableView) -> AskSpace:
    """What percent more, or less, one item costs than another."""

    def build(asked: Price, base: Price) -> Draft | None:
        cents, start = view.cents(asked), view.cents(base)
        change = abs(cents - start)
        if not change or 100 in (cents, start) or 100 * change % start or cents > 3 * start or change == start or 2 * cents == start:
            return None
        more = cents > start
        gap = Op("-", (asked, base) if more else (base, asked))
        return Draft(
            ask=Ask(Value(Op("/", (gap, base))), (), _PERCENT),
            roles={"asked": asked, "base": base, **(_MORE if more else _LESS)},
            structure="percent change",
            slips=(("Y61", (start, cents)), ("Y40", (change,)), ("F17", (start, cents))),
            features=frozenset({"percent", "percent_change"}),
            unit=False,
        )

    return AskSpace((view.prices("cents"), view.prices("cents")), build)


@problem_model(skill="several things in a sale", table="price list")
def several_on_sale(view: TableView) -> AskSpace:
    """What several of one item cost, in dollars, when a percent of the total is taken off."""

    def build(price: Price, several: int, number: int) -> Draft | None:
        cents = view.cents(price)
        total = several * cents
        amount, over = divmod(number * total, 100)
        if over or total <= 100 or cents in (100, number) or several == number or total - amount == amount or (total - amount) % 100 == 0:
            return None
        bought, rate = Stated(several, "bought"), _percent(number)
        cost = Op("*", (bought, price))
        return Draft(
            ask=Ask(Value(Op("-", (cost, _part(rate, cost)))), (), _ANY),
            roles={"price": price, "several": bought, "rate": rate},
            structure="result unknown",
            slips=(("Y43", (total,)), ("Y41", (amount,)), ("Y42", (cents, number))),
            features=frozenset({"percent", "percent_change"}),
            shown_as=_TWO_PLACES,
            unit="dollars",
        )

    return AskSpace((view.countable_prices("dollars"), range(3, 13), _OFF), build)
