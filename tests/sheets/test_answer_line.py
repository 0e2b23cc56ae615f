"""What a pupil writes an answer on."""

from __future__ import annotations

import pytest
from sympy import Rational

from mathgen.exact.demand import Demand
from mathgen.problems.record import Answer
from mathgen.sheets.answer_line import answer_line
from tests.sheets.by_hand import problem, words


@pytest.mark.parametrize(
    ("made", "expected"),
    [
        (problem("Q?", "9", unit="pins", form="whole"), ("line", "pins")),
        (problem("Q?", "1", unit="pin", form="whole"), ("line", "pins")),
        (problem("Q?", "3/12"), ("fraction", "")),
        (problem("Q?", "1/4", form="simplest"), ("line", "")),
        (problem("Q?", "0.7", form="decimal"), ("line", "")),
        (problem("Q?", "62.5%", form="percent"), ("line", "%")),
        (problem("Q?", "Owls", labels=("Owls", "Herons")), ("name", "")),
    ],
)
def test_the_place_fits_the_answer_and_gives_nothing_away(made: object, expected: tuple[str, str]) -> None:
    """A unit in the singular would tell that the answer is 1; an empty fraction would tell a form that the words demand."""
    place = answer_line(made.answer, words(4))  # type: ignore[attr-defined]
    assert (place["kind"], place["unit"]) == expected


def test_a_ratio_has_two_places() -> None:
    ratio = Answer("ratio", Rational(17, 7), "17:7", "17:7", ("17:7", "17 to 7", "17/7"), Demand("ratio:any"))
    assert answer_line(ratio, words(6)) == {"kind": "ratio", "unit": ""}


def test_yes_and_no_are_circled():
    truth = Answer("truth", "false", "No", "No", ("No", "false"), Demand("truth"))
    assert answer_line(truth, words(2)) == {"kind": "truth", "unit": ""}


def test_a_quotient_and_a_remainder_have_two_places():
    both = Answer("quotient_remainder", "7 r 1", "7 R 1", "7 R 1", ("7 R 1", "7 r 1"), Demand("quotient_remainder"))
    assert answer_line(both, words(4)) == {"kind": "quotient_remainder", "unit": ""}
