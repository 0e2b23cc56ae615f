"""What percent more or fewer: by hand on one small table."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Op, Value
from mathgen.exact.demand import Demand
from tests.models.asked import problem, quantity, worked
from tests.tables import TWO_GROUPS

PERCENT, TO_A_TENTH = Demand("percent"), Demand("percent", 1)
GOLDS = quantity("down", "Owls", None, "gold"), quantity("down", "Herons", None, "gold")

ROWS = {
    # model: (grade, ask, answer, relation, steps, slips), each worked by hand
    # Gold pins of both trials: the Owls 4 + 2 = 6, the Herons 3 + 5 = 8.
    "percent_more, more": (
        7,
        Ask(Value(Op("/", (Op("-", GOLDS[::-1]), GOLDS[0]))), (), TO_A_TENTH),
        "33.3%",
        "6*x = 8 - 6",
        ("8 - 6 = 2", "2 / 6 = 2/6", "2/6 = 33 1/3%"),
        {"F15": "25%", "F16": "2%", "F17": "133.3%"},
    ),
    "percent_more, fewer": (
        7,
        Ask(Value(Op("/", (Op("-", GOLDS[::-1]), GOLDS[1]))), (), PERCENT),
        "25%",
        "8*x = 8 - 6",
        ("8 - 6 = 2", "2 / 8 = 2/8", "2/8 = 1/4", "1/4 = 25/100", "25/100 = 25%"),
        {"F15": "33 1/3%", "F16": "2%", "F17": "75%"},
    ),
}


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    grade, ask, *expected = ROWS[row]
    assert worked(problem(row.partition(",")[0], TWO_GROUPS, grade, ask)) == tuple(expected)
