"""Each line of every board is read: a number that is altered, a line that is missing, a verdict turned round is refused."""

from __future__ import annotations

import re

import pytest

from mathgen.asks.expression import Choice, Truth
from mathgen.bank.build import Report, build_bank
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.problems.record import Problem
from mathgen.proof.by_steps import verdict
from mathgen.proof.verdict import AGREES
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table

_NUMBER = re.compile(r"\d+")
SAMPLES = ("main", "spaces", "prices")


@pytest.fixture(scope="module")
def good() -> list[Problem]:
    report = Report()
    problems: list[Problem] = []
    for name in SAMPLES:
        desk = Desk(read_table(f"samples/{name}.csv", ReadOptions()).table, scenario("ramp"))
        problems += build_bank(desk, load("ccss"), tuple(range(1, 9)), seed=5, per_model=3, report=report)
    assert not [name for name in report.failed if "steps" in name], report
    return problems


def refused(problem: Problem, board: list[str]) -> bool:
    return verdict(problem._replace(board=tuple(board))) != AGREES


def test_every_board_agrees(good: list[Problem]) -> None:
    assert {verdict(problem) for problem in good} == {AGREES}


def test_any_number_of_any_line_that_is_one_more_is_refused(good: list[Problem]) -> None:
    passed, tried = [], 0
    for problem in good:
        for place, line in enumerate(problem.board):
            for found in _NUMBER.finditer(line):
                altered = f"{line[: found.start()]}{int(found[0]) + 1}{line[found.end() :]}"
                if problem.answer.kind == "name" and found.start() > line.find(", so ") > 0:
                    continue  # a trial's number is its name: see below
                board = [*problem.board[:place], altered, *problem.board[place + 1 :]]
                tried += 1
                if not refused(problem, board):
                    passed.append((line, altered, problem.text))
    assert tried > 10_000
    assert passed == []


def test_a_last_line_that_is_missing_or_comes_to_nothing_is_refused(good: list[Problem]) -> None:
    passed = [problem.board for problem in good if not refused(problem, list(problem.board[:-1]))]
    assert passed == []


def test_a_verdict_turned_round_or_of_another_name_is_refused(good: list[Problem]) -> None:
    judged = [problem for problem in good if isinstance(problem.ask.goal, Choice | Truth)]
    assert len(judged) > 100
    for problem in judged:
        *before, last = problem.board
        told, so, word = last.rpartition(", so ")
        other = {"yes": "no", "no": "yes"}.get(word, "nobody")
        assert so
        assert refused(problem, [*before, f"{told}{so}{other}"]), problem.board


def test_a_comparison_turned_round_is_refused(good: list[Problem]) -> None:
    """17 > 27, so blue."""
    turned = str.maketrans("<>", "><")
    compared = [problem for problem in good if re.search("[<>]", problem.board[-1])]
    assert len(compared) > 100
    for problem in compared:
        assert refused(problem, [*problem.board[:-1], problem.board[-1].translate(turned)]), problem.board


def test_points_said_to_go_the_other_way_are_refused(good: list[Problem]) -> None:
    along = [problem for problem in good if problem.board[-1].startswith("y is ")]
    assert along
    for problem in along:
        *before, last = problem.board
        turned = last.replace("less", "greater") if "less" in last else last.replace("greater", "less")
        assert refused(problem, [*before, turned]), problem.board
        assert refused(problem, [*before[::-1], last]), problem.board
        assert refused(problem, [before[0], last]), problem.board


@pytest.mark.parametrize("idle", ["7 = 7", "3/4 = 3/4", "977 + 1 = 978"])
def test_a_line_that_says_nothing_or_comes_from_nowhere_is_refused(good: list[Problem], idle: str) -> None:
    assert [problem.board for problem in good if not refused(problem, [idle, *problem.board])] == []
