"""Pupils' questions about successes; the table, with its successes counted by hand, is in ``tests.aimed``."""

from __future__ import annotations

import pytest

from mathgen.reading.pupils.verdict import ask_the_table
from tests.aimed import AIMED
from tests.reading.small_class import RAMP, TABLE


@pytest.mark.parametrize(
    ("question", "display"),
    [
        ("How many successes did the Owls have?", "3"),
        ("how many successful trials did the wrens have in all their trials", "2"),
        ("How many trials of the Kites were successes?", "3"),
        ("How many of the Owls' trials were not successes?", "2"),
        ("How many successes did the Owls have in Trial 2?", "0"),
        ("How many successes did the class have in all?", "8"),
        ("What fraction of the trials were a success for the Owls?", "3/5"),
        ("What percent of the Wrens' trials were successful?", "40%"),
        ("What fraction of the trials of the Kites were not successes?", "1/4"),
        ("What was the accuracy of the Owls?", "3/5"),
    ],
)
def test_successes_are_counted_and_are_a_part_of_the_trials(question: str, display: str) -> None:
    outcome = ask_the_table(question, AIMED, RAMP)
    assert (outcome.verdict, outcome.display) == ("answer", display)
    assert "A trial is a success when target-color pins and no others are knocked down." in outcome.read_as


def test_a_trial_that_a_group_did_not_have_is_told() -> None:
    """The Kites had 4 trials, the others 5."""
    outcome = ask_the_table("How many successes did the Kites have?", AIMED, RAMP)
    assert "There is no result for the Kites in Trial 5" in outcome.read_as
    assert "in all 5" not in outcome.read_as


@pytest.mark.parametrize(
    "question",
    [
        "What does success mean?",
        "How many gold successes did the Owls have?",
        "How many successes did the Ducks have?",
        "How many successes did the Owls have in Trial 9?",
        "Which group had the most successes?",  # the Kites had fewer trials
        "How many pins of the target color did the Owls knock down?",
    ],
)
def test_any_other_question_with_the_word_is_told_what_can_be_asked(question: str) -> None:
    outcome = ask_the_table(question, AIMED, RAMP)
    assert (outcome.verdict, outcome.value) == ("ask", "")
    assert "How many successes did the Owls have?" in outcome.why


def test_the_group_with_the_most_successes_is_named_where_all_had_as_many_trials() -> None:
    rows = tuple(row for row in AIMED.rows if row.group != "Kites")
    outcome = ask_the_table("Which group had the most successes?", type(AIMED)(rows), RAMP)
    assert (outcome.verdict, outcome.display) == ("answer", "the Owls")


def test_what_a_next_trial_will_bring_is_no_matter_of_the_table() -> None:
    assert ask_the_table("Will the Owls have a success next time?", AIMED, RAMP).verdict == "decline"


def test_a_table_without_target_colors_says_so() -> None:
    outcome = ask_the_table("How many successes did the Owls have?", TABLE, RAMP)
    assert outcome.verdict == "ask"
    assert "does not tell the target color" in outcome.why
