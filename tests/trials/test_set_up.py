"""Which of several statements about set-up counts holds."""

from __future__ import annotations

import pytest

from mathgen.errors import Place
from mathgen.trials.set_up import SetUps, Statement, in_title


def said(count: int, group: str | None = None, trial: int | None = None) -> Statement:
    return Statement("red", count, "a row", Place(count, 1), group, trial)


def test_the_narrowest_statement_holds() -> None:
    set_ups = SetUps([said(4), said(5, "Owls"), said(6, None, 2), said(7, "Owls", 2)])
    found = {(group, trial): set_ups.of(group, trial, "red") for group in ("Owls", "Hawks") for trial in (1, 2)}
    assert {key: value.count for key, value in found.items() if value} == {("Owls", 1): 5, ("Owls", 2): 7, ("Hawks", 1): 4, ("Hawks", 2): 6}
    assert set_ups.of("Owls", 1, "blue") is None


def test_two_statements_of_one_scope_that_disagree_are_a_fault_and_others_are_not() -> None:
    assert SetUps([said(4), said(4), said(5, "Owls"), said(6, None, 1)]).conflicts() == []
    (fault,) = SetUps([said(4), said(5)]).conflicts()
    assert (fault.place.row, fault.found, fault.expected) == (5, "5", "4 red pins set up, as a row says")


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        ("Set up: red 4, blue 3, gold 5", {"red": 4, "blue": 3, "gold": 5}),
        ("Pins set up: 4 red, 3 dark blue and 5 gold pins", {"red": 4, "dark blue": 3, "gold": 5}),
        ("SET UP: Red = 4; Blue = 3", {"red": 4, "blue": 3}),
        ("Red 4, blue 3", {}),
        ("We set up the ramp in room 12", {}),
        ("Pins knocked down", {}),
    ],
)
def test_a_title_gives_set_up_counts_only_where_it_says_so(text: str, counts: dict[str, int]) -> None:
    assert in_title(text) == counts
