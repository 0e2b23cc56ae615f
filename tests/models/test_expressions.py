"""Expressions and equations on a small table; every value, step and slip worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Stated
from mathgen.models.view import TableView
from mathgen.trials.scope import Scope
from mathgen.trials.totals import Totals
from tests.models.asked import every_draft, said, worked
from tests.tables import TWO_GROUPS

ROWS = {
    # model: (whose pins, numbers that only the words give, grade, answer, relation, steps, slips)
    "score_by_rule": (
        # 9 of 12 knocked down; 5 + 9 - (2 + 3) = 9 and 5 * 9 - 2 * 12 = 21
        Scope(("Owls",), (1,)), (5, 2), 6,
        "39", "2*(12 - 9) + x = 5*9", ("5 * 9 = 45", "12 - 9 = 3", "2 * 3 = 6", "45 - 6 = 39"), {"L01": "9", "L03": "45", "L04": "21"},
    ),
    "score_of_colors": (
        # 3 red, 2 blue: the letters swapped make 5 * 2 + 3 * 3 = 19, added 5 + 3 + 3 + 2 = 13, joined 8 * 5 = 40
        Scope(("Owls",), (1,), ("red",)), (5, 3), 6,
        "21", "5*3 + 3*2 = x", ("5 * 3 = 15", "3 * 2 = 6", "15 + 6 = 21"), {"L02": "19", "L01": "13", "L05": "40", "L03": "15"},
    ),
    "equation_standing": (
        # 24 set up in both trials, 9 left standing
        Scope(("Owls",), None), (), 6, "15", "x + 9 = 24", ("24 - 9 = 15",), {"L06": "33", "L07": "9"},
    ),
    "equation_points": (
        Scope(("Owls",), (1,)), (5, 45), 6, "9", "5*x = 45", ("45 / 5 = 9",), {"L08": "40", "L09": "225"},
    ),
    "points_and_bonus": (
        # 55 / 5 = 11 and 65 / 5 = 13; 55 / 15 is no count
        Scope(("Owls",), (1,)), (5, 10, 55), 7,
        "9", "5*x + 10 = 55", ("55 - 10 = 45", "45 / 5 = 9"), {"L10": "11", "L11": "13", "H07": "45"},
    ),
}  # fmt: skip


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    scope, numbers, grade, *expected = ROWS[row]
    found = [
        draft
        for draft in every_draft(row, TWO_GROUPS)
        if draft.roles.get("down", draft.roles.get("first")).scope == scope
        and tuple(one.number for one in draft.roles.values() if isinstance(one, Stated)) == numbers
    ]
    one = said(row, TWO_GROUPS, grade, found[0])
    assert worked(one) == tuple(expected)


@pytest.mark.parametrize("name", ["equation_standing", "equation_points", "points_and_bonus"])
def test_a_count_to_be_solved_for_stands_in_no_cell_and_is_the_answer(name: str) -> None:
    view = TableView(Totals(TWO_GROUPS))
    drafts = list(every_draft(name, TWO_GROUPS))
    assert drafts
    for draft in drafts:
        down = draft.ask.equals
        assert down is not None
        assert not view.is_cell(down)
        assert draft.must_not_show == (down.scope,)


def test_the_letters_of_a_rule_stand_for_different_counts() -> None:
    """Or else a pupil who swaps them would be right."""
    view = TableView(Totals(TWO_GROUPS))
    for name, letters in (("score_by_rule", ("down", "standing")), ("score_of_colors", ("first", "second"))):
        drafts = list(every_draft(name, TWO_GROUPS))
        assert drafts
        assert all(len({view.number(draft.roles[letter]) for letter in letters}) == 2 for draft in drafts)
