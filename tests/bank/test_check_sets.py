"""Answers are added up only where a pupil of the grade may add them."""

from __future__ import annotations

import pytest
from sympy import Rational

from mathgen.bank.check_sets import ROW, check_line, form_of, in_rows, may_be_added
from mathgen.bank.deck import make_deck
from mathgen.bank.deck_plan import DeckPlan
from mathgen.exact.demand import Demand
from mathgen.grades.curriculum import load
from mathgen.problems.record import Answer, Problem
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table


@pytest.fixture(scope="module")
def problem() -> Problem:
    table = read_table("samples/main.csv", ReadOptions()).table
    return next(one for one in make_deck(table, DeckPlan((4,))).problems if form_of(one) == "whole")


def with_answer(problem: Problem, exact: str, shown: str, model: str = "m", demand: Demand | None = None) -> Problem:
    answer = Answer("number", Rational(exact), shown, shown, (shown,), demand or Demand("any"))
    return problem._replace(answer=answer, model=model)


def wholes(problem: Problem, *numbers: int) -> list[Problem]:
    return [with_answer(problem, str(number), str(number), f"m{number}") for number in numbers]


def test_forms_are_told_apart(problem: Problem) -> None:
    shown = {"7": "whole", "9/12": "fraction", "2 1/4": "fraction", "0.75": "decimal", "75%": "percent"}
    shown |= {"0.666...": "", "3:4": "", "Owls": ""}
    assert {text: form_of(with_answer(problem, "1", text)) for text in shown} == shown


def test_a_rounded_answer_is_not_added_up(problem: Problem) -> None:
    assert form_of(with_answer(problem, "7/12", "0.6", demand=Demand("decimal", 1))) == ""


@pytest.mark.parametrize(
    ("grade", "numbers", "may"),
    [
        (1, (4, 7, 9), True),
        (1, (4, 8, 9), False),  # 21
        (1, (1, 2, 3, 4), False),  # three addends: 1.OA.A.2
        (2, (20, 30, 40, 9), True),  # 2.NBT.B.6: up to four two-digit numbers
        (2, (20, 30, 40, 19), False),  # 109
        (3, (450, 300, 200, 50), True),  # 3.NBT.A.2: within 1000
        (3, (450, 300, 200, 51), False),
        (4, (900, 800, 700, 600), True),
        (4, (5, 5, 6), False),  # the same answer twice
    ],
)
def test_whole_numbers_are_added_within_the_grades_limits(problem: Problem, grade: int, numbers: tuple[int, ...], may: bool) -> None:
    """Common Core, Operations and Algebraic Thinking and Number and Operations in Base Ten, grades 1 to 3."""
    assert may_be_added(wholes(problem, *numbers), load("ccss").limits(grade)) == may


def test_fractions_decimals_and_percents_are_added_from_their_grade_on(problem: Problem) -> None:
    """Common Core 4.NF.B.3, 5.NF.A.1, 5.NBT.B.7, 6.RP.A.3c."""
    like = [with_answer(problem, text, text) for text in ("1/8", "3/8", "5/8")]
    unlike = [with_answer(problem, text, text) for text in ("1/2", "3/4", "5/6")]
    long = [with_answer(problem, text, text) for text in ("1/7", "3/8", "5/9")]
    decimals = [with_answer(problem, text, text) for text in ("0.5", "0.75", "0.1")]
    percents = [with_answer(problem, f"{text}/100", f"{text}%") for text in ("5", "75", "10")]
    from_grade = {3: [], 4: [like], 5: [like, unlike, decimals], 6: [like, unlike, decimals, percents]}
    for grade, allowed in from_grade.items():
        limits = load("ccss").limits(grade)
        assert [one for one in (like, unlike, long, decimals, percents) if may_be_added(one, limits)] == allowed


def test_lines_say_the_sum_in_the_form_of_the_answers(problem: Problem) -> None:
    assert check_line(tuple(wholes(problem, 3, 9, 15)), 5) == (5, 7, "Answers 5 to 7 add up to 27.")
    assert check_line(tuple(with_answer(problem, text, text) for text in ("1/2", "3/4", "1")), 1).line.endswith("add up to 2 1/4.")
    assert check_line(tuple(with_answer(problem, text, text) for text in ("0.5", "0.75", "0.25")), 1).line.endswith("add up to 1.5.")
    percents = tuple(with_answer(problem, f"{text}/100", f"{text}%") for text in ("50", "75", "37.5".replace(".5", "")))
    assert check_line(percents, 1).line.endswith("add up to 162%.")


def test_every_problem_stands_once_in_rows_of_four(problem: Problem) -> None:
    problems = [one._replace(ask=one.ask, model=f"m{at}") for at, one in enumerate(wholes(problem, *range(1, 8)))]
    names = [problem._replace(model=f"n{at}", answer=Answer("name", "Owls", "Owls", "Owls", ("Owls",), Demand("any"))) for at in range(3)]
    rows = in_rows([*problems, *names], load("ccss").limits(4))
    assert sorted(one.model for row in rows for one in row.problems) == sorted(one.model for one in [*problems, *names])
    assert [len(row.problems) for row in rows] == [ROW, ROW, 2]
    assert all(form_of(one) == "whole" for row in rows for one in row.problems[: row.together])
