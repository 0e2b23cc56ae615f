"""A sign forgotten in any one route is caught by the others."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from mathgen.asks import evaluate as asks_evaluate
from mathgen.asks.expression import Op
from mathgen.asks.steps.working import Working
from mathgen.bank.build import Report, build_bank
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.problems.record import Problem
from mathgen.proof import by_relation
from mathgen.reading import evaluate as reading_evaluate
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table

TURNED = {"change_between_trials", "result_against_goal", "distance_from_goal", "result_for_zero"}


def kept() -> tuple[list[Problem], Report]:
    """The problems that a bank keeps whose answer takes an opposite or an absolute value."""
    table = read_table("samples/main.csv", ReadOptions()).table
    report = Report()
    bank = build_bank(Desk(table, scenario("ramp")), load("ccss"), (6, 7), 1, 12, report)
    found = [problem for problem in bank if problem.model in TURNED]
    return [problem for problem in found if getattr(problem.ask.goal.exprs[0], "symbol", "") in ("abs", "opposite")], report


def forgets_the_sign(honest: Callable[..., Any], where: int) -> Callable[..., Any]:
    """As the route does, but an opposite or an absolute value is taken for the number itself."""

    def plain(*args: Any) -> Any:
        expr = args[where]
        return honest(*args[:where], expr.args[0] if isinstance(expr, Op) and len(expr.args) == 1 else expr, *args[where + 1 :])

    return plain


ROUTES = {
    "key": (asks_evaluate, "value", 0),
    "steps": (Working, "number", 1),
    "relation": (by_relation, "_symbolic", 0),
    "reading": (reading_evaluate, "evaluate", 0),
}


def test_without_a_fault_all_are_kept() -> None:
    problems, report = kept()
    assert {problem.model for problem in problems} == TURNED
    assert len(problems) > 30
    assert not report.failed


@pytest.mark.parametrize("route", ROUTES)
def test_a_sign_forgotten_by_one_route_is_caught(route: str, monkeypatch: pytest.MonkeyPatch) -> None:
    holder, name, where = ROUTES[route]
    monkeypatch.setattr(holder, name, forgets_the_sign(getattr(holder, name), where))
    problems, _ = kept()
    # A change is read as the later count less the earlier one: no opposite is taken there.
    assert {problem.model for problem in problems} <= ({"change_between_trials", "result_against_goal"} if route == "reading" else set())
