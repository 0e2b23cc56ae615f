"""A fraction that comes again, on a small table; every value, step and slip worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Stated
from mathgen.trials.scope import Scope
from tests.models.asked import every_draft, said, worked
from tests.tables import TWO_GROUPS

ROWS = {
    # model: (scope of the part, number that only the words give, grade, answer, relation, steps, slips)
    "sets_knocked_down": (
        Scope(("Owls",), (1,), None), 5, 4, "3 3/4", "x = 5*9/12", ("5 * 3/4 = 3 3/4",),
        {"C45": "1 1/4", "C40": "3/20", "C41": "5 3/4", "C42": "15"},
    ),
    "sets_left_standing": (
        Scope(("Owls",), (1,), None), 6, 4, "1 1/2", "x = 6*(1 - 9/12)", ("4/4 - 3/4 = 1/4", "6 * 1/4 = 1 1/2"),
        {"C45": "4 1/2", "C40": "1/24", "C41": "6 1/4", "C42": "6"},
    ),
    # Owls, both trials: 4 of 8 red pins
    "share_of_a_fraction": (
        Scope(("Owls",), None, ("red",)), 2, 5, "1/4", "2*x = 4/8", ("1/2 / 2 = 1/4",), {"C46": "2/2"},
    ),
}  # fmt: skip


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    scope, number, grade, *expected = ROWS[row]
    found = [
        draft
        for draft in every_draft(row, TWO_GROUPS)
        if draft.roles["part"].scope == scope and number in [one.number for one in draft.roles.values() if isinstance(one, Stated)]
    ]
    assert len(found) == 1, found
    one = said(row, TWO_GROUPS, grade, found[0])
    assert worked(one) == tuple(expected)


def test_a_share_of_pins_is_some_whole_pins() -> None:
    found = list(every_draft("share_of_a_fraction", TWO_GROUPS))
    assert found
    for draft in found:
        bottom, size = int(draft.rates[0][1].partition("/")[2]), draft.sets[0]
        assert size % (bottom * draft.roles["count"].number) == 0


def test_full_sets_by_hand() -> None:
    """Owls, both trials: 15 pins, and 12 were set up for each: 15/12 is 1 3/12."""
    found = [draft for draft in every_draft("full_sets", TWO_GROUPS) if draft.roles["total"].scope == Scope(("Owls",), None, None)]
    assert len(found) == 1
    one = said("full_sets", TWO_GROUPS, 5, found[0])
    slips = {"C50": "1", "C51": "2", "C49": "5/8", "C52": "15"}
    assert worked(one) == ("1 1/4", "24/2*x = 15", ("15 / 12 = 15/12", "15/12 = 1 1/4"), slips)
