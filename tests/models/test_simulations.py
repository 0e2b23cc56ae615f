"""Simulations: the model by hand on a small table, and what no draft of it may be."""

from __future__ import annotations

import pytest
from sympy import Integer

from mathgen.asks.expression import Stated
from mathgen.proof import raw
from mathgen.reading import evaluate as reading_evaluate
from tests.models.asked import every_draft, judged, said, worked
from tests.tables import table

RESULTS = table({"red": 10}, {("Owls", 1): (4,)})


def test_ten_runs_by_hand() -> None:
    """4 of 10 fell: the digits 1 to 4 stand for a pin that falls, in both places of a run."""
    found = [draft for draft in every_draft("two_simulated", RESULTS) if draft.roles["event"] == "both"]
    assert found
    for draft in found:
        runs = [run.number for run in draft.roles["runs"]]  # type: ignore[union-attr]
        assert len(runs) == 10
        both = sum(1 for run in runs if all("1" <= digit <= "4" for digit in str(run)))
        some = sum(1 for run in runs if any("1" <= digit <= "4" for digit in str(run)))
        made = said("two_simulated", RESULTS, 7, draft)
        answer, relation, steps, slips = worked(made)
        ones = " + ".join(["1"] * both)
        assert relation == f"10*x = {ones}"
        assert steps == (*((f"{ones} = {both}",) if both > 1 else ()), f"{both} / 10 = {both}/10")
        assert slips == {"K81": f"{some}/10", "K82": "4/10", "K83": str(both)}
        assert made.answer.exact * 10 == both
        assert answer in (f"{both}/10", "1/5", "2/5", "3/5", "4/5", "1/2")


def test_a_run_is_two_digits_and_none_is_met_twice() -> None:
    drafts = list(every_draft("two_simulated", RESULTS))
    for draft in drafts:
        runs = draft.roles["runs"]
        assert isinstance(runs, tuple)
        assert all(isinstance(run, Stated) and 10 <= run.number <= 99 for run in runs)
        assert len(set(runs)) == 10


def test_the_digits_are_as_many_of_ten_as_fell() -> None:
    assert {draft.roles["last"].number for draft in every_draft("two_simulated", RESULTS)} == {4}  # type: ignore[union-attr]
    assert not list(every_draft("two_simulated", table({"red": 8}, {("Owls", 1): (3,)})))


def _disagreeing() -> set[str]:
    made = judged("two_simulated", RESULTS, 7, next(every_draft("two_simulated", RESULTS)))
    return {route for route, verdict in made.proof if verdict != "agrees"}


def test_a_run_miscounted_in_one_route_is_caught(monkeypatch: pytest.MonkeyPatch) -> None:
    with monkeypatch.context() as one:
        one.setattr(raw, "_digits", lambda tally: 9)
        assert "relation" in _disagreeing()
    with monkeypatch.context() as one:
        one.setattr(reading_evaluate, "_tally", lambda numbers, tally: Integer(9))
        assert "reading" in _disagreeing()
    assert not _disagreeing()
