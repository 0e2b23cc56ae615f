"""Sentences about successes, read and not read; the table with its successes is in ``tests.aimed``."""

from __future__ import annotations

import pytest

from mathgen.reading.read_problem import read_problem
from mathgen.reading.tokens import NotRead
from mathgen.scenario.words import scenario
from tests.aimed import AIMED

RAMP = scenario("ramp")
LIKELY = "what is the estimated probability that the next trial will be a success?"
GREATER = "Which group had successes in the greater fraction of its trials?"
EXPECT = "About how many of the 20 trials should the Owls expect to be successes?"
NEW = "Suppose every new trial is a success."
NEEDED = "How many new trials are needed to reach the goal exactly?"
RULE = "A trial is a success when target-color pins and no others are knocked down."
SHORT = "In a success, target-color pins and no others are knocked down."

READ = [
    (f"Use the results table for the Kites. {SHORT} How many successes did the Kites have in 4 trials?", "3", "whole"),
    (f"The Kites had 4 trials. {SHORT} Use the results table. How many of the 4 trials were not successes?", "1", "whole"),
    (f"{SHORT} Find the Owls in the results table. How many trials of the Owls were successes?", "3", "whole"),
    (f"The Owls had 5 trials. {RULE} Of the 5 trials, 3 were successes. What fraction of the 5 trials were successes?", "3/5", "any"),
    (
        f"The Owls and the Wrens had 5 successes in 10 trials in all. {SHORT} What percent of the 10 trials were successes?",
        "1/2",
        "percent",
    ),
    (f"{SHORT} In 14 trials, the class had 8 successes. What fraction of the 14 trials were not successes?", "3/7", "any"),
    (f"The Owls had 3 successes in 5 trials. {SHORT} Based on these results, {LIKELY}", "3/5", "any"),
    (f"The Owls had 5 trials. {RULE} Of the 5 trials, 3/5 were successes. What fraction of the 5 trials were not successes?", "2/5", "any"),
    (f"{SHORT} The Kites had successes in 3/4 of all 4 trials. What fraction of the 4 trials were not successes?", "1/4", "any"),
    (f"The Owls had 3 successes in 5 trials. The Kites had 3 successes in 4 trials. {RULE} {GREATER}", "Kites", "name"),
    (f"The Owls had 5 trials, and the Kites had 4 trials. {RULE} Use the results table. {GREATER}", "Kites", "name"),
    (f"The Owls had 3 successes in 5 trials. {SHORT} What is the ratio of other trials to successes?", "2/3", "ratio:any"),
    (f"The Owls had 3 successes in 5 trials. {SHORT} The Owls will do 20 more trials. {EXPECT}", "12", "whole"),
    (f"The Owls had 3 successes in 5 trials. {SHORT} The goal is successes in 80% of all trials. {NEW} {NEEDED}", "5", "whole"),
    (
        f"The Owls had 3 successes in 5 trials. {SHORT} Suppose every new trial is a success until 75% of all trials are successes."
        " How many new trials is that?",
        "3",
        "whole",
    ),
]
NOT_READ = [
    ("The Owls had 3 successes in 5 trials. What fraction of the 5 trials were successes?", "what a success is"),
    (f"The Owls had 4 successes in 5 trials. {SHORT} What fraction of the 5 trials were successes?", "the table does not say 4"),
    (f"The Owls had 3 successes in 5 trials. {SHORT} What fraction of the 6 trials were successes?", "the table does not say 6"),
    (f"The Owls had 3 successes in 5 trials. {SHORT} {RULE} What fraction of the 5 trials were successes?", "the same is said twice"),
    (f"{RULE} How many red pins did the Owls knock down in Trial 1?", "what a success is plays no part"),
    (f"The Owls had 3 successes in 5 trials. {SHORT} How many successes did the Kites have in 4 trials?", "plays no part"),
    ("In a success, target-color pins and no others are left standing. How many trials of the Owls were successes?", "no sentence"),
    (f"The Wrens had 2 success in 5 trials. {SHORT} What fraction of the 5 trials were successes?", "no sentence"),
    (f"{SHORT} Use the results table for the Owls. How many trials of the Kites were successes?", "other groups than those to look at"),
    (f"The Owls had 3 successes in 5 trials. {SHORT} {EXPECT}", "how many trials are to come"),
    (f"The Owls had 3 successes in 5 trials. {SHORT} The Owls will do 30 more trials. {EXPECT}", "how many trials are to come"),
    (f"The Owls had 3 successes in 5 trials. {SHORT} The Kites will do 20 more trials. {EXPECT}", "other groups have trials to come"),
    (f"The Owls had 3 successes in 5 trials. {SHORT} {NEW} {NEEDED}", "what the goal is"),
    (f"The Owls had 3 successes in 5 trials. {SHORT} The goal is successes in 80% of all trials. {NEEDED}", "every new trial"),
    (f"The Owls had 3 successes in 5 trials. {SHORT} {NEW} What fraction of the 5 trials were successes?", "plays no part"),
    (f"The Owls had 3 successes in 5 trials. {RULE} {GREATER}", "which groups"),
    (f"{SHORT} The Kites had successes in 2/4 of all 4 trials. What fraction of the 4 trials were not successes?", "does not say 2/4"),
    ("In a success, only pins of the target color are knocked down. How many trials of the Owls were successes?", "no word that is known"),
    (f"{SHORT} How many of the trials were failures?", "no word that is known"),
]


@pytest.mark.parametrize(("text", "value", "demand"), READ)
def test_sentences_come_to_the_value_worked_out_by_hand(text: str, value: str, demand: str) -> None:
    reading = read_problem(text, AIMED, RAMP)
    assert (str(reading.value), str(reading.demand)) == (value, demand)


@pytest.mark.parametrize(("text", "reason"), NOT_READ)
def test_what_is_false_or_open_or_unknown_is_not_read(text: str, reason: str) -> None:
    with pytest.raises(NotRead) as refused:
        read_problem(text, AIMED, RAMP)
    assert reason in refused.value.reason
