"""Turns of speech that are put plainly, each with its answer; and their twins, which must not be answered."""

from __future__ import annotations

import pytest

from mathgen.reading.pupils.plainly import Plainly
from tests.reading.score_corpus import listener

MAIN = "samples/main.csv"

ANSWERED = [
    ("how many pins did the Owls knock down in trials 1,2,3", "27"),
    ("in trials 1, 3, how many pins did the Owls knock down", "17"),
    # Owls 8, 10, 9; Herons 4, 6, 8; Kites 10, 5, 9; Wrens 5, 7, 3; Swifts 6, 8, 11 knocked down in trials 1, 2, 3
    ("in the 2nd go how many pins did the Owls get", "10"),
    ("Use the results to estimate the probability that a red pin is knocked down by the Owls.", "3/4"),
    ("what is the chance that a gold pin falls when the Owls roll?", "4/5"),
    ("Express as a percentage: gold pins the Owls knocked down out of the gold pins they set up in trial 1", "3/5"),
    ("Put the Swifts' trial totals in order. What is the middle number?", "8"),
    ("Identify the group that knocked down the greatest number of pins in trial 3.", "Swifts"),
    ("Compare the Owls and the Herons. How many more pins did the Owls knock down than the Herons in trial 1?", "4"),
    ("How many times as many pins as the Herons did the Kites knock down in trial 1?", "5/2"),
    ("The Kites dropped from trial 1 to trial 2. By how many pins?", "5"),
    ("How many of the pins knocked down by the Owls in trial 1 were not red?", "5"),
    ("Red pins are worth 3 points, all the others are worth 1. How many points did the Owls get in trial 1?", "14"),
    ("Red pins score 3 points and nothing else counts. How many points did the Owls get in trial 1?", "9"),
    ("Double the Wrens' total, then subtract the Herons' total.", "12"),
    ("how many pins did the Owls knock down in trial 1 plus how many pins did the Kites knock down in trial 2", "13"),
    ("Did the Owls or the Herons knock down more in trial 1?", "Owls"),
    ("Blue pins still upright after the Finches' second go?", "2"),
    ("total pins down, Swifts, last trial", "11"),
    ("Based on all 18 trials, what is the experimental probability that a blue pin goes down?", "29/54"),
    ("The Owls got red and gold pins down in trial 3, what is the ratio of gold to red?", "2:1"),
]

NOT_ANSWERED = [
    "how many pins did the Owls knock down in trials 1,2,9",
    "in trials 1, 2 pins how many",
    "Red pins are worth 3 points, all the others. How many points did the Owls get in trial 1?",
    "Red pins are worth 3 points. How many points did the Owls get in trial 1?",
    "Compare the Owls in trial 9 and the Herons. How many more pins did the Owls knock down than the Herons in trial 1?",
    "Compare the Owls and the Bears. How many more pins did the Owls knock down than the Herons in trial 1?",
    "The Owls dropped from trial 1 to trial 2. By how many pins?",  # they rose
    "Double the Wrens' total, then subtract the Herons' total times 5.",
    "Double the Wrens' total, then subtract 100 pins.",
    "Double the Wrens' trial 1, then subtract the Owls' total.",  # would be less than nothing
    "Based on all 17 trials, what is the experimental probability that a blue pin goes down?",
    "What fraction did the Owls knock down?",
    "what percent did the owls get",
    "how many were left",
    "the Owls knocked down red pins in trial 2",
    "blue pins of the Owls",
    "Use the Owls' results to predict the next trial.",
    "What is the chance that a red pin will be knocked down next trial?",
    "what is the chance that a gold pin falls when the Bears roll?",
    "Identify the group that knocked down the greatest number of purple pins.",
    "Put the Swifts' trial totals in order. What is the range?",
    "Did the Owls or the Bears knock down more in trial 1?",
    "How many of the pins knocked down by the Owls in trial 1 were not purple?",
    "Each of the class gets 10 points for it. How many points is that?",
    "How many pins better was the Owls' third trial than their second?",  # it was worse
]


@pytest.mark.parametrize(("question", "value"), ANSWERED)
def test_a_turn_of_speech_is_answered_as_if_said_plainly(question: str, value: str) -> None:
    outcome = listener(MAIN).outcome(question)
    assert (outcome.verdict, outcome.value) == ("answer", value), outcome


@pytest.mark.parametrize("question", NOT_ANSWERED)
def test_its_twin_is_not_answered(question: str) -> None:
    assert listener(MAIN).outcome(question).verdict != "answer"


@pytest.mark.parametrize("question", ["How many hits did the Otters get?", "hits for the Badgers in trial 2?"])
def test_a_hit_is_asked_about_where_there_is_a_target(question: str) -> None:
    assert "hit" in listener("samples/target.csv").outcome(question).why


def test_no_number_or_label_is_dropped() -> None:
    table = listener(MAIN).table
    plainly = Plainly(table, "left standing")
    for question, _ in ANSWERED:
        plain = plainly(question)
        for label in (*table.groups, *(() if "not red" in question else table.colors)):
            assert (label.casefold() in question.casefold()) <= (label.casefold() in plain.casefold()), (question, plain)
        for digit in "0123456789":
            ordinal = any(f"{digit}{end}" in question for end in ("nd", "st", "rd", "th"))
            assert (digit in question) <= (digit in plain or ordinal), (question, plain)
