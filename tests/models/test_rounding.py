"""Models that round whole numbers, each row worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Op, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.proof.judge import proved
from mathgen.wording.frames import frames
from tests.models.asked import every_draft, every_problem, quantity, said, worked
from tests.tables import TWO_GROUPS, table

GRADES = {"round_total": (3,), "round_points": (3, 4), "round_classes": (4,)}
BIG = table(
    {"red": 30, "blue": 40, "gold": 31},
    {("Owls", 1): (24, 12, 7), ("Owls", 2): (18, 9, 11), ("Herons", 1): (13, 28, 26), ("Herons", 2): (21, 35, 22)},
)
ALL = quantity("down")  # 9 + 6 + 8 + 9 = 32
OWLS_ONE = quantity("down", "Owls", (1,))  # 3 + 2 + 4 = 9
RACKS = quantity("set_up")  # 4 * 12 = 48

ROWS = {
    # model: grade, ask, answer, relation, steps, slips; each worked by hand
    "round_total": (
        3,
        Ask(Value(ALL), (), Demand("whole", -1)),
        ("30", "32"),
        "x = 32",
        ("32 = 32",),
        # to the nearest hundred there is nothing to write; 3 without its zero
        {"R02": "40", "R04": "3"},
    ),
    "round_points": (
        3,
        Ask(Value(Op("*", (OWLS_ONE, Stated(7, "points for each")))), (), Demand("whole", -1)),
        ("60", "63"),
        "x = 9*7",
        ("9 * 7 = 63",),
        {"R02": "70", "R04": "6"},
    ),
    "round_classes": (
        4,
        Ask(Value(Op("*", (Stated(36, "classes"), RACKS))), (), Demand("whole", -2)),
        ("1700", "1728"),
        "x = 36*48",
        ("36 * 48 = 1728",),
        # up: 1800; to the nearest ten: 1730; without zeros: 17
        {"R02": "1800", "R03": "1730", "R04": "17"},
    ),
}


@pytest.mark.parametrize("name", ROWS)
def test_the_key_relation_steps_and_slips_worked_by_hand(name: str):
    grade, ask, (answer, exact), *expected = ROWS[name]
    (draft,) = [draft for draft in every_draft(name, TWO_GROUPS) if draft.ask == ask]
    problem = said(name, TWO_GROUPS, grade, draft)
    assert worked(problem) == (answer, *expected)
    assert problem.answer.because == f"{exact} rounds to {answer}"


@pytest.mark.parametrize("model", GRADES)
@pytest.mark.parametrize("activity", ["ramp", "seeds"])
def test_every_problem_is_proved_and_shows_a_likely_mistake(model: str, activity: str):
    problems = [problem for grade in GRADES[model] for problem in every_problem(model, BIG, grade, activity)]
    assert problems
    assert [(problem.text, problem.proof) for problem in problems if not proved(problem)] == []
    assert [problem.text for problem in problems if not problem.slips] == []


@pytest.mark.parametrize(("model", "grade"), [(model, grade) for model in GRADES for grade in GRADES[model]])
def test_two_frames_fit_each_grade(model: str, grade: int):
    used = {problem.frame for problem in every_problem(model, BIG, grade, draws=4)}
    assert len(used) >= 2
    assert used <= {frame.name for frame in frames("rounding", model)}


def test_no_tie_is_asked_for():
    """45 to the nearest ten: rules part ways at 5, so it is not asked."""
    for model in GRADES:
        for draft in every_draft(model, BIG):
            size = 10**-draft.ask.demand.places
            number = draft.slips[0][1][0]
            assert 2 * number % size or number % size == 0
            assert number % size
