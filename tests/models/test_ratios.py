"""Ratios: each model by hand on one small table, and what no draft of theirs may be."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Op, Ratio, Value
from mathgen.bank.desk import Desk
from mathgen.exact.demand import Demand
from mathgen.exact.judge import judge
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.wording.frames import frames
from tests.aimed import AIMED
from tests.models.asked import every_draft, every_problem, problem, quantity, worked
from tests.tables import TWO_GROUPS, table

ANY = Demand("ratio:any")
MODELS = ("ratio_part_to_part", "ratio_part_to_whole")
ALL = (*MODELS, "fraction_from_ratio")

DOWN, SET_UP, STANDING = (quantity(measure, "Herons") for measure in ("down", "set_up", "standing"))  # 17 of 24 pins, 7 left
OWLS_1 = tuple(quantity("down", "Owls", (1,), color) for color in ("red", "blue", "gold"))  # 3, 2, 4
DOWN_1, STANDING_1 = (quantity(measure, "Owls", (1,)) for measure in ("down", "standing"))  # 9 of 12, 3 left
RED = tuple(quantity(measure, None, None, "red") for measure in ("down", "set_up"))  # the class: 10 of 16

ROWS = {
    # model: ask, answer, relation, steps, slips; each worked by hand, the first one a model problem
    "ratio_part_to_part": (
        Ask(Ratio(DOWN, Op("-", (SET_UP, DOWN))), (), ANY),
        "17:7",
        "(24 - 17)*x = 17",
        ("24 - 17 = 7", "17 / 7 = 17/7"),
        {"G01": "17:24", "G03": "7:17"},
    ),
    "ratio_part_to_part, the other way round": (
        Ask(Ratio(Op("-", (RED[1], RED[0])), RED[0]), (), ANY),
        "6:10",
        "10*x = 16 - 10",
        ("16 - 10 = 6", "6 / 10 = 6/10"),
        {"G01": "6:16", "G03": "10:6"},
    ),
    "ratio_part_to_part, colors": (
        Ask(Ratio(OWLS_1[0], OWLS_1[2]), (), ANY),
        "3:4",
        "4*x = 3",
        ("3 / 4 = 3/4",),
        {"G01": "3:9", "G03": "4:3"},
    ),
    "ratio_part_to_whole": (
        Ask(Ratio(DOWN, Op("+", (DOWN, STANDING))), (), ANY),
        "17:24",
        "(17 + 7)*x = 17",
        ("17 + 7 = 24", "17 / 24 = 17/24"),
        {"G02": "17:7", "G03": "24:17"},
    ),
    "ratio_part_to_whole, standing": (
        Ask(Ratio(STANDING, Op("+", (DOWN, STANDING))), (), ANY),
        "7:24",
        "(17 + 7)*x = 7",
        ("17 + 7 = 24", "7 / 24 = 7/24"),
        {"G02": "7:17", "G03": "24:7"},
    ),
    "ratio_part_to_whole, colors": (
        Ask(Ratio(OWLS_1[0], Op("+", OWLS_1)), (), ANY),
        "3:9",
        "(3 + 2 + 4)*x = 3",
        ("3 + 2 + 4 = 9", "3 / 9 = 3/9"),
        {"G02": "3:6", "G03": "9:3"},
    ),
    "fraction_from_ratio": (
        Ask(Value(Op("/", (DOWN_1, Op("+", (DOWN_1, STANDING_1))))), (), Demand("any")),
        "9/12",
        "(9 + 3)*x = 9",
        ("9 + 3 = 12", "9 / 12 = 9/12"),
        {"G04": "9/3", "A03": "3/12"},
    ),
    "fraction_from_ratio, colors": (
        Ask(Value(Op("/", (OWLS_1[0], Op("+", (OWLS_1[0], OWLS_1[2]))))), (), Demand("any")),
        "3/7",
        "(3 + 4)*x = 3",
        ("3 + 4 = 7", "3 / 7 = 3/7"),
        {"G04": "3/4", "A03": "4/7"},
    ),
}


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    ask, *expected = ROWS[row]
    one = problem(row.partition(",")[0], TWO_GROUPS, 6, ask)
    assert one.answer.kind == ("number" if row.startswith("fraction") else "ratio")
    assert worked(one) == tuple(expected)


def test_a_ratio_is_kept_as_it_was_counted_and_any_equal_one_is_right() -> None:
    """6:10 is 3:5; 10:6 is another ratio."""
    key = problem("ratio_part_to_part", TWO_GROUPS, 6, ROWS["ratio_part_to_part, the other way round"][0]).answer
    assert key.accepted == ("6:10", "6 to 10", "6/10", "3:5")
    verdicts = [judge(key.shown, str(key.demand), typed)[0] for typed in ("3:5", "12 to 20", "10:6", "3:8")]
    assert verdicts == ["right", "right", "wrong", "wrong"]


@pytest.mark.parametrize("model", MODELS)
@pytest.mark.parametrize("activity", ["ramp", "seeds"])
def test_every_problem_is_proved_and_shows_the_likeliest_mistakes(model: str, activity: str) -> None:
    problems = every_problem(model, TWO_GROUPS, 6, activity)
    assert problems
    assert [one.proof for one in problems if not proved(one)] == []
    # The whole (or the other part) in place of the second number, and the order.
    assert {tuple(slip.id for slip in one.slips) for one in problems} == {("G01" if model == "ratio_part_to_part" else "G02", "G03")}


@pytest.mark.parametrize("model", ALL)
def test_every_frame_is_used(model: str) -> None:
    problems = [one for results in (TWO_GROUPS, AIMED) for one in every_problem(model, results, 6, draws=6)]
    assert {one.frame for one in problems} == {frame.name for frame in frames("ratios", model)}
    assert [one.proof for one in problems if not proved(one)] == []


def test_a_fraction_is_told_by_the_ratio_alone() -> None:
    """Neither all nor how many were set up stands in the words."""
    problems = every_problem("fraction_from_ratio", TWO_GROUPS, 6)
    assert {(len(one.givens), len(one.steps)) for one in problems} == {(2, 2)}
    assert [one.proof for one in problems if not proved(one)] == []


@pytest.mark.parametrize("model", MODELS)
def test_no_ratio_is_the_same_in_both_orders_or_has_nothing_in_it(model: str) -> None:
    halves = table({"red": 4, "blue": 4, "gold": 4}, {("Owls", 1): (2, 2, 0), ("Herons", 1): (4, 0, 3)})
    asked = [*every_draft(model, halves), *every_draft(model, TWO_GROUPS)]
    assert asked
    for draft in asked:
        counts = dict(draft.slips)["G03"]
        assert counts[0] != counts[1]
        assert 0 not in counts


def test_the_whole_of_a_part_has_to_be_worked_out() -> None:
    """Else the question would be answered by copying two numbers."""
    view = Desk(TWO_GROUPS, scenario()).view
    for one in every_problem("ratio_part_to_whole", TWO_GROUPS, 6, draws=3):
        whole = int(one.answer.shown.partition(":")[2])
        printed = [given.expr for given in one.givens]
        assert whole not in [view.number(expr) for expr in printed if not isinstance(expr, Op) and expr.measure == "set_up"]
        assert len(one.steps) > 1
