"""The judge of a table's problems: writes down what each route of the proof says of one."""

from __future__ import annotations

from functools import cached_property
from random import Random

from sympy import Rational

from mathgen.asks.expression import Ask, Quantity, parts_to_share
from mathgen.problems.draft import leaves_of
from mathgen.problems.record import Problem
from mathgen.proof import by_forms, by_reading, by_relation, by_steps
from mathgen.proof.raw import RawRows
from mathgen.proof.verdict import AGREES
from mathgen.reading.evaluate import Counts
from mathgen.reading.read_problem import Reader
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import BY_TRIAL
from mathgen.trials.shadow import shadow
from mathgen.trials.table import TrialTable

ROUTES = ("steps", "relation", "reading", "forms")
_AIMED = 6  # few trials, so that counts of successes agree by luck about one time in three
_SHADOWS = 2  # on one alone, "which" and a median may agree by luck


class Judge:
    """Proves the problems of one table."""

    def __init__(self, table: TrialTable, scenario: Scenario) -> None:
        self.rows = RawRows(table)
        self._reader = Reader(table, scenario)
        darks = [shadow(table, Random(f"shadow {number}")) for number in range(_SHADOWS)]
        self._shadows = tuple((Counts(dark), _Solver(dark)) for dark in darks)
        self._table = table

    @cached_property
    def _aimed(self) -> tuple[tuple[Counts, _Solver], ...]:
        """Shadows for questions about successes, which few tables have."""
        aimed = [shadow(self._table, Random(f"aimed {number}"), aimed=True) for number in range(_AIMED)]
        return tuple((Counts(dark), _Solver(dark)) for dark in aimed)

    def prove(self, problem: Problem) -> Problem:
        """The problem with each route's verdict: ``agrees``, or what is wrong."""
        verdicts = (
            by_steps.verdict(problem),
            by_relation.verdict(problem, self.rows),
            by_reading.verdict(problem, self._reader, self._aimed if _of_trials(problem.ask) else self._shadows),
            by_forms.verdict(problem),
        )
        return problem._replace(proof=tuple(zip(ROUTES, verdicts, strict=True)))


def _of_trials(ask: Ask) -> bool:
    """Whether trials or successes are counted rather than pins."""
    leaves = [leaf for expr in ask.goal.exprs for leaf in leaves_of(expr)]
    return any(isinstance(leaf, Quantity) and leaf.measure in BY_TRIAL for leaf in leaves)


class _Solver:
    """What the relation route makes of an ask on a shadow table, for the reading route to be held against.

    Of a statement that is both its sides, for yes and no agree by luck every other time; of groups, the amount and the size; of
    a list, what it is a list of.
    """

    def __init__(self, table: TrialTable) -> None:
        self._rows = RawRows(table)

    def __call__(self, ask: Ask) -> Rational | str | tuple[Rational, ...] | None:
        try:
            if parts_to_share(ask.goal)[0]:
                return by_relation.sides(ask.goal, self._rows)
            return by_relation.solve(ask, self._rows)
        except by_relation.NoSolution:
            return None


def proved(problem: Problem) -> bool:
    """Whether every route in force agrees."""
    return tuple(route for route, _ in problem.proof) == ROUTES and all(verdict == AGREES for _, verdict in problem.proof)
