"""The problem models that count, on a table of two groups and two trials."""

from __future__ import annotations

import re

import pytest

from mathgen.asks.expression import Quantity
from mathgen.bank.builder import Desk
from mathgen.proof.record import proved
from mathgen.scenario.words import scenario
from mathgen.trials.table import Row, TrialTable
from mathgen.wording.frames import frames
from tests.models.built import drafts_of, facts_of, problems_of, the_problem
from tests.tables import TWO_GROUPS, table

MODELS = ("put_together_total", "two_step_left_standing", "left_standing_over_trials")
GRADES = {"put_together_total": (2, 3), "two_step_left_standing": (2, 3, 4), "left_standing_over_trials": (3, 4)}
BIG = table({"red": 30, "blue": 30, "gold": 30}, {("Owls", 1): (24, 12, 7), ("Owls", 2): (22, 9, 11), ("Herons", 1): (13, 28, 26)})


@pytest.mark.parametrize(
    ("model", "grade", "words", "facts"),
    [
        (  # as in the project's model problems, grade 2, problem 1
            "put_together_total",
            2,
            ("3 red, 2 blue, and 4 gold pins",),
            {"key": "9 pins", "relation": "3 + 2 + 4 = x", "steps": ["3 + 2 + 4 = 9"], "slips": {"H14": "5", "H13": "8"}},
        ),
        (  # grade 2, problem 2: the lost ten is 22, the difference 2
            "put_together_total",
            2,
            ("15 pins", "17 pins", "two groups"),
            {"key": "32 pins", "relation": "15 + 17 = x", "steps": ["15 + 17 = 32"], "slips": {"H11": "22", "H15": "2", "H13": "31"}},
        ),
        (  # grade 2, problem 5
            "two_step_left_standing",
            2,
            ("2 red, 2 blue, and 5 gold pins", "12 pins"),
            {
                "key": "3 pins",
                "relation": "2 + 2 + 5 + x = 12",
                "steps": ["2 + 2 + 5 = 9", "12 - 9 = 3"],
                "slips": {"H07": "9", "H06": "21", "H16": "8"},
            },
        ),
        (  # 5 gold pins for each of 2 trials; the Owls knocked down 4 + 2 = 6
            "left_standing_over_trials",
            3,
            ("The Owls knocked down 6 gold pins", "5 gold pins"),
            {"key": "4 pins", "relation": "6 + x = 2*5", "steps": ["2 * 5 = 10", "10 - 6 = 4"], "slips": {"H07": "10", "H18": "6"}},
        ),
        (  # 4 red pins for each of 2 trials; with the 2 trials forgotten, 4 - 4 = 0
            "left_standing_over_trials",
            4,
            ("The Herons knocked down 6 red pins", "4 red pins"),
            {"key": "2 pins", "relation": "6 + x = 2*4", "steps": ["2 * 4 = 8", "8 - 6 = 2"], "slips": {"H07": "8", "H18": "6"}},
        ),
    ],
)
def test_the_key_relation_steps_and_slips_worked_by_hand(model: str, grade: int, words: tuple[str, ...], facts: dict[str, object]):
    assert facts_of(the_problem(problems_of(model, TWO_GROUPS, grade, draws=6), *words)) == facts


@pytest.mark.parametrize("model", MODELS)
@pytest.mark.parametrize("results", [TWO_GROUPS, BIG], ids=["two groups", "big racks"])
@pytest.mark.parametrize("activity", ["ramp", "seeds"])
def test_every_problem_is_proved_and_shows_a_likely_mistake(model: str, results: TrialTable, activity: str):
    problems = [problem for grade in GRADES[model] for problem in problems_of(model, results, grade, activity)]
    assert problems
    assert [problem.proof for problem in problems if not proved(problem)] == []
    assert [problem.text for problem in problems if not problem.slips] == []


@pytest.mark.parametrize("model", MODELS)
def test_at_least_three_frames_are_used_over_the_grades(model: str):
    used = {problem.frame for grade in GRADES[model] for results in (TWO_GROUPS, BIG) for problem in problems_of(model, results, grade, draws=4)}
    assert len(used) >= 3
    assert used <= {frame.name for frame in frames("counting", model)}


@pytest.mark.parametrize(("model", "grade"), [(model, grade) for model in MODELS for grade in GRADES[model]])
def test_two_frames_fit_each_grade(model: str, grade: int):
    assert len({problem.frame for results in (TWO_GROUPS, BIG) for problem in problems_of(model, results, grade, draws=4)}) >= 2


def test_every_problem_says_which_trials_it_is_about():
    for model in MODELS:
        for grade in GRADES[model]:
            for problem in problems_of(model, TWO_GROUPS, grade, draws=3):
                assert re.search(r"\b(Trials? \d|2 trials|two trials)", problem.text), problem.text


def test_totals_are_put_together_from_colors_trials_and_groups():
    kinds = set()
    for draft in drafts_of("put_together_total", TWO_GROUPS):
        first, second = (part.scope for part in draft.roles["parts"][:2])
        kinds |= {field for field in ("groups", "trials", "colors") if getattr(first, field) != getattr(second, field)}
    assert kinds == {"groups", "trials", "colors"}


def test_a_part_of_zero_is_not_added():
    """Owls 3 red, 0 blue: their colors make no sum, the two groups' red pins do."""
    bare = table({"red": 8, "blue": 8}, {("Owls", 1): (3, 0), ("Herons", 1): (2, 5)})
    view = Desk(bare, scenario()).view
    sums = [tuple(map(view.number, draft.roles["parts"])) for draft in drafts_of("put_together_total", bare)]
    assert sorted(sums) == [(2, 5), (3, 2), (3, 7), (5, 5)]


def test_half_of_the_pins_is_not_asked():
    """3 of 6 down: "I stopped half way" would give the right answer."""
    half = TrialTable((Row("Owls", 1, "red", 3, 1), Row("Owls", 1, "blue", 3, 2)))
    assert drafts_of("two_step_left_standing", half) == []


def test_racks_that_differ_between_trials_are_not_multiplied():
    """Equal groups need equal sets: 4 red pins, then 6, are not twice 4."""
    rows = (Row("Owls", 1, "red", 4, 1), Row("Owls", 2, "red", 6, 1))
    assert drafts_of("left_standing_over_trials", TrialTable(rows)) == []
    assert len(drafts_of("left_standing_over_trials", TrialTable((rows[0], Row("Owls", 2, "red", 4, 2))))) == 1


def test_a_missing_result_is_never_part_of_a_total():
    rows = tuple(row for row in TWO_GROUPS.rows if (row.group, row.trial, row.color) != ("Herons", 2, "gold"))
    holed = TrialTable(rows, absent=(("Herons", 2, "gold"),))
    view = Desk(holed, scenario()).view
    for model in MODELS:
        for draft in drafts_of(model, holed):
            assert all(view.totals.complete(leaf.scope) for leaf in draft.leaves() if isinstance(leaf, Quantity))


def test_the_total_that_is_asked_must_not_be_shown():
    for draft in drafts_of("put_together_total", TWO_GROUPS):
        assert draft.must_not_show == (draft.roles["whole"].scope,)
