"""The problem models of percents of prices: sales, taxes, prices that change."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Op, Price, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.trials.table import Priced, TrialTable
from tests.models.asked import every_draft, problem, worked

ANY, WHOLE, PERCENT = Demand("any"), Demand("whole"), Demand("percent")
STORE = TrialTable((), prices=(Priced("paper tube", 8), Priced("marker", 45), Priced("box of foil", 60), Priced("sock balls", 20)))
TUBE, MARKER, FOIL, BALLS = (Price(item, "cents") for item in ("paper tube", "marker", "box of foil", "sock balls"))
FIVE, TWENTY, SIXTY, FORTY = (Stated(number, "percent", 100) for number in (5, 20, 60, 40))
ALL, SIX = Stated(1, "whole"), Stated(6, "bought")
SIX_MARKERS = Op("*", (SIX, MARKER._replace(unit="dollars")))


def of(rate: Stated, expr: Price | Op) -> Op:
    return Op("*", (rate, expr))


ROWS = [
    # model, grade, ask, answer, relation, steps, slips; each worked by hand
    (
        "percent_of_price",
        6,
        Ask(Value(of(FIVE, FOIL)), (), WHOLE),
        ("3", "x = (5/100)*60", ("5% = 5/100", "5/100 * 60 = 3"), {"Y31": "63", "Y32": "5", "F02": "12"}),
    ),
    (
        "percent_of_price",
        6,
        Ask(Value(of(SIXTY, BALLS)), (), WHOLE),
        ("12", "x = (60/100)*20", ("60% = 60/100", "60/100 * 20 = 12"), {"Y31": "8", "Y32": "60"}),
    ),
    (
        "sale_price",
        7,
        Ask(Value(Op("-", (MARKER, of(FORTY, MARKER)))), (), WHOLE),
        ("27", "(40/100)*45 + x = 45", ("40% = 40/100", "40/100 * 45 = 18", "45 - 18 = 27"), {"Y33": "18", "Y34": "5", "Y35": "63"}),
    ),
    (
        "price_with_more",
        7,
        Ask(Value(Op("+", (FOIL, of(FIVE, FOIL)))), (), WHOLE),
        ("63", "60 + (5/100)*60 = x", ("5% = 5/100", "5/100 * 60 = 3", "60 + 3 = 63"), {"Y36": "3", "Y34": "65", "Y37": "57"}),
    ),
    (
        "price_last_week",
        7,
        Ask(Value(Op("/", (FOIL, Op("+", (ALL, TWENTY))))), (), WHOLE),
        (
            "50",
            "(1 + 20/100)*x = 60",
            ("20% = 20/100", "100/100 + 20/100 = 120/100", "60 / 120/100 = 50"),
            {"Y38": "48", "Y60": "40", "Y39": "72"},
        ),
    ),
    (
        "price_last_week",
        7,
        Ask(Value(Op("/", (TUBE, Op("-", (ALL, TWENTY))))), (), WHOLE),
        (
            "10",
            "(1 - (20/100))*x = 8",
            ("20% = 20/100", "100/100 - 20/100 = 80/100", "8 / 80/100 = 10"),
            {"Y60": "28"},  # 20% of 8 cents is no whole number of cents
        ),
    ),
    (
        "price_change",
        7,
        Ask(Value(Op("/", (Op("-", (Stated(54, "new price"), MARKER)), MARKER))), (), PERCENT),
        (
            "20%",
            "45*x = 54 - 45",
            ("54 - 45 = 9", "9 / 45 = 9/45", "9/45 = 1/5", "1/5 = 20/100", "20/100 = 20%"),
            {"F07": "16 2/3%", "Y40": "9%", "F09": "120%"},
        ),
    ),
    (
        "percent_apart",
        7,
        Ask(Value(Op("/", (Op("-", (FOIL, MARKER)), FOIL))), (), PERCENT),
        (
            "25%",
            "60*x = 60 - 45",
            ("60 - 45 = 15", "15 / 60 = 15/60", "15/60 = 1/4", "1/4 = 25/100", "25/100 = 25%"),
            {"Y61": "33 1/3%", "Y40": "15%", "F17": "75%"},
        ),
    ),
    (
        "several_on_sale",
        7,
        Ask(Value(Op("-", (SIX_MARKERS, of(TWENTY, SIX_MARKERS)))), (), ANY),
        (
            "2.16",
            "(20/100)*6*(9/20) + x = 6*(9/20)",
            ("6 * 0.45 = 2.70", "20% = 20/100", "20/100 * 2.70 = 0.54", "2.70 - 0.54 = 2.16"),
            {"Y43": "2.70", "Y41": "0.54", "Y42": "0.36"},
        ),
    ),
]


@pytest.mark.parametrize(("name", "grade", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, grade: int, ask: Ask, row: tuple[object, ...]) -> None:
    made = problem(name, STORE, grade, ask)
    assert worked(made) == row


def test_a_percent_of_a_price_is_a_whole_number_of_cents() -> None:
    rates = {(d.roles["price"].item, d.roles["rate"].number) for d in every_draft("sale_price", STORE)}  # type: ignore[union-attr]
    assert ("marker", 20) in rates
    assert ("paper tube", 20) not in rates  # 1.6 cents
    assert ("box of foil", 60) not in rates  # "60% of 60 cents" mixes up two numbers that mean different things


def test_no_price_of_the_list_answers_for_last_week() -> None:
    """What an item cost last week is another price than it has on the list, and the words tell which way it went."""
    for draft in every_draft("price_last_week", STORE):
        cents = {one.item: one.cents for one in STORE.prices}[draft.roles["price"].item]  # type: ignore[union-attr]
        goal = draft.ask.goal
        assert isinstance(goal, Value)
        assert isinstance(goal.expr, Op)
        then = goal.expr.args[1]
        assert isinstance(then, Op)
        number = draft.roles["rate"].number  # type: ignore[union-attr]
        before = 100 * cents // (100 + number if then.symbol == "+" else 100 - number)
        assert (before < cents) == (draft.roles["way"] == "more")
