"""Knocked down or left standing."""

from __future__ import annotations

from typing import Literal

import pytest

from mathgen.errors import Place
from mathgen.trials.measures import settle_measures
from mathgen.trials.readings import Reading
from mathgen.trials.scope import Measure


def reading(text: str = "3", measure: Measure | None = None) -> Reading:
    return Reading(Place(2, 3, None, "Red"), text, False, "Owls", 1, "red", measure, ("", 2))


@pytest.mark.parametrize(
    ("readings", "titles", "wanted", "measures"),
    [
        ([reading()], ["Pins knocked down"], None, ["down"]),
        ([reading()], ["Pins left standing"], None, ["standing"]),
        ([reading()], ["Pins left standing"], "down", ["down"]),
        ([reading()], [], "standing", ["standing"]),
        ([reading("3/4")], [], None, ["down"]),
        ([reading("3/4")], ["left standing"], None, ["standing"]),
        ([reading(measure="standing"), reading()], ["Pins knocked down"], None, ["standing", "down"]),
        ([reading(measure="down")], ["left standing"], None, ["down"]),
    ],
)
def test_headings_then_option_then_titles_decide(
    readings: list[Reading], titles: list[str], wanted: Literal["down", "standing"] | None, measures: list[str]
) -> None:
    settled = settle_measures(readings, titles, wanted)
    assert [one.measure for one in settled.readings] == measures
    assert settled.question is None
    assert settled.faults == ()


@pytest.mark.parametrize(
    ("readings", "titles"),
    [
        ([reading()], []),
        ([reading()], ["Set up: red 4"]),
        ([reading()], ["down or standing"]),
        ([reading("3/4"), reading()], []),
        ([reading("absent")], []),
    ],
)
def test_what_nothing_decides_is_asked(readings: list[Reading], titles: list[str]) -> None:
    question = settle_measures(readings, titles, None).question
    assert question is not None
    assert question.id == "counts"


def test_an_option_against_every_heading_is_a_fault() -> None:
    (fault,) = settle_measures([reading(measure="down")], [], "standing").faults
    assert (fault.found, fault.expected) == ("--counts standing", "--counts down, as the headings say knocked down")


def test_an_option_against_a_title_is_said() -> None:
    assert "although" in " ".join(settle_measures([reading()], ["left standing"], "down").notes)
