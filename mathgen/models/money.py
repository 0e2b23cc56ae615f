"""Money: problems about the price list of a class store, in cents, and as parts of a dollar."""

from __future__ import annotations

from mathgen.asks.expression import DOLLAR, Ask, Op, Price, QuotientRemainder, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import TableView
from mathgen.problems.draft import Draft

_WHOLE = Demand("whole")
_BOTH = Demand("quotient_remainder")
_AT_A_GLANCE = 10  # cents: less is no question beside a dollar


@problem_model(skill="total of two prices", table="price list")
def price_total(view: TableView) -> AskSpace:
    """What two items cost together, in cents."""

    def build(one: Price, other: Price) -> Draft | None:
        numbers = view.cents(one), view.cents(other)
        if one == other or numbers[0] == numbers[1]:
            return None
        return Draft(
            ask=Ask(Value(Op("+", (one, other))), (), _WHOLE),
            roles={"one": one, "other": other},
            structure="whole unknown",
            slips=(("H11", numbers), ("H15", numbers), ("H14", numbers)),
            unit="cents",
        )

    return AskSpace((view.prices("cents"), view.prices("cents")), build)


@problem_model(skill="change from a dollar", table="price list")
def change_from_dollar(view: TableView) -> AskSpace:
    """What is left of a dollar once an item is bought."""

    def build(price: Price) -> Draft | None:
        cents = view.cents(price)
        if cents in (50, 100):
            return None
        return Draft(
            ask=Ask(Value(Op("-", (DOLLAR, price))), (), _WHOLE),
            roles={"price": price},
            structure="result unknown",
            slips=(("Y01", (cents,)), ("Y02", (cents,)), ("Y03", (cents,))),
            unit="cents",
        )

    return AskSpace((view.prices("cents"),), build)


@problem_model(skill="difference of two prices", table="price list")
def price_difference(view: TableView) -> AskSpace:
    """How many cents more the dearer of two items costs."""

    def build(dearer: Price, cheaper: Price) -> Draft | None:
        more, less = view.cents(dearer), view.cents(cheaper)
        if more <= less or more == 2 * less:
            return None
        return Draft(
            ask=Ask(Value(Op("-", (dearer, cheaper))), (), _WHOLE),
            roles={"dearer": dearer, "cheaper": cheaper},
            structure="difference unknown",
            slips=(("H01", (more, less)), ("H10", (more, less)), ("H02", (more, less))),
            unit="cents",
        )

    return AskSpace((view.prices("cents"), view.prices("cents")), build)


@problem_model(skill="price of several", table="price list")
def price_of_several(view: TableView) -> AskSpace:
    """What several of one item cost."""

    def build(price: Price, number: int) -> Draft | None:
        cents = view.cents(price)
        if cents in (1, number):
            return None
        several = Stated(number, "bought")
        return Draft(
            ask=Ask(Value(Op("*", (several, price))), (), _WHOLE),
            roles={"price": price, "several": several},
            structure="times",
            slips=(("Y04", (number, cents)), ("Y05", (number, cents))),
            features=frozenset({"multiply_divide"}),
            unit="cents",
        )

    return AskSpace((view.countable_prices("cents"), range(2, 11)), build)


@problem_model(skill="several prices from a dollar", table="price list")
def several_from_dollar(view: TableView) -> AskSpace:
    """What is left of a dollar once several of one item are bought."""

    def build(price: Price, number: int) -> Draft | None:
        cents = view.cents(price)
        cost = number * cents
        if cost >= 100 or cost == 50 or cents in (1, number):
            return None
        several = Stated(number, "bought")
        return Draft(
            ask=Ask(Value(Op("-", (DOLLAR, Op("*", (several, price))))), (), _WHOLE),
            roles={"price": price, "several": several},
            structure="result unknown",
            slips=(("H07", (cost,)), ("Y06", (cents,)), ("Y02", (cost,))),
            features=frozenset({"multiply_divide", "two_step"}),
            unit="cents",
        )

    return AskSpace((view.countable_prices("cents"), range(2, 11)), build)


@problem_model(skill="how many for a dollar", table="price list")
def bought_for_dollar(view: TableView) -> AskSpace:
    """How many of one item a dollar pays for, and how many cents are left."""

    def build(price: Price) -> Draft | None:
        cents = view.cents(price)
        full, over = divmod(100, max(cents, 1))
        if over == 0 or full < 2 or cents < 2 or full == over:
            return None
        return Draft(
            ask=Ask(QuotientRemainder(DOLLAR, price), (), _BOTH),
            roles={"price": price},
            structure="remainder",
            slips=(("Y07", (full, over)), ("Y08", (full, over, cents)), ("Y09", (full, over, cents))),
            features=frozenset({"remainder", "two_step", "multiply_divide"}),
            unit=False,
        )

    return AskSpace((view.countable_prices("cents"),), build)


@problem_model(skill="cents left of some dollars", table="price list")
def cents_left(view: TableView) -> AskSpace:
    """How many cents are left of 2 to 5 dollars once an item is bought."""

    def build(price: Price, dollars: int) -> Draft | None:
        cents = view.cents(price)
        if cents in (1, 100):
            return None
        told = Stated(dollars, "dollars")
        return Draft(
            ask=Ask(Value(Op("-", (Op("*", (told, DOLLAR)), price))), (), _WHOLE),
            roles={"price": price, "dollars": told},
            structure="result unknown",
            slips=(("H07", (100 * dollars,)), ("H10", (100 * dollars, cents)), ("Y10", (dollars, cents))),
            features=frozenset({"multiply_divide", "two_step"}),
            unit="cents",
        )

    return AskSpace((view.prices("cents"), range(2, 6)), build)
