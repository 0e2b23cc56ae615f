"""The problem models of prices as parts of a dollar, and of dollars with two places."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import DOLLAR, Ask, Op, Price, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.trials.table import Priced, TrialTable
from tests.models.asked import every_draft, problem, worked

ANY, FRACTION, DECIMAL, PERCENT = Demand("any"), Demand("fraction"), Demand("decimal"), Demand("percent")
STORE = TrialTable((), prices=(Priced("paper tube", 5), Priced("roll of tape", 36), Priced("marker", 45), Priced("box of foil", 60)))
TUBE, TAPE, MARKER, FOIL = (Price(item, "cents") for item in ("paper tube", "roll of tape", "marker", "box of foil"))
SIX, THREE = Stated(6, "bought"), Stated(3, "dollars")


def dollars(price: Price) -> Price:
    return price._replace(unit="dollars")


ROWS = [
    # model, grade, ask, answer, relation, steps, slips; each worked by hand
    (
        "price_as_fraction",
        4,
        Ask(Value(dollars(TUBE)), (), FRACTION),
        ("5/100", "x = 1/20", ("0.05 = 5/100",), {"Y11": "5/10", "Y12": "100/5", "Y13": "5/95"}),
    ),
    (
        "price_as_decimal",
        4,
        Ask(Value(Op("/", (TUBE, DOLLAR))), (), DECIMAL),
        ("0.05", "100*x = 5", ("5 / 100 = 5/100", "5/100 = 0.05"), {"Y14": "0.50", "Y15": "5.00"}),
    ),
    (
        "price_as_decimal",
        4,
        Ask(Value(Op("/", (FOIL, DOLLAR))), (), DECIMAL),
        ("0.60", "100*x = 60", ("60 / 100 = 60/100", "60/100 = 0.60"), {"Y14": "6.00", "Y15": "60.00"}),
    ),
    (
        "price_as_percent",
        6,
        Ask(Value(Op("/", (TAPE, DOLLAR))), (), PERCENT),
        ("36%", "100*x = 36", ("36 / 100 = 36/100", "36/100 = 36%"), {"D11": "3.6%", "D10": "0.36%", "Y16": "64%"}),
    ),
    (
        "price_of_price",
        6,
        Ask(Value(Op("/", (TAPE, MARKER))), (), PERCENT),
        (
            "80%",
            "45*x = 36",
            ("36 / 45 = 36/45", "36/45 = 4/5", "4/5 = 80/100", "80/100 = 80%"),
            {"Y17": "125%", "Y18": "36%", "Y19": "20%"},
        ),
    ),
    (
        "dollars_total",
        5,
        Ask(Value(Op("+", (dollars(MARKER), dollars(TUBE)))), (), ANY),
        ("0.50", "9/20 + 1/20 = x", ("0.45 + 0.05 = 0.50",), {"Y20": "0.40", "Y22": "5.00"}),
    ),
    (
        "dollars_difference",
        5,
        Ask(Value(Op("-", (dollars(MARKER), dollars(TAPE)))), (), ANY),
        ("0.09", "9/25 + x = 9/20", ("0.45 - 0.36 = 0.09",), {"Y23": "0.81", "Y24": "0.11", "Y22": "0.90"}),
    ),
    (
        "dollars_of_several",
        5,
        Ask(Value(Op("*", (SIX, dollars(MARKER)))), (), ANY),
        ("2.70", "x = 6*(9/20)", ("6 * 0.45 = 2.70",), {"Y25": "27.00", "Y26": "6.45", "Y27": "2.25"}),
    ),
    (
        "change_in_dollars",
        5,
        Ask(Value(Op("-", (THREE, Op("*", (SIX, dollars(MARKER)))))), (), ANY),
        (
            "0.30",
            "6*(9/20) + x = 3",
            ("6 * 0.45 = 2.70", "3.00 - 2.70 = 0.30"),
            {"Y28": "2.70", "Y29": "2.55", "Y30": "5.70"},
        ),
    ),
]


@pytest.mark.parametrize(("name", "grade", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, grade: int, ask: Ask, row: tuple[object, ...]) -> None:
    made = problem(name, STORE, grade, ask)
    assert worked(made) == row


def test_a_key_for_dollars_has_two_places_and_takes_fewer() -> None:
    made = problem("dollars_total", STORE, 5, Ask(Value(Op("+", (dollars(MARKER), dollars(TUBE)))), (), ANY))
    assert made.answer.display == "$0.50"
    assert {"0.50", "0.5", "1/2"} <= set(made.answer.accepted)
    assert not any(form.endswith("%") for form in made.answer.accepted)


def test_only_whole_percents_of_a_price_are_asked_for() -> None:
    pairs = {(d.roles["part"].item, d.roles["whole"].item) for d in every_draft("price_of_price", STORE)}  # type: ignore[union-attr]
    assert ("roll of tape", "marker") in pairs
    assert ("paper tube", "marker") not in pairs  # 11 1/9%


def test_nobody_pays_with_more_dollars_than_are_needed() -> None:
    for draft in every_draft("change_in_dollars", STORE):
        number, told = draft.roles["several"].number, draft.roles["dollars"].number  # type: ignore[union-attr]
        cents = {one.item: one.cents for one in STORE.prices}[draft.roles["price"].item]  # type: ignore[union-attr]
        assert 100 * (told - 1) < number * cents < 100 * told
