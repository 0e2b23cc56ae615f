"""Prices as parts of a dollar: fractions, decimals, percents; and arithmetic with dollars."""

from __future__ import annotations

from mathgen.asks.expression import DOLLAR, Ask, Op, Price, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import TableView
from mathgen.problems.draft import Draft

_ANY = Demand("any")
_FRACTION = Demand("fraction")
_DECIMAL = Demand("decimal")
_PERCENT = Demand("percent")
_TWO_PLACES = Demand("decimal", 2)


@problem_model(skill="price as a fraction of a dollar", table="price list")
def price_as_fraction(view: TableView) -> AskSpace:
    """What fraction of a dollar a price is that is told as a decimal: 0.35 is 35/100."""

    def build(price: Price) -> Draft | None:
        cents = view.cents(price)
        if cents == 100:
            return None
        return Draft(
            ask=Ask(Value(price), (), _FRACTION),
            roles={"price": price},
            structure="what fraction",
            slips=(("Y11", (cents,)), ("Y12", (cents,)), ("Y13", (cents,))),
            over=100,
            shown_as=_ANY,
            unit=False,
        )

    return AskSpace((view.prices("dollars"),), build)


@problem_model(skill="price as a decimal of a dollar", table="price list")
def price_as_decimal(view: TableView) -> AskSpace:
    """What a price in cents is in dollars, as a decimal: 5 cents are 0.05."""

    def build(price: Price) -> Draft | None:
        cents = view.cents(price)
        if cents == 100:
            return None
        return Draft(
            ask=Ask(Value(Op("/", (price, DOLLAR))), (), _DECIMAL),
            roles={"price": price},
            structure="what fraction",
            slips=(("Y14", (cents,)), ("Y15", (cents,))),
            sets=(100,),
            shown_as=_TWO_PLACES,
            unit="dollars",
        )

    return AskSpace((view.prices("cents"),), build)


@problem_model(skill="price as a percent of a dollar", table="price list")
def price_as_percent(view: TableView) -> AskSpace:
    """What percent of a dollar a price is."""

    def build(price: Price) -> Draft | None:
        cents = view.cents(price)
        if cents in (50, 100):
            return None
        return Draft(
            ask=Ask(Value(Op("/", (price, DOLLAR))), (), _PERCENT),
            roles={"price": price},
            structure="what fraction",
            slips=(("D11", (cents, 100)), ("D10", (cents, 100)), ("Y16", (cents,))),
            sets=(100,),
            unit=False,
        )

    return AskSpace((view.prices("cents"),), build)


@problem_model(skill="one price as a percent of another", table="price list")
def price_of_price(view: TableView) -> AskSpace:
    """What percent of a higher price a price is, where that is a whole percent."""

    def build(part: Price, whole: Price) -> Draft | None:
        less, more = view.cents(part), view.cents(whole)
        if less >= more or 100 * less % more or more == 100:
            return None
        return Draft(
            ask=Ask(Value(Op("/", (part, whole))), (), _PERCENT),
            roles={"part": part, "whole": whole},
            structure="what fraction",
            slips=(("Y17", (less, more)), ("Y18", (less,)), ("Y19", (less, more))),
            unit=False,
        )

    return AskSpace((view.prices("cents"), view.prices("cents")), build)


@problem_model(skill="add dollars", table="price list")
def dollars_total(view: TableView) -> AskSpace:
    """What two items cost together, in dollars."""

    def build(one: Price, other: Price) -> Draft | None:
        numbers = view.cents(one), view.cents(other)
        if one == other or numbers[0] == numbers[1] or sum(numbers) == 100:
            return None
        return Draft(
            ask=Ask(Value(Op("+", (one, other))), (), _ANY),
            roles={"one": one, "other": other},
            structure="whole unknown",
            slips=(("Y20", numbers), ("Y21", numbers), ("Y22", numbers)),
            shown_as=_TWO_PLACES,
            unit="dollars",
        )

    return AskSpace((view.prices("dollars"), view.prices("dollars")), build)


@problem_model(skill="subtract dollars", table="price list")
def dollars_difference(view: TableView) -> AskSpace:
    """How many dollars more the dearer of two items costs."""

    def build(dearer: Price, cheaper: Price) -> Draft | None:
        more, less = view.cents(dearer), view.cents(cheaper)
        if more <= less or more == 2 * less:
            return None
        return Draft(
            ask=Ask(Value(Op("-", (dearer, cheaper))), (), _ANY),
            roles={"dearer": dearer, "cheaper": cheaper},
            structure="difference unknown",
            slips=(("Y23", (more, less)), ("Y24", (more, less)), ("Y22", (more, -less))),
            shown_as=_TWO_PLACES,
            unit="dollars",
        )

    return AskSpace((view.prices("dollars"), view.prices("dollars")), build)


@problem_model(skill="multiply dollars", table="price list")
def dollars_of_several(view: TableView) -> AskSpace:
    """What several of one item cost, in dollars."""

    def build(price: Price, number: int) -> Draft | None:
        cents = view.cents(price)
        if cents == 1 or number * cents % 100 == 0:
            return None
        several = Stated(number, "bought")
        return Draft(
            ask=Ask(Value(Op("*", (several, price))), (), _ANY),
            roles={"price": price, "several": several},
            structure="times",
            slips=(("Y25", (number, cents)), ("Y26", (number, cents)), ("Y27", (number, cents))),
            shown_as=_TWO_PLACES,
            unit="dollars",
        )

    return AskSpace((view.countable_prices("dollars"), range(3, 13)), build)


@problem_model(skill="change in dollars", table="price list")
def change_in_dollars(view: TableView) -> AskSpace:
    """What is left of some dollars once several of one item are bought, in dollars."""

    def build(price: Price, number: int, dollars: int) -> Draft | None:
        cost, cents = number * view.cents(price), view.cents(price)
        # Nobody pays with a bill more than is needed.
        if not 100 * (dollars - 1) < cost < 100 * dollars or cents == 1 or 2 * cost == 100 * dollars or number == dollars:
            return None
        several, told = Stated(number, "bought"), Stated(dollars, "dollars")
        return Draft(
            ask=Ask(Value(Op("-", (told, Op("*", (several, price))))), (), _ANY),
            roles={"price": price, "several": several, "dollars": told},
            structure="result unknown",
            slips=(("Y28", (cost,)), ("Y29", (dollars, cents)), ("Y30", (dollars, cost))),
            features=frozenset({"two_step", "multiply_divide"}),
            shown_as=_TWO_PLACES,
            unit="dollars",
        )

    return AskSpace((view.countable_prices("dollars"), range(3, 10), range(2, 6)), build)
