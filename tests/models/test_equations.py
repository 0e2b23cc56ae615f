"""Models with an equation or an expression beside the story, each row worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Equation, Op, Same, Stated, Truth, Value
from mathgen.bank.desk import Desk
from mathgen.exact.demand import Demand
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.wording.frames import frames
from tests.models.asked import every_draft, every_problem, problem, quantity, said, worked
from tests.tables import TWO_GROUPS, table

WHOLE = Demand("whole")
GRADES = {
    "missing_number_of_groups": 3,
    "missing_group_size": 3,
    "times_equation_smaller": 4,
    "times_equation_bigger": 4,
    "brackets_with_sum": 5,
    "brackets_with_difference": 5,
}
BIG = table(
    {"red": 30, "blue": 40, "gold": 30},
    {("Owls", 1): (24, 12, 6), ("Owls", 2): (18, 9, 11), ("Herons", 1): (13, 28, 26), ("Herons", 2): (21, 36, 22)},
)
OWLS_ONE = quantity("down", "Owls", (1,))  # 3 + 2 + 4 = 9
HERONS_RED = quantity("down", "Herons", None, "red")  # 4 + 2 = 6
HERONS_BLUE = quantity("down", "Herons", None, "blue")  # 1 + 2 = 3
OWLS_RED_ONE, OWLS_GOLD_ONE = quantity("down", "Owls", (1,), "red"), quantity("down", "Owls", (1,), "gold")  # 3 and 4
OWLS_RACK = quantity("set_up", "Owls", (1,))  # 12
TWICE = (Equation(HERONS_RED, Op("*", (Stated(2, "times"), HERONS_BLUE))),)

ROWS = {
    # model: ask, answer, relation, steps, slips; each worked by hand
    "missing_number_of_groups": (
        Ask(Value(OWLS_ONE), (Equation(Op("*", (OWLS_ONE, Stated(7, "points for each"))), Stated(63, "points in all")),), WHOLE),
        "9",
        "x*7 = 63",
        ("63 / 7 = 9",),
        {"O05": "56", "O06": "441", "M05": "8"},
    ),
    "missing_group_size": (
        Ask(Value(Op("/", (Stated(63, "points in all"), OWLS_ONE))), (), WHOLE),
        "7",
        "9*x = 63",
        ("63 / 9 = 7",),
        {"O05": "54", "O06": "567", "M05": "6"},
    ),
    "times_equation_smaller": (
        Ask(Value(HERONS_BLUE), TWICE, WHOLE),
        "3",
        "6 = 2*x",
        ("6 / 2 = 3",),
        {"O05": "4", "O06": "12"},
    ),
    "times_equation_bigger": (Ask(Value(HERONS_RED), TWICE, WHOLE), "6", "x = 2*3", ("2 * 3 = 6",), {"G08": "5", "G10": "9"}),
    "brackets_with_sum": (
        Ask(Value(Op("*", (Op("+", (OWLS_RED_ONE, OWLS_GOLD_ONE)), Stated(5, "points for each")))), (), WHOLE),
        "35",
        "x = (3 + 4)*5",
        ("3 + 4 = 7", "7 * 5 = 35"),
        # 3 + 4 * 5 = 23; 3 * 5 + 4 = 19
        {"O01": "23", "H07": "7", "O02": "19"},
    ),
    "brackets_with_difference": (
        Ask(Value(Op("*", (Op("-", (OWLS_RACK, OWLS_ONE)), Stated(5, "points for each")))), (), WHOLE),
        "15",
        "x = (12 - 9)*5",
        ("12 - 9 = 3", "3 * 5 = 15"),
        # 12 * 5 - 9 = 51; the 9 knocked down: 45
        {"O03": "51", "O04": "45", "H07": "3"},
    ),
}


@pytest.mark.parametrize("name", ROWS)
def test_the_key_relation_steps_and_slips_worked_by_hand(name: str):
    ask, *expected = ROWS[name]
    (draft,) = [draft for draft in every_draft(name, TWO_GROUPS) if draft.ask == ask]
    assert worked(said(name, TWO_GROUPS, GRADES[name], draft)) == tuple(expected)


@pytest.mark.parametrize("model", GRADES)
@pytest.mark.parametrize("activity", ["ramp", "seeds"])
def test_every_problem_is_proved_and_shows_a_likely_mistake(model: str, activity: str):
    problems = [problem for results in (TWO_GROUPS, BIG) for problem in every_problem(model, results, GRADES[model], activity)]
    assert problems
    assert [(problem.text, problem.proof) for problem in problems if not proved(problem)] == []
    assert [problem.text for problem in problems if not problem.slips] == []


@pytest.mark.parametrize("model", GRADES)
def test_two_frames_are_used_of_three(model: str):
    used = {problem.frame for results in (TWO_GROUPS, BIG) for problem in every_problem(model, results, GRADES[model], draws=4)}
    assert len(used) >= 2
    assert used <= {frame.name for frame in frames("equations", model)}
    assert len(frames("equations", model)) >= 3


@pytest.mark.parametrize("model", ["missing_number_of_groups", "times_equation_smaller", "times_equation_bigger"])
def test_the_number_asked_for_is_never_one_cell_of_the_table(model: str):
    view = Desk(TWO_GROUPS, scenario()).view
    assert not any(view.is_cell(draft.ask.goal.expr) for draft in every_draft(model, TWO_GROUPS))


FIVE = Stated(5, "points for each")
SUM = Op("*", (Op("+", (OWLS_RED_ONE, OWLS_GOLD_ONE)), FIVE))  # 35
RED_FIVE, GOLD_FIVE = Op("*", (OWLS_RED_ONE, FIVE)), Op("*", (OWLS_GOLD_ONE, FIVE))  # 15 and 20
EXPRESSIONS = {
    "sum first": (SUM, "Yes", "x = (3 + 4)*5 - (3 + 4)*5", ("3 + 4 = 7", "7 * 5 = 35"), {"O09": "No"}),
    "no brackets": (
        Op("+", (OWLS_RED_ONE, GOLD_FIVE)),
        "No",
        "x = (3 + 4)*5 - (3 + 4*5)",
        ("3 + 4 = 7", "7 * 5 = 35", "4 * 5 = 20", "3 + 20 = 23"),
        {"O07": "Yes"},
    ),
    "each by itself": (
        Op("+", (RED_FIVE, GOLD_FIVE)),
        "Yes",
        "x = (3 + 4)*5 - (3*5 + 4*5)",
        ("3 + 4 = 7", "7 * 5 = 35", "3 * 5 = 15", "4 * 5 = 20", "15 + 20 = 35"),
        {"O08": "No"},
    ),
    "first only": (
        Op("+", (RED_FIVE, OWLS_GOLD_ONE)),
        "No",
        "x = (3 + 4)*5 - (3*5 + 4)",
        ("3 + 4 = 7", "7 * 5 = 35", "3 * 5 = 15", "15 + 4 = 19"),
        {"O07": "Yes"},
    ),
}


@pytest.mark.parametrize("form", EXPRESSIONS)
def test_a_row_of_expressions_worked_by_hand(form: str) -> None:
    expression, *rest = EXPRESSIONS[form]
    one = problem("right_expression", TWO_GROUPS, 5, Ask(Truth(SUM, "=", expression), (), Demand("truth")))
    assert worked(one) == tuple(rest)
    assert one.standards == ("5.OA.A.2",)


def test_which_expression_records_worked_by_hand() -> None:
    """3 red and 2 blue pins at 5 points each: (3 + 2) × 5, and neither 3 + 2 × 5 nor 3 × 5 + 2; with a bonus, 3 × 5 + 10."""
    red, blue, points = quantity("down", "Owls", (1,), "red"), quantity("down", "Owls", (1,), "blue"), Stated(5, "points for each")
    right = Op("*", (Op("+", (red, blue)), points))
    options = right, Op("+", (red, Op("*", (blue, points)))), Op("+", (Op("*", (red, points)), blue))
    ask = Ask(Same(("(3 + 2) × 5", "3 + 2 × 5", "3 × 5 + 2"), options, right, red), (), Demand("expression"))
    one = problem("which_expression_records", TWO_GROUPS, 5, ask)
    assert worked(one) == ("(3 + 2) × 5", "x = (3 + 2)*5", (), {"O10": "3 + 2 × 5", "O11": "3 × 5 + 2"})
    assert one.standards == ("5.OA.A.2",)


def test_an_expression_with_a_bonus_worked_by_hand() -> None:
    red, points, bonus = quantity("down", "Owls", (1,), "red"), Stated(4, "points for each"), Stated(10, "bonus points")
    right = Op("+", (Op("*", (red, points)), bonus))
    options = right, Op("*", (red, Op("+", (points, bonus)))), Op("+", (red, Op("*", (points, bonus))))
    ask = Ask(Same(("3 × 4 + 10", "3 × (4 + 10)", "3 + 4 × 10"), options, right, red), (), Demand("expression"))
    one = problem("which_expression_records", TWO_GROUPS, 5, ask)
    assert worked(one) == ("3 × 4 + 10", "x = 3*4 + 10", (), {"O13": "3 × (4 + 10)", "O15": "3 + 4 × 10"})


def test_parentheses_do_not_tell_the_right_expression() -> None:
    """Each look of the right one beside each look of the others: with parentheses or not, alone in that or not."""
    looks = set()
    for draft in every_draft("which_expression_records", TWO_GROUPS):
        goal = draft.ask.goal
        marked = ["(" in text for text in goal.labels]
        right = marked[goal.options.index(goal.target)]
        looks.add((right, marked.count(right) == 1))
    assert looks == {(True, True), (True, False), (False, True), (False, False)}
