"""A result that was never taken is told, and nothing is added up or compared as if it had been."""

from dataclasses import replace

import pytest

from mathgen.reading.pupils.verdict import ask_the_table
from tests.reading.small_class import RAMP, TABLE

# The Wrens were absent in Trial 2; of the Kites' Trial 3 only the gold pins were not counted.
ABSENT = tuple(("Wrens", 2, color) for color in TABLE.colors)
WRENS = replace(TABLE, rows=tuple(row for row in TABLE.rows if (row.group, row.trial) != ("Wrens", 2)), absent=ABSENT)
UNTOLD = replace(WRENS, absent=())
GOLD = ("Kites", 3, "gold")
KITES = replace(TABLE, rows=tuple(row for row in TABLE.rows if (row.group, row.trial, row.color) != GOLD), absent=(GOLD,))
OVER_IT = (
    "Which group knocked down the fewest pins?",
    "who got the most pins",
    "which group knocked down the most pins in trial 2?",
    "which trial had the most",
    "in which trial did the wrens knock down the most pins",
    "how many groups knocked down more than 5 pins in trial 2",
    "How many pins did the Wrens knock down in all 3 trials?",
    "how many pins did the wrens knock down",
    "how many pins did the wrens knock down in trial 2",
    "how many pins did the wrens get in trials 1 and 2?",
    "how many pins did the owls and the wrens knock down together",
    "how many more pins did the owls get than the wrens",
    "how many times as many pins did the owls knock down as the wrens",
    "what is the median of the totals for each group?",
    "how many pins on average did a group knock down",
    "what is the mean number of pins the wrens knocked down in all 3 trials",
    "what percent of the pins did the class knock down",
    "how many pins fell over",
    "By how many did the wrens go up from trial 1 to trial 2",
    "The Wrens knocked down 8 pins in all 3 trials. How many pins did they leave standing in all 3 trials?",
    "if each pin is 5 points, which group has the most points",
)


@pytest.mark.parametrize("table", [WRENS, UNTOLD], ids=["told as absent", "no row"])
@pytest.mark.parametrize("question", OVER_IT)
def test_what_a_missing_result_plays_a_part_in_is_not_answered(question: str, table):
    outcome = ask_the_table(question, table, RAMP)
    assert (outcome.verdict, outcome.value) == ("ask", "")
    assert outcome.why.startswith("There is no result for the Wrens in Trial 2.")


@pytest.mark.parametrize(
    ("question", "value"),
    [
        ("How many pins did the Owls knock down in all 3 trials?", "27"),
        ("how many pins did the wrens knock down in trials 1 and 3", "8"),
        ("which group knocked down the fewest pins in trial 1", "Wrens"),
        ("how many more pins did the owls get than the wrens in trial 1", "3"),
        ("how many pins does one group set up in one trial", "12"),
    ],
)
def test_what_it_plays_no_part_in_is_answered(question: str, value: str):
    assert ask_the_table(question, WRENS, RAMP).value == value


def test_a_mean_of_a_groups_own_trials_says_which_it_missed():
    outcome = ask_the_table("what is the mean number of pins the wrens knocked down per trial", WRENS, RAMP)
    assert outcome.value == "4"
    assert "There is no result for the Wrens in Trial 2. Only the 2 trials with a result are counted." in outcome.read_as


def test_a_wrong_number_of_trials_is_told_by_the_classs_trials():
    assert "There are 3 trials, not 4." in ask_the_table("How many pins did the Wrens knock down in all 4 trials?", WRENS, RAMP).why


def test_a_color_that_was_not_counted_is_named():
    outcome = ask_the_table("who knocked down the most pins", KITES, RAMP)
    assert outcome.why.startswith("There is no result for the Kites in Trial 3 (gold).")
    assert ask_the_table("how many red pins did the kites knock down", KITES, RAMP).value == "7"


@pytest.mark.parametrize(
    ("question", "ways"),
    [
        (
            "who knocked down the most pins?",
            ("Who knocked down the most pins in Trials 1 and 3?", "Who knocked down the most pins, without the Wrens?"),
        ),
        ("how many more pins did the owls get than the wrens", ("How many more pins did the owls get than the wrens in Trials 1 and 3?",)),
        ("who knocked down the most pins in trial 2", ("Who knocked down the most pins in trial 2, without the Wrens?",)),
    ],
)
def test_a_question_that_can_be_answered_is_offered_in_its_place(question: str, ways: tuple[str, ...]):
    why = ask_the_table(question, WRENS, RAMP).why
    assert why == f"There is no result for the Wrens in Trial 2. You can ask: {' Or: '.join(ways)}"
    assert all(ask_the_table(way, WRENS, RAMP).verdict == "answer" for way in ways)


def test_where_nothing_is_left_to_ask_about_no_question_is_offered():
    why = ask_the_table("how many pins did the wrens knock down in trial 2", WRENS, RAMP).why
    assert why.endswith("Ask only about groups and trials that have a result.")


@pytest.mark.parametrize(
    ("question", "value"),
    [
        ("who knocked down the most pins, not counting the wrens?", "Owls"),
        ("without the wrens, how many pins did the class knock down", "51"),
        ("leave out the wrens. who knocked down the most pins in trial 1", "Kites"),
        ("leave out trial 2. who knocked down the most pins", "Kites"),
        ("Leave out the wrens and trial 2. Who knocked down the most pins?", ""),
        ("Leave out trial 1 and trial 2. Who knocked down the most pins?", "Owls and Kites"),
        ("how many pins did everyone but the wrens knock down", "51"),
        ("which trial had the most, except the wrens", "1 and 3"),
        ("how many groups knocked down more than 20 pins, except the wrens", "2"),
        ("if each pin is 5 points, which group has the most points, without the wrens", "Owls"),
    ],
)
def test_a_group_or_trial_that_is_left_out_is_not_counted(question: str, value: str):
    assert ask_the_table(question, WRENS, RAMP).value == value


@pytest.mark.parametrize(
    "question",
    [
        "how many pins did the owls knock down without the owls",
        "how many pins did the class knock down without the wrens in trial 2",
        "how many more pins did the owls get than the kites without trial 2",
        "who knocked down the most in trial 1 except the owls, the owls or the kites",
    ],
)
def test_leaving_out_everything_or_a_part_or_one_side_is_asked_about(question: str):
    assert ask_the_table(question, TABLE, RAMP).verdict == "ask"
