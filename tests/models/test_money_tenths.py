"""The problem models of tenths and hundredths of a dollar."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import DOLLAR, Ask, Choice, Op, Price, Stated, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.trials.table import Priced, TrialTable
from tests.models.asked import every_draft, problem, worked

STORE = TrialTable((), prices=(Priced("paper tube", 5), Priced("roll of tape", 36), Priced("marker", 40), Priced("sock balls", 125)))
TUBE, TAPE, MARKER = (Op("/", (Price(item, "cents"), DOLLAR)) for item in ("paper tube", "roll of tape", "marker"))

ROWS = [
    # model, grade, ask, answer, relation, steps, slips; each worked by hand
    (
        "greater_part_of_dollar",
        4,
        Ask(Choice(("roll of tape", "marker"), (TAPE, MARKER)), (), Demand("name")),
        ("marker", "x = Max(36/100, 40/100)", ("0.4 = 0.40",), {"E01": "roll of tape"}),
    ),
    (
        "greater_part_of_dollar",
        4,
        Ask(Choice(("marker", "paper tube"), (MARKER, TUBE), False), (), Demand("name")),
        ("paper tube", "x = Min(40/100, 5/100)", ("0.4 = 0.40",), {"E01": "marker"}),
    ),
    (
        "part_of_dollar_is_more",
        4,
        Ask(Truth(TAPE, ">", MARKER), (), Demand("truth")),
        ("No", "x = 36/100 - 40/100", ("0.4 = 0.40",), {"E01": "Yes"}),
    ),
    (
        "add_parts_of_dollar",
        4,
        Ask(Value(Op("+", (MARKER, TAPE))), (), Demand("any")),
        (
            "76/100",
            "40/100 + 36/100 = x",
            ("4/10 = 40/100", "40/100 + 36/100 = 76/100"),
            {"C02": "40/100", "C01": "40/110", "C12": "4/100"},
        ),
    ),
    (
        "rest_of_dollar",
        4,
        Ask(Value(Op("-", (Stated(1, "whole"), Op("+", (TUBE, MARKER))))), (), Demand("any")),
        (
            "55/100",
            "5/100 + 40/100 + x = 1",
            ("4/10 = 40/100", "5/100 + 40/100 = 45/100", "100/100 - 45/100 = 55/100"),
            {"Y44": "45/100", "Y45": "6/10", "Y46": "91/100"},
        ),
    ),
]


@pytest.mark.parametrize(("name", "grade", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, grade: int, ask: Ask, row: tuple[object, ...]) -> None:
    made = problem(name, STORE, grade, ask)
    assert worked(made) == row


@pytest.mark.parametrize("name", ["greater_part_of_dollar", "part_of_dollar_is_more", "add_parts_of_dollar", "rest_of_dollar"])
def test_one_price_is_in_tenths_and_one_in_hundredths_of_one_dollar(name: str) -> None:
    for draft in every_draft(name, STORE):
        texts = [text for _, text in draft.rates]
        assert sorted(len(text.replace("/", ".0").rpartition(".")[2]) for text in texts) in ([1, 2], [3, 4]), texts
        assert "sock balls" not in str(draft.roles)  # more than a dollar


def test_the_key_compares_decimals_with_as_many_places() -> None:
    ask = Ask(Truth(TAPE, ">", MARKER), (), Demand("truth"))
    assert problem("part_of_dollar_is_more", STORE, 4, ask).answer.because == "0.36 < 0.40"
