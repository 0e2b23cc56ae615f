"""One story at several grades: number by number the same groups and trials, each problem of its own grade."""

from __future__ import annotations

from functools import cache

import pytest

from mathgen.asks.expression import Op, Ordered, Quantity, Stat
from mathgen.bank.code import decode
from mathgen.bank.plan import ChosenSheet, SheetPlan
from mathgen.bank.story import StoryMaker
from mathgen.errors import RequestFault
from mathgen.grades.curriculum import load
from mathgen.press.sheet_files import story_files
from mathgen.problems.record import Problem
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.sheets.key import key_data
from mathgen.sheets.page_words import page_words
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.table import TrialTable
from tests.tables import TWO_GROUPS


@cache
def table_of(sample: str) -> TrialTable:
    return read_table(f"samples/{sample}.csv", ReadOptions()).table


@cache
def sheets(sample: str, grades: tuple[int, ...]) -> list[ChosenSheet]:
    return StoryMaker(table_of(sample), SheetPlan(grades[0], same_story=grades)).make()


everywhere = pytest.mark.parametrize(
    ("sample", "grades"), [(sample, grades) for sample in ("main", "small-sets") for grades in ((3, 4, 6), (2, 3), (5, 6, 7))]
)


def about(problem: Problem, table: TrialTable) -> tuple[set[object], set[object]]:
    """The groups and trials of what a problem asks and tells, walked again from its ask and its givens."""
    waiting: list[object] = [*problem.ask.goal.exprs, *(side for fact in problem.ask.given for side in fact), problem.ask.equals]
    waiting += [given.expr for given in problem.givens]
    groups: set[object] = set()
    trials: set[object] = set()
    while waiting:
        expr = waiting.pop()
        if isinstance(expr, Quantity):
            groups.update(expr.scope.groups or table.groups)
            trials.update(expr.scope.trials or table.trials)
        elif isinstance(expr, Op):
            waiting.extend(expr.args)
        elif isinstance(expr, Stat | Ordered):
            waiting.extend(expr.series)
    return groups, trials


@everywhere
def test_each_number_is_about_the_same_groups_and_trials_on_every_sheet(sample: str, grades: tuple[int, ...]) -> None:
    made = sheets(sample, grades)
    assert [sheet.plan.grade for sheet in made] == list(grades)
    for same in zip(*(sheet.forms[0].problems for sheet in made), strict=True):
        spots = [about(problem, table_of(sample)) for problem in same]
        assert all(spot == spots[0] for spot in spots), [problem.text for problem in same]


@everywhere
def test_cells_and_names_stay_within_the_groups_and_trials(sample: str, grades: tuple[int, ...]) -> None:
    """Read from the page: a cell that a pupil reads, or a group that one sheet names, belongs to the other sheets' spot."""
    table = table_of(sample)
    for same in zip(*(sheet.forms[0].problems for sheet in sheets(sample, grades)), strict=True):
        for problem in same:
            groups, trials = about(same[0], table)
            assert {cell[0] for cell in problem.cells} <= groups
            assert {cell[1] for cell in problem.cells} <= trials
            if len(groups) < len(table.groups):
                assert {name for name in table.groups if f" {name} " in f"{problem.text} "} <= groups, problem.text


@everywhere
def test_each_problem_is_proved_and_of_its_own_grades_standards(sample: str, grades: tuple[int, ...]) -> None:
    curriculum = load("ccss")
    for sheet in sheets(sample, grades):
        for problem in sheet.forms[0].problems:
            assert proved(problem)
            assert problem.grade == sheet.plan.grade
            assert all(code.startswith(f"{problem.grade}.") for code in problem.standards)
            assert curriculum.entry(problem.skill, problem.grade) is not None


@everywhere
def test_fewer_problems_than_wanted_are_said(sample: str, grades: tuple[int, ...]) -> None:
    made = sheets(sample, grades)
    short = len(made[0].forms[0].problems) < min(6 if grade == 2 else 8 for grade in grades)
    assert all(any("problems were wanted" in change for change in sheet.changes) == short for sheet in made)


def test_a_count_beyond_what_the_grades_share_is_said_on_each_sheet() -> None:
    made = StoryMaker(TWO_GROUPS, SheetPlan(3, same_story=(3, 4), count=20, topics=("fractions",))).make()
    assert len(made[0].forms[0].problems) == len(made[1].forms[0].problems) < 20
    assert all("20 problems were wanted" in sheet.changes[0] and "skipped for all" in sheet.changes[0] for sheet in made)


def test_the_key_says_which_grades_tell_the_story() -> None:
    sheet = sheets("main", (3, 4, 6))[1]
    table = table_of("main")
    about_it = key_data(sheet, table, page_words(scenario("ramp"), load("ccss"), table, 4))["teacher"]["about"]
    assert "grades 3, 4, 6" in next(line for line in about_it if line["head"] == "Same story")["lines"][0]


def test_the_files_of_each_grade_have_the_same_numbers_and_the_same_bytes_again() -> None:
    plan = SheetPlan(3, same_story=(3, 4), count=2, paper="a4")
    made = story_files(table_of("main"), plan, "ramp")
    assert [sorted(one.contents) for one in made] == [
        [f"grade{grade}-key.json", f"grade{grade}-key.pdf", f"grade{grade}-worksheet.pdf"] for grade in (3, 4)
    ]
    assert made == story_files(table_of("main"), plan, "ramp")
    assert all(decode(one.code).plan is None for one in made)  # the key file prints it again


@pytest.mark.parametrize(
    ("plan", "message"),
    [
        (SheetPlan(3, same_story=(3,)), "two grades or more"),
        (SheetPlan(3, same_story=(3, 4), tiers=True), "Leave out --tiers and --forms"),
        (SheetPlan(3, same_story=(3, 4), forms=2), "Leave out --tiers and --forms"),
        (SheetPlan(3, same_story=(3, 6), topics=("percents",)), "no problem about the same groups and trials.*grade 3 has none of its own"),
    ],
)
def test_what_cannot_go_together_is_refused(plan: SheetPlan, message: str) -> None:
    with pytest.raises(RequestFault, match=message):
        StoryMaker(table_of("main"), plan).make()
