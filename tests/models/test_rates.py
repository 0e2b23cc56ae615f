"""Rates and ratio tables on a small table; every value, step and slip worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Quantity, Stated
from mathgen.trials.scope import Scope
from tests.models.asked import every_draft, said, worked
from tests.tables import TWO_GROUPS, table

# Owls, both trials: 15 of 24 pins; 4 of 8 red, 5 of 6 blue, 6 of 10 gold. Herons, Trial 1: 8 of 12, so 4 were left standing.
OWLS = ("Owls",)
ROWS = {
    # model: (scope of the first role, number that only the words give, answer, relation, steps, slips)
    "unit_rate": (
        "total", Scope(OWLS, None, ("gold",)), None, "3", "2*x = 6", ("6 / 2 = 3",), {"G31": "2/6", "G32": "12", "G33": "6"},
    ),
    "unit_rate, no whole number": (
        "total", Scope(OWLS, None, None), None, "15/2", "2*x = 15", ("15 / 2 = 15/2",), {"G31": "2/15", "G32": "30", "G33": "15"},
    ),
    "unit_rate_of_parts": (
        "first", Scope(("Herons",), (1,), None), None, "2", "4*x = 8", ("8 / 4 = 2",),
        {"G34": "4", "G31": "4/8", "G35": "8/12", "G36": "8"},
    ),
    "count_at_this_rate": (
        "total", Scope(OWLS, None, None), 12, "90", "2*x = 15*12", ("15 / 2 = 15/2", "15/2 * 12 = 90"),
        {"G37": "180", "G38": "27", "G05": "25"},
    ),
    "trials_at_this_rate": (
        "total", Scope(OWLS, None, ("gold",)), 36, "12", "6/2*x = 36", ("6 / 2 = 3", "36 / 3 = 12"), {"G39": "18", "G40": "32", "G41": "6"},
    ),
    "ratio_table": (
        "first", Scope(OWLS, (1,), ("red",)), 12, "8", "x = 2*12/3", ("12 / 3 = 4", "2 * 4 = 8"), {"G42": "11", "G43": "4", "G44": "2"},
    ),
}  # fmt: skip


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    role, scope, number, *expected = ROWS[row]
    name = row.partition(",")[0]
    found = []
    for draft in every_draft(name, TWO_GROUPS):
        numbers = [one.number for one in draft.roles.values() if isinstance(one, Stated)]
        second = draft.roles.get("second")
        blue = name != "ratio_table" or (isinstance(second, Quantity) and second.scope.colors == ("blue",))
        down = name != "unit_rate_of_parts" or draft.roles["first"].measure == "down"
        if draft.roles[role].scope == scope and number in (None, *numbers) and blue and down:
            found.append(draft)
    assert len(found) == 1, found
    one = said(name, TWO_GROUPS, 6, found[0])
    assert worked(one) == tuple(expected)


def test_one_trial_has_no_rate_per_trial() -> None:
    single = table({"red": 4, "gold": 5}, {("Owls", 1): (3, 2)})
    for name in ("unit_rate", "count_at_this_rate", "trials_at_this_rate"):
        assert not list(every_draft(name, single)), name


def test_the_next_trials_are_more_than_those_that_were_done() -> None:
    for draft in every_draft("count_at_this_rate", TWO_GROUPS):
        assert draft.roles["ahead"].number > len(TWO_GROUPS.trials)
