"""Lines, inequalities and two equations on small tables; every value, step and slip worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Stated
from mathgen.models.view import TableView
from mathgen.trials.scope import Scope
from mathgen.trials.totals import Totals
from tests.models.asked import every_draft, said, worked
from tests.tables import table

# Owls: 3 + 2 + 4 = 9, then 7; Herons: 1 + 1 + 3 = 5, then 9. Both trials: Owls 4 red, 5 blue, 7 gold; Herons 3, 3, 8.
CLASS = table(
    {"red": 4, "blue": 3, "gold": 5},
    {("Owls", 1): (3, 2, 4), ("Owls", 2): (1, 3, 3), ("Herons", 1): (1, 1, 3), ("Herons", 2): (2, 2, 5)},
)
OWLS_1, OWLS = Scope(("Owls",), (1,)), Scope(("Owls",), None)
ROWS = {
    # model: (scope of the first count, numbers that only the words give, mark, grade, answer, relation, steps, slips)
    "level_scores": (
        # 4 behind; 2 more for each pin: 2 pins, at 9 + 4 * 2 = 17; 4 / 10, 14 / 10 and 4 / 6 are no counts
        OWLS_1, (4, 6), "", 8,
        "2", "9 + 4*x = 5 + 6*x", ("9 - 5 = 4", "6 - 4 = 2", "4 / 2 = 2"), {"L27": "17", "H07": "4"},
    ),
    "points_of_two_colors": (
        # 4 red and 7 gold, 5 * 4 + 3 * 7 = 41; 41 / 8 and 41 / 5 are no counts
        Scope(("Owls",), None, ("red",)), (5, 3, 41), "first", 8,
        "4", "5*x + 3*(11 - x) = 41", ("3 * 11 = 33", "41 - 33 = 8", "5 - 3 = 2", "8 / 2 = 4"), {"L16": "7"},
    ),
    "points_of_two_colors, the other color": (
        Scope(("Owls",), None, ("red",)), (5, 3, 41), "second", 8,
        "7", "3*x + 5*(11 - x) = 41", ("5 * 11 = 55", "55 - 41 = 14", "5 - 3 = 2", "14 / 2 = 7"), {"L16": "4"},
    ),
    "points_won_and_lost": (
        # 16 of 24, 5 * 16 - 2 * 8 = 64; (64 + 2 * 24) / 3 and 64 / 5 are no counts
        OWLS, (5, 2, 64), "", 8,
        "16", "5*x - 2*(24 - x) = 64", ("2 * 24 = 48", "64 + 48 = 112", "5 + 2 = 7", "112 / 7 = 16"), {"L16": "8"},
    ),
    "points_for_each": (
        # 9 and 5 pins, 4 * 9 + 10 = 46 and 4 * 5 + 10 = 30; 46 / 9 is no whole number
        OWLS_1, (46, 30), "", 8,
        "4", "(9 - 5)*x = 46 - 30", ("46 - 30 = 16", "9 - 5 = 4", "16 / 4 = 4"), {"H07": "16", "L20": "10"},
    ),
    "start_value": (
        OWLS_1, (46, 30), "", 8,
        "10", "(46 - 30)/(9 - 5)*9 + x = 46", ("46 - 30 = 16", "9 - 5 = 4", "16 / 4 = 4", "4 * 9 = 36", "46 - 36 = 10"),
        {"L21": "4", "L22": "36", "L23": "37"},
    ),
    "fewest_needed": (
        # 9 pins are 45 points; 15 more reach 60 with 3 pins and pass it with 4; 60 / 5 + 1 = 13 from nothing
        OWLS_1, (5, 60), "passes", 7,
        "4", "5*9 + 5*(x - 1) = 60", ("5 * 9 = 45", "60 - 45 = 15", "15 / 5 = 3", "3 + 1 = 4"), {"L24": "3", "L26": "13", "H07": "15"},
    ),
    "fewest_needed, at least": (
        OWLS_1, (5, 60), "reaches", 7,
        "3", "5*9 + 5*x = 60", ("5 * 9 = 45", "60 - 45 = 15", "15 / 5 = 3"), {"L25": "4", "L26": "12", "H07": "15"},
    ),
}  # fmt: skip


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    scope, numbers, mark, grade, *expected = ROWS[row]
    name = row.partition(",")[0]
    found = [
        draft
        for draft in every_draft(name, CLASS)
        if getattr(draft.roles.get("down", draft.roles.get("first")), "scope", None) == scope
        if tuple(one.number for one in draft.roles.values() if isinstance(one, Stated)) == numbers
        and mark in ("", *draft.wanted, *(place for place in ("first", "second") if draft.roles.get(place) == draft.ask.equals))
    ]
    one = said(name, CLASS, grade, found[0])
    assert worked(one) == tuple(expected)


@pytest.mark.parametrize("name", ["points_of_two_colors", "points_won_and_lost"])
def test_a_count_to_be_solved_for_stands_in_no_cell_and_is_the_answer(name: str) -> None:
    view = TableView(Totals(CLASS))
    drafts = list(every_draft(name, CLASS))
    assert drafts
    for draft in drafts:
        assert draft.ask.equals is not None
        assert not view.is_cell(draft.ask.equals)
        assert draft.ask.equals.scope in draft.must_not_show


@pytest.mark.parametrize("name", ["points_for_each", "start_value"])
def test_two_points_of_a_line_are_two_apart_at_least(name: str) -> None:
    """One apart, the difference of the scores would be the slope without a division."""
    view = TableView(Totals(CLASS))
    for draft in every_draft(name, CLASS):
        assert abs(view.number(draft.roles["first"]) - view.number(draft.roles["second"])) > 1


def test_level_at_rates_by_hand() -> None:
    """8 * 4 = 32 is 10 behind 6 * 7 = 42; 2 more for each pin: 5 pins, at 8 * 9 = 72; 10 / 14 and 10 / 8 are no counts."""
    rows = table({"red": 12}, {("Owls", 1): (4,), ("Herons", 1): (7,)})
    [draft] = [one for one in every_draft("level_at_rates", rows) if (one.roles["p"].number, one.roles["q"].number) == (8, 6)]
    one = said("level_at_rates", rows, 8, draft)
    steps = ("6 * 7 = 42", "8 * 4 = 32", "42 - 32 = 10", "8 - 6 = 2", "10 / 2 = 5")
    assert worked(one) == ("5", "8*(4 + x) = 6*(7 + x)", steps, {"L27": "72", "H07": "10"})
