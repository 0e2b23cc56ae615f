"""From a model's ask, written by hand, to the finished problem: what the rows of the strand tests share."""

from __future__ import annotations

from collections.abc import Iterator
from random import Random

from mathgen.asks.expression import Ask, Quantity
from mathgen.bank.builder import Builder, Candidate, Desk
from mathgen.bank.draw import stream
from mathgen.grades.curriculum import load
from mathgen.models.registry import ProblemModel, problem_models
from mathgen.problems.draft import Draft
from mathgen.problems.record import Problem
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.trials.scope import Measure, Scope
from mathgen.trials.table import TrialTable

WORDS = frozenset({"words"})


def quantity(measure: Measure, group: str | None = None, trials: tuple[int, ...] | None = None, *colors: str) -> Quantity:
    """A count of one group or the class, in some trials or all, of some colors or all."""
    return Quantity(measure, Scope((group,) if group else None, trials, colors or None))


def model(name: str) -> ProblemModel:
    return next(one for one in problem_models() if one.name == name)


def every_draft(name: str, table: TrialTable) -> Iterator[Draft]:
    """All that a model offers on a table."""
    space = model(name).space(Desk(table, scenario("ramp")).view)
    drafts = map(space.draft, range(space.size))
    return (draft for draft in drafts if draft is not None)


def problem(name: str, table: TrialTable, grade: int, ask: Ask, sources: frozenset[str] = WORDS) -> Problem:
    """The problem of the one draft that asks this, proved, its numbers printed in the words."""
    (draft,) = [draft for draft in every_draft(name, table) if draft.ask._replace(equals=None) == ask]
    return said(name, table, grade, draft, sources)


def said(name: str, table: TrialTable, grade: int, draft: Draft, sources: frozenset[str] = WORDS) -> Problem:
    """The problem of one draft, proved: where a route does not agree, the assertion fails with what each says."""
    one = judged(name, table, grade, draft, sources)
    assert proved(one), one.proof
    return one


def judged(name: str, table: TrialTable, grade: int, draft: Draft, sources: frozenset[str] = WORDS) -> Problem:
    """The problem of one draft with the verdicts of the proof, whatever they are: for faults that are planted."""
    builder = Builder(Desk(table, scenario("ramp")), load("ccss"), grade)
    found = builder.candidate(model(name), draft, stream(1, name), sources)
    assert isinstance(found, Candidate), found
    return builder.finish(found)


def worked(one: Problem) -> tuple[str, str, tuple[str, ...], dict[str, str]]:
    """What a row states: answer, relation, steps, and slips by id."""
    return one.answer.shown, one.relation, tuple(step.text for step in one.steps), {slip.id: slip.value for slip in one.slips}


def every_problem(name: str, table: TrialTable, grade: int, activity: str = "ramp", draws: int = 1) -> list[Problem]:
    """All that a grade may meet of a model, each draft said ``draws`` times so that several frames come up."""
    desk = Desk(table, scenario(activity))
    builder, rng = Builder(desk, load("ccss"), grade), Random("every problem")
    candidates = [builder.candidate(model(name), draft, rng) for draft in list(every_draft(name, table)) * draws]
    return [builder.finish(one) for one in candidates if isinstance(one, Candidate)]
