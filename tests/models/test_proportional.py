"""Proportional scores on a small table; every value, step and slip worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Stated
from mathgen.trials.scope import Scope
from tests.models.asked import every_draft, said, worked
from tests.tables import TWO_GROUPS

ROWS = {
    # model: (scope of the first count, numbers that only the words give, grade, answer, relation, steps, slips)
    "constant_of_score": (
        Scope(("Owls",), (1,)), (45,), 7, "5", "9*x = 45", ("45 / 9 = 5",), {"L62": "36", "L28": "45", "L63": "405"},
    ),
    "growth_of_score": (
        # Herons: 2 + 2 + 5 = 9 after 4 + 1 + 3 = 8 is one more; their gold pins are 3, then 5
        Scope(("Herons",), (1,), ("gold",)), (4,), 6,
        "8", "x = 4*(5 - 3)", ("5 - 3 = 2", "4 * 2 = 8"), {"L29": "2", "L30": "20", "L31": "32"},
    ),
    # Gold pins of both trials: the Owls 4 + 2 = 6, the Herons 3 + 5 = 8.
    "steeper_line": (
        Scope(("Owls",), None, ("gold",)), (30, 32), 8,
        "Owls", "x = Max(30/6, 32/8)", ("30 / 6 = 5", "32 / 8 = 4"), {"L32": "Herons"},
    ),
    "is_proportional": (
        Scope(("Owls",), None, ("gold",)), (30, 40), 7,
        "Yes", "x = 30/6 - 40/8", ("30 / 6 = 5", "40 / 8 = 5"), {"L34": "No"},
    ),
    "is_proportional, not": (
        Scope(("Owls",), None, ("gold",)), (30, 32), 7,
        "No", "x = 30/6 - 32/8", ("30 / 6 = 5", "32 / 8 = 4"), {"L33": "Yes"},
    ),
    "constant_from_growth": (
        Scope(("Herons",), (1,), ("gold",)), (8,), 7,
        "4", "(5 - 3)*x = 8", ("5 - 3 = 2", "8 / 2 = 4"), {"L35": "8", "L37": "2"},
    ),
    "points_for_one_more": (
        Scope(("Herons",), (1,), ("gold",)), (12, 20), 6,
        "4", "(5 - 3)*x = 20 - 12", ("20 - 12 = 8", "5 - 3 = 2", "8 / 2 = 4"), {"L38": "8", "L37": "2", "L39": "20"},
    ),
    "score_in_proportion": (
        Scope(("Owls",), None, ("gold",)), (30,), 7,
        "40", "6*x = 30*8", ("30 / 6 = 5", "5 * 8 = 40"), {"L40": "32", "L41": "5", "L42": "30"},
    ),
    "slopes_apart": (
        Scope(("Owls",), None, ("gold",)), (30, 32), 8,
        "1", "32/8 + x = 30/6", ("30 / 6 = 5", "32 / 8 = 4", "5 - 4 = 1"), {"L43": "2", "L44": "5", "L45": "9"},
    ),
}  # fmt: skip


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    scope, numbers, grade, *expected = ROWS[row]
    name = row.partition(",")[0]
    found = [
        draft
        for draft in every_draft(name, TWO_GROUPS)
        if draft.roles.get("down", draft.roles.get("first")).scope == scope
        and tuple(one.number for one in draft.roles.values() if isinstance(one, Stated)) == numbers
    ]
    one = said(name, TWO_GROUPS, grade, found[0])
    assert worked(one) == tuple(expected)


def test_what_grows_by_one_is_not_asked_for() -> None:
    """Its growth would be the number beside the letter."""
    assert all(draft.roles["first"].scope.colors != ("red",) for draft in every_draft("growth_of_score", TWO_GROUPS))
