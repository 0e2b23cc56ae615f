"""One number of a list that may change, on a small table; every list, step and slip worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Changes, Stated
from mathgen.exact.demand import Demand
from mathgen.proof.judge import proved
from tests.models.asked import every_problem, problem, quantity, worked
from tests.tables import table

# 12 pins for each trial; the Owls knocked down 8, 10 and 9 of them, the Herons 3, 7 and 11.
RESULTS = table(
    {"red": 5, "blue": 7},
    {("Owls", 1): (3, 5), ("Owls", 2): (4, 6), ("Owls", 3): (5, 4), ("Herons", 1): (2, 1), ("Herons", 2): (3, 4), ("Herons", 3): (5, 6)},
)


def series(group: str) -> tuple:
    return tuple(quantity("down", group, (trial,)) for trial in (1, 2, 3))


@pytest.mark.parametrize(
    ("model", "grade", "group", "name", "to", "expected"),
    [
        (
            "change_for_total", 4, "Owls", "total", 30,  # 3 more: 10 would be 13 of 12
            ("8 to 11, 9 to 12", "8 + 10 + 9 + x = 30", ("8 + 10 + 9 = 27", "30 - 27 = 3", "8 + 3 = 11", "9 + 3 = 12"),
             {"U01": "8 to 11, 10 to 13, 9 to 12", "U02": "8 to 11"}),
        ),
        (
            "change_for_mean", 6, "Herons", "mean", 5,  # 6 fewer in all: 3 would be below 0
            ("7 to 1, 11 to 5", "3 + 7 + 11 + x = 3*5", ("3 * 5 = 15", "3 + 7 + 11 = 21", "21 - 15 = 6", "7 - 6 = 1", "11 - 6 = 5"),
             {"U02": "7 to 1", "U03": "3 to 1, 7 to 5, 11 to 9"}),
        ),
    ],
)  # fmt: skip
def test_a_row_worked_by_hand(model: str, grade: int, group: str, name: str, to: int, expected: tuple) -> None:
    goal = Changes(series(group), name, Stated(to, f"wanted {name}"), quantity("set_up", group, (1,)))
    one = problem(model, RESULTS, grade, Ask(goal, (), Demand("list")))
    assert worked(one) == expected
    assert one.answer.kind == "list"


@pytest.mark.parametrize(("model", "grade"), [("change_for_total", 4), ("change_for_mean", 6)])
@pytest.mark.parametrize("activity", ["ramp", "seeds"])
def test_some_trials_can_change_and_some_cannot(model: str, grade: int, activity: str) -> None:
    found = every_problem(model, RESULTS, grade, activity, draws=3)
    assert found
    for one in found:
        assert proved(one), one.proof
        assert 2 <= one.answer.exact.count(" to ") < (4 if model == "change_for_mean" else 3)
        assert one.slips
