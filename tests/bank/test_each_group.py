"""A sheet for every group: its own trials, number by number the same kind and level, and what is too thin is said."""

from __future__ import annotations

from functools import cache

import pytest

from mathgen.bank.code import decode
from mathgen.bank.plan import ChosenSheet, SheetPlan
from mathgen.bank.sheet import make_sheet
from mathgen.errors import RequestFault
from mathgen.problems.record import Problem
from mathgen.proof.judge import proved
from mathgen.trials.table import Row, TrialTable
from tests.audit.banks import sample
from tests.tables import table

GRADES = (1, 3, 4, 6, 8)
NAMES = ("main", "small-sets")
everywhere = pytest.mark.parametrize(("name", "grade"), [(name, grade) for name in NAMES for grade in GRADES])


@cache
def made(name: str, grade: int) -> ChosenSheet:
    return make_sheet(sample(name), SheetPlan(grade, each_group=True))


def groups_in(problem: Problem, results: TrialTable) -> set[str]:
    """The groups that the words name."""
    return {label for label in results.groups if label in problem.text}


@everywhere
def test_each_group_has_a_form_of_proved_problems_about_itself_or_the_class(name: str, grade: int) -> None:
    sheet = made(name, grade)
    assert [form.group for form in sheet.forms] == list(sample(name).groups)
    for form in sheet.forms:
        assert all(map(proved, form.problems))
        assert all(groups_in(problem, sample(name)) <= {form.group} for problem in form.problems)
        about_itself = sum(form.group in problem.text for problem in form.problems)
        assert 2 * about_itself > len(form.problems)


@everywhere
def test_numbers_are_of_one_kind_and_of_one_level_unless_it_is_said(name: str, grade: int) -> None:
    sheet = made(name, grade)
    assert len({len(form.problems) for form in sheet.forms}) == 1
    for number, problems in enumerate(zip(*(form.problems for form in sheet.forms), strict=True), start=1):
        assert len({problem.model for problem in problems}) == 1
        said = [change for change in sheet.changes if change.startswith((f"Number {number}:", f"Number {number} is"))]
        if len({problem.level for problem in problems}) > 1:
            assert any("of that level" in change for change in said)
        if len({problem.text == problems[0].text for problem in problems}) > 1 and any("the class" in one.text for one in problems):
            assert said or all("the class" in one.text for one in problems)


@everywhere
def test_no_form_asks_the_same_twice(name: str, grade: int) -> None:
    for form in made(name, grade).forms:
        assert len({problem.ask for problem in form.problems}) == len(form.problems)


def test_a_group_whose_results_are_too_thin_gets_class_data_and_the_teacher_is_told() -> None:
    """The Herons knocked down nothing in any trial: their results hold hardly a question."""
    full = table(
        {"red": 4, "blue": 3, "gold": 5},
        {(group, trial): (2 + trial % 2, 1 + trial % 3, 4 - trial % 2) for group in ("Owls", "Kites", "Swifts") for trial in (1, 2, 3)},
    )
    thin = [Row("Herons", trial, color, size, 0) for trial in (1, 2, 3) for color, size in (("red", 4), ("blue", 3), ("gold", 5))]
    results = TrialTable((*full.rows, *thin))
    sheet = make_sheet(results, SheetPlan(4, each_group=True))
    herons = next(form for form in sheet.forms if form.group == "Herons")
    filled = [problem for problem in herons.problems if "Herons" not in problem.text]
    assert filled
    assert any("the Herons have no results for a problem of that kind" in change for change in sheet.changes)


def test_the_code_holds_the_plan() -> None:
    assert decode(made("main", 4).code).plan == SheetPlan(4, each_group=True)


@pytest.mark.parametrize("other", [{"tiers": True}, {"forms": 2}, {"same_story": (3, 4)}])
def test_what_it_rules_out_is_refused(other: dict[str, object]) -> None:
    with pytest.raises(RequestFault, match="--each-group"):
        make_sheet(sample("main"), SheetPlan(4, each_group=True, **other))  # type: ignore[arg-type]


def test_the_same_plan_gives_the_same_forms() -> None:
    again = make_sheet(sample("main"), SheetPlan(4, each_group=True))
    assert [problem.text for form in again.forms for problem in form.problems] == [
        problem.text for form in made("main", 4).forms for problem in form.problems
    ]
