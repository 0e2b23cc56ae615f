"""The problem models of what is bought: worked by hand on a small price list."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import DOLLAR, Ask, Op, Price, QuotientRemainder, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.trials.table import Priced, TrialTable
from tests.models.asked import every_draft, problem, worked

WHOLE = Demand("whole")
STORE = TrialTable((), prices=(Priced("paper tube", 8), Priced("roll of tape", 37), Priced("marker", 40), Priced("sock balls", 25)))
TUBE, TAPE, MARKER, BALLS = (Price(item, "cents") for item in ("paper tube", "roll of tape", "marker", "sock balls"))
THREE = Stated(3, "bought")

ROWS = [
    # model, grade, ask, answer, relation, steps, slips; each worked by hand
    (
        "several_and_one",
        3,
        Ask(Value(Op("+", (Op("*", (THREE, TUBE)), TAPE))), (), WHOLE),
        ("61", "3*8 + 37 = x", ("3 * 8 = 24", "24 + 37 = 61"), {"Y47": "45", "Y48": "135", "H07": "24"}),
    ),
    (
        "change_for_two",
        2,
        Ask(Value(Op("-", (DOLLAR, Op("+", (TAPE, BALLS))))), (), WHOLE),
        ("38", "37 + 25 + x = 100", ("37 + 25 = 62", "100 - 62 = 38"), {"H07": "62", "Y49": "75", "Y02": "48"}),
    ),
    (
        "bought_for_cents",
        3,
        Ask(Value(Op("/", (Stated(48, "spent"), TUBE))), (), WHOLE),
        ("6", "8*x = 48", ("48 / 8 = 6",), {"Y50": "40", "Y51": "7"}),
    ),
    (
        "price_shared",
        3,
        Ask(Value(Op("/", (MARKER, Stated(5, "shared by")))), (), WHOLE),
        ("8", "5*x = 40", ("40 / 5 = 8",), {"Y52": "35", "Y53": "9"}),
    ),
    (
        "times_the_price",
        4,
        Ask(Value(Op("/", (MARKER, TUBE))), (), WHOLE),
        ("5", "8*x = 40", ("40 / 8 = 5",), {"Y57": "32", "Y58": "4"}),
    ),
    (
        "bills_needed",
        4,
        Ask(QuotientRemainder(Op("*", (Stated(8, "bought"), TAPE)), DOLLAR, "needed"), (), WHOLE),
        (
            "3",
            "100*x = 8*37 - Mod(8*37, 100) + 100",
            ("8 * 37 = 296", "2 * 100 = 200", "296 - 200 = 96", "2 + 1 = 3"),
            {"Y54": "2", "Y55": "96", "Y56": "296"},
        ),
    ),
]


@pytest.mark.parametrize(("name", "grade", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, grade: int, ask: Ask, row: tuple[object, ...]) -> None:
    made = problem(name, STORE, grade, ask)
    assert worked(made) == row


@pytest.mark.parametrize("name", ["several_and_one", "bought_for_cents", "bills_needed"])
def test_several_are_bought_only_of_what_is_one_thing(name: str) -> None:
    """ "4 sock balls" would be four of what is sold together for 25 cents."""
    items = {draft.roles["price"].item for draft in every_draft(name, STORE)}  # type: ignore[union-attr]
    assert "marker" in items
    assert "sock balls" not in items


def test_no_bill_is_left_over_and_none_is_full_by_itself() -> None:
    """Where the cost is whole dollars, nothing is to be thought about."""
    for draft in every_draft("bills_needed", STORE):
        cents = {one.item: one.cents for one in STORE.prices}[draft.roles["price"].item]  # type: ignore[union-attr]
        assert draft.roles["several"].number * cents % 100  # type: ignore[union-attr]


def test_a_share_is_a_whole_number_of_cents() -> None:
    shares = {(draft.roles["price"].item, draft.roles["groups"].number) for draft in every_draft("price_shared", STORE)}  # type: ignore[union-attr]
    assert ("marker", 5) in shares
    assert not any(item == "roll of tape" for item, _ in shares)  # 37 cents
