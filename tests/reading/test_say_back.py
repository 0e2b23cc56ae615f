import pytest

from mathgen.reading.read_problem import read_problem
from mathgen.reading.say_back import in_words
from tests.reading.small_class import RAMP, TABLE


@pytest.mark.parametrize(
    ("text", "understood"),
    [
        (
            "In Trial 1, how many red pins did the Owls knock down?",
            "Find the number of red pins that the Owls knocked down in Trial 1.",
        ),
        (
            "Look at Trials 1 and 2. What percent of the gold pins did the Kites leave standing?",
            "Find the percent: the number of gold pins that the Kites left standing in Trials 1 and 2,"
            " out of the number of gold pins that the Kites set up in Trials 1 and 2. Give the answer as a percent.",
        ),
        (
            "Look at Trial 2. How many fewer pins did the Kites knock down than the Owls?",
            "Find how much smaller the number of pins that the Kites knocked down in Trial 2 is"
            " than the number of pins that the Owls knocked down in Trial 2.",
        ),
        (
            "The Owls will set up 20 gold pins next time. In Trial 1, the Owls knocked down 60% of the gold pins."
            " At the same rate, how many gold pins would the Owls knock down next time?",
            "Find how many of 20 gold pins the Owls would knock down at the same rate as in Trial 1.",
        ),
        (
            "Look at the results table for the class. What is the percent decrease in the number of red pins knocked down"
            " from Trial 1 to Trial 2?",
            "Find the percent decrease from the number of red pins that the class knocked down in Trial 1"
            " to the number of red pins that the class knocked down in Trial 2. Give the answer as a percent.",
        ),
    ],
)
def test_everything_left_out_is_said(text: str, understood: str):
    assert in_words(read_problem(text, TABLE, RAMP), TABLE, RAMP) == understood
