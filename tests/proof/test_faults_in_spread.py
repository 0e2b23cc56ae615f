"""Faults planted in the working out of deviations and quartiles, in one route or in several: the others catch them."""

from __future__ import annotations

import pytest

from mathgen.asks import evaluate as asks_evaluate
from mathgen.asks import relation as asks_relation
from mathgen.asks.steps import centers
from mathgen.bank.build import Report, build_bank
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.proof import by_relation, list_statistics
from mathgen.proof.judge import proved
from mathgen.reading import evaluate as reading_evaluate
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table

DEVIATION, HALVES = "mean_absolute_deviation", ("interquartile_range", "box_plot")


def refused(*routes: str) -> set[str]:
    """The models of spread that keep a problem. What is refused, these routes have to refuse, each of them."""
    report = Report()
    table = read_table("samples/main.csv", ReadOptions()).table
    kept = {one.model for one in build_bank(Desk(table, scenario("ramp")), load("ccss"), (6,), seed=5, per_model=6, report=report)}
    for name in report.failed:
        # On a shadow table the relation's route solves for the others: where two values are compared, its fault shows in the reading.
        assert not name.startswith((DEVIATION, *HALVES)) or all(route in name for route in routes), name
    return kept & {DEVIATION, *HALVES}


def test_without_a_fault_every_model_keeps_problems() -> None:
    assert refused() == {DEVIATION, *HALVES}


def test_a_wrong_middle_is_caught_in_the_key(monkeypatch: pytest.MonkeyPatch) -> None:
    honest = asks_evaluate._median
    monkeypatch.setattr(asks_evaluate, "_median", lambda numbers: 2 * honest(numbers))
    assert refused() == {DEVIATION}


def test_signed_distances_are_caught_in_the_key(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(asks_evaluate, "abs", lambda number: number, raising=False)
    assert DEVIATION not in refused()


def test_a_wrong_middle_is_caught_in_the_relation(monkeypatch: pytest.MonkeyPatch) -> None:
    honest = by_relation._at_place
    monkeypatch.setattr(by_relation, "_at_place", lambda expr, rows: honest(expr, rows) * 2)
    assert refused("relation") == {DEVIATION}


def test_a_wrong_distance_is_caught_in_the_relation(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(by_relation, "abs", lambda number: number + 1, raising=False)
    assert refused("relation") == set(HALVES)


def test_the_lower_half_for_the_upper_is_caught_in_the_relation(monkeypatch: pytest.MonkeyPatch) -> None:
    honest = asks_relation._between
    monkeypatch.setattr(asks_relation, "_between", lambda series, start, end: honest(series, 0, end - start))
    assert refused("relation") <= {DEVIATION, "box_plot"}


def test_a_wrong_statistic_is_caught_by_the_steps_own_check(monkeypatch: pytest.MonkeyPatch) -> None:
    honest = list_statistics._twice_the_middle
    monkeypatch.setattr(list_statistics, "_twice_the_middle", lambda rising: honest(rising) + rising[-1])
    assert refused("steps") <= {DEVIATION}


def test_a_wrong_middle_is_caught_in_the_reading(monkeypatch: pytest.MonkeyPatch) -> None:
    honest = reading_evaluate._middle
    monkeypatch.setattr(reading_evaluate, "_middle", lambda ordered: honest(ordered) + ordered[-1])
    assert refused("reading") == {DEVIATION}


def test_a_fault_that_key_and_steps_share_is_caught(monkeypatch: pytest.MonkeyPatch) -> None:
    """Both take the greatest of the half for its middle. What is kept is right all the same: 4, 9, 9 has the middle 9."""
    table, report = read_table("samples/main.csv", ReadOptions()).table, Report()
    with monkeypatch.context() as fault:
        fault.setattr(asks_evaluate, "_median", lambda numbers: sorted(numbers)[-1])
        fault.setattr(centers, "median", lambda lines, numbers, told: max(numbers))
        kept = list(build_bank(Desk(table, scenario("ramp")), load("ccss"), (6,), seed=5, per_model=30, report=report))
    assert sum(number for name, number in report.failed.items() if name.startswith(HALVES)) > 20
    judge = Desk(table, scenario("ramp")).judge
    assert all(proved(judge.prove(one)) for one in kept)
