"""The problem models of feet and inches."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Measured, Op, Stated, Truth, Value
from mathgen.exact.demand import Demand
from tests.models.asked import every_draft, said, worked
from tests.models.test_lengths import spaced

ANY = Demand("any")
TABLE = spaced({("Owls", 1): "5", ("Owls", 2): "9/4", ("Wrens", 1): "9", ("Wrens", 2): "4"})
OWLS_1, OWLS_2 = Measured("gap", "Owls", 1), Measured("gap", "Owls", 2)
WRENS_1, WRENS_2 = Measured("gap", "Wrens", 1), Measured("gap", "Wrens", 2)
FOOT = Stated(12, "inches in a foot")

ROWS = [
    (
        "longer_than_feet",
        4,
        Ask(Truth(Op("*", (Stated(3, "spaces"), WRENS_1)), ">", Op("*", (Stated(2, "feet in all"), FOOT))), (), Demand("truth")),
        ("Yes", "x = 3*9 - 2*12", ("3 * 9 = 27", "2 * 12 = 24"), {"W47": "No"}),
    ),
    (
        "longer_than_feet",
        4,
        Ask(Truth(Op("*", (Stated(7, "spaces"), OWLS_1)), ">", Op("*", (Stated(3, "feet in all"), FOOT))), (), Demand("truth")),
        ("No", "x = 7*5 - 3*12", ("7 * 5 = 35", "3 * 12 = 36"), {"W45": "Yes"}),
    ),
    # model, grade, ask, answer, relation, steps, slips; each worked by hand
    (
        "feet_next_time",
        4,
        Ask(Value(Op("-", (Op("*", (Stated(2, "feet next time"), FOOT)), OWLS_1))), (), ANY),
        ("19", "5 + x = 2*12", ("2 * 12 = 24", "24 - 5 = 19"), {"H07": "24", "W13": "15", "W14": "29"}),
    ),
    (
        "row_in_feet",
        5,
        Ask(Value(Op("/", (Op("*", (Stated(6, "spaces"), OWLS_1)), FOOT))), (), ANY),
        ("2 1/2", "12*x = 6*5", ("6 * 5 = 30", "30 / 12 = 30/12", "30/12 = 2 1/2"), {"W15": "30", "W16": "360", "W17": "3"}),
    ),
    (
        "row_in_feet",
        6,
        Ask(Value(Op("/", (Op("*", (Stated(8, "spaces"), OWLS_2)), FOOT))), (), ANY),
        (
            "1 1/2",
            "12*x = 8*(9/4)",
            ("2 1/4 = 9/4", "8 * 9/4 = 18", "18 / 12 = 18/12", "18/12 = 1 1/2"),
            {"W15": "18", "W16": "216", "W17": "1 4/5"},
        ),
    ),
    (
        "spaces_in_feet",
        5,
        Ask(Value(Op("/", (Op("*", (Stated(6, "feet in all"), FOOT)), WRENS_1))), (), Demand("whole")),
        ("8", "9*x = 6*12", ("6 * 12 = 72", "72 / 9 = 8"), {"H07": "72", "W18": "54"}),
    ),
    (
        "spaces_in_feet",
        6,
        Ask(Value(Op("/", (Op("*", (Stated(5, "feet in all"), FOOT)), WRENS_2))), (), Demand("whole")),
        ("15", "4*x = 5*12", ("5 * 12 = 60", "60 / 4 = 15"), {"H07": "60", "W18": "20", "W19": "3"}),
    ),
]


@pytest.mark.parametrize(("name", "grade", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, grade: int, ask: Ask, row: tuple[object, ...]) -> None:
    draft = next(draft for draft in every_draft(name, TABLE) if draft.ask == ask)
    made = said(name, TABLE, grade, draft)
    assert worked(made) == row


def test_a_row_has_feet_in_halves_or_fourths() -> None:
    """7 spaces of 5 inches make 35 inches: nobody reads 2 11/12 feet off a ruler."""
    counts = [draft.roles["count"] for draft in every_draft("row_in_feet", TABLE) if draft.roles["space"] == OWLS_1]
    assert counts == [Stated(6, "spaces"), Stated(9, "spaces"), Stated(15, "spaces")]
