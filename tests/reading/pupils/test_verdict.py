"""What a pupil is told: how the question was understood, the answer, or why there is none."""

import pytest

from mathgen.reading.pupils.verdict import ask_the_table
from tests.reading.small_class import RAMP, TABLE


def verdict(question: str):
    return ask_the_table(question, TABLE, RAMP)


def test_the_sentence_read_says_what_was_filled_in_and_mended():
    outcome = verdict("what fractoin of the red pins did the owls nock down")
    assert outcome.verdict == "answer"
    assert "red pins that the Owls set up in all" in outcome.read_as
    assert "fractoin for fraction" in outcome.read_as


@pytest.mark.parametrize(
    ("question", "verdicts", "word"),
    [
        ("how many red pins will the owls knock down next time", ("decline",), "Nobody can know"),
        ("are the owls the best", ("decline",), "opinion"),
        ("how fast was the ball", ("decline",), "does not tell"),
        ("how many purple pins did the owls knock down", ("ask",), "purple"),
        ("how many pins did the owls knock down in trial 9", ("ask",), "no trial 9"),
        ("how many more pins did the owls knock down", ("ask",), "than what"),
        ("how many pins did they knock down", ("ask",), "they"),
        ("what fraction of the red pins", ("ask",), "Do you mean"),
        ("the owls knocked down 40 pins in trial 1. how many were left standing", ("ask",), "You say 40"),
        ("", ("ask",), "no question"),
        ("how many did the owls get how many did the wrens get", ("ask",), "two questions"),
    ],
)
def test_what_is_not_answered_says_why(question: str, verdicts: tuple[str, ...], word: str):
    outcome = verdict(question)
    assert outcome.verdict in verdicts
    assert outcome.value == ""
    assert word in outcome.why


def test_a_comma_between_thousands_parts_no_number():
    asked = "If a red pin is worth {} points, how many points did the Owls get for red pins?"
    with_comma, without = (verdict(asked.format(worth)) for worth in ("1,000", "1000"))
    assert with_comma.value == without.value == "9000"
    assert verdict("how many pins did the owls knock down in trials 1, 2 and 3").value == "27"


def test_steps_end_in_the_answer():
    outcome = verdict("how many pins did the owls and the wrens knock down altogether in trial 1")
    assert outcome.steps[-1].endswith(f": {outcome.value}")


def test_they_are_those_spoken_of_or_nobody():
    told = verdict("Find the trial where the owls knocked down the most pins. How many pins did they knock down in that trial?")
    assert "Owls" in told.read_as
    for question in (
        "Look at trial 2. How many pins did they knock down?",
        "Find the group that knocked down the most pins in trial 1. How many gold pins did they knock down?",
    ):
        assert verdict(question).verdict == "ask", question


def test_how_much_somebody_got_in_all_is_a_count_and_no_part():
    assert verdict("how much did everybody get all together").value == "66"
    assert verdict("how much did the owls get altogether?").value == "27"
    assert verdict("how much of the red did the owls get in all").value == "3/4"


def test_a_yes_or_no_question_is_turned_into_one_of_how_many():
    assert verdict("did owls beat wrens?").why.endswith("How many more pins did the Owls knock down than the Wrens?")
    assert verdict("Did the Owls improve from trial 1 to trial 3?").why.startswith("That is a yes or no question.")


@pytest.mark.parametrize(
    ("question", "value"),
    [
        ("what is the range of the groups' totals", "12"),
        ("what is the range of the number of pins the groups knocked down in trial 1", "5"),
        ("what is the range of the Kites' trial totals", "5"),
    ],
)
def test_the_range_is_asked_for_like_the_median(question: str, value: str):
    outcome = verdict(question)
    assert outcome.value == value
    assert outcome.steps[-1].endswith(f"= {value}")


def test_a_range_of_nothing_named_is_asked_about():
    assert verdict("what is the range").why == "The range of which numbers: of the trials, or of the groups?"


def test_words_that_do_not_go_together_are_quoted_as_the_pupil_typed_them():
    assert '"what was the lowest score"' in verdict("what was the lowest score?").why
