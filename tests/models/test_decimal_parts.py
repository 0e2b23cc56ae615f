"""Decimals that are worked with, on small tables; every value, step and slip worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Stated
from mathgen.trials.scope import Scope
from tests.models.asked import every_draft, said, worked
from tests.tables import table

TEN = table({"red": 4, "gold": 5, "blue": 1}, {("Owls", 1): (2, 3, 1), ("Owls", 2): (1, 4, 0)})
FORTY = table({"red": 16, "gold": 14, "blue": 10}, {("Owls", 1): (8, 10, 2), ("Owls", 2): (5, 12, 4)})
HUNDRED = table({"red": 40, "gold": 35, "blue": 25}, {("Owls", 1): (30, 17, 8), ("Owls", 2): (11, 12, 13)})
OWLS_1 = Scope(("Owls",), (1,), None)

ROWS = {
    # model: (table, colors, number that only the words give, grade, answer, relation, steps, slips)
    "joined_parts_as_decimal": (
        TEN, ("red", "blue"), None, 4, "0.3", "10*x = 2 + 1", ("2 + 1 = 3", "3 / 10 = 3/10", "3/10 = 0.3"),
        {"D31": "0.2", "A03": "0.7", "D18": "0.03", "D01": "3.1"},
    ),
    "add_decimal_parts": (
        FORTY, ("red", "gold"), None, 5, "0.45", "8/40 + 10/40 = x", ("0.2 + 0.25 = 0.45",), {"E31": "0.27", "E32": "0.05", "D31": "0.2"},
    ),
    "about_both_parts": (
        HUNDRED, ("red", "gold"), None, 5, "0.5", "30/100 + 17/100 = x", ("0.3 + 0.17 = 0.47",), {"D15": "0.4", "E11": "0"},
    ),
    "add_decimal_parts, thousandths": (
        FORTY, ("red", "gold", 2), None, 6, "0.425", "5/40 + 12/40 = x", ("0.125 + 0.3 = 0.425",),
        {"E31": "0.128", "E32": "0.175", "D31": "0.125"},
    ),
    "rest_after_decimal_parts": (
        FORTY, ("red",), None, 5, "0.3", "20/40 + 8/40 + x = 1", ("1 - 0.5 - 0.2 = 0.3",), {"C31": "0.7", "C32": "0.5", "C33": "0.8"},
    ),
    "part_from_decimal": (
        TEN, ("gold",), 20, 5, "12", "5*x = 3*20", ("0.6 * 20 = 12",), {"E34": "120", "A15": "8", "G05": "18"},
    ),
    "whole_from_decimal": (
        TEN, ("gold",), 12, 6, "20", "3/5*x = 12", ("12 / 0.6 = 20",), {"E36": "2", "G13": "14", "A21": "8"},
    ),
    "add_tenths_and_hundredths": (
        HUNDRED, ("red", "gold"), None, 4, "47/100", "30/100 + 17/100 = x", ("3/10 = 30/100", "30/100 + 17/100 = 47/100"),
        {"C02": "20/100", "C01": "20/110", "C12": "13/100", "A05": "47"},
    ),
}  # fmt: skip


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    results, colors, number, grade, *expected = ROWS[row]
    name, trial = row.partition(",")[0], next((one for one in colors if isinstance(one, int)), 1)
    wanted = tuple(color for color in colors if isinstance(color, str))
    found = []
    for draft in every_draft(name, results):
        parts = draft.roles["parts"] if "parts" in draft.roles else (draft.roles["part"],)
        numbers = [one.number for one in draft.roles.values() if isinstance(one, Stated)]
        colors_of = tuple(part.scope.colors and part.scope.colors[0] for part in parts)
        if colors_of == wanted and number in (None, *numbers) and all(part.scope.trials == (trial,) for part in parts):
            found.append(draft)
    assert len(found) == 1, found
    one = said(name, results, grade, found[0])
    assert worked(one) == tuple(expected)


def test_a_decimal_that_does_not_end_within_thousandths_is_not_asked() -> None:
    """1/3 and 1/16 of a set are no decimals for pupils to work with."""
    sixteen = table({"red": 9, "gold": 7}, {("Owls", 1): (1, 2)})
    for name in ("add_decimal_parts", "rest_after_decimal_parts", "part_from_decimal", "whole_from_decimal"):
        assert not list(every_draft(name, sixteen)), name


def test_what_is_left_is_never_as_much_as_a_part_that_is_told() -> None:
    """Owls, Trial 1: of 40 pins, 20 were left standing and 10 gold ones knocked down; so were 10 others."""
    asked = [draft.roles["part"].scope for draft in every_draft("rest_after_decimal_parts", FORTY)]
    assert Scope(None, (1,), ("red",)) in asked or Scope(("Owls",), (1,), ("red",)) in asked
    assert all(scope.colors != ("gold",) or scope.trials != (1,) for scope in asked)
