"""The problem models of unit rates of two lengths."""

from __future__ import annotations

import pytest
from sympy import Rational

from mathgen.asks.expression import Ask, Measured, Op, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.trials.table import Row, TrialTable
from tests.models.asked import every_draft, problem, worked

ANY = Demand("any")
GAPS = {("Owls", 1): "5/4", ("Wrens", 1): "3/4", ("Owls", 2): "5/2", ("Wrens", 2): "3"}
TABLE = TrialTable(tuple(Row(group, trial, "red", 10, 4, gap_inches=Rational(gap)) for (group, trial), gap in GAPS.items()))
OWLS, WRENS = Measured("gap", "Owls", 1), Measured("gap", "Wrens", 1)

ROWS = [
    # model, ask, answer, relation, steps, slips; each worked by hand
    (
        "inches_for_drawn_inch",
        # 5/2 * 8/3 = 40/6 = 6 2/3
        Ask(Value(Op("/", (Measured("gap", "Owls", 2), Stated(3, "inches on the drawing", 8)))), (), ANY),
        ("6 2/3", "(3/8)*x = 5/2", ("2 1/2 = 5/2", "5/2 / 3/8 = 6 2/3"), {"W71": "3/20", "W72": "15/16", "W73": "2 1/8"}),
    ),
    (
        "inches_for_each_inch",
        # 5/4 * 4/3 = 20/12 = 1 2/3
        Ask(Value(Op("/", (OWLS, WRENS))), (), ANY),
        ("1 2/3", "(3/4)*x = 5/4", ("1 1/4 = 5/4", "5/4 / 3/4 = 1 2/3"), {"W71": "3/5", "W72": "15/16", "W73": "1/2"}),
    ),
]


@pytest.mark.parametrize(("name", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, ask: Ask, row: tuple[object, ...]) -> None:
    made = problem(name, TABLE, 7, ask)
    assert worked(made) == row


def test_a_space_of_whole_inches_on_a_drawing_is_no_ratio_of_two_fractions() -> None:
    spaces = {draft.roles["space"] for draft in every_draft("inches_for_drawn_inch", TABLE)}
    assert spaces == {OWLS, WRENS, Measured("gap", "Owls", 2)}


def test_spaces_of_two_trials_are_not_compared() -> None:
    trials = {(draft.roles["asked"].trial, draft.roles["base"].trial) for draft in every_draft("inches_for_each_inch", TABLE)}  # type: ignore[union-attr]
    assert trials == {(1, 1), (2, 2)}
