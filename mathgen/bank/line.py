"""A problem as one line of a bank file."""

from __future__ import annotations

from typing import Any, get_args

from sympy import Rational

from mathgen.asks.expression import Money
from mathgen.exact.forms import fraction
from mathgen.exact.parse import written
from mathgen.problems.record import PRICE, Cell, Given, Problem
from mathgen.trials.scope import Scope


def as_line(problem: Problem) -> dict[str, Any]:
    """The problem as plain data, in the order of the contract's fields."""
    key = problem.answer
    number = key.kind == "number"
    plain: Any = key.exact if key.kind in ("truth", "quotient_remainder", "rubric") else key.shown
    if key.kind == "list":
        plain = str(key.exact).split(", ")
    return {
        "id": problem.id,
        "grade": problem.grade,
        "standards": list(problem.standards),
        "skill": problem.skill,
        "strand": problem.strand,
        "model": problem.model,
        "level": problem.level,
        "text": problem.text,
        "needs_table": problem.needs_table,
        "cells": list(map(_cell, problem.cells)),
        "answer": {
            "kind": key.kind,
            "value": fraction(_value(key.shown)) if number else plain,
            "display": key.display,
            "accepted": list(key.accepted),
            "demands": str(key.demand),
            "exact": fraction(key.exact) if number else plain,
            # Of a rubric the value is the verdict: what a reason for it names, and how they compare.
            **({"facts": [{"value": one.shown, "quantity": one.quantity} for one in key.reasons]} if key.reasons else {}),
        },
        "steps": list(problem.board),
        "relation": problem.relation,
        "givens": [_given(given) for given in problem.givens],
        "slips": [{"id": slip.id, "value": slip.value, "line": slip.line} for slip in problem.slips],
        "proof": dict(problem.proof),
    }


def _cell(cell: Cell) -> dict[str, str | int]:
    group, trial, color = cell
    return {"item": group} if trial == PRICE and color in get_args(Money) else {"group": group, "trial": trial, "color": color}


def _value(text: str) -> Rational:
    return written(text).value


def _given(given: Given) -> dict[str, Any]:
    return {"number": given.number, "quantity": given.quantity, "scope": _scope(given.scope), "where": given.where}


def _scope(scope: Scope | None) -> dict[str, list[str | int] | str] | None:
    """Which groups, trials and colors; "all" where it is every one of the table."""
    if scope is None:
        return None
    return {name: "all" if labels is None else list(labels) for name, labels in zip(scope._fields, scope, strict=True)}
