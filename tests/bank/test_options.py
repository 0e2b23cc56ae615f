"""Answers to choose from: the key once, likely mistakes beside it, letters shared out evenly."""

from __future__ import annotations

import re
from collections import Counter
from random import Random

import pytest

from mathgen.bank.options import LETTERS, offers_choices, options_of, wrong_answers
from mathgen.bank.plan import ChosenSheet, SheetPlan
from mathgen.bank.sheet import make_sheet
from mathgen.exact.judge import judge
from mathgen.exact.printed_step import printed_number
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table

GRADES = tuple(range(1, 8))


@pytest.fixture(scope="module", params=["main", "tens"])
def sheets(request: pytest.FixtureRequest) -> list[ChosenSheet]:
    table = read_table(f"samples/{request.param}.csv", ReadOptions()).table
    return [make_sheet(table, SheetPlan(grade, choices=True)) for grade in GRADES]


def test_every_problem_has_three_or_four_answers_of_which_one_is_right(sheets: list[ChosenSheet]) -> None:
    for sheet in sheets:
        [form] = sheet.forms
        assert len(form.options) == len(form.problems) > 0
        for problem, options in zip(form.problems, form.options, strict=True):
            assert 3 <= len(options) <= 4
            assert "".join(one.letter for one in options) == LETTERS[: len(options)]
            right = [one for one in options if one.slip is None]
            assert [one.value for one in right] == [problem.answer.shown]
            assert {one.slip for one in options} - {None} <= set(problem.slips)


def test_no_wrong_answer_would_be_marked_right(sheets: list[ChosenSheet]) -> None:
    for sheet in sheets:
        for problem, options in zip(sheet.forms[0].problems, sheet.forms[0].options, strict=True):
            if problem.answer.kind == "name":
                continue
            for one in options:
                key = problem.answer
                exact = key.shown if key.kind == "ratio" else str(key.exact)
                verdict, _ = judge(exact, str(key.demand), one.value)
                assert (verdict == "right") == (one.slip is None), (problem.text, one)


def test_all_answers_of_a_problem_look_alike(sheets: list[ChosenSheet]) -> None:
    for sheet in sheets:
        for problem, options in zip(sheet.forms[0].problems, sheet.forms[0].options, strict=True):
            if problem.answer.kind == "number":
                read = [printed_number(one.value) for one in options]
                assert len({(one.kind, one.percent) for one in read if one is not None}) == 1, (problem.text, options)
                assert len({(one.top * 10**6) // one.bottom for one in read if one is not None}) == len(options)


def test_the_right_answer_stands_under_each_letter_about_equally_often(sheets: list[ChosenSheet]) -> None:
    for sheet in sheets:
        options = sheet.forms[0].options
        used = Counter(next(one.letter for one in some if one.slip is None) for some in options)
        first_three = [used[letter] for letter in "ABC"]
        assert max(first_three) - min(first_three) <= 1, used


def test_a_problem_with_one_mistake_offers_no_choice(sheets: list[ChosenSheet]) -> None:
    problem = sheets[2].forms[0].problems[0]
    assert offers_choices(problem)
    assert not offers_choices(problem._replace(slips=problem.slips[:1]))


def test_the_same_mistake_in_another_form_is_one_answer(sheets: list[ChosenSheet]) -> None:
    problems = [one for sheet in sheets for one in sheet.forms[0].problems if one.answer.kind == "number"]
    problem = next(one for one in problems if re.fullmatch(r"\d+/\d+", one.answer.shown))
    slip = problem.slips[0]._replace(value="9/24")
    assert wrong_answers(problem._replace(slips=(slip, slip._replace(id="other", value="3/8")))) == (slip,)


def test_another_draw_of_letters_keeps_the_answers(sheets: list[ChosenSheet]) -> None:
    problems = sheets[2].forms[0].problems
    one, other = (options_of(problems, Random(seed)) for seed in (1, 2))
    assert [{(option.value, option.slip) for option in some} for some in one] == [{(o.value, o.slip) for o in some} for some in other]
