"""The problem models of graphs that pupils make."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Op, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.trials.table import Row, TrialTable
from tests.models.asked import every_draft, every_problem, quantity, said, worked

WHOLE = Demand("whole")
SET_UP = 20
RESULTS = {("Owls", 1): (4, 9, 6), ("Owls", 2): (10, 6, 5), ("Wrens", 1): (3, 8, 0), ("Wrens", 2): (20, 10, 5)}
TABLE = TrialTable(
    tuple(
        Row(group, trial, color, SET_UP, down)
        for (group, trial), counts in RESULTS.items()
        for color, down in zip(("red", "blue", "gold"), counts, strict=True)
    )
)
RED, BLUE, GOLD = (quantity("down", "Owls", (1,), color) for color in ("red", "blue", "gold"))
WRENS = tuple(quantity("down", "Wrens", (2,), color) for color in ("red", "blue", "gold"))

ROWS = [
    # model, grade, ask, answer, relation, steps, slips; each worked by hand
    (
        "graph_to_make",
        1,
        Ask(Value(Op("-", (BLUE, RED))), (), WHOLE),
        ("5", "4 + x = 9", ("9 - 4 = 5",), {"H01": "13", "H02": "9"}),
    ),
    (
        "graph_to_make",
        2,
        Ask(Value(Op("-", (BLUE, GOLD))), (), WHOLE),
        ("3", "6 + x = 9", ("9 - 6 = 3",), {"H01": "15", "H02": "9"}),
    ),
    (
        "graph_to_make",
        3,
        Ask(Value(Op("-", (WRENS[0], WRENS[2]))), (), WHOLE),
        ("15", "5 + x = 20", ("20 - 5 = 15",), {"H01": "25", "H02": "20"}),
    ),
    (
        "pictures_in_row",
        3,
        Ask(Value(Op("/", (WRENS[0], Stated(5, "pins for each picture")))), (), WHOLE),
        ("4", "5*x = 20", ("20 / 5 = 4",), {"J04": "20", "W29": "15", "W30": "100"}),
    ),
]


@pytest.mark.parametrize(("name", "grade", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, grade: int, ask: Ask, row: tuple[object, ...]) -> None:
    draft = next(draft for draft in every_draft(name, TABLE) if draft.ask == ask)
    made = said(name, TABLE, grade, draft)
    assert worked(made) == row


def test_a_color_of_which_none_fell_leaves_nothing_to_draw() -> None:
    """No gold pins by the Wrens in Trial 1."""
    told = {draft.roles["parts"][0].scope for draft in every_draft("graph_to_make", TABLE)}  # type: ignore[index,union-attr]
    assert (("Wrens",), (1,)) not in {scope[:2] for scope in told}
    assert (("Owls",), (1,)) in {scope[:2] for scope in told}


def test_a_graph_is_of_one_group_or_one_trial() -> None:
    """2.MD.D.10, 3.MD.B.3: one data set; the class over both trials is neither."""
    for name in ("graph_to_make", "pictures_in_row"):
        for draft in every_draft(name, TABLE):
            groups, trials, _ = draft.roles["parts"][0].scope  # type: ignore[index,union-attr]
            assert groups is not None or trials is not None


def test_grade_1_draws_at_most_three_categories_and_no_scale_of_steps() -> None:
    """1.MD.C.4: up to three categories; 2.MD.D.10: single units, as for grade 1."""
    four = TrialTable(tuple(Row("Owls", 1, color, 20, down) for color, down in (("red", 3), ("blue", 12), ("gold", 7), ("green", 5))))
    assert every_problem("graph_to_make", four, 1) == []
    assert every_problem("graph_to_make", four, 2) != []
    assert max(int(given.number) for one in every_problem("graph_to_make", TABLE, 2) for given in one.givens) <= 20


def test_from_the_results_table_every_color_is_read_for_the_graph() -> None:
    """Two bars are compared, three are drawn: three cells."""
    draft = next(draft for draft in every_draft("graph_to_make", TABLE) if draft.ask == Ask(Value(Op("-", (BLUE, RED))), (), WHOLE))
    made = said("graph_to_make", TABLE, 2, draft, frozenset({"table"}))
    assert set(made.cells) == {("Owls", 1, color) for color in ("red", "blue", "gold")}


def test_rows_hold_whole_pictures_and_at_most_one_half() -> None:
    """10, 6 and 5 by twos: 5, 3 and 2 and a half; by fives the 6 cannot be drawn, and the row of 5 with a half is not asked for."""
    owls = [draft for draft in every_draft("pictures_in_row", TABLE) if draft.roles["asked"].scope[:2] == (("Owls",), (2,))]  # type: ignore[union-attr]
    assert {(draft.roles["each"].number, draft.roles["asked"].scope.colors) for draft in owls} == {(2, ("red",)), (2, ("blue",))}  # type: ignore[union-attr]
