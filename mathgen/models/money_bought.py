"""What is bought: several things and one more, two from a dollar, how many for some cents, a price that is shared, dollar bills needed."""

from __future__ import annotations

from mathgen.asks.expression import DOLLAR, Ask, Op, Price, QuotientRemainder, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import TableView
from mathgen.problems.draft import Draft

_WHOLE = Demand("whole")
_FEW = range(2, 11)


@problem_model(skill="price of several and one more", table="price list")
def several_and_one(view: TableView) -> AskSpace:
    """What several of one item and one of another cost."""

    def build(price: Price, number: int, other: Price) -> Draft | None:
        each, more = view.cents(price), view.cents(other)
        if price == other or each == more or each in (1, number) or more == number or (each > 10 and each % 10):
            return None  # 3 * 25 is no fact of grade 3
        several = Stated(number, "bought")
        return Draft(
            ask=Ask(Value(Op("+", (Op("*", (several, price)), other))), (), _WHOLE),
            roles={"price": price, "several": several, "other": other},
            structure="whole unknown",
            slips=(("Y47", (each + more,)), ("Y48", (number * (each + more),)), ("H07", (number * each,))),
            features=frozenset({"multiply_divide", "two_step"}),
            unit="cents",
        )

    return AskSpace((view.countable_prices("cents"), range(2, 6), view.prices("cents")), build)


@problem_model(skill="change from a dollar for two things", table="price list")
def change_for_two(view: TableView) -> AskSpace:
    """What is left of a dollar once two items are bought."""

    def build(one: Price, other: Price) -> Draft | None:
        a, b = view.cents(one), view.cents(other)
        spent = a + b
        if one == other or a == b or spent >= 100 or spent == 50:
            return None
        return Draft(
            ask=Ask(Value(Op("-", (DOLLAR, Op("+", (one, other))))), (), _WHOLE),
            roles={"one": one, "other": other},
            structure="result unknown",
            slips=(("H07", (spent,)), ("Y49", (a,)), ("Y49", (b,)), ("Y02", (spent,))),
            features=frozenset({"two_step"}),
            unit="cents",
        )

    return AskSpace((view.prices("cents"), view.prices("cents")), build)


@problem_model(skill="how many for some cents", table="price list")
def bought_for_cents(view: TableView) -> AskSpace:
    """How many of one item are bought for a number of cents, with nothing left."""

    def build(price: Price, number: int) -> Draft | None:
        cents = view.cents(price)
        if cents in (1, number):
            return None
        spent = Stated(number * cents, "spent")
        return Draft(
            ask=Ask(Value(Op("/", (spent, price))), (), _WHOLE),
            roles={"price": price, "spent": spent},
            structure="times",
            slips=(("Y50", (spent.number, cents)), ("Y51", (number - 1,)), ("Y51", (number + 1,))),
            features=frozenset({"multiply_divide"}),
            unit=False,
        )

    return AskSpace((view.countable_prices("cents"), _FEW), build)


@problem_model(skill="share of a price", table="price list")
def price_shared(view: TableView) -> AskSpace:
    """What each of some groups pays that share a price equally."""

    def build(price: Price, number: int) -> Draft | None:
        cents = view.cents(price)
        share, over = divmod(cents, number)
        if over or share in (1, number):
            return None
        groups = Stated(number, "shared by")
        return Draft(
            ask=Ask(Value(Op("/", (price, groups))), (), _WHOLE),
            roles={"price": price, "groups": groups},
            structure="times",
            slips=(("Y52", (cents, number)), ("Y53", (share - 1,)), ("Y53", (share + 1,))),
            features=frozenset({"multiply_divide"}),
            unit="cents",
        )

    return AskSpace((view.prices("cents"), _FEW), build)


@problem_model(skill="times as much", table="price list")
def times_the_price(view: TableView) -> AskSpace:
    """How many times as much one item costs as another, where that is a whole number."""

    def build(dearer: Price, cheaper: Price) -> Draft | None:
        most, least = view.cents(dearer), view.cents(cheaper)
        if most <= least or most % least or least in (1, most // least):
            return None
        return Draft(
            ask=Ask(Value(Op("/", (dearer, cheaper))), (), _WHOLE),
            roles={"dearer": dearer, "cheaper": cheaper},
            structure="times",
            slips=(("Y57", (most - least,)), ("Y58", (most // least - 1,))),
            features=frozenset({"times_as_many"}),
            unit=False,
        )

    return AskSpace((view.prices("cents"), view.prices("cents")), build)


@problem_model(skill="dollar bills needed", table="price list")
def bills_needed(view: TableView) -> AskSpace:
    """How many dollar bills are needed to pay for several of one item."""

    def build(price: Price, number: int) -> Draft | None:
        cents = view.cents(price)
        full, over = divmod(number * cents, 100)
        # With 50 cents over, rounding finds the bills as well; a number of bills that is told is no answer.
        if full < 1 or over == 0 or number == full + 1 or cents == 100:
            return None
        several = Stated(number, "bought")
        return Draft(
            ask=Ask(QuotientRemainder(Op("*", (several, price)), DOLLAR, "needed"), (), _WHOLE),
            roles={"price": price, "several": several},
            structure="remainder",
            slips=(("Y54", (full,)), ("Y55", (over,)), ("Y56", (number * cents,))),
            features=frozenset({"remainder", "two_step", "multiply_divide"}),
            unit=False,
        )

    return AskSpace((view.countable_prices("cents"), range(3, 11)), build)
