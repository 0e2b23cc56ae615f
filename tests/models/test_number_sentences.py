"""Number sentences with a blank, on a table of two groups and two trials."""

from __future__ import annotations

import re

import pytest

from mathgen.asks.expression import Ask, Equation, Op, Stated, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.proof.judge import proved
from mathgen.trials.table import TrialTable
from mathgen.wording.frames import frames
from tests.models.asked import every_problem, problem, quantity, worked
from tests.tables import TWO_GROUPS, table

WHOLE = Demand("whole")
MODELS = ("missing_addend", "missing_in_difference")
RACKS = table({"red": 6, "blue": 8}, {("Owls", 1): (4, 7), ("Owls", 2): (5, 3), ("Owls", 3): (1, 6), ("Herons", 1): (2, 5)})

BEFORE, ADDED, AFTER = quantity("down", "Owls", (1,)), quantity("down", "Owls", (2,)), quantity("down", "Owls")  # 9, 6, 15
ADDING = Equation(Op("+", (BEFORE, ADDED)), AFTER)
SET_UP, DOWN, LEFT = (quantity(measure, "Herons", (2,)) for measure in ("set_up", "down", "standing"))  # 12, 9, 3
TAKING = Equation(Op("-", (SET_UP, DOWN)), LEFT)

ROWS = {
    # model: number sentence, ask, answer, relation, steps, slips; each worked by hand
    "missing_addend": ("9 + __ = 15", Ask(Value(ADDED), (ADDING,), WHOLE), "6", "9 + x = 15", ("15 - 9 = 6",), {"H19": "24", "H13": "7"}),
    "missing_addend, first": (
        "__ + 6 = 15", Ask(Value(BEFORE), (ADDING,), WHOLE), "9", "x + 6 = 15", ("15 - 6 = 9",), {"H19": "21", "H13": "10"},
    ),
    "missing_in_difference": (
        "12 - __ = 3", Ask(Value(DOWN), (TAKING,), WHOLE), "9", "12 - x = 3", ("12 - 3 = 9",), {"H06": "15", "H13": "10"},
    ),
    "missing_in_difference, first": (
        "__ - 9 = 3", Ask(Value(SET_UP), (TAKING,), WHOLE), "12", "x - 9 = 3", ("3 + 9 = 12",), {"H20": "6", "H13": "11"},
    ),
}  # fmt: skip


@pytest.mark.parametrize("grade", [1, 2])
@pytest.mark.parametrize("name", ROWS)
def test_the_key_relation_steps_and_slips_worked_by_hand(name: str, grade: int):
    sentence, ask, *expected = ROWS[name]
    one = problem(name.partition(",")[0], TWO_GROUPS, grade, ask)
    assert worked(one) == tuple(expected)
    assert sentence in one.question
    assert one.answer.display == expected[0]  # a number sentence has no pins in it


@pytest.mark.parametrize("model", MODELS)
@pytest.mark.parametrize("results", [TWO_GROUPS, RACKS], ids=["two groups", "three trials"])
@pytest.mark.parametrize("activity", ["ramp", "seeds"])
def test_every_problem_is_proved_and_shows_a_likely_mistake(model: str, results: TrialTable, activity: str):
    problems = [one for grade in (1, 2) for one in every_problem(model, results, grade, activity, draws=3)]
    assert problems
    assert [one.proof for one in problems if not proved(one)] == []
    assert [one.text for one in problems if not one.slips] == []


@pytest.mark.parametrize("model", MODELS)
def test_three_frames_are_used(model: str):
    used = {one.frame for grade in (1, 2) for one in every_problem(model, RACKS, grade, draws=6)}
    assert len(used) >= 3
    assert used <= {frame.name for frame in frames("number_sentences", model)}


@pytest.mark.parametrize("model", MODELS)
def test_the_blank_stands_in_every_place_but_the_result(model: str):
    """1.OA.D.8: the unknown in any of the three positions; a sum or difference alone is no story for a blank."""
    sentences = [one.question for one in every_problem(model, TWO_GROUPS, 1)]
    assert {bool(re.search(r"__ [+-]", text)) for text in sentences} == {True, False}
    assert all(text.count("__") == 1 and "= __" not in text for text in sentences)


JUDGED = {
    # Herons, Trial 1: 12 set up, 8 knocked down, 4 left standing.
    "right": ((1, 3), "Yes", "x = 12 - 8 - (1 + 3)", ("12 - 8 = 4", "1 + 3 = 4"), {"H47": "No"}),
    "1 off": ((1, 4), "No", "x = 12 - 8 - (1 + 4)", ("12 - 8 = 4", "1 + 4 = 5"), {"H41": "Yes"}),
    "the answer first": ((4, 2), "No", "x = 12 - 8 - (4 + 2)", ("12 - 8 = 4", "4 + 2 = 6"), {"H47": "Yes"}),
}


@pytest.mark.parametrize("name", JUDGED)
def test_a_difference_held_against_a_sum_by_hand(name: str):
    """1.OA.D.7: an equation with an operation on each side."""
    claimed, *expected = JUDGED[name]
    left = Op("-", (quantity("set_up", "Herons", (1,)), quantity("down", "Herons", (1,))))
    right = Op("+", tuple(Stated(number, "claimed") for number in claimed))
    one = problem("difference_and_sum", TWO_GROUPS, 1, Ask(Truth(left, "=", right), (), Demand("truth")))
    assert list(worked(one)) == expected
    assert one.standards == ("1.OA.D.7",)


SENTENCES = {
    # Owls, Trial 1: 3 red, 2 blue, 4 gold; Herons, Trial 1: 4 red, 1 blue, 3 gold.
    "true": (("Herons", "red", "blue", "gold"), False, "Yes", "x = 4 - (1 + 3)", ("1 + 3 = 4",)),
    "1 off": (("Owls", "red", "blue", "gold"), True, "No", "x = 3 + 2 - 4", ("3 + 2 = 5",)),
}


@pytest.mark.parametrize("name", SENTENCES)
def test_a_number_sentence_judged_by_hand(name: str):
    """1.OA.D.7: whether an equation with one sum, on either side, is true."""
    (group, *colors), sum_first, *expected = SENTENCES[name]
    a, b, c = (quantity("down", group, (1,), color) for color in colors)
    goal = Truth(Op("+", (a, b)), "=", c) if sum_first else Truth(a, "=", Op("+", (b, c)))
    one = problem("true_or_false", TWO_GROUPS, 1, Ask(goal, (), Demand("truth")))
    assert list(worked(one)[:3]) == expected
    assert one.slips
    assert one.standards == ("1.OA.D.7",)
