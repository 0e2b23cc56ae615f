"""A fault planted in any one route's lengths is caught by the others."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from sympy import Rational

from mathgen.asks.steps.cell_reader import CellReader
from mathgen.asks.steps.written_number import mixed
from mathgen.bank.build import Report, build_bank
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.problems.record import Problem
from mathgen.proof.raw import RawRows
from mathgen.reading.evaluate import Counts
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.totals import Totals


def kept() -> tuple[list[Problem], Report]:
    """The problems about lengths that a bank keeps."""
    table = read_table("samples/spaces.csv", ReadOptions()).table
    report = Report()
    bank = build_bank(Desk(table, scenario("ramp")), load("ccss"), (2, 3, 4, 5), 1, 12, report)
    return [problem for problem in bank if problem.strand == "lengths"], report


def test_without_a_fault_all_are_kept() -> None:
    problems, report = kept()
    assert len(problems) > 40
    assert not report.failed


FAULTS: dict[str, tuple[type, str, Callable[[Any], Any]]] = {
    "totals": (Totals, "gap", lambda length: length and length + Rational(1, 4)),
    "steps": (CellReader, "length", lambda number: mixed(2 * number.top, number.bottom)),
    "relation": (RawRows, "length", lambda length: length and length * 2),
    "reading": (Counts, "length", lambda length: length + 1),
}


@pytest.mark.parametrize("route", FAULTS)
def test_a_fault_in_the_lengths_of_one_route_is_caught(route: str, monkeypatch: pytest.MonkeyPatch) -> None:
    holder, name, spoil = FAULTS[route]
    honest = getattr(holder, name)
    monkeypatch.setattr(holder, name, lambda self, *place: spoil(honest(self, *place)))
    problems, report = kept()
    assert problems == []
    # Working that does not end in the key is stopped by the gate already.
    assert sum(report.failed.values()) > (0 if route == "steps" else 40)
