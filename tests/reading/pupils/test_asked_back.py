"""What is asked in place of a question that is not answered as it stands is a question that is answered."""

import re

import pytest

from mathgen.reading.pupils.verdict import ask_the_table
from tests.reading.score_corpus import listener
from tests.reading.small_class import RAMP, TABLE

OWLS_OWN = "What fraction of the pins that the Owls set up were knocked down?"
OWLS_OF_ALL = "What fraction of the pins that the class knocked down were knocked down by the Owls?"


@pytest.mark.parametrize(
    ("question", "instead", "values"),
    [
        (
            "did wrens get more than half of the gold pins",
            "That is a yes or no question. Ask what fraction it is: What fraction of the gold pins did the Wrens knock down?",
            ["4/15"],
        ),
        (
            "did the owls knock down all the gold pins in trial 1?",
            "That is a yes or no question. Ask how many: How many gold pins did the Owls knock down in Trial 1?",
            ["3"],
        ),
        (
            "did the kites get more red pins than the wrens in trial 1",
            "That is a yes or no question. Ask how many: How many more red pins did the Kites knock down than the Wrens in Trial 1?",
            ["1"],
        ),
        (
            "which group had the biggest difference between trial 1 and trial 2",
            "I can tell the change of one group at a time. You can ask:"
            " What is the difference between the number of pins the Owls knocked down in Trial 1 and in Trial 2?",
            ["2"],
        ),
        (
            "who improved the most?",
            "I can tell the change of one group at a time. You can ask:"
            " What is the difference between the number of pins the Owls knocked down in Trial 1 and in Trial 3?",
            ["1"],
        ),
        (
            "what is the average for the owls",
            "The mean of which numbers? Of their trials, you can ask:"
            " What is the mean number of pins that the Owls knocked down per trial?",
            ["9"],
        ),
        (
            "what is the range for the owls",
            "The range of which numbers? Of their trials, you can ask:"
            " What is the range of the number of pins that the Owls knocked down per trial?",
            ["2"],
        ),
        (
            "What fraction of all the pins did the Owls knock down?",
            f"Of all those that the Owls set up, or of all the class's? You can ask: {OWLS_OWN} Or: {OWLS_OF_ALL}",
            ["3/4", "9/22"],
        ),
    ],
)
def test_a_question_is_offered_and_answered(question: str, instead: str, values: list[str]):
    outcome = ask_the_table(question, TABLE, RAMP)
    assert (outcome.verdict, outcome.why) == ("ask", instead)
    offered = re.findall(r"(?<=: )(?:What|How)[^?]*\?", instead)
    assert [ask_the_table(one, TABLE, RAMP).value for one in offered] == values


@pytest.mark.parametrize(
    "question",
    [
        "what percent of all the pins did the owls and the kites knock down",
        "What part of all the red pins did the Owls leave standing?",
        "out of all the pins, how many did the owls knock down as a percent",
        "the owls got what fraction of all the pins",
    ],
)
def test_a_part_of_all_the_pins_by_some_of_the_groups_is_asked_about(question: str):
    assert ask_the_table(question, TABLE, RAMP).why.startswith("Of all those that the Owls")


@pytest.mark.parametrize(
    "question", ["Did more than half of the pins fall?", "was it half", "did the owls, the wrens and the kites get more than half"]
)
def test_where_the_words_name_too_little_or_too_much_no_question_is_made_up(question: str):
    assert ask_the_table(question, TABLE, RAMP).why == "That is a yes or no question. Ask what fraction it is, and see for yourself."


def test_an_unknown_word_is_told_first():
    assert '"purple"' in ask_the_table("did the owls get more than half of the purple pins", TABLE, RAMP).why
    assert '"purple"' in ask_the_table("which group had the biggest difference for purple pins", TABLE, RAMP).why


@pytest.mark.parametrize(
    ("question", "value"),
    [
        ("what fraction of all the pins did the owls knock down in trial 1", "2/3"),
        ("what fraction of all their pins did the owls knock down", "3/4"),
        ("what fraction of all 36 pins did the owls knock down", "3/4"),
        ("what fraction of the pins did the owls knock down", "3/4"),
    ],
)
def test_a_part_of_a_groups_own_pins_is_told(question: str, value: str):
    assert ask_the_table(question, TABLE, RAMP).value == value


@pytest.mark.parametrize(
    ("question", "value"),
    [
        ("what was the owls highest score", "10"),
        ("What is the lowest score of the Wrens?", "3"),
        ("what is the owls' best score in trials 1 and 3", "9"),
    ],
)
def test_the_highest_score_of_a_group_is_that_of_its_trials(question: str, value: str):
    outcome = ask_the_table(question, TABLE, RAMP)
    assert (outcome.value, "in each" in outcome.read_as) == (value, True)


def test_a_highest_score_of_nobody_named_is_asked_about():
    assert ask_the_table("what was the highest score", TABLE, RAMP).verdict == "ask"


def test_seeds_have_scores_too():
    assert listener("samples/seeds.csv").outcome("what was the Ferns' highest score").value == "18"
