"""Why a table has no problem of a skill is told in words, for every limit of the gate."""

from __future__ import annotations

import re
from collections import Counter
from pathlib import Path

import pytest

from mathgen.bank.desk import Desk
from mathgen.bank.served import served_skills
from mathgen.bank.why_not import why_not
from mathgen.grades.curriculum import load
from mathgen.scenario.words import scenario
from tests.audit.banks import activity, problems, sample

LIMITS = sorted({name for path in Path("mathgen/gate").glob("*.py") for name in re.findall(r'Stop\("([^"]+)"', path.read_text())})


@pytest.mark.parametrize("limit", LIMITS)
def test_no_limit_is_told_by_the_name_that_only_the_program_knows(limit: str) -> None:
    said = why_not(Counter([limit]))
    assert said.split()[0] in ("the", "its", "with", "too")
    assert said != limit


def test_most_limits_have_words_of_their_own() -> None:
    others = {limit for limit in LIMITS if why_not(Counter([limit])) == why_not(Counter(["no such limit"]))}
    assert others == {"skill"}


def test_the_reason_that_came_most_often_is_told() -> None:
    assert why_not(Counter({"set size": 2, "denominator": 2, "numbers too big": 3})).startswith("its sets")


def test_a_table_without_spaces_is_told_so_where_they_would_help() -> None:
    missing = dict(served_skills(Desk(sample("main"), scenario("ramp")), load("ccss"), 4).missing)
    assert missing["lengths compared"] == missing["line plot to make"] == "the table has no spaces between pins"
    assert "spaces" not in missing["joined parts as a decimal"]


def test_a_table_without_targets_is_told_so_where_they_would_help() -> None:
    missing = dict(served_skills(Desk(sample("main"), scenario("ramp")), load("ccss"), 2).missing)
    assert missing["successes counted"] == missing["trials that are not successes"] == "the table has no target colors"
    assert sum("target" in why for why in missing.values()) == 2


def test_a_skill_whose_numbers_are_those_of_an_earlier_grade_is_told_so() -> None:
    """Tenths and hundredths are grade 5 (5.NBT.B.7); grade 6 has decimals of more places (6.NS.B.3), which sets of 12 and fewer lack."""
    missing = dict(served_skills(Desk(sample("main"), scenario("ramp")), load("ccss"), 6).missing)
    assert missing["difference of two decimals"] == "with its numbers that is for an earlier grade"


@pytest.mark.parametrize("name", ["main", "target"])
@pytest.mark.parametrize("grade", [6, 7])
def test_only_a_skill_without_a_problem_is_told_as_missing(name: str, grade: int) -> None:
    desk = Desk(sample(name), scenario(activity(name)))
    skills = {skill for seed in (1, 2, 3) for skill, _ in served_skills(desk, load("ccss"), grade, seed).missing}
    bank, _ = problems(sample(name), 10, activity(name), (grade,), seed=4)
    assert skills.isdisjoint(problem.skill for problem in bank)


def test_a_table_with_targets_is_not_told_that_it_has_none() -> None:
    for name in ("accuracy", "target"):
        missing = served_skills(Desk(sample(name), scenario("ramp")), load("ccss"), 2).missing
        assert not any("target" in why for _, why in missing)


def test_a_table_with_spaces_is_not_told_that_it_has_none() -> None:
    for grade in (2, 4, 5, 8):
        missing = served_skills(Desk(sample("spaces"), scenario("ramp")), load("ccss"), grade).missing
        assert not any("spaces" in why for _, why in missing)
