"""Faults planted in the printed words are caught, problem by problem: the words have to say what the key answers."""

from __future__ import annotations

from collections import Counter, defaultdict

import pytest

from mathgen.bank.build import Report, build_bank
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.problems.record import Problem
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from tests.proof.text_faults import RULES

EACH_WAY = 2  # problems of every wording of every model and grade


@pytest.fixture(scope="module", params=["main", "tens", "spaces", "accuracy"])
def planted(request: pytest.FixtureRequest) -> tuple[Desk, list[Problem]]:
    desk = Desk(read_table(f"samples/{request.param}.csv", ReadOptions()).table, scenario())
    ways: dict[tuple[str, int, str], list[Problem]] = defaultdict(list)
    for problem in build_bank(desk, load("ccss"), tuple(range(1, 9)), seed=9, per_model=60, report=Report()):
        ways[problem.model, problem.grade, problem.frame].append(problem)
    return desk, [problem for found in ways.values() for problem in found[:EACH_WAY]]


def test_at_least_995_of_1000_planted_faults_are_caught(planted: tuple[Desk, list[Problem]]) -> None:
    desk, problems = planted
    tried, slipped = Counter[str](), defaultdict(list)
    for problem in problems:
        for kind, rule in RULES.items():
            for text in dict.fromkeys(rule(problem.text, desk.table)):
                if text == problem.text:
                    continue
                tried[kind] += 1
                if proved(desk.judge.prove(problem._replace(facts="", question=text))):
                    slipped[kind].append((problem.text, text))
    assert len(tried) >= 20
    print({kind: (tried[kind], len(slipped[kind])) for kind in RULES})
    assert sum(map(len, slipped.values())) * 1000 <= 5 * sum(tried.values()), dict(slipped)
