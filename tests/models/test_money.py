"""The problem models of money: the price list of a class store, in cents."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import DOLLAR, Ask, Op, Price, QuotientRemainder, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_models
from mathgen.trials.table import Priced, Row, TrialTable
from tests.models.asked import every_draft, problem, worked

WHOLE = Demand("whole")
STORE = TrialTable(
    (),
    prices=(Priced("paper tube", 8), Priced("roll of tape", 37), Priced("marker", 45), Priced("sock balls", 25), Priced("box of foil", 60)),
)
TUBE, TAPE, MARKER, BALLS = (Price(item, "cents") for item in ("paper tube", "roll of tape", "marker", "sock balls"))
FOUR, TWO, THREE = Stated(4, "bought"), Stated(2, "bought"), Stated(3, "dollars")

ROWS = [
    # model, grade, ask, answer, relation, steps, slips; each worked by hand
    (
        "price_total",
        2,
        Ask(Value(Op("+", (TAPE, MARKER))), (), WHOLE),
        ("82", "37 + 45 = x", ("37 + 45 = 82",), {"H11": "72", "H15": "8", "H14": "37"}),
    ),
    (
        "change_from_dollar",
        2,
        Ask(Value(Op("-", (DOLLAR, TAPE))), (), WHOLE),
        ("63", "37 + x = 100", ("100 - 37 = 63",), {"Y01": "137", "Y02": "73"}),
    ),
    (
        "change_from_dollar",
        2,
        Ask(Value(Op("-", (DOLLAR, TUBE))), (), WHOLE),
        ("92", "8 + x = 100", ("100 - 8 = 92",), {"Y01": "108", "Y03": "2"}),
    ),
    (
        "price_difference",
        2,
        Ask(Value(Op("-", (MARKER, TAPE))), (), WHOLE),
        ("8", "37 + x = 45", ("45 - 37 = 8",), {"H01": "82", "H10": "12", "H02": "45"}),
    ),
    (
        "price_of_several",
        3,
        Ask(Value(Op("*", (FOUR, TUBE))), (), WHOLE),
        ("32", "x = 4*8", ("4 * 8 = 32",), {"Y04": "12", "Y05": "24"}),
    ),
    (
        "several_from_dollar",
        3,
        Ask(Value(Op("-", (DOLLAR, Op("*", (TWO, TAPE))))), (), WHOLE),
        ("26", "2*37 + x = 100", ("2 * 37 = 74", "100 - 74 = 26"), {"H07": "74", "Y06": "63", "Y02": "36"}),
    ),
    (
        "bought_for_dollar",
        4,
        Ask(QuotientRemainder(DOLLAR, TUBE), (), Demand("quotient_remainder")),
        ("12 R 4", "8*x = 100 - Mod(100, 8)", ("12 * 8 = 96", "100 - 96 = 4"), {"Y07": "4 R 12", "Y08": "11 R 12", "Y09": "13 R 4"}),
    ),
    (
        "cents_left",
        4,
        Ask(Value(Op("-", (Op("*", (THREE, DOLLAR)), TAPE))), (), WHOLE),
        ("263", "37 + x = 3*100", ("3 * 100 = 300", "300 - 37 = 263"), {"H07": "300", "H10": "337"}),
    ),
]


@pytest.mark.parametrize(("name", "grade", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, grade: int, ask: Ask, row: tuple[object, ...]) -> None:
    made = problem(name, STORE, grade, ask)
    assert worked(made) == row


@pytest.mark.parametrize("name", ["price_of_several", "several_from_dollar", "bought_for_dollar"])
def test_several_are_bought_only_of_what_is_one_thing(name: str) -> None:
    """ "4 sock balls" would be four of what is sold together for 25 cents."""
    items = {draft.roles["price"].item for draft in every_draft(name, STORE)}  # type: ignore[union-attr]
    assert "paper tube" in items
    assert "sock balls" not in items


STRANDS = {"money", "money_bought", "money_parts", "money_percents", "money_tenths"}


def test_models_of_money_are_about_price_lists_and_no_others() -> None:
    assert {model.strand for model in problem_models("price list")} == STRANDS
    assert not STRANDS & {model.strand for model in problem_models("results")}
    assert len(problem_models()) == len(problem_models("results")) + len(problem_models("price list"))
    assert (STORE.kind, TrialTable((Row("Owls", 1, "red", 4, 3),)).kind) == ("price list", "results")


def test_verbs_and_articles_agree_with_what_is_sold() -> None:
    ask = Ask(Value(Op("-", (BALLS, TUBE))), (), WHOLE)
    texts = {problem("price_difference", STORE, 2, ask).text for _ in range(3)}
    assert all("How many cents" in text for text in texts)
    assert not any("does the sock balls" in text or "sock balls costs" in text for text in texts)
