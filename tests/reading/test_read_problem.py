"""Sentences read, and sentences not read; the list with its table is in ``sentences.toml``."""

import tomllib
from pathlib import Path
from random import Random

import pytest
from sympy import Rational

from mathgen.exact.demand import parse_demand
from mathgen.reading.evaluate import Counts
from mathgen.reading.read_problem import Reader, read_problem
from mathgen.reading.tokens import NotRead
from mathgen.scenario.words import scenario
from mathgen.trials.shadow import shadow
from mathgen.trials.table import Row, TrialTable
from tests.reading.small_class import RAMP, TABLE

SENTENCES = tomllib.loads(Path(__file__).with_name("sentences.toml").read_text(encoding="utf-8"))


@pytest.mark.parametrize(("text", "value", "demand"), SENTENCES["read"])
def test_sentences_come_to_the_value_worked_out_by_hand(text: str, value: str, demand: str):
    reading = read_problem(text, TABLE, RAMP)
    assert str(reading.value) == value
    assert reading.demand == parse_demand(demand)


@pytest.mark.parametrize(("text", "reason"), SENTENCES["not_read"])
def test_what_is_false_or_open_or_unknown_is_not_read(text: str, reason: str):
    with pytest.raises(NotRead) as refused:
        read_problem(text, TABLE, RAMP)
    assert reason in refused.value.reason


def test_the_same_question_has_its_own_answer_on_another_table():
    """The numbers of the next set and of "more than" come from the words and stay; all others come from the table."""
    other = shadow(TABLE, Random(3))
    row = {(row.group, row.trial, row.color): row for row in other.rows}
    count = read_problem("How many red pins did the Owls knock down in Trial 1?", TABLE, RAMP)
    assert count.value_on(Counts(other)) == row["Owls", 1, "red"].down
    told = read_problem(
        "Look at Trial 1. The Owls knocked down 1 more red pin than the Wrens. How many red pins did the Owls knock down?", TABLE, RAMP
    )
    assert told.value_on(Counts(other)) == row["Wrens", 1, "red"].down + 1
    part = read_problem("What percent of the red pins did the Owls leave standing in Trial 1?", TABLE, RAMP)
    assert part.value_on(Counts(other)) == 1 - Rational(row["Owls", 1, "red"].down, row["Owls", 1, "red"].set_up)


def test_facts_are_the_numbers_of_the_words_each_once():
    reading = read_problem(
        "The Owls set up 4 red pins for each of Trials 1 and 2, 8 red pins in all. The Owls knocked down 7 of the 8 red pins."
        " What fraction of the 8 red pins were left standing?",
        TABLE,
        RAMP,
    )
    assert [fact.text for fact in reading.facts] == ["4", "8", "7"]


def test_where_to_look_is_told():
    reading = read_problem("Use the bar graph for the Kites in Trial 1. How many pins were knocked down?", TABLE, RAMP)
    assert [look.source for look in reading.looks] == ["graph"]


def test_gaps_are_filled_with_all_only_where_that_is_allowed():
    reading = Reader(TABLE, RAMP).read("How many red pins did the Owls knock down?", assume=True)
    assert (reading.value, reading.assumed) == (9, ("all trials",))


AWKWARD = TrialTable(
    tuple(
        Row(group, trial, color, 5, down)
        for group, trial, color, down in [
            ("7", "Monday", "dark blue", 1),
            ("7", "B", "dark blue", 2),
            ("The Most", "Monday", "dark blue", 3),
            ("The Most", "B", "dark blue", 4),
            ("Zoë", "Monday", "dark blue", 0),
            ("Zoë", "B", "dark blue", 5),
        ]
    )
)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("How many dark blue pins did Group 7 knock down in Monday trial?", 1),
        ("How many pins did The Most knock down in Trial B?", 4),
        ("How many more pins did Zoë knock down in Trial B than in Monday trial?", 5),
        ("Look at Trial B. What is the total number of pins knocked down by Group 7, The Most, and Zoë?", 11),
    ],
)
def test_labels_of_every_sort_are_known(text: str, value: int):
    assert read_problem(text, AWKWARD, RAMP).value == value


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("How many red seeds did the Owls sprout in Trial 1?", 3),
        ("How many red seeds were left in the soil by the Owls in Trial 1?", 1),
        ("In Trial 1, the Owls planted 4 red seeds and sprouted 3. What part of the 4 red seeds sprouted, as a decimal?", Rational(3, 4)),
    ],
)
def test_another_activity_is_read_by_the_same_rules(text: str, value: Rational):
    assert read_problem(text, TABLE, scenario("seeds")).value == value


def test_a_demand_to_round_is_shown_rounded_and_the_exact_value_kept():
    reading = read_problem(
        "Round the answer to the nearest tenth of a percent. What percent of the blue pins did the Owls knock down in Trial 1?", TABLE, RAMP
    )
    assert (reading.value, reading.shown) == (Rational(2, 3), Rational(667, 1000))
