"""The problem models of expressions with a letter."""

from __future__ import annotations

import pytest

from mathgen.asks import evaluate
from mathgen.proof.record import proved
from tests.models.asked import every_draft, said, worked
from tests.tables import table

TABLE = table({"red": 12}, {("Owls", 1): (8,), ("Owls", 2): (11,)})

ROWS = [
    # model, grade, answer, relation, slips; each worked by hand
    ("rest_with_letter", 6, "12 − n", "x = 12 - n", {"Q01": "n − 12", "Q02": "n + 12"}),
    ("total_with_letter", 6, "8 + n", "x = 8 + n", {"Q03": "8n", "Q04": "n − 8"}),
    ("inequality_for_goal", 6, "n > 8", "x = n - 8", {"Q07": "8 > n", "Q08": "n > 12"}),
    ("points_in_another_form", 7, "2 × 8 + 2n", "x = 2*8 + 2*n", {"Q05": "2 × 8 + n", "Q06": "8 + 2n"}),
]


@pytest.mark.parametrize(("name", "grade", "answer", "relation", "slips"), ROWS)
def test_each_row_worked_by_hand(name: str, grade: int, answer: str, relation: str, slips: dict[str, str]) -> None:
    drafts = [draft for draft in every_draft(name, TABLE) if answer in draft.ask.goal.labels]  # type: ignore[union-attr]
    orders = {draft.ask.goal.labels for draft in drafts}  # type: ignore[union-attr]
    assert len(orders) == 6  # in whatever order they are shown
    for draft in drafts[:6]:
        made = said(name, TABLE, grade, draft)
        assert proved(made), made.proof
        assert worked(made) == (answer, relation, (), slips)


def test_a_wrong_expression_as_the_key_is_caught_by_each_route_that_finds_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(evaluate, "_same", lambda goal, totals: next(label for label in goal.labels if label != "12 − n"))
    made = said("rest_with_letter", TABLE, 6, next(every_draft("rest_with_letter", TABLE)))
    wrong = {route for route, verdict in made.proof if verdict != "agrees"}
    assert wrong == {"steps", "relation", "reading"}
