"""Route 4 alone: every written form says the answer, and no likely mistake does."""

from __future__ import annotations

from typing import Any

import pytest
from sympy import Rational

from mathgen.exact.demand import Demand
from mathgen.problems.record import Answer, Slip
from mathgen.proof.by_forms import FormFails, check

FRACTION = Answer("number", Rational(3, 12), "3/12", "3/12", ("3/12", "1/4", "0.25", "25%"), Demand())
COUNT = Answer("number", Rational(9), "9", "9 pins", ("9",), Demand("whole"))
ROUNDED = Answer("number", Rational(2, 3), "66.7%", "66.7%", ("66.7%",), Demand("percent", 1), "66.66...% rounds to 66.7%")
NAME = Answer("name", "2", "Trial 2", "Trial 2", ("Trial 2", "2"), Demand("name"), "8/10 > 6/10")
RATIO = Answer("ratio", Rational(6, 4), "6:4", "6:4", ("6:4", "6 to 4", "6/4", "3:2"), Demand("ratio:any"))
MEDIAN = Answer("number", Rational(17, 2), "8.5", "8.5 pins", ("8.5", "17/2", "8 1/2"), Demand(), "in order: 6, 8, 9, 9")
QUARTILE = Answer("number", Rational(7), "7", "7", ("7",), Demand(), "in order: 6, 8 | 9 | 10, 12")
SLIP = Slip("A03", "9/12", "That is the other part of the set. Read the question again.")


@pytest.mark.parametrize("answer", [FRACTION, COUNT, ROUNDED, NAME, RATIO, MEDIAN, QUARTILE], ids=lambda answer: answer.display)
def test_a_right_key_passes(answer: Answer) -> None:
    check(answer, ())


@pytest.mark.parametrize(
    ("answer", "change"),
    [
        (FRACTION, {"shown": "4/12", "display": "4/12"}),
        (FRACTION, {"accepted": ("3/12", "1/3")}),
        (FRACTION, {"accepted": ("3/12", "a quarter-ish")}),
        (COUNT, {"display": "99 pins"}),
        (COUNT, {"display": "9 of 10"}),
        (ROUNDED, {"shown": "66.6%", "display": "66.6%", "accepted": ("66.6%",), "because": ""}),
        (ROUNDED, {"because": "66 1/3% rounds to 66.7%"}),
        (ROUNDED, {"because": "66.67...% rounds to 66.7%"}),
        (ROUNDED, {"because": "66.65...% rounds to 66.7%"}),
        (ROUNDED, {"because": "66 2/3% rounds to 66.8%"}),
        (RATIO, {"accepted": ("6:4", "4:6")}),
        (RATIO, {"shown": "4:6", "display": "4:6"}),
        (RATIO, {"shown": "6/4", "display": "6/4"}),
        (MEDIAN, {"because": "in order: 9, 6, 8, 9"}),
        (MEDIAN, {"because": "in order: 6, 8, 8, 9"}),
        (QUARTILE, {"because": "in order: 8, 6 | 9 | 10, 12"}),
        (QUARTILE, {"because": "in order: 6, 8, 9 | 10, 12"}),
        (QUARTILE, {"because": "in order: 6, 8, 9, 10, 12"}),
        (QUARTILE, {"because": "in order: 6, 6 | 9 | 10, 12"}),
        (NAME, {"accepted": ("Trial 1",)}),
        (NAME, {"display": "Trial 1"}),
        (NAME, {"because": "6/10 > 8/10"}),
        (NAME, {"because": "8/10 > 4/5"}),
    ],
)
def test_a_wrong_key_fails(answer: Answer, change: dict[str, Any]) -> None:
    with pytest.raises(FormFails):
        check(answer._replace(**change), ())


def test_a_value_half_way_between_two_roundings_fails() -> None:
    """3/8 is 37.5%, half way between 37% and 38%: schools round up there, other trades to the even one, so neither may be a key."""
    with pytest.raises(FormFails):
        check(Answer("number", Rational(3, 8), "38%", "38%", ("38%",), Demand("percent", 0)), ())


@pytest.mark.parametrize("value", ["3/12", "1/4", "0.25", "25%", "2/8"])
def test_a_slip_that_is_right_fails(value: str) -> None:
    check(FRACTION, (SLIP,))
    with pytest.raises(FormFails):
        check(FRACTION, (SLIP._replace(value=value),))


def test_a_slip_that_equals_the_exact_value_of_a_rounded_answer_fails() -> None:
    with pytest.raises(FormFails):
        check(ROUNDED, (Slip("A03", "66 2/3%", "line"),))


@pytest.mark.parametrize("value", ["Trial 2", "2"])
def test_a_slip_that_names_the_answer_fails(value: str) -> None:
    check(NAME, (Slip("B05", "Trial 1", "line"),))
    with pytest.raises(FormFails):
        check(NAME, (Slip("B05", value, "line"),))
