"""Parallel forms: number n is of one kind on every form, also where the table has too few of some kind."""

from __future__ import annotations

import re
from functools import cache

import pytest

from mathgen.asks.expression import Quantity
from mathgen.bank.plan import ChosenSheet, SheetPlan
from mathgen.bank.sheet import make_sheet
from mathgen.errors import RequestFault
from mathgen.problems.draft import leaves_of
from mathgen.problems.record import Problem
from mathgen.trials.scope import Scope
from tests.audit.banks import sample

CASES = [(name, grade, forms) for name in ("main", "small-sets", "tens") for grade in (1, 4, 7, 8) for forms in (2, 6, 8)]
_LESS = re.compile(
    r"Less is asked, or nothing, of (?P<kinds>.+): this table has too few such problems with other numbers for (?P<forms>\d) forms\."
    r" So each number is of one kind on every form\."
)
everywhere = pytest.mark.parametrize(("name", "grade", "forms"), CASES)


@cache
def made(name: str, grade: int, forms: int) -> ChosenSheet:
    return make_sheet(sample(name), SheetPlan(grade, forms=forms))


def results(problem: Problem) -> set[Scope]:
    """Whose results in which trials the problem is about."""
    ask = problem.ask
    exprs = [*ask.goal.exprs, *(side for fact in ask.given for side in fact)]
    return {leaf.scope for expr in exprs for leaf in leaves_of(expr) if isinstance(leaf, Quantity)}


@everywhere
def test_every_number_is_of_one_kind_on_all_forms_and_no_problem_comes_twice(name: str, grade: int, forms: int) -> None:
    sheet = made(name, grade, forms)
    assert len(sheet.forms) == forms
    assert {tuple(problem.model for problem in form.problems) for form in sheet.forms} == {
        tuple(problem.model for problem in sheet.forms[0].problems)
    }
    ids = [problem.id for form in sheet.forms for problem in form.problems]
    assert len(set(ids)) == len(ids)


@pytest.mark.parametrize(("name", "grade", "seed"), [("main", 5, 1), ("main", 5, 2), ("main", 7, 2), ("tens", 2, 2), ("small-sets", 4, 1)])
def test_two_forms_do_not_ask_the_same_results_turned_round(name: str, grade: int, seed: int) -> None:
    one, other = make_sheet(sample(name), SheetPlan(grade, forms=2, seed=seed)).forms
    assert not [a.text for a, b in zip(one.problems, other.problems, strict=True) if results(a) and results(a) == results(b)]


@everywhere
def test_a_kind_that_runs_out_is_replaced_and_not_missed(name: str, grade: int, forms: int) -> None:
    assert len(made(name, grade, forms).forms[0].problems) == len(made(name, grade, 1).forms[0].problems)


def test_what_is_asked_less_for_that_reason_is_said() -> None:
    """The first kind that is named ran out on the sheet that one form alone would have been."""
    said = {case: made(*case).changes for case in CASES if made(*case).changes}
    assert said
    for (name, grade, forms), (line,) in said.items():
        found = _LESS.fullmatch(line)
        assert found, line
        assert int(found["forms"]) == forms
        kind = found["kinds"].split("; ")[0]
        counts = [[one.skill for one in made(name, grade, many).forms[0].problems].count(kind) for many in (1, forms)]
        assert counts[0] > counts[1], (name, grade, forms, line)


def test_where_a_kind_has_enough_for_all_forms_nothing_is_said() -> None:
    assert made("main", 4, 2).changes == ()


def test_more_forms_than_a_wish_has_problems_for_are_refused_with_what_to_do() -> None:
    with pytest.raises(RequestFault, match="Ask for fewer forms"):
        make_sheet(sample("main"), SheetPlan(7, forms=8, skills=("outcomes counted",)))
