"""The steps of one problem, beside what they are checked against."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.asks.expression import Same
from mathgen.problems.record import Answer, Problem
from mathgen.proof.by_steps.equalities import follow
from mathgen.proof.by_steps.given_numbers import GivenNumbers
from mathgen.proof.by_steps.operations import operations_of
from mathgen.proof.step_numbers import Pair


class Work(NamedTuple):
    """What a pupil has, does and comes to."""

    steps: tuple[str, ...]
    given: GivenNumbers
    operations: int  # that the words leave to the pupil, at the least
    answer: Answer

    def follow(self, *ends: Pair, known: tuple[str, ...] = (), more: int = 0) -> tuple[Pair, ...]:
        """The result of each step; the steps have to lead to ``ends``.

        Args:
            ends: what the steps are to lead to.
            known: numbers that a pupil finds without a step, such as how many full groups there are.
            more: operations that the goal asks for beside those of its expressions.
        Raises:
            NotTrue: a step is not true, made from nowhere or idle, or there are too few.
        """
        return follow(self.steps, (*self.given.texts, *known), self.operations + more, ends)


def work_of(problem: Problem, given: GivenNumbers) -> Work:
    """The work of a problem. Where a story is only put in signs, nothing is left to do."""
    operations = 0 if isinstance(problem.ask.goal, Same) else operations_of(problem.ask, given.numbers)
    return Work(tuple(step.text for step in problem.steps), given, operations, problem.answer)
