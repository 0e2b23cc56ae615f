"""The problem models of a line close to the points of a scatter plot."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Choice, Measured, Op, Stated, Value
from mathgen.bank.desk import Desk
from mathgen.exact.demand import Demand
from mathgen.models.scatter import fit
from mathgen.scenario.words import scenario
from tests.models.asked import every_draft, quantity, said, worked
from tests.models.spaced import SPACED, fallen

WHOLE = Demand("whole")


START, SLOPE = Stated(25, "start of the line"), Stated(2, "pins for each inch")
KITES_1, KITES_2, TERNS_2 = Measured("gap", "Kites", 1), Measured("gap", "Kites", 2), Measured("gap", "Terns", 2)

ROWS = [
    # model, grade, ask, answer, relation, steps, slips; each worked by hand
    (
        "line_predicts",
        8,
        Ask(Value(Op("-", (START, Op("*", (SLOPE, Stated(5, "inches")))))), (), WHOLE),
        ("15", "2*5 + x = 25", ("2 * 5 = 10", "25 - 10 = 15"), {"W21": "10", "W22": "115", "W23": "18"}),
    ),
    (
        "off_the_line",
        8,
        Ask(Value(Op("-", (quantity("down", "Kites", (1,)), Op("-", (START, Op("*", (SLOPE, KITES_1))))))), (), WHOLE),
        ("2", "25 - 2*7 + x = 13", ("2 * 7 = 14", "25 - 14 = 11", "13 - 11 = 2"), {"H07": "11", "W24": "12", "W25": "24"}),
    ),
    (
        "farther_from_line",
        8,
        # Trial 2 was at 9 inches for the Kites, at 8 for the Terns.
        Ask(
            Choice(
                ("Kites", "Terns"),
                (
                    Op("-", (Op("-", (START, Op("*", (SLOPE, KITES_2)))), quantity("down", "Kites", (2,)))),
                    Op("-", (Op("-", (START, Op("*", (SLOPE, TERNS_2)))), quantity("down", "Terns", (2,)))),
                ),
            ),
            (),
            Demand("name"),
        ),
        (
            "Terns",
            "x = Max(25 - 2*9 - 6, 25 - 2*8 - 7)",
            ("2 * 9 = 18", "25 - 18 = 7", "7 - 6 = 1", "2 * 8 = 16", "25 - 16 = 9", "9 - 7 = 2"),
            {"W65": "Kites"},
        ),
    ),
    (
        "wider_by",
        8,
        Ask(Value(Op("*", (SLOPE, Stated(4, "inches wider")))), (), WHOLE),
        ("8", "x = 2*4", ("2 * 4 = 8",), {"W26": "2", "W27": "17", "W28": "6"}),
    ),
]


@pytest.mark.parametrize(("name", "grade", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, grade: int, ask: Ask, row: tuple[object, ...]) -> None:
    draft = next(draft for draft in every_draft(name, SPACED) if draft.ask == ask)
    assert worked(said(name, SPACED, grade, draft)) == row


def test_the_line_is_that_of_least_squares_to_whole_numbers() -> None:
    """By hand: x mean 5, y mean 15, sum of (x - 5)(y - 15) = -128, of (x - 5) squared 60: slope -2.13, start 15 + 2 * 5."""
    found = fit(Desk(SPACED, scenario("ramp")).view)
    assert found is not None
    assert (found.start, found.slope) == (25, -2)


def test_points_far_from_every_line_have_none() -> None:
    scattered = {
        (group, trial): (str(gap), down)
        for group, trial, gap, down in (
            ("Owls", 1, 1, 2),
            ("Owls", 2, 3, 29),
            ("Wrens", 1, 4, 1),
            ("Wrens", 2, 6, 30),
            ("Kites", 1, 7, 3),
            ("Kites", 2, 9, 28),
            ("Terns", 1, 2, 30),
            ("Terns", 2, 8, 0),
        )
    }
    assert fit(Desk(fallen(scattered), scenario("ramp")).view) is None
    assert list(every_draft("line_predicts", fallen(scattered))) == []


def test_a_line_that_rises_is_told_with_plus() -> None:
    rising = fallen({("Owls", trial): (str(trial), 3 + 3 * trial) for trial in range(1, 9)})
    draft = next(every_draft("wider_by", rising))
    assert "more pins" in said("wider_by", rising, 8, draft).text
    assert "y = 3 + 3x" in said("wider_by", rising, 8, draft).text
