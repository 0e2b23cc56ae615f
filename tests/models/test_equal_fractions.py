"""Equal fractions with the bottom number unknown, on a small table; worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Stated
from mathgen.trials.scope import Scope
from tests.models.asked import every_draft, said, worked
from tests.tables import TWO_GROUPS

ROWS = {
    # model: (color, top number, grade, answer, relation, steps, slips); Owls, Trial 1: 3 of 4 red, 9 of 12 in all
    "equal_fraction_bottom": (None, 3, 4, "4", "9/3*x = 12", ("9 / 3 = 3", "12 / 3 = 4"), {"B31": "6", "B32": "12", "B33": "3"}),
    "equal_fraction_bottom, more parts": ("red", 6, 3, "8", "x = 4*6/3", ("6 / 3 = 2", "4 * 2 = 8"), {"B31": "7", "B32": "4", "B33": "2"}),
}


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    color, top, grade, *expected = ROWS[row]
    name, scope = row.partition(",")[0], Scope(("Owls",), (1,), (color,) if color else None)
    found = [
        draft
        for draft in every_draft(name, TWO_GROUPS)
        if draft.roles["part"].scope == scope and draft.roles["top"] == Stated(top, "top number")
    ]
    assert len(found) == 1, found
    one = said(name, TWO_GROUPS, grade, found[0])
    assert worked(one) == tuple(expected)
