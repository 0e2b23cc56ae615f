"""Counts that differ in one thing only are said once, and signs are written as pupils write them."""

from dataclasses import replace

import pytest

from mathgen.reading.pupils.verdict import ask_the_table
from tests.reading.small_class import RAMP, TABLE


@pytest.mark.parametrize(
    ("question", "understood"),
    [
        ("who knocked down the most pins in trial 1", "Find which group knocked down the most pins in Trial 1."),
        ("which group left the fewest red pins standing", "Find which group left standing the fewest red pins in all 3 trials."),
        ("which trial had the most pins knocked down for the owls", "Find in which trial the Owls knocked down the most pins."),
        ("which color did the owls knock down most of in trial 2", "Find of which color the Owls knocked down the most pins in Trial 2."),
        (
            "who knocked down more in trial 2, the owls or the kites",
            "Find which of the Owls and the Kites knocked down more pins in Trial 2.",
        ),
        (
            "which groups knocked down more than 5 pins in trial 1",
            "Find each group for which the number of pins knocked down in Trial 1 is more than 5.",
        ),
        (
            "in how many trials did the owls knock down at least 9 pins",
            "Count the trials for which the number of pins that the Owls knocked down is at least 9.",
        ),
        (
            "if a red pin is 2 points and a blue pin is 1 point, which group has the most points for red and blue pins",
            "Find for which group this is the greatest: the number of red pins that the group knocked down in all 3 trials times 2"
            " plus the number of blue pins that the group knocked down in all 3 trials times 1.",
        ),
        (
            "what is the median of the totals for each group in trial 1",
            "Find the median of the numbers of pins that each group knocked down in Trial 1.",
        ),
        (
            "what is the mean number of pins the owls knocked down in trials 1 and 3",
            "Find the mean of the numbers of pins that the Owls knocked down in each of Trials 1 and 3.",
        ),
    ],
)
def test_what_is_shared_is_said_once(question: str, understood: str):
    outcome = ask_the_table(question, TABLE, RAMP)
    assert (outcome.verdict, outcome.read_as) == ("answer", understood)


def test_two_trials_are_both():
    two = replace(TABLE, rows=tuple(row for row in TABLE.rows if row.trial != 3))
    assert ask_the_table("how many pins did the owls knock down in all", two, RAMP).read_as.endswith("knocked down in both trials.")


@pytest.mark.parametrize(
    ("question", "step"),
    [
        ("what percent of the red pins did the owls knock down in trial 1", "3 ÷ 4 = 3/4"),
        ("what is the mean number of pins the owls knocked down per trial", "(8 + 10 + 9) ÷ 3 = 9"),
        ("how many more pins did the owls get than the wrens in trial 1", "8 − 5 = 3"),
        ("if each pin is 5 points, how many points did the owls get in trial 1", "8 × 5 = 40"),
    ],
)
def test_signs_are_those_that_pupils_write(question: str, step: str):
    assert ask_the_table(question, TABLE, RAMP).steps[-1] == step
