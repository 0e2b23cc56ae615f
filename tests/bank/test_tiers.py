"""A sheet at three levels: number by number the same standard, and whatever is of another level is said."""

from __future__ import annotations

import re
from functools import cache

import pytest

from mathgen.bank.plan import ChosenSheet, SheetPlan
from mathgen.bank.pool import Pool
from mathgen.bank.sheet import make_sheet
from mathgen.bank.tiers import TIERS, choose_tiers, off_level
from mathgen.errors import RequestFault
from mathgen.grades.curriculum import load
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.sheets.key import key_data
from mathgen.sheets.page_words import page_words
from mathgen.sheets.worksheet import worksheet_data
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.table import TrialTable
from tests.tables import TWO_GROUPS

RANK = {"support": 0, "on grade": 1, "challenge": 2}


@cache
def table_of(sample: str) -> TrialTable:
    return read_table(f"samples/{sample}.csv", ReadOptions()).table


@cache
def tiers(sample: str, grade: int) -> ChosenSheet:
    return make_sheet(table_of(sample), SheetPlan(grade, tiers=True))


everywhere = pytest.mark.parametrize(("sample", "grade"), [(sample, grade) for sample in ("main", "small-sets") for grade in range(2, 8)])


@everywhere
def test_three_forms_of_proved_problems_with_the_same_numbers(sample: str, grade: int) -> None:
    made = tiers(sample, grade)
    assert [(form.mark, form.tier) for form in made.forms] == [("A", "support"), ("B", "on grade"), ("C", "challenge")]
    assert len({len(form.problems) for form in made.forms}) == 1
    problems = [problem for form in made.forms for problem in form.problems]
    assert all(map(proved, problems))
    assert len({problem.id for problem in problems}) == len(problems)


@everywhere
def test_each_number_serves_one_standard_on_all_forms(sample: str, grade: int) -> None:
    for same in zip(*(form.problems for form in tiers(sample, grade).forms), strict=True):
        assert set.intersection(*(set(problem.standards) for problem in same)), [problem.text for problem in same]
        assert len({problem.grade for problem in same}) == 1


@everywhere
def test_levels_never_fall_from_form_to_form(sample: str, grade: int) -> None:
    for same in zip(*(form.problems for form in tiers(sample, grade).forms), strict=True):
        levels = [RANK[problem.level] for problem in same]
        assert levels == sorted(levels)


@everywhere
def test_exactly_the_problems_of_another_level_than_their_forms_are_said(sample: str, grade: int) -> None:
    made = tiers(sample, grade)
    said = set()
    for change in made.changes:
        found = re.match(r"Form (\w) \(([a-z ]+)\): numbers? ([\d, ]+) (?:are|is) ([a-z ]+);", change)
        if found:
            said |= {(found[1], int(number), found[4]) for number in found[3].split(",")}
    off = {
        (form.mark, number, problem.level)
        for form in made.forms
        for number, problem in enumerate(form.problems, start=1)
        if problem.level != form.tier
    }
    assert said == off


@everywhere
def test_most_problems_are_of_the_level_that_their_form_stands_for(sample: str, grade: int) -> None:
    fit = [problem.level == form.tier for form in tiers(sample, grade).forms for problem in form.problems]
    assert 2 * sum(fit) > len(fit)


def test_pupils_see_no_level_and_the_key_names_that_of_each_form() -> None:
    made, table = tiers("main", 4), table_of("main")
    words = page_words(scenario("ramp"), load("ccss"), table, 4)
    page = repr(worksheet_data(made, table, words))
    assert not any(f"'{level}'" in page or f"({level})" in page for level in TIERS)
    key = key_data(made, table, words)
    assert key["marks"] == ["Form A (support)", "Form B (on grade)", "Form C (challenge)"]
    assert all(len(row["answers"]) == 3 and None not in row["answers"] for row in key["strip"])
    assert next(line for line in key["teacher"]["about"] if line["head"] == "Levels")["lines"][2].startswith("Form C (challenge): ")


def test_the_same_plan_makes_the_same_tiers_and_another_seed_others() -> None:
    assert make_sheet(table_of("main"), SheetPlan(4, tiers=True)) == tiers("main", 4)
    assert make_sheet(table_of("main"), SheetPlan(4, tiers=True, seed=2)) != tiers("main", 4)


def test_tiers_keep_to_a_count_a_topic_and_a_standard() -> None:
    made = make_sheet(table_of("main"), SheetPlan(4, tiers=True, count=3, standards=("4.NF.B.3d",)))
    assert [len(form.problems) for form in made.forms] == [3, 3, 3]
    assert all("4.NF.B.3d" in problem.standards for form in made.forms for problem in form.problems)
    topical = make_sheet(table_of("main"), SheetPlan(4, tiers=True, count=3, topics=("fractions",)))
    assert all("NF" in code for form in topical.forms for problem in form.problems for code in problem.standards)


def test_tiers_with_choices_have_options_on_each_form() -> None:
    made = make_sheet(table_of("main"), SheetPlan(4, tiers=True, count=3, choices=True))
    assert all(len(form.options) == len(form.problems) for form in made.forms)


def test_a_table_without_a_level_is_told_so_plainly() -> None:
    assert off_level([], "ABC", Pool({}, {}, {}, {}), "grade 4")[2] == "This table has no challenge problems for grade 4."
    assert choose_tiers(Pool({}, {}, {}, {}), 3) == []


def test_a_level_that_a_table_does_not_have_is_refused_plainly() -> None:
    with pytest.raises(RequestFault, match=r"This table has no challenge problems for grade 4, 4\.NF\.C\.7"):
        make_sheet(table_of("main"), SheetPlan(4, level="challenge", standards=("4.NF.C.7",)))


def test_tiers_with_a_level_or_with_forms_is_refused_all_at_once() -> None:
    with pytest.raises(RequestFault) as refusal:
        make_sheet(TWO_GROUPS, SheetPlan(4, tiers=True, level="support", forms=2))
    assert "--level one level only" in str(refusal.value)
    assert "Leave --forms out" in str(refusal.value)
