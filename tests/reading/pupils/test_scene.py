"""Scenes that are set before a question, each with its answer; and their twins, which must not be answered."""

from __future__ import annotations

import pytest

from tests.reading.score_corpus import listener

MAIN = "samples/main.csv"

ANSWERED = [
    # Owls 8, 10, 9; Herons 4, 6, 8; Kites 10, 5, 9 knocked down in trials 1, 2, 3
    ("The Owls aimed for gold. How many gold pins did they knock down in trial 1?", "3"),
    ("The Kites crashed in trial 2. How many pins did they knock down in trial 2?", "5"),
    ("The Owls and the Kites put their trial 1 pins together. How many more is that than the Herons got in trial 1?", "14"),
    ("The Owls and Kites join up for trial 1. How many pins is that?", "18"),
    ("In trial 1, the Owls rolled the sock ball. How many pins fell?", "8"),
    ("In trial 1 the Kites beat the Herons. By how many pins?", "6"),
    ("Find the Owls' mean score.", "9"),
    ("find the median of the kites scores", "9"),
    ("who got the lowest score in trial 2?", "Kites"),
    ("How much did the Owls' score go up from trial 1 to trial 2?", "2"),
    ("What is the difference between the Owls' and the Kites' scores in trial 1?", "2"),
    ("The Owls got 8 in trial 1 and 10 in trial 2. How many more in trial 2?", "2"),
    ("The Owls got 10 in trial 2 and 8 in trial 1. How many fewer did they get in trial 1?", "2"),
    ("The Owls knocked down 8 of 12 pins in trial 1. What percent is that?", "2/3"),
    ("how many pins that weren't red did the owls knock down in trial 1", "5"),
    ("sum of all the red pins knocked down by the wrens", "6"),
    ("tell me the owls total in the first two trials", "18"),
    ("percent change owls trial 1 to trial 2", "1/4"),
    ("Compared with trial 1, how many percent more pins did the Wrens knock down in trial 2?", "2/5"),
    ("The Kites' total is how many times as great as the Herons' total?", "4/3"),
    ("In decimal form, what part of the pins did the Owls knock down in trial 2?", "5/6"),
    ("What's the middle score for the Owls when you put their trials in order?", "9"),
    ("order the six totals for trial 1 and give the median", "7"),
    ("The Owls got 8 in trial 1 and 10 in trial 2. What is the total?", "18"),
    ("The Owls got 3 red pins and 2 blue pins in trial 1. How many more red pins?", "1"),
    ("If red is 2, blue is 3 and gold is 5, which group scored the most points in trial 1?", "Kites"),
    ("How far behind the Owls were the Wrens in total?", "12"),
    ("Between the Owls and the Swifts, who had more pins down in trial 3?", "Swifts"),
    ("Out of 12 pins the Finches knocked down 9 in trial 2. What fraction is that?", "3/4"),
    ("As a fraction of the 12 pins, how many did the Swifts knock down in trial 2?", "2/3"),
    ("How would you write the fraction of red pins the Owls knocked down in trial 1 as a percent?", "3/4"),
    ("Pins left up by the Swifts across trials 1, 2 and 3?", "11"),
    ("In trial 2, the Owls knocked down what fraction of their red pins?", "1"),
    ("In trial 1, gold pins made up what percent of the pins the Kites knocked down?", "1/2"),
    ("What is the ratio gold : red for the pins the Owls knocked down in trial 2?", "5:4"),
    ("Convert the fraction of pins the Owls knocked down in trial 2 to a decimal.", "5/6"),
    ("mean of herons' pins knocked down trials 1-3", "6"),
    ("Find the median trial total for the Kites.", "9"),
    ("The Herons knocked down 4 in trial 1 and 6 in trial 2. How many in both trials together?", "10"),
    ("Which group knocked down the fewest blue pins in trial 2? Name all if they tie.", "Herons"),
    ("If the Owls' pins had been shared equally across the 3 trials, how many would be in each?", "9"),
]

NOT_ANSWERED = [
    "The Owls aimed for gold. How many pins did they knock down in trial 1?",  # gold ones, or all?
    "The Owls had trouble with blue. How many gold pins did they knock down?",
    "The Owls cheated in trial 1. How many pins did they knock down in trial 1?",
    "The Owls played 4 games. How many pins did they knock down in trial 1?",
    "The Eagles aimed for gold. How many gold pins did they knock down?",
    "In trial 1, the Owls rolled the ball. How many pins did the Kites knock down in trial 2?",
    "The Owls rolled twice. How many pins did they knock down in trial 1?",
    "The Owls and the Eagles put their pins together. How many pins is that?",
    "The Owls and the Kites put their pins together. How many each?",
    "Herons beat the Kites in trial 1. By how many pins?",
    "The Owls got 8 in trial 1 and 11 in trial 2. How many more in trial 2?",
    "The Owls got 8 in trial 1 and 10 in trial 2. How many more in trial 3?",
    "The Owls got 8 in trial 1 and 10 in trial 2. How many more in trial 1?",
    "The Owls knocked down 9 of 12 pins in trial 1. What percent is that?",
    "The Owls knocked down 8 of 10 pins in trial 1. What percent is that?",
    "What is the Owls' score?",
    "How many points higher was the Owls' score than the Herons' score?",
    "how many pins that weren't red or blue did the owls knock down in trial 1",
    "find the sum of the owls red percent",
    "percent change owls trial 2 to trial 3",
    "What fraction of the pins were red that the Owls knocked down in trial 1?",
    "find the median of the Owls' and the Kites' scores",
    "If the Owls' pins were shared equally across the 4 trials, how many would be in each?",
    "tell me the owls total in the first five trials",
    "The Owls got 8 in trial 1 and the Kites got 10 in trial 1. What is the total?",
    "The Owls got 8 in trial 1 and 10 in trial 2. How many did they get in trial 3?",
    "The Owls got 8 in trial 1 and 10 in trial 2. How many did the Kites get?",
    "Red is worth 2 points. Which group scored the most points in trial 1?",
    "Which group scored the most points in trial 1?",
    "How far did the Owls roll the ball?",
    "What percent of the class knocked down red pins?",
    "What percent of the Owls knocked down pins?",
    "How many pins did the Owls knock down until trial 2?",
    "What fraction of the trials did the Owls knock down all the gold pins?",
    "What is the chance the Owls knock down all the pins?",
    "Half the Owls' pins fell in trial 1. How many is that?",
    "Of the pins the Owls knocked down in trial 1, what fraction of red pins?",
    "The Herons knocked down 4 in trial 1. How many in both trials together?",
    "trials 1-5 owls total pins down",
    "What percent of the Owls' total did they knock down in trial 2?",  # of what they knocked down, or of what stood?
    "Out of 10 pins the Finches knocked down 9 in trial 2. What fraction is that?",
    "As a fraction of the 10 pins, how many did the Swifts knock down in trial 2?",
    "Pins left up by the Swifts across trials 1, 2 and 5?",
]


@pytest.mark.parametrize(("question", "value"), ANSWERED)
def test_a_question_is_answered_with_its_scene(question: str, value: str) -> None:
    outcome = listener(MAIN).outcome(question)
    assert (outcome.verdict, outcome.value) == ("answer", value), outcome


@pytest.mark.parametrize("question", NOT_ANSWERED)
def test_its_twin_is_not_answered(question: str) -> None:
    assert listener(MAIN).outcome(question).verdict != "answer"
