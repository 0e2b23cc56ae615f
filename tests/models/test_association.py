"""The problem models of association in scatter plots."""

from __future__ import annotations

import pytest
from sympy import Rational

from mathgen.asks.expression import Ask, Choice, Op, Quantity
from mathgen.exact.demand import Demand
from mathgen.trials.table import Row, TrialTable
from tests.models.asked import every_draft, every_problem, quantity, said, worked

NAME = Demand("name")
GAPS = {"Owls": ("1", "2", "4", "7"), "Wrens": ("3/2", "5/2", "5", "8")}


def fallen(**downs: tuple[int, ...]) -> TrialTable:
    """One color, 20 pins set up, at the same spaces for each table."""
    return TrialTable(
        tuple(
            Row(group, trial, "red", 20, down, gap_inches=Rational(GAPS[group][trial - 1]))
            for group, some in downs.items()
            for trial, down in enumerate(some, 1)
        )
    )


TABLE = fallen(Owls=(19, 15, 16, 8), Wrens=(18, 17, 9, 4))


def down(group: str, trial: int) -> Quantity:
    return quantity("down", group, (trial,), "red")


ROWS = [
    # model, ask, answer, relation, steps, slips; each worked by hand
    (
        "positive_or_negative",
        # In order of spaces: 1, 1 1/2, 2, 2 1/2 | 4, 5, 7, 8.
        Ask(
            Choice(
                ("positive", "negative"),
                (
                    Op("+", (down("Owls", 3), down("Wrens", 3), down("Owls", 4), down("Wrens", 4))),
                    Op("+", (down("Owls", 1), down("Wrens", 1), down("Owls", 2), down("Wrens", 2))),
                ),
            ),
            (),
            NAME,
        ),
        (
            "negative",
            "x = Max(16 + 9 + 8 + 4, 19 + 18 + 15 + 17)",
            ("16 + 9 + 8 + 4 = 37", "19 + 18 + 15 + 17 = 69"),
            {"W61": "positive"},
        ),
    ),
    (
        "point_against_the_rest",
        # 19, 15, 16, 8: up only in Trial 3.
        Ask(
            Choice(
                ("2", "3", "4"),
                tuple(Op("-", (down("Owls", new), down("Owls", new - 1))) for new in (2, 3, 4)),
            ),
            (),
            NAME,
        ),
        (
            "Trial 3",
            "x = Max(15 - 19, 16 - 15, 8 - 16)",
            ("15 - 19 = -4", "16 - 15 = 1", "8 - 16 = -8"),
            {"W62": "Trial 1", "W63": "Trial 4", "W64": "Trial 2"},
        ),
    ),
]


@pytest.mark.parametrize(("name", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, ask: Ask, row: tuple[object, ...]) -> None:
    draft = next(draft for draft in every_draft(name, TABLE) if draft.ask == ask)
    made = said(name, TABLE, 8, draft)
    assert worked(made) == row


def test_pins_left_standing_go_the_other_way() -> None:
    both = {("standing" in one.text, one.answer.shown) for one in every_problem("positive_or_negative", TABLE, 8, draws=4)}
    assert both == {(False, "negative"), (True, "positive")}


def test_points_without_a_clear_way_make_no_question() -> None:
    """Of the 28 pairs of points 15 go up and 13 go down."""
    assert list(every_draft("positive_or_negative", fallen(Owls=(9, 15, 10, 12), Wrens=(8, 14, 11, 13)))) == []


def test_a_group_that_falls_each_time_has_no_point_against_the_rest() -> None:
    assert list(every_draft("point_against_the_rest", fallen(Owls=(19, 15, 10, 2)))) == []


def test_equal_counts_have_no_way() -> None:
    assert list(every_draft("point_against_the_rest", fallen(Owls=(19, 15, 15, 16)))) == []
