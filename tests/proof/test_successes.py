"""Successes as each room counts them by itself, and faults in any one of them."""

from __future__ import annotations

from collections.abc import Callable
from random import Random

import pytest

from mathgen.asks.expression import Quantity
from mathgen.asks.steps.cell_reader import CellReader
from mathgen.bank.builder import Builder, Candidate
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.models.registry import problem_models
from mathgen.problems.record import Problem
from mathgen.proof.judge import proved
from mathgen.proof.raw import RawRows
from mathgen.reading.evaluate import Counts
from mathgen.scenario.words import scenario
from mathgen.trials.scope import Label, Measure, Scope
from mathgen.trials.table import TrialTable
from mathgen.trials.totals import Totals
from tests.aimed import AIMED
from tests.models.asked import every_draft

WAYS: dict[str, Callable[[TrialTable, Quantity], int]] = {
    "totals": lambda table, one: Totals(table).total(one.measure, one.scope),
    "raw rows": lambda table, one: RawRows(table).count(one),
    "steps": lambda table, one: sum(CellReader(table).parts(one)),
    "reading": lambda table, one: Counts(table).total(one.measure, one.scope),
}
BY_HAND: list[tuple[Measure, tuple[str, ...] | None, tuple[Label, ...] | None, int]] = [
    ("successes", ("Owls",), None, 3),
    ("successes", ("Wrens",), None, 2),
    ("successes", ("Kites",), None, 3),
    ("successes", None, None, 8),
    ("successes", ("Owls",), (2,), 0),
    ("successes", ("Owls",), (5,), 0),
    ("trials", ("Kites",), None, 4),
    ("trials", None, None, 14),
    ("trials", None, (1, 5), 5),
]


@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize(("measure", "groups", "trials", "count"), BY_HAND)
def test_successes_and_trials_are_those_counted_by_hand(
    way: str, measure: Measure, groups: tuple[str, ...] | None, trials: tuple[Label, ...] | None, count: int
) -> None:
    assert WAYS[way](AIMED, Quantity(measure, Scope(groups, trials))) == count


def problems() -> list[Problem]:
    """All that is asked about successes, in every grade, proved or not."""
    curriculum, desk = load("ccss"), Desk(AIMED, scenario("ramp"))
    found = []
    for model in problem_models("results"):
        drafts = [draft for draft in every_draft(model.name, AIMED) if "hits" in draft.roles]
        for entry in curriculum.entries(model.skill) if drafts else ():
            builder, rng = Builder(desk, curriculum, entry.grade), Random(model.name)
            candidates = [builder.candidate(model, draft, rng) for draft in drafts * 2]
            found += [builder.finish(one) for one in candidates if isinstance(one, Candidate)]
    return found


def test_every_route_agrees() -> None:
    found = problems()
    assert {one.grade for one in found} >= {2, 3, 6, 7}
    assert len(found) > 30
    assert all(map(proved, found))


def _near(self: RawRows, quantity: Quantity) -> int:
    """Counts each trial in which the target fell, whatever else did."""
    found = {(row.group, row.trial) for rows in self._rows_of.values() for row in rows if row.color == row.target and row.down}
    groups, trials, _ = quantity.scope
    return sum(1 for group, trial in found if (groups is None or group in groups) and (trials is None or trial in trials))


def test_near_successes_counted_by_the_raw_rows_are_caught(monkeypatch: pytest.MonkeyPatch) -> None:
    """Each group has a trial in which another color fell too, or the miss of a row is a success less: no count stays the same."""
    honest = RawRows._by_trial
    monkeypatch.setattr(RawRows, "_by_trial", lambda self, one: _near(self, one) if one.measure == "successes" else honest(self, one))
    assert not any(map(proved, problems()))


def test_successes_miscounted_by_the_totals_are_caught(monkeypatch: pytest.MonkeyPatch) -> None:
    honest = Totals._of_trials
    monkeypatch.setattr(Totals, "_of_trials", lambda self, measure, scope: honest(self, measure, scope) + (measure == "successes"))
    assert not any(map(proved, problems()))


def test_trials_judged_the_wrong_way_round_by_the_steps_are_caught(monkeypatch: pytest.MonkeyPatch) -> None:
    honest = CellReader._trials
    monkeypatch.setattr(CellReader, "_trials", lambda self, one: tuple(1 - part for part in honest(self, one)))
    assert not [one.text for one in problems() if one.needs_table and one.answer.kind != "name" and proved(one)]


def test_successes_miscounted_by_the_reading_are_caught(monkeypatch: pytest.MonkeyPatch) -> None:
    honest = Counts._by_trial

    def wrong(self: Counts, measure: Measure, scope: Scope) -> int:
        return honest(self, measure, scope) + (measure == "successes")

    monkeypatch.setattr(Counts, "_by_trial", wrong)
    # The group with the greater fraction may stay the same: then the key is right.
    assert not [one.text for one in problems() if one.answer.kind != "name" and proved(one)]
