"""The problem models of adding to a count and taking from it, on a table of two groups and two trials."""

from __future__ import annotations

import re

import pytest

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Value
from mathgen.bank.desk import Desk
from mathgen.exact.demand import Demand
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.trials.table import TrialTable
from mathgen.wording.frames import frames
from tests.models.asked import every_draft, every_problem, problem, quantity, worked
from tests.tables import TWO_GROUPS, table

WHOLE = Demand("whole")
MODELS = ("add_to_result", "add_to_change", "add_to_start", "take_from_result", "take_from_change", "take_from_start")
RACKS = table({"red": 6, "blue": 8}, {("Owls", 1): (4, 7), ("Owls", 2): (5, 3), ("Owls", 3): (1, 6), ("Herons", 1): (2, 5)})

BEFORE, ADDED, AFTER = quantity("down", "Owls", (1,)), quantity("down", "Owls", (2,)), quantity("down", "Owls")  # 9, 6, 15
ADDING = Equation(Op("+", (BEFORE, ADDED)), AFTER)
SET_UP, DOWN, LEFT = (quantity(measure, "Herons", (2,)) for measure in ("set_up", "down", "standing"))  # 12, 9, 3
TAKING = Equation(Op("-", (SET_UP, DOWN)), LEFT)

ROWS = {
    # model: ask, answer, relation, steps, slips; each worked by hand
    "add_to_result": (
        Ask(Value(Op("+", (BEFORE, ADDED))), (), WHOLE), "15", "9 + 6 = x", ("9 + 6 = 15",), {"H14": "9", "H15": "3", "H13": "14"},
    ),
    "add_to_change": (Ask(Value(ADDED), (ADDING,), WHOLE), "6", "9 + x = 15", ("15 - 9 = 6",), {"H19": "24", "H13": "7"}),
    "add_to_start": (Ask(Value(BEFORE), (ADDING,), WHOLE), "9", "x + 6 = 15", ("15 - 6 = 9",), {"H19": "21", "H13": "10"}),
    "take_from_result": (
        Ask(Value(Op("-", (SET_UP, DOWN))), (), WHOLE), "3", "9 + x = 12", ("12 - 9 = 3",), {"H18": "9", "H06": "21", "H13": "4"},
    ),
    "take_from_change": (Ask(Value(DOWN), (TAKING,), WHOLE), "9", "12 - x = 3", ("12 - 3 = 9",), {"H06": "15", "H13": "10"}),
    "take_from_start": (Ask(Value(SET_UP), (TAKING,), WHOLE), "12", "x - 9 = 3", ("3 + 9 = 12",), {"H20": "6", "H13": "11"}),
}  # fmt: skip


@pytest.mark.parametrize("grade", [1, 2])
@pytest.mark.parametrize("name", ROWS)
def test_the_key_relation_steps_and_slips_worked_by_hand(name: str, grade: int):
    ask, *expected = ROWS[name]
    assert worked(problem(name, TWO_GROUPS, grade, ask)) == tuple(expected)


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
    assert used <= {frame.name for frame in frames("joining", model)}


def test_all_unknowns_of_the_standards_are_asked_for():
    """Common Core State Standards, glossary, Table 1: add to and take from, each with result, change and start unknown."""
    structures = {model: {draft.structure for draft in every_draft(model, TWO_GROUPS)} for model in MODELS}
    assert structures == {model: {f"{model.rpartition('_')[2]} unknown"} for model in MODELS}


def test_a_missing_number_is_never_one_cell_of_the_table():
    view = Desk(TWO_GROUPS, scenario()).view
    for model in ("add_to_change", "add_to_start", "take_from_change", "take_from_start"):
        for draft in every_draft(model, TWO_GROUPS):
            asked = draft.roles["asked"]
            assert isinstance(asked, Quantity)
            assert not view.is_cell(asked)


def test_halves_and_nothing_are_not_asked():
    """4 and 4: the answer would stand in the words. None down, none left: nothing to take away, or nothing to add."""
    dull = table({"red": 8}, {("Owls", 1): (4,), ("Owls", 2): (4,), ("Herons", 1): (8,), ("Herons", 2): (0,)})
    spots = {(model, draft.roles["start"].scope.groups) for model in MODELS for draft in every_draft(model, dull)}
    assert {groups for _, groups in spots} <= {None}  # of one group nothing is asked; of the class something is


def test_counts_before_a_trial_are_of_all_trials_before_it():
    texts = [one.text for one in every_problem("add_to_result", RACKS, 2, draws=6)]
    told = r"Before Trial 3, the Owls knocked down 19 pins|The Owls knocked down 19 pins before Trial 3"
    assert any(re.search(told, text) for text in texts)  # 4 + 7 and 5 + 3
