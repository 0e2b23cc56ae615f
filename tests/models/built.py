"""All problems that a model makes of a small table, for tests of the models."""

from __future__ import annotations

from random import Random

from mathgen.bank.builder import Builder, Desk, Stopped
from mathgen.grades.curriculum import load
from mathgen.models.registry import problem_models
from mathgen.models.space import AskSpace
from mathgen.problems.draft import Draft
from mathgen.problems.record import Problem
from mathgen.scenario.words import scenario
from mathgen.trials.table import TrialTable


def space_of(name: str, table: TrialTable) -> AskSpace:
    """The asks that a model offers on a table."""
    model = next(model for model in problem_models() if model.name == name)
    return model.space(Desk(table, scenario()).view)


def drafts_of(name: str, table: TrialTable) -> list[Draft]:
    """Every draft of a model, in the order of its space."""
    space = space_of(name, table)
    return [draft for draft in map(space.draft, range(space.size)) if draft is not None]


def problems_of(name: str, table: TrialTable, grade: int, activity: str = "ramp", draws: int = 1) -> list[Problem]:
    """Every problem of a model that a grade may meet, each draft said ``draws`` times so that several frames come up."""
    desk = Desk(table, scenario(activity))
    builder = Builder(desk, load("ccss"), grade)
    model = next(model for model in problem_models() if model.name == name)
    rng = Random("models")
    found = []
    for draft in drafts_of(name, table) * draws:
        candidate = builder.candidate(model, draft, rng)
        if not isinstance(candidate, Stopped):
            found.append(builder.finish(candidate))
    return found


def the_problem(problems: list[Problem], *words: str) -> Problem:
    """The first problem whose text holds all the words."""
    return next(problem for problem in problems if all(word in problem.text for word in words))


def facts_of(problem: Problem) -> dict[str, object]:
    """What does not depend on the wording: key, relation, steps and slips."""
    return {
        "key": problem.answer.display,
        "relation": problem.relation,
        "steps": [step.text for step in problem.steps],
        "slips": {slip.id: slip.value for slip in problem.slips},
    }
