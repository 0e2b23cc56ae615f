"""The record of a proof: what each route says of one problem."""

from __future__ import annotations

from mathgen.problems.record import Problem
from mathgen.proof import by_forms, by_relation, by_steps
from mathgen.proof.raw import RawRows
from mathgen.proof.verdict import AGREES

ROUTES = ("steps", "relation", "forms")


def prove(problem: Problem, rows: RawRows) -> Problem:
    """The problem with each route's verdict: ``agrees``, or what is wrong."""
    verdicts = (by_steps.verdict(problem), by_relation.verdict(problem, rows), by_forms.verdict(problem))
    return problem._replace(proof=tuple(zip(ROUTES, verdicts, strict=True)))


def proved(problem: Problem) -> bool:
    """Whether every route in force agrees."""
    return tuple(route for route, _ in problem.proof) == ROUTES and all(verdict == AGREES for _, verdict in problem.proof)
