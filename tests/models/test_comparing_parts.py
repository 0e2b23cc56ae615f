"""Parts held side by side, on small tables; every value, step and slip worked by hand."""

from __future__ import annotations

import pytest

from mathgen.trials.scope import Scope
from tests.models.asked import every_draft, said, worked
from tests.tables import TWO_GROUPS, table

EIGHT = table({"red": 3, "gold": 5}, {("Owls", 1): (2, 3), ("Owls", 2): (1, 2)})
TEN = table({"red": 4, "gold": 6}, {("Owls", 1): (3, 5), ("Owls", 2): (2, 3)})
TWENTY = table({"red": 10, "gold": 10}, {("Owls", 1): (6, 5), ("Owls", 2): (3, 3)})

ROWS = {
    # model: (table, first color and trial, first rate, grade, answer, relation, steps, slips)
    # 2 of 3 red is more than 3 of 5 gold, but 3 of all 8 pins are more than 2 of them
    "greater_part_of_one_whole": (EIGHT, "red", 1, "2/8", 3, "gold", "x = Max(2/8, 3/8)", (), {"B34": "red"}),
    "greater_part_of_one_whole, unlike": (
        TWO_GROUPS, "red", 1, "1/4", 4, "red", "x = Max(3/12, 2/12)", ("1/4 = 3/12", "1/6 = 2/12"), {"B04": "blue"},
    ),
    "greater_decimal_of_one_whole": (
        TWENTY, "red", 1, "0.3", 4, "red", "x = Max(6/20, 5/20)", ("0.3 = 0.30",), {"E01": "gold"},
    ),
    "how_much_greater": (
        TWO_GROUPS, None, 1, "9/12", 4, "3/12", "6/12 + x = 9/12", ("9/12 - 6/12 = 3/12",), {"C43": "15/12", "A05": "3", "C44": "9/12"},
    ),
    "how_much_greater, unlike": (
        TWO_GROUPS, None, 1, "3/4", 5, "1/4", "6/12 + x = 9/12", ("1/2 = 2/4", "3/4 - 2/4 = 1/4"),
        {"C43": "5/4", "C05": "2/2", "C14": "2/4", "C44": "3/4"},
    ),
    "how_much_greater_decimal": (
        TWENTY, None, 1, "0.55", 5, "0.25", "6/20 + x = 11/20", ("0.55 - 0.3 = 0.25",), {"E37": "0.52", "C43": "0.85", "C44": "0.55"},
    ),
}  # fmt: skip


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    results, color, trial, rate, grade, *expected = ROWS[row]
    name = row.partition(",")[0]
    found = [
        draft
        for draft in every_draft(name, results)
        if draft.roles["first"].scope in (Scope(("Owls",), (trial,), color and (color,)), Scope(None, (trial,), color and (color,)))
        and draft.rates[0][1] == rate
        and (name != "greater_part_of_one_whole" or results is not TWO_GROUPS or draft.roles["second"].scope.colors == ("blue",))
        and draft.roles["first"].scope.groups == (("Owls",) if len(results.groups) > 1 else draft.roles["first"].scope.groups)
    ]
    assert len(found) == 1, found
    one = said(name, results, grade, found[0])
    assert worked(one) == tuple(expected)


def test_a_part_that_is_twice_the_other_is_not_asked_about() -> None:
    """6/10 less 3/10 is 3/10: the answer would stand in the text."""
    twice = table({"red": 4, "gold": 6}, {("Owls", 1): (2, 4), ("Owls", 2): (1, 2)})
    assert all(draft.roles["first"].scope.colors is not None for draft in every_draft("how_much_greater", twice))
    assert not [draft for draft in every_draft("how_much_greater_decimal", twice) if draft.roles["first"].scope.colors is None]


def test_sets_of_two_sizes_have_no_difference() -> None:
    assert list(every_draft("how_much_greater", TEN))
    for draft in every_draft("how_much_greater", TEN):
        assert draft.sets[0] == draft.sets[1]
