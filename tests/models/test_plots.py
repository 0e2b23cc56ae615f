"""The problem models of dot plots and histograms that pupils make."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Stated, Tally, Value
from mathgen.exact.demand import Demand
from mathgen.proof.judge import proved
from mathgen.trials.table import Row, TrialTable
from tests.models.asked import every_draft, every_problem, quantity, said, worked

WHOLE = Demand("whole")
GROUPS = ("Owls", "Wrens", "Kites", "Terns", "Gulls", "Rooks")
DOWN = {1: (9, 5, 5, 12, 7, 9), 2: (3, 3, 3, 3, 3, 4)}
TABLE = TrialTable(
    tuple(Row(group, trial, "red", 20, down) for trial, counts in DOWN.items() for group, down in zip(GROUPS, counts, strict=True))
)
SERIES = tuple(quantity("down", group, (1,), "red") for group in GROUPS)
AT = "number on the line"

ROWS = [
    # model, ask, answer, relation, steps, slips; each worked by hand on 9, 5, 5, 12, 7, 9
    ("dots_above", Tally(SERIES, "=", Stated(9, AT)), ("2", "x = 1 + 1", ("1 + 1 = 2",), {"W31": "9", "W32": "6"})),
    ("dots_above", Tally(SERIES, ">", Stated(7, AT)), ("3", "x = 1 + 1 + 1", ("1 + 1 + 1 = 3",), {"W31": "7", "W33": "4", "W32": "6"})),
    ("dots_above", Tally(SERIES, "<", Stated(9, AT)), ("3", "x = 1 + 1 + 1", ("1 + 1 + 1 = 3",), {"W31": "9", "W33": "5", "W32": "6"})),
    (
        "numbers_in_bar",
        Tally(SERIES, "from", Stated(9, "from"), Stated(11, "to")),
        None,
    ),
    (
        "numbers_in_bar",
        Tally(SERIES, "from", Stated(6, "from"), Stated(8, "to")),
        None,
    ),
    (
        "numbers_in_bar",
        Tally(SERIES, "from", Stated(4, "from"), Stated(7, "to")),
        ("3", "x = 1 + 1 + 1", ("1 + 1 + 1 = 3",), {"W34": "2", "W35": "17", "W36": "6"}),
    ),
]


@pytest.mark.parametrize(("name", "tally", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, tally: Tally, row: tuple[object, ...] | None) -> None:
    """None: no such problem, for one number in a bar is no count, and five bars are more than the words list."""
    draft = next((draft for draft in every_draft(name, TABLE) if draft.ask == Ask(Value(tally), (), WHOLE)), None)
    assert (draft is None) == (row is None)
    if draft is not None:
        made = said(name, TABLE, 6, draft)
        assert worked(made) == row


def test_numbers_that_are_nearly_all_alike_are_not_worth_a_display() -> None:
    """Trial 2: five times 3, and 4."""
    for name in ("dots_above", "numbers_in_bar"):
        series = {draft.roles["series"][0].scope.trials for draft in every_draft(name, TABLE)}  # type: ignore[index,union-attr]
        assert series == {(1,)}


def test_every_bar_that_is_asked_for_has_a_number_at_one_of_its_ends() -> None:
    """Else it would not show whether the ends are counted."""
    for draft in every_draft("numbers_in_bar", TABLE):
        low, high = draft.roles["low"].number, draft.roles["high"].number  # type: ignore[union-attr]
        assert {low, high} & set(DOWN[1])


def test_all_that_grade_6_may_meet_is_proved() -> None:
    for name in ("dots_above", "numbers_in_bar"):
        assert all(proved(one) for one in every_problem(name, TABLE, 6, draws=3))
