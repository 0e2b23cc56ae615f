"""The problem models of expressions with a letter."""

from __future__ import annotations

import pytest

from mathgen.asks import evaluate
from mathgen.asks.expression import Ask, Op, Stated, Tally, Value
from mathgen.exact.demand import Demand
from tests.models.asked import every_draft, judged, problem, quantity, said, worked
from tests.tables import table

TABLE = table({"red": 12}, {("Owls", 1): (8,), ("Owls", 2): (11,)})

ROWS = [
    # model, grade, answer, relation, slips; each worked by hand
    ("rest_with_letter", 6, "12 − n", "x = 12 - n", {"Q01": "n − 12", "Q02": "n + 12"}),
    ("total_with_letter", 6, "8 + n", "x = 8 + n", {"Q03": "8n", "Q04": "n − 8"}),
    ("inequality_for_goal", 6, "n > 8", "x = n - 8", {"Q07": "8 > n", "Q08": "n > 12"}),
    ("points_in_another_form", 7, "2 × 8 + 2n", "x = 2*8 + 2*n", {"Q05": "2 × 8 + n", "Q06": "8 + 2n"}),
    ("points_in_another_form", 7, "2 × 8 + 2n", "x = 2*8 + 2*n", {"Q05": "2 × 8 + n", "Q14": "2 × 8 − 2n"}),
]


@pytest.mark.parametrize(("name", "grade", "answer", "relation", "slips"), ROWS)
def test_each_row_worked_by_hand(name: str, grade: int, answer: str, relation: str, slips: dict[str, str]) -> None:
    shown = {answer, *slips.values()}
    drafts = [draft for draft in every_draft(name, TABLE) if set(draft.ask.goal.labels) == shown]  # type: ignore[union-attr]
    orders = {draft.ask.goal.labels for draft in drafts}  # type: ignore[union-attr]
    assert len(orders) == 6  # in whatever order they are shown
    for draft in drafts[:6]:
        made = said(name, TABLE, grade, draft)
        assert worked(made) == (answer, relation, (), slips)


def test_a_wrong_expression_as_the_key_is_caught_by_each_route_that_finds_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(evaluate, "_same", lambda goal, totals: next(label for label in goal.labels if label != "12 − n"))
    made = judged("rest_with_letter", TABLE, 6, next(every_draft("rest_with_letter", TABLE)))
    wrong = {route for route, verdict in made.proof if verdict != "agrees"}
    assert wrong == {"steps", "relation", "reading"}


SERIES = tuple(quantity("down", "Owls", (trial,), "red") for trial in (1, 2, 3, 4, 5))


def test_what_is_left_of_n_pins_by_hand() -> None:
    """3 of 10 fall: n less 3 tenths of n is 7 tenths of n."""
    results = table({"red": 10}, {("Owls", 1): (3,)})
    rate = Op("/", (quantity("down", "Owls", (1,), "red"), quantity("set_up", "Owls", (1,), "red")))
    made = problem("left_as_a_multiple", results, 7, Ask(Value(Op("-", (Stated(1, "whole"), rate))), (), Demand("any")))
    assert worked(made) == ("0.7", "3/10 + x = 1", ("1 - 0.3 = 0.7",), {"Q09": "0.3", "Q10": "1.3"})


def test_the_results_in_a_limit_by_hand() -> None:
    """Of 8, 11, 9, 8, and 12, two are greater than 9; one is 9."""
    results = table({"red": 12}, {("Owls", trial): (down,) for trial, down in zip((1, 2, 3, 4, 5), (8, 11, 9, 8, 12), strict=True)})
    made = problem(
        "results_in_limit",
        results,
        6,
        Ask(Value(Tally(SERIES, ">", Stated(9, "limit"))), (), Demand("whole")),
        frozenset({"words", "table"}),
    )
    assert worked(made) == ("2", "x = 1 + 1", ("1 + 1 = 2",), {"Q11": "3", "Q13": "9"})


def test_a_limit_is_one_of_the_results() -> None:
    """Who counts 9 as greater than 9 gets another number."""
    results = table({"red": 12}, {("Owls", trial): (down,) for trial, down in zip((1, 2, 3, 4, 5), (8, 11, 9, 8, 12), strict=True)})
    drafts = list(every_draft("results_in_limit", results))
    assert drafts
    assert {draft.roles["limit"].number for draft in drafts} <= {8, 9, 11, 12}  # type: ignore[union-attr]
