"""The problem model of limits."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Stated
from tests.models.asked import every_draft, said, worked
from tests.tables import table

TABLE = table({"red": 12}, {("Owls", 1): (8,), ("Owls", 2): (11,)})

ROWS = [
    # below, loss, limit, answer, relation, steps, slips; each worked by hand: 4 of the Owls' pins stand in Trial 1
    (
        "at most",
        2,
        20,
        ("6", "2*4 + 2*x = 20", ("2 * 4 = 8", "20 - 8 = 12", "12 / 2 = 6"), {"L47": "5", "L48": "10", "L49": "12"}),
    ),
    (
        "less than",
        2,
        20,
        ("5", "2*4 + 2*(x + 1) = 20", ("2 * 4 = 8", "20 - 8 = 12", "12 / 2 = 6", "6 - 1 = 5"), {"L46": "6", "L48": "9", "L49": "12"}),
    ),
]


@pytest.mark.parametrize(("below", "loss", "limit", "row"), ROWS)
def test_each_row_worked_by_hand(below: str, loss: int, limit: int, row: tuple[object, ...]) -> None:
    told = (Stated(loss, "points lost for each"), Stated(limit, "limit in points"), below)
    [draft] = [one for one in every_draft("most_allowed", TABLE) if (one.roles["p"], one.roles["limit"], one.roles["below"]) == told][:1]
    made = said("most_allowed", TABLE, 7, draft)
    assert worked(made) == row


def test_one_pin_that_stands_is_no_story() -> None:
    """In Trial 2 only one of the 12 pins stands."""
    assert {draft.roles["standing"].scope.trials for draft in every_draft("most_allowed", TABLE)} == {(1,)}  # type: ignore[union-attr]
