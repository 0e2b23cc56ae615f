"""The problem models of coordinates."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Measured, Op, Value
from mathgen.exact.demand import Demand
from tests.models.asked import every_draft, quantity, said, worked
from tests.models.spaced import SPACED, fallen

WHOLE, ANY = Demand("whole"), Demand("any")
OWLS_1, OWLS_2 = Measured("gap", "Owls", 1), Measured("gap", "Owls", 2)

ROWS = [
    # model, grade, ask, answer, relation, steps, slips; each worked by hand
    (
        "pins_by_coordinates",
        5,
        Ask(Value(Op("-", (quantity("down", "Owls", (1,)), quantity("down", "Owls", (2,))))), (), WHOLE),
        ("5", "19 + x = 24", ("24 - 19 = 5",), {"W20": "2", "H02": "24", "H01": "43"}),
    ),
    (
        "inches_by_coordinates",
        5,
        Ask(Value(Op("-", (OWLS_2, OWLS_1))), (), ANY),
        ("2", "1 + x = 3", ("3 - 1 = 2",), {"W20": "5", "H02": "3", "H01": "4"}),
    ),
]


@pytest.mark.parametrize(("name", "grade", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, grade: int, ask: Ask, row: tuple[object, ...]) -> None:
    draft = next(draft for draft in every_draft(name, SPACED) if draft.ask == ask)
    assert worked(said(name, SPACED, grade, draft)) == row


def test_points_whose_other_coordinates_give_the_answer_as_well_are_left_out() -> None:
    """(2, 9) and (5, 6): 3 more pins and 3 more inches."""
    assert list(every_draft("pins_by_coordinates", fallen({("Owls", 1): ("2", 9), ("Owls", 2): ("5", 6)}))) == []
