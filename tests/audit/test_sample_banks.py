"""Every problem of every sample's bank passes the independent audit."""

from __future__ import annotations

import ast
from collections import Counter
from pathlib import Path

import pytest

from mathgen.models.registry import problem_models
from tests.audit.audit import audit_bank
from tests.audit.banks import EVERY_NAME, GRADES, NAMES, lines, sample, sample_problems, words
from tests.audit.results import Results

AUDITOR = (
    "answers", "asked", "audit", "board", "choices", "givens", "graphs", "lengths", "points", "printed", "published", "results",
    "standards",
    "told_scores", "signed", "simulations", "truths", "wording", "working",
    "listings", "remainders", "shared_factors", "successes", "expressions", "verdicts", "prices",
)  # fmt: skip


@pytest.mark.parametrize("name", EVERY_NAME)
def test_no_problem_of_a_sample_has_a_fault(name: str) -> None:
    table = sample(name)
    found = audit_bank(lines(sample_problems(name)), Results.of(table.prices or table.rows), words(name))
    assert not found, "\n".join(found[:40])


@pytest.mark.parametrize("name", NAMES)
def test_each_sample_has_problems_in_every_grade_of_at_least_two_structures(name: str) -> None:
    models = {grade: {problem.model for problem in sample_problems(name) if problem.grade == grade} for grade in GRADES}
    few = {grade: found for grade, found in models.items() if len(found) < 2}
    assert not few


def test_every_model_has_a_slip_that_survives_on_some_sample() -> None:
    kept: Counter[str] = Counter()
    for name in EVERY_NAME:
        kept.update(problem.model for problem in sample_problems(name) if problem.slips)

    assert {model.name for model in problem_models()} == set(kept)


@pytest.mark.parametrize("module", AUDITOR)
def test_the_audit_imports_nothing_of_the_program(module: str) -> None:
    tree = ast.parse((Path(__file__).parent / f"{module}.py").read_text(encoding="utf-8"))
    imported = [node.module or "" for node in ast.walk(tree) if isinstance(node, ast.ImportFrom)]
    imported += [alias.name for node in ast.walk(tree) if isinstance(node, ast.Import) for alias in node.names]
    assert imported
    own = {f"tests.audit.{one}" for one in AUDITOR} | {"tests.audit"}
    allowed = {"__future__", "ast", "re", "collections", "collections.abc", "dataclasses", "functools", "itertools", "typing"}
    foreign = {one for one in imported if one not in allowed | own and not one.startswith("sympy")}
    assert not foreign
