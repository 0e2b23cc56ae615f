"""The problem models of positive and negative numbers."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Choice, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from tests.models.asked import every_draft, every_problem, quantity, said, worked
from tests.tables import table

ANY, NAME = Demand("any"), Demand("name")
TABLE = table(
    {"red": 12},
    {("Owls", 1): (9,), ("Owls", 2): (6,), ("Owls", 3): (4,), ("Wrens", 1): (2,), ("Wrens", 2): (11,), ("Wrens", 3): (3,)},
)
OWLS = [quantity("down", "Owls", (trial,), "red") for trial in (1, 2, 3)]
WRENS = [quantity("down", "Wrens", (trial,), "red") for trial in (1, 2, 3)]
GOAL = Stated(7, "goal")  # the Owls: 2, -1, -3; the Wrens: -5, 4, -4


def over(one: Quantity) -> Op:
    return Op("-", (one, GOAL))


ROWS = [
    # model, grade, ask, answer, relation, steps, slips; each worked by hand
    (
        "change_between_trials",
        6,
        Ask(Value(Op("opposite", (Op("-", (OWLS[0], OWLS[1])),))), (), ANY),
        ("-3", "x = -(9 - 6)", ("9 - 6 = 3", "-(3) = -3"), {"X01": "3", "X03": "15"}),
    ),
    (
        "change_between_trials",
        6,
        Ask(Value(Op("-", (WRENS[1], WRENS[0]))), (), ANY),
        ("9", "2 + x = 11", ("11 - 2 = 9",), {"X02": "-9", "X03": "13"}),
    ),
    (
        "result_against_goal",
        6,
        Ask(Value(Op("opposite", (Op("-", (GOAL, OWLS[2])),))), (), ANY),
        ("-3", "x = -(7 - 4)", ("7 - 4 = 3", "-(3) = -3"), {"X04": "3", "X06": "11"}),
    ),
    (
        "distance_from_goal",
        6,
        Ask(Value(Op("abs", (over(OWLS[2]),))), (), ANY),
        ("3", "x = Abs(4 - 7)", ("|-3| = 3",), {"X07": "-3", "X08": "4", "X09": "10"}),
    ),
    (
        "farther_from_goal",
        6,
        Ask(Choice(("Owls", "Wrens"), (Op("abs", (over(OWLS[0]),)), Op("abs", (over(WRENS[0]),))), True), (), NAME),
        ("Wrens", "x = Max(Abs(9 - 7), Abs(2 - 7))", ("|2| = 2", "|-5| = 5"), {"X10": "Owls"}),
    ),
    (
        "sum_of_results",
        7,
        Ask(Value(Op("+", (over(OWLS[0]), over(OWLS[2])))), (), ANY),
        ("-1", "9 - 7 + 4 - 7 = x", ("2 + -3 = -1",), {"X11": "5", "X12": "1"}),
    ),
    (
        "result_for_zero",
        7,
        Ask(Value(Op("opposite", (Op("+", (over(WRENS[1]), over(WRENS[2]))),))), (), ANY),
        None,
    ),
    (
        "result_for_zero",
        7,
        Ask(Value(Op("opposite", (Op("+", (over(WRENS[0]), over(WRENS[1]))),))), (), ANY),
        ("1", "x = -(2 - 7 + 11 - 7)", ("-5 + 4 = -1", "-(-1) = 1"), {"X14": "-1", "X11": "9", "X13": "-9"}),
    ),
    (
        "result_for_zero",
        7,
        Ask(Value(Op("opposite", (Op("+", (over(OWLS[0]), over(OWLS[2]))),))), (), ANY),
        None,
    ),
    (
        "mean_of_results",
        7,
        Ask(Value(Op("/", (Op("+", (over(WRENS[0]), over(WRENS[1]), over(WRENS[2]))), Stated(3, "trials")))), (), ANY),
        None,
    ),
    (
        "difference_of_results",
        7,
        Ask(Value(Op("-", (over(WRENS[1]), over(WRENS[0])))), (), ANY),
        ("9", "2 - 7 + x = 11 - 7", ("4 - -5 = 9",), {"X17": "1", "X18": "-1", "X19": "-9"}),
    ),
]


@pytest.mark.parametrize(("name", "grade", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, grade: int, ask: Ask, row: tuple[object, ...] | None) -> None:
    found = [draft for draft in every_draft(name, TABLE) if draft.ask == ask]
    if row is None:  # a sum of 0, a trial left out, or a mean in thirds
        assert found == []
        return
    made = said(name, TABLE, grade, found[0])
    assert worked(made) == row


def test_the_mean_of_results_may_be_below_zero() -> None:
    """8, 3 and 4 against a goal of 6: 2, -3 and -2."""
    results = table({"red": 12}, {("Owls", 1): (8,), ("Owls", 2): (3,), ("Owls", 3): (4,)})
    goal = Stated(6, "goal")
    found = [draft for draft in every_draft("mean_of_results", results) if draft.roles["goal"] == goal]
    assert len(found) == 1
    made = said("mean_of_results", results, 7, found[0])
    assert worked(made) == (
        "-1",
        "3*x = 8 - 6 + 3 - 6 + 4 - 6",
        ("2 + -3 + -2 = -3", "-3 / 3 = -1"),
        {"X15": "-3", "X16": "2.333...", "X12": "1"},
    )


def test_the_greater_number_is_never_the_answer_where_distances_are_compared() -> None:
    """-5 is farther from zero than 2, though 2 is the greater number; where both point to one group there is no problem."""
    problems = every_problem("farther_from_goal", TABLE, 6)
    assert problems
    assert all(problem.slips and problem.slips[0].value != problem.answer.shown for problem in problems)
