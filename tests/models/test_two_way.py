"""Two-way tables: each model by hand on a small table, and what no draft of theirs may be."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Op, Value
from mathgen.exact.demand import Demand
from tests.models.asked import every_draft, problem, quantity, said, worked
from tests.tables import table

BOTH = table({"red": 6, "blue": 8, "gold": 4}, {("Owls", 1): (4, 6, 1), ("Owls", 2): (5, 3, 1)})  # 12, 16, 8 set up; 9, 9, 2 down
OTHERS = table({"red": 6, "blue": 8, "gold": 4}, {("Owls", 1): (4, 6, 1), ("Owls", 2): (4, 3, 1)})  # 8, 9, 2 down
SET_UP = tuple(quantity("set_up", "Owls", None, color) for color in ("red", "blue", "gold"))
DOWN = tuple(quantity("down", "Owls", None, color) for color in ("red", "blue", "gold"))

ROWS = {
    # model: (table, ask, answer, relation, steps, slips), each worked by hand
    "two_way_frequency, of a row": (
        BOTH,
        Ask(Value(Op("/", (DOWN[0], SET_UP[0]))), (), Demand("percent")),
        "75%",
        "12*x = 9",
        ("9 / 12 = 9/12", "9/12 = 3/4", "3/4 = 75/100", "75/100 = 75%"),
        {"J24": "45%", "J25": "25%"},
    ),
    "two_way_frequency, of a column": (
        BOTH,
        Ask(Value(Op("/", (DOWN[0], Op("+", DOWN)))), (), Demand("percent")),
        "45%",
        "(9 + 9 + 2)*x = 9",
        ("9 + 9 + 2 = 20", "9 / 20 = 9/20", "9/20 = 45/100", "45/100 = 45%"),
        {"J23": "75%", "J25": "25%"},
    ),
    "two_way_frequency, of all": (
        BOTH,
        Ask(Value(Op("/", (DOWN[0], Op("+", SET_UP)))), (), Demand("percent")),
        "25%",
        "(12 + 16 + 8)*x = 9",
        ("12 + 16 + 8 = 36", "9 / 36 = 9/36", "9/36 = 1/4", "1/4 = 25/100", "25/100 = 25%"),
        {"J23": "75%", "J24": "45%"},
    ),
    "two_way_missing": (
        OTHERS,
        Ask(
            Value(Op("-", (Op("-", (quantity("set_up", "Owls"), quantity("down", "Owls"))), Op("-", (SET_UP[0], DOWN[0]))))),
            (),
            Demand("whole"),
        ),
        "13",
        "12 - 8 + x = 36 - 19",
        ("36 - 19 = 17", "12 - 8 = 4", "17 - 4 = 13"),
        {"J20": "17", "J21": "11", "J22": "24"},
    ),
}


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    results, ask, *expected = ROWS[row]
    one = problem(row.partition(",")[0], results, 8, ask)
    answer, relation, steps, slips = worked(one)
    assert [answer, relation, steps] == expected[:3]
    assert expected[3].items() <= slips.items()  # type: ignore[attr-defined]


def test_the_three_percents_of_a_count_differ() -> None:
    """Where two totals are equal, nobody can see out of which of them a pupil worked."""
    for draft in every_draft("two_way_frequency", BOTH):
        assert len({size for _, (_, size) in draft.slips} | {draft.over}) == 3


def test_nothing_is_asked_of_an_empty_column() -> None:
    none = table({"red": 6, "blue": 8, "gold": 4}, {("Owls", 1): (0, 0, 0), ("Owls", 2): (0, 0, 0)})
    assert not list(every_draft("two_way_frequency", none))


def test_a_table_of_two_kinds_has_no_other_kinds() -> None:
    two = table({"red": 6, "blue": 8}, {("Owls", 1): (4, 6), ("Owls", 2): (5, 3)})
    assert not list(every_draft("two_way_missing", two))


def test_a_table_to_be_made_is_read_whole_whatever_is_asked_of_it() -> None:
    """Of one row alone the percent needs one kind; the pupil who makes the table needs the numbers of every kind."""
    made = [said("two_way_frequency", BOTH, 8, draft, frozenset({"table"})) for draft in every_draft("two_way_frequency", BOTH)]
    assert made
    assert all({color for _, _, color in one.cells} == {"red", "blue", "gold"} for one in made)
