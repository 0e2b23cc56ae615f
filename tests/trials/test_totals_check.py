"""Totals against counts."""

from __future__ import annotations

import pytest

from mathgen.errors import Place
from mathgen.trials.readings import TotalCell
from mathgen.trials.totals_check import CountedCell, check_totals

COUNTED = {(2, 3): CountedCell(3, 4), (2, 4): CountedCell(2, 3), (3, 3): CountedCell(1, 4)}
ROW = frozenset({(2, 3), (2, 4)})
COLUMN = frozenset({(2, 3), (3, 3)})


def total(text: str, *sums: frozenset[tuple[int, int]], heading: str = "Total") -> TotalCell:
    return TotalCell(Place(9, 9, None, heading), text, sums)


@pytest.mark.parametrize(
    "right",
    [
        total("5", ROW),
        total("4", ROW, COLUMN),
        total("", ROW),
        total("absent", ROW),
        total("5/7", ROW),
        total("7", ROW, heading="Total pins"),
        total("2", ROW, heading="Total standing"),
        total("3", frozenset({(2, 3), (8, 8)})),
    ],
)
def test_a_total_that_is_the_sum_of_what_it_may_stand_for_is_right(right: TotalCell) -> None:
    assert check_totals([right], COUNTED, set()) == []


@pytest.mark.parametrize(
    ("wrong", "expected"),
    [
        (total("6", ROW), "5, the sum of the counts"),
        (total("7", ROW), "5, the sum of the counts"),
        (total("5/8", ROW), "5 of 7, the sums of the counts"),
        (total("five-ish", ROW), "5, the sum of the counts"),
        (total("3", COLUMN, ROW), "4, the sum of the counts"),
    ],
)
def test_any_other_total_is_a_fault_that_says_the_sum(wrong: TotalCell, expected: str) -> None:
    (fault,) = check_totals([wrong], COUNTED, set())
    assert (fault.place.cell, fault.found, fault.expected) == ("I9", wrong.text, expected)


def test_a_total_over_a_cell_that_cannot_be_read_is_not_checked() -> None:
    assert check_totals([total("99", ROW)], COUNTED, {(2, 4)}) == []
