"""Sheets keep to the constraints of sheet assembly, on every sample and grade."""

from __future__ import annotations

import re
from collections import Counter
from functools import cache
from itertools import pairwise

import pytest

from mathgen.asks.expression import Quantity
from mathgen.bank.builder import Builder, Candidate
from mathgen.bank.length import usual, wanted_count
from mathgen.bank.plan import ChosenSheet, SheetPlan
from mathgen.bank.sheet import make_sheet
from mathgen.errors import RequestFault
from mathgen.problems.record import Problem
from mathgen.proof.judge import proved
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.table import TrialTable
from mathgen.trials.totals import Totals
from tests.tables import TWO_GROUPS

SAMPLES = ("main", "small-sets", "tens")
GRADES = tuple(range(1, 8))
LEVELS = {"support": 0, "on grade": 1, "challenge": 2}


@cache
def table_of(sample: str) -> TrialTable:
    return read_table(f"samples/{sample}.csv", ReadOptions()).table


@cache
def sheet(sample: str, grade: int) -> ChosenSheet:
    return make_sheet(table_of(sample), SheetPlan(grade, forms=2))


everywhere = pytest.mark.parametrize(("sample", "grade"), [(sample, grade) for sample in SAMPLES for grade in GRADES])


@everywhere
def test_a_default_sheet_is_a_full_leaf_of_proved_problems(sample: str, grade: int) -> None:
    made = sheet(sample, grade)
    assert len(made.forms[0].problems) == usual(grade).count
    assert all(proved(problem) for form in made.forms for problem in form.problems)


@everywhere
def test_most_problems_are_the_grades_own(sample: str, grade: int) -> None:
    problems = sheet(sample, grade).forms[0].problems
    own = sum(problem.grade == grade for problem in problems)
    assert own * 2 > len(problems)
    assert {problem.grade for problem in problems} <= {grade, grade - 1}


@everywhere
def test_no_two_numeric_keys_are_equal_and_no_name_comes_more_than_twice(sample: str, grade: int) -> None:
    for form in sheet(sample, grade).forms:
        numbers = Counter(problem.answer.exact for problem in form.problems if problem.answer.kind == "number")
        names = Counter(problem.answer.exact for problem in form.problems if problem.answer.kind == "name")
        assert all(times == 1 for times in numbers.values())
        assert all(times <= 2 for times in names.values())


@everywhere
def test_no_two_problems_are_said_alike(sample: str, grade: int) -> None:
    for form in sheet(sample, grade).forms:
        ways = [(problem.model, problem.frame) for problem in form.problems]
        assert len(set(ways)) == len(ways)


@everywhere
def test_no_problem_prints_what_another_asks(sample: str, grade: int) -> None:
    for form in sheet(sample, grade).forms:
        for asked in form.problems:
            goal = asked.ask.goal
            expr = getattr(goal, "expr", None)
            hidden = {expr} if expr is not None else set()
            for other in form.problems:
                if other is not asked:
                    assert not hidden & {given.expr for given in other.givens}, (asked.text, other.text)


@everywhere
def test_the_start_is_the_easiest_level_and_levels_rise_by_one_at_most(sample: str, grade: int) -> None:
    levels = [LEVELS[problem.level] for problem in sheet(sample, grade).forms[0].problems]
    assert levels[0] == min(levels)
    present = sorted(set(levels))
    assert all(later - earlier <= 1 or present.index(later) - present.index(earlier) <= 1 for earlier, later in pairwise(levels))


@everywhere
def test_forms_are_parallel_and_share_no_problem(sample: str, grade: int) -> None:
    first, second = sheet(sample, grade).forms
    assert not {problem.id for problem in first.problems} & {problem.id for problem in second.problems}
    assert [problem.model for problem in first.problems] == [problem.model for problem in second.problems]


@everywhere
def test_a_graph_does_not_show_what_a_problem_asks(sample: str, grade: int) -> None:
    for form in sheet(sample, grade).forms:
        if form.graph is None:
            assert all(given.where != "graph" for problem in form.problems for given in problem.givens)
            continue
        totals = Totals(table_of(sample))
        place = form.graph.scope
        bars = {Quantity("down", place._replace(colors=(color,))) for color in form.graph.colors}
        assert form.graph.values == tuple(totals.total("down", place._replace(colors=(color,))) for color in form.graph.colors)
        for problem in form.problems:
            assert getattr(problem.ask.goal, "expr", None) not in bars


def test_the_same_plan_makes_the_same_sheet() -> None:
    assert make_sheet(table_of("main"), SheetPlan(4)) == make_sheet(table_of("main"), SheetPlan(4))
    assert make_sheet(table_of("main"), SheetPlan(4)) != make_sheet(table_of("main"), SheetPlan(4, seed=2))


def test_topics_not_taught_yet_are_left_out() -> None:
    def decimals(plan: SheetPlan) -> list[str]:
        return [problem.skill for problem in make_sheet(table_of("tens"), plan).forms[0].problems if "decimal" in problem.skill]

    seeds = range(1, 6)
    assert any(decimals(SheetPlan(4, seed=seed)) for seed in seeds)
    assert not any(decimals(SheetPlan(4, seed=seed, not_yet=("decimals",))) for seed in seeds)


def test_a_topic_not_taught_yet_is_not_needed_by_another_either() -> None:
    """A mean that comes out as 3.25 needs decimals, whatever its own topic is."""
    made = make_sheet(table_of("main"), SheetPlan(6, not_yet=("decimals",)))
    texts = [text for problem in made.forms[0].problems for text in (problem.answer.shown, *(step.text for step in problem.steps))]
    assert not [text for text in texts if re.search(r"\d\.\d", text)]


def test_capitals_do_not_matter_and_a_standard_stands_for_its_parts() -> None:
    made = make_sheet(table_of("main"), SheetPlan(6, standards=("6.rp.a.3",), count=4))
    assert {code[:8] for problem in made.forms[0].problems for code in problem.standards} == {"6.RP.A.3"}
    assert make_sheet(table_of("main"), SheetPlan(4, topics=("FRACTIONS",), count=3)).forms[0].problems


def test_a_grade_without_the_topic_names_those_that_have_it() -> None:
    with pytest.raises(RequestFault, match="These grades have it: 6, 7"):
        make_sheet(table_of("main"), SheetPlan(5, topics=("percents",)))


def test_what_fails_its_proof_is_left_out_and_named(monkeypatch: pytest.MonkeyPatch) -> None:
    """One kind of problem made to fail: a full sheet of others, and the teacher is told."""
    before = make_sheet(table_of("main"), SheetPlan(4))
    kind = before.forms[0].problems[0].model
    honest = Builder.finish

    def failing(self: Builder, candidate: Candidate) -> Problem:
        made = honest(self, candidate)
        return made._replace(proof=(("steps", "made to fail"), *made.proof[1:])) if made.model == kind else made

    monkeypatch.setattr(Builder, "finish", failing)
    after = make_sheet(table_of("main"), SheetPlan(4))
    assert all(proved(problem) and problem.model != kind for problem in after.forms[0].problems)
    assert len(after.forms[0].problems) == len(before.forms[0].problems)
    assert any(f"did not agree: {kind} (" in change for change in after.changes)


def test_a_level_may_be_asked_for() -> None:
    made = make_sheet(table_of("main"), SheetPlan(4, level="challenge", count=3))
    assert {problem.level for problem in made.forms[0].problems} == {"challenge"}


def test_a_standard_may_be_asked_for() -> None:
    made = make_sheet(table_of("main"), SheetPlan(6, standards=("6.SP.B.5c",), count=3))
    assert all("6.SP.B.5c" in problem.standards for problem in made.forms[0].problems)


@pytest.mark.parametrize(
    ("plan", "count"),
    [(SheetPlan(4), 8), (SheetPlan(2), 6), (SheetPlan(4, count=3), 3), (SheetPlan(4, minutes=20), 5), (SheetPlan(4, pages=1), 4)],
)
def test_how_long_a_sheet_is(plan: SheetPlan, count: int) -> None:
    assert wanted_count(plan) == count


def test_two_ways_to_say_how_long_are_refused() -> None:
    with pytest.raises(RequestFault, match="--count and --minutes"):
        wanted_count(SheetPlan(4, count=3, minutes=20))


def test_a_demand_that_the_table_cannot_meet_is_said() -> None:
    made = make_sheet(TWO_GROUPS, SheetPlan(2, count=20))
    assert len(made.forms[0].problems) < 20
    assert any("20 problems were wanted" in change for change in made.changes)


def test_words_that_no_curriculum_knows_are_refused_all_at_once() -> None:
    with pytest.raises(RequestFault) as refusal:
        make_sheet(TWO_GROUPS, SheetPlan(4, topics=("algebraic geometry",), skills=("juggling",)))
    assert "algebraic geometry" in str(refusal.value)
    assert "juggling" in str(refusal.value)
