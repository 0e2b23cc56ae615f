"""Fractions that have a sum, chosen from those of the groups, on a small table; every list, step and slip worked by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest

from mathgen.asks.expression import Ask, Chosen, Op, Stated
from mathgen.exact.demand import Demand
from mathgen.proof.judge import proved
from mathgen.trials.table import TrialTable
from tests.models.asked import every_problem, problem, quantity, worked
from tests.tables import table

# 8 pins for each group: 1, 3, 6, 4, 6 and 2 of them were knocked down.
GROUPS = ("Owls", "Herons", "Kites", "Terns", "Wrens", "Jays")
RESULTS = table(
    {"red": 3, "blue": 5},
    {(group, 1): counts for group, counts in zip(GROUPS, ((1, 0), (1, 2), (3, 3), (2, 2), (1, 5), (0, 2)), strict=True)},
)


def rate(group: str) -> Op:
    return Op("/", (quantity("down", group, (1,)), quantity("set_up", group, (1,))))


RATES = tuple(map(rate, ("Owls", "Herons", "Kites", "Terns", "Jays")))  # the Wrens had as many as the Kites


@pytest.mark.parametrize(
    ("model", "grade", "goal", "expected"),
    [
        (
            "fractions_with_sum", 4,
            Chosen(("1/8", "3/8", "6/8", "4/8", "2/8"), RATES, 3, Op("/", (Stated(9, "wanted sum"), RATES[0].args[1]))),
            ("1/8 + 6/8 + 2/8, 3/8 + 4/8 + 2/8", "9/8 + x = 1/8 + 3/8 + 6/8 + 4/8 + 2/8",
             ("1/8 + 6/8 + 2/8 = 9/8", "3/8 + 4/8 + 2/8 = 9/8"),
             {"C58": "1/8 + 6/8 + 2/8"}),
        ),
        (
            "unlike_fractions_with_sum", 5,
            Chosen(("1/8", "3/8", "3/4", "1/2", "1/4"), RATES, 2, Stated(7, "wanted sum", 8)),
            ("1/8 + 3/4, 3/8 + 1/2", "7/8 + x = 1/8 + 3/8 + 6/8 + 4/8 + 2/8",
             ("3/4 = 6/8", "1/2 = 4/8", "1/4 = 2/8", "1/8 + 6/8 = 7/8", "3/8 + 4/8 = 7/8"),
             {"C58": "1/8 + 3/4", "C60": "1/8 + 1/2 + 1/4"}),
        ),
    ],
)  # fmt: skip
def test_a_row_worked_by_hand(model: str, grade: int, goal: Chosen, expected: tuple) -> None:
    one = problem(model, RESULTS, grade, Ask(goal, (), Demand("list")))
    answer, relation, steps, slips = worked(one)
    assert (answer, relation, steps) == expected[:3]
    assert expected[3].items() <= slips.items()


@pytest.mark.parametrize(("model", "grade"), [("fractions_with_sum", 4), ("unlike_fractions_with_sum", 5)])
@pytest.mark.parametrize("activity", ["ramp", "seeds"])
def test_two_or_three_choices_are_right_and_no_more(model: str, grade: int, activity: str) -> None:
    found = every_problem(model, RESULTS, grade, activity, draws=3)
    assert len(found) == 3 * 4  # 5/8 and 7/8 of two, 9/8 and 11/8 of three
    for one in found:
        assert proved(one), one.proof
        assert one.answer.exact.count(", ") in (1, 2)
        assert one.slips


def test_sets_of_two_sizes_make_no_list() -> None:
    uneven = TrialTable((*RESULTS.rows[:-1], replace(RESULTS.rows[-1], set_up=6)))
    assert every_problem("fractions_with_sum", uneven, 4) == []
