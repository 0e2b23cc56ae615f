"""Percents: each model by hand on one small table, and what no draft of theirs may be."""

from __future__ import annotations

import pytest
from sympy import Rational

from mathgen.asks.expression import Ask, Op, Quantity, Stated, Value
from mathgen.exact.accepted import shown
from mathgen.exact.demand import Demand
from mathgen.models.percents import percent_demand
from mathgen.trials.scope import Measure
from mathgen.trials.table import TrialTable
from tests.models.asked import every_draft, problem, quantity, said, worked
from tests.tables import TWO_GROUPS, table

PERCENT, TO_A_TENTH = Demand("percent"), Demand("percent", 1)


def red_and_gold(measure: Measure) -> tuple[Quantity, ...]:
    return tuple(quantity(measure, "Owls", (1,), color) for color in ("red", "gold"))


GOLD = quantity("down", "Owls", None, "gold"), quantity("set_up", "Owls", None, "gold")
OWLS = quantity("down", "Owls", (1,)), quantity("down", "Owls", (2,))
HERONS = quantity("down", "Herons", (1,)), quantity("down", "Herons", (2,))

ROWS = {
    # model: (grade, ask, answer, relation, steps, slips), each worked by hand
    "percent_of_set": (
        6,
        Ask(Value(Op("/", GOLD)), (), PERCENT),
        "60%",
        "10*x = 6",
        ("6 / 10 = 6/10", "6/10 = 60/100", "60/100 = 60%"),
        {"A03": "40%", "D07": "6%", "D09": "150%", "F06": "166 2/3%"},
    ),
    "percent_of_set, two colors": (
        7,
        Ask(Value(Op("/", (Op("+", red_and_gold("down")), Op("+", red_and_gold("set_up"))))), (), TO_A_TENTH),
        "77.8%",
        "(4 + 5)*x = 3 + 4",
        ("3 + 4 = 7", "4 + 5 = 9", "7 / 9 = 7/9", "7/9 = 77 7/9%"),
        {"F12": "77.5%", "F13": "155%", "A03": "22.2%"},
    ),
    "part_from_percent": (
        6,
        Ask(Value(Op("*", (Op("/", GOLD), Stated(40, "set up next time")))), (), Demand("whole")),
        "24",
        "10*x = 6*40",
        ("60% = 60/100", "60/100 * 40 = 24"),
        {"F05": "16", "F03": "60", "F04": "2400"},
    ),
    "percent_change, increase": (
        7,
        Ask(Value(Op("/", (Op("-", HERONS[::-1]), HERONS[0]))), (), PERCENT),
        "12.5%",
        "8*x = 9 - 8",
        ("9 - 8 = 1", "1 / 8 = 1/8", "1/8 = 0.125", "0.125 = 12.5%"),
        {"F07": "11 1/9%", "F08": "1%", "F09": "112.5%"},
    ),
    "percent_change, decrease": (
        7,
        Ask(Value(Op("/", (Op("-", OWLS), OWLS[0]))), (), TO_A_TENTH),
        "33.3%",
        "9*x = 9 - 6",
        ("9 - 6 = 3", "3 / 9 = 3/9", "3/9 = 33 1/3%"),
        {"F07": "50%", "F08": "3%", "F09": "66.7%"},
    ),
}


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    grade, ask, *expected = ROWS[row]
    one = problem(row.partition(",")[0], TWO_GROUPS, grade, ask)
    assert worked(one) == tuple(expected)


def test_a_whole_from_a_percent_by_hand() -> None:
    """6 of the Owls' 10 gold pins are 60%; at that rate 24 pins are 60% of 40."""
    (draft,) = [
        draft
        for draft in every_draft("whole_from_percent", TWO_GROUPS)
        if draft.roles["part"] == GOLD[0] and Stated(24, "goal next time") in draft.roles.values()
    ]
    assert worked(said("whole_from_percent", TWO_GROUPS, 6, draft)) == (
        "40",
        "6/10*x = 24",
        ("60% = 60/100", "24 / 60/100 = 40"),
        {"G13": "28", "F03": "60", "A21": "16"},
    )


def test_parts_told_in_two_forms_are_added_by_hand() -> None:
    """1/5 and 0.3 of the Owls' pins are 50% of them."""
    tenth = table({"red": 4, "gold": 6}, {("Owls", 1): (2, 3)})
    (draft,) = [
        draft
        for draft in every_draft("three_forms", tenth)
        if "mixed_forms" in draft.features and draft.rates[0][1] == "1/5" and "joined-decimal" not in draft.wanted
    ]
    assert worked(said("three_forms", tenth, 7, draft)) == (
        "50%",
        "2/10 + 3/10 = x",
        ("1/5 = 0.2", "0.2 + 0.3 = 0.5", "0.5 = 50%"),
        {"C13": "20%", "D10": "0.5%", "D12": "5%"},
    )


def test_a_percent_read_from_the_table_adds_its_cells_up_first() -> None:
    one = problem("percent_of_set", TWO_GROUPS, 6, Ask(Value(Op("/", GOLD)), (), PERCENT), frozenset({"table"}))
    assert one.steps[0].text == "4 + 2 = 6"
    assert set(one.cells) == {("Owls", 1, "gold"), ("Owls", 2, "gold")}


def test_percents_of_two_sets_are_total_over_total() -> None:
    """44.5% of 2691 men were admitted. R manual, package datasets, UCBAdmissions (Berkeley, 1973)."""
    assert shown(Rational(1198, 2691), percent_demand(1198, 2691)) == "44.5%"


def test_no_rounding_tie_is_asked() -> None:
    """1 of 16 is 6.25%: half up and half even part ways at a tenth."""
    assert percent_demand(1, 16) is None
    ties = table({"red": 6, "gold": 10}, {("Owls", 1): (1, 2), ("Owls", 2): (1, 4)})
    asked = [draft for draft in every_draft("percent_of_set", ties) if draft.wanted]
    assert {tuple(part.scope.trials or () for part in draft.roles["parts"]) for draft in asked} == {((), ())}


def test_two_equal_sets_are_not_pooled() -> None:
    """There the mean of the two percents is right by luck."""
    equal = table({"red": 5, "gold": 5}, {("Owls", 1): (1, 4), ("Owls", 2): (3, 4)})
    assert not [draft for draft in every_draft("percent_of_set", equal) if draft.wanted]


def test_no_percent_change_between_racks_of_different_size() -> None:
    rows = table({"red": 4}, {("Owls", 1): (3,)}).rows + table({"red": 8}, {("Owls", 2): (6,)}).rows
    assert not list(every_draft("percent_change", TrialTable(rows)))


def test_half_a_set_is_not_asked() -> None:
    """The Owls knocked down 6 of 12 pins in Trial 2: knocked down equals left standing."""
    half = Op("/", (quantity("down", "Owls", (2,)), quantity("set_up", "Owls", (2,))))
    assert half not in [draft.ask.goal.expr for draft in every_draft("percent_of_set", TWO_GROUPS)]


@pytest.mark.parametrize(
    ("given", "answer", "steps", "slips"),
    [
        ("3/5", "60%", ("3/5 = 60/100", "60/100 = 60%"), {"D07": "3%", "D08": "5%", "A03": "40%"}),
        ("0.6", "60%", ("0.6 = 60%",), {"D10": "0.6%", "D12": "6%", "A03": "40%"}),
        ("60%", "0.6", ("60% = 60/100", "60/100 = 6/10", "6/10 = 0.6"), {"D21": "60", "D11": "0.06", "A03": "0.4"}),
    ],
)
def test_a_part_in_another_form_by_hand(given: str, answer: str, steps: tuple[str, ...], slips: dict[str, str]) -> None:
    """6 of the 10 gold pins: CCSS 6.RP.A.3c, a percent as a rate per 100."""
    (draft,) = [
        draft
        for draft in every_draft("three_forms", TWO_GROUPS)
        if draft.roles["part"] == GOLD[0] and [text for _, text in draft.rates] == [given]
    ]
    one = said("three_forms", TWO_GROUPS, 6, draft)
    assert worked(one) == (answer, "10*x = 6", steps, slips)
    assert one.standards == ("6.RP.A.3c",)


def test_a_part_in_another_form_and_the_same_percent_of_counts_have_names_of_their_own() -> None:
    """One ask, two problems: 6 of 10 pins as a percent, and 0.6 of 10 pins as a percent."""
    (draft,) = [
        draft
        for draft in every_draft("three_forms", TWO_GROUPS)
        if draft.roles["part"] == GOLD[0] and [text for _, text in draft.rates] == ["0.6"]
    ]
    one, other = said("three_forms", TWO_GROUPS, 6, draft), problem("percent_of_set", TWO_GROUPS, 6, draft.ask)
    assert one.ask == other.ask
    assert one.id != other.id


def test_a_percent_under_ten_as_a_decimal_has_the_digit_mistake() -> None:
    """1 of 20 pins is 5%: 0.05, and not 0.5 (D13)."""
    few = table({"red": 20, "blue": 20}, {("Owls", 1): (1, 7), ("Herons", 1): (9, 3)})
    [draft] = [
        one
        for one in every_draft("three_forms", few)
        if one.rates and one.rates[0][1] == "5%" and len(one.rates) == 1 and one.wanted == frozenset({"decimal"})
    ]
    one = said("three_forms", few, 6, draft)
    assert one.answer.shown == "0.05"
    assert "0.5" in {slip.value for slip in one.slips if slip.id == "D13"}
