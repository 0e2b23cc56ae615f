"""Models that multiply and divide equal groups, each row worked by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest

from mathgen.asks.expression import Ask, Equation, Op, Stated, Value
from mathgen.bank.desk import Desk
from mathgen.exact.demand import Demand
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.trials.table import TrialTable
from mathgen.wording.frames import frames
from tests.models.asked import every_draft, every_problem, quantity, said, worked
from tests.tables import TWO_GROUPS, table

WHOLE = Demand("whole")
GRADES = {
    "points_earned": (3, 4, 5),
    "one_pins_points": (3, 4, 5, 6),
    "pins_from_points": (3, 4, 5, 6),
    "equal_racks": (3, 4),
    "one_rack": (3, 4),
    "many_classes": (3, 4, 5),
}
# Racks of 40 and many trials, so that every grade finds numbers of its size.
BIG = table(
    {"red": 30, "blue": 40, "gold": 30},
    {("Owls", 1): (24, 12, 7), ("Owls", 2): (18, 9, 11), ("Herons", 1): (13, 28, 26), ("Herons", 2): (21, 35, 22)},
)
OWLS_ONE = quantity("down", "Owls", (1,))  # 3 + 2 + 4 = 9
OWLS_RACK = quantity("set_up", "Owls", (1,))  # 4 + 3 + 5 = 12
OWLS_RACKS = quantity("set_up", "Owls")
ALL_RACKS = quantity("set_up")  # 4 * 12 = 48

ROWS = {
    # model: grade, ask, answer, relation, steps, slips; each worked by hand
    "points_earned": (
        3,
        Ask(Value(Op("*", (OWLS_ONE, Stated(7, "points for each")))), (), WHOLE),
        "63",
        "x = 9*7",
        ("9 * 7 = 63",),
        {"M01": "16", "M02": "56"},
    ),
    "one_pins_points": (
        3,
        Ask(Value(Op("/", (Stated(63, "points in all"), OWLS_ONE))), (), WHOLE),
        "7",
        "9*x = 63",
        ("63 / 9 = 7",),
        {"M03": "54", "M05": "6"},
    ),
    "pins_from_points": (
        3,
        Ask(Value(OWLS_ONE), (Equation(Op("*", (OWLS_ONE, Stated(7, "points for each"))), Stated(63, "points in all")),), WHOLE),
        "9",
        "x*7 = 63",
        ("63 / 7 = 9",),
        {"M03": "56", "M05": "8"},
    ),
    "equal_racks": (
        3,
        Ask(Value(Op("*", (Stated(2, "trials"), OWLS_RACK))), (), WHOLE),
        "24",
        "x = 2*12",
        ("2 * 12 = 24",),
        {"M01": "14", "M02": "12"},
    ),
    "one_rack": (
        3,
        Ask(Value(Op("/", (OWLS_RACKS, Stated(2, "trials")))), (), WHOLE),
        "12",
        "2*x = 24",
        ("24 / 2 = 12",),
        {"M03": "22", "M04": "48", "M05": "11"},
    ),
    "many_classes": (
        4,
        Ask(Value(Op("*", (Stated(24, "classes"), ALL_RACKS))), (), WHOLE),
        "1152",
        "x = 24*48",
        ("24 * 48 = 1152",),
        # 48 * 4 = 192 and 48 * 2 = 96, not 960: 288.
        {"M01": "72", "M08": "288", "M02": "1104"},
    ),
}


@pytest.mark.parametrize("name", ROWS)
def test_the_key_relation_steps_and_slips_worked_by_hand(name: str):
    grade, ask, *expected = ROWS[name]
    (draft,) = [draft for draft in every_draft(name, TWO_GROUPS) if draft.ask._replace(equals=None) == ask]
    assert worked(said(name, TWO_GROUPS, grade, draft)) == tuple(expected)


@pytest.mark.parametrize("model", GRADES)
@pytest.mark.parametrize("activity", ["ramp", "seeds"])
def test_every_problem_is_proved_and_shows_a_likely_mistake(model: str, activity: str):
    problems = [problem for grade in GRADES[model] for problem in every_problem(model, BIG, grade, activity)]
    assert problems
    assert [(problem.text, problem.proof) for problem in problems if not proved(problem)] == []
    assert [problem.text for problem in problems if not problem.slips] == []


@pytest.mark.parametrize(("model", "grade"), [(model, grade) for model in GRADES for grade in GRADES[model]])
def test_two_frames_fit_each_grade_and_three_are_used(model: str, grade: int):
    used = {problem.frame for results in (TWO_GROUPS, BIG) for problem in every_problem(model, results, grade, draws=4)}
    assert len(used) >= 2
    assert used <= {frame.name for frame in frames("multiplying", model)}
    assert len(frames("multiplying", model)) >= 3


def test_a_product_of_one_digit_by_tens_is_work_of_its_own():
    """3.NBT.A.3: one digit by multiples of 10 from 10 to 90; by 10 itself is a fact."""
    for problem in every_problem("points_earned", BIG, 3):
        one, other = sorted(int(number) for number in problem.steps[0].text.split(" = ")[0].split(" * "))
        assert (problem.standards == ("3.NBT.A.3",)) == (one < 10 and other % 10 == 0 and other > 10)


def test_grade_four_multiplies_by_one_digit_or_two_by_two():
    """4.NBT.B.5: up to four digits by one digit, or two by two."""
    for model in ("points_earned", "many_classes"):
        for problem in every_problem(model, BIG, 4):
            lengths = sorted(len(number) for number in problem.steps[0].text.split(" = ")[0].split(" * "))
            assert lengths[0] == 1 or lengths == [2, 2]


def test_the_number_of_pins_is_never_one_cell_of_the_table():
    view = Desk(TWO_GROUPS, scenario()).view
    assert not any(view.is_cell(draft.roles["down"]) for draft in every_draft("pins_from_points", TWO_GROUPS))  # type: ignore[arg-type]
    assert not any(view.is_cell(draft.roles["each"]) for draft in every_draft("one_rack", TWO_GROUPS))  # type: ignore[arg-type]


def test_racks_that_differ_are_not_told_of_as_equal():
    """Trial 2 has one gold pin less than Trial 1."""
    rows = tuple(replace(row, set_up=4) if (row.group, row.trial, row.color) == ("Owls", 2, "gold") else row for row in TWO_GROUPS.rows)
    for model in ("equal_racks", "one_rack"):
        for draft in every_draft(model, TrialTable(rows)):
            groups, _, colors = draft.roles["whole"].scope  # type: ignore[union-attr]
            assert groups == ("Herons",) or (colors is not None and "gold" not in colors)
