"""The problem models of greatest common factors and least common multiples."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Op, Value
from mathgen.exact.demand import Demand
from tests.models.asked import every_draft, problem, quantity, worked
from tests.tables import table

WHOLE = Demand("whole")
TABLE = table({"red": 12, "gold": 12}, {("Owls", 1): (8, 12), ("Wrens", 1): (9, 5), ("Kites", 1): (12, 3)})

ROWS = [
    # model, ask, answer, relation, steps, slips; each worked by hand
    (
        "equal_boxes",
        Ask(Value(Op("gcf", (quantity("down", "Owls", (1,), "red"), quantity("down", "Owls", (1,), "gold")))), (), WHOLE),
        ("4", "x = gcd(8, 12)", ("8 / 2 = 4", "12 / 3 = 4"), {"Z01": "2", "Z02": "24"}),
    ),
    (
        "total_both_reach",
        Ask(Value(Op("lcm", (quantity("down", "Owls", (1,), "red"), quantity("down", "Kites", (1,), "red")))), (), WHOLE),
        ("24", "x = lcm(8, 12)", ("8 * 3 = 24", "12 * 2 = 24"), {"Z04": "96", "Z05": "4", "Z06": "20"}),
    ),
]


@pytest.mark.parametrize(("name", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, ask: Ask, row: tuple[object, ...]) -> None:
    made = problem(name, TABLE, 6, ask)
    assert worked(made) == row


def test_numbers_without_a_common_factor_and_numbers_of_which_one_divides_the_other_are_left_out() -> None:
    """Of the Kites, 3 goes into 12; of the Wrens, 9 and 5 share nothing. 8 and 9 meet at their product only."""
    for name in ("equal_boxes", "total_both_reach"):
        asked = {tuple(one.scope.groups for one in draft.ask.goal.exprs[0].args) for draft in every_draft(name, TABLE)}  # type: ignore[union-attr]
        assert asked <= {(("Owls",), ("Owls",)), (("Owls",), ("Kites",)), (("Wrens",), ("Kites",))}, name
