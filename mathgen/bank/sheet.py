"""From a plan to a chosen sheet: draw, choose, prove what was chosen, and say what could not be done as asked."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

from mathgen.bank.builder import Candidate
from mathgen.bank.choose import choose, in_order, parallel
from mathgen.bank.clashes import graph_spot
from mathgen.bank.code import sheet_code
from mathgen.bank.desk import Desk
from mathgen.bank.leaf import leaf, wanted_count
from mathgen.bank.plan import ChosenForm, ChosenSheet, Graph, SheetPlan
from mathgen.bank.pool import Pool, fill_pool, wanted_models
from mathgen.bank.wishes import settled
from mathgen.errors import RequestFault
from mathgen.grades.curriculum import load
from mathgen.problems.record import Problem
from mathgen.proof.record import proved
from mathgen.scenario.words import scenario
from mathgen.trials.scope import Scope
from mathgen.trials.table import TrialTable

_MARKS = "ABCDEFGH"


def make_sheet(table: TrialTable, plan: SheetPlan, scenario_name: str = "ramp", fewer: int = 0) -> ChosenSheet:
    """The sheet of a plan.

    Args:
        table: the class's results.
        plan: what the teacher wishes.
        scenario_name: what things are called.
        fewer: how many problems to leave out, so that the pages asked for hold the rest.
    Raises:
        RequestFault: the plan cannot be met at all; the message says why and what to try.
    """
    curriculum = load(plan.curriculum)
    if plan.grade not in curriculum.grades:
        raise RequestFault(f"{curriculum.title} has no grade {plan.grade} here; it has {', '.join(map(str, curriculum.grades))}.")
    plan = settled(plan, curriculum)
    count = max(wanted_count(plan) - fewer, 1)
    desk = Desk(table, scenario(scenario_name))
    pool = fill_pool(desk, curriculum, plan)
    if not pool.own and not pool.review:
        raise RequestFault(_nothing(plan, pool))
    top, bottom = leaf(plan.grade).own_share
    changes: list[str] = []
    failed: Counter[str] = Counter()
    forms = _forms(pool, plan, count, -(-count * top // bottom), failed, changes)
    if failed:
        named = ", ".join(f"{name} ({number})" for name, number in sorted(failed.items()))
        changes.append(f"Left out, for a route of the proof did not agree: {named}.")
    chosen = ChosenSheet(plan, "", tuple(forms), tuple(changes))
    return replace(chosen, code=sheet_code(plan, table, scenario_name))


def _forms(pool: Pool, plan: SheetPlan, count: int, own: int, failed: Counter[str], changes: list[str]) -> list[ChosenForm]:
    """Forms of proved problems only: what fails is taken out of the pool, and the choice is made again."""
    while True:
        first = in_order(choose(pool, count, own))
        if not first:
            raise RequestFault(_nothing(plan, pool))
        rounds = [first]
        gaps: list[tuple[str, list[int]]] = []
        for mark in _MARKS[1 : plan.forms]:
            form, missing = parallel(first, pool, [one for other in rounds for one in other])
            rounds.append(form)
            if missing:
                gaps.append((mark, missing))
        problems = [[_finished(one, pool) for one in form] for form in rounds]
        tried = [pair for form, made in zip(rounds, problems, strict=True) for pair in zip(form, made, strict=True)]
        bad = [(one, problem) for one, problem in tried if not proved(problem)]
        if not bad:
            break
        for one, problem in bad:
            failed[problem.model] += 1
            for candidates in (*pool.own.values(), *pool.review.values()):
                if one in candidates:
                    candidates.remove(one)
        for kept in (pool.own, pool.review):
            for name in [name for name, candidates in kept.items() if not candidates]:
                del kept[name]
    if len(first) < count:
        changes.append(
            f"{count} problems were wanted, {len(first)} are here: "
            f"this table has no more for {_demand(plan)} that do not give one another away."
        )
    if not any(one.grade == plan.grade for one in first):
        changes.append(f"No problem of grade {plan.grade} itself fits this table and plan; all of them review grade {plan.grade - 1}.")
    for mark, missing in gaps:
        slots = ", ".join(str(slot + 1) for slot in missing)
        changes.append(f"Form {mark} has no problem like form A's number {slots}: the table has no second one of that kind.")
    return [
        ChosenForm(mark, tuple(made), _graph(form, pool)) for mark, form, made in zip(_MARKS, rounds, problems, strict=False)
    ]


def _finished(candidate: Candidate, pool: Pool) -> Problem:
    return pool.builders[candidate.grade].finish(candidate)


def _graph(form: list[Candidate], pool: Pool) -> Graph | None:
    """The graph that a form's problems read."""
    spot = next((found for found in map(graph_spot, form) if found is not None), None)
    if spot is None:
        return None
    desk = next(iter(pool.builders.values())).desk
    groups, trials = spot
    colors = desk.table.colors
    values = tuple(desk.totals.total("down", Scope(groups, trials, (color,))) for color in colors)  # type: ignore[arg-type]
    return Graph(Scope(groups, trials), colors, values)  # type: ignore[arg-type]


def _demand(plan: SheetPlan) -> str:
    wishes = [f"grade {plan.grade}", *plan.topics, *plan.skills, *plan.standards, *([plan.level] if plan.level else [])]
    return ", ".join(wishes)


def _elsewhere(plan: SheetPlan) -> str:
    """Which grades have what the plan asks for."""
    curriculum = load(plan.curriculum)
    grades = [grade for grade in curriculum.grades if wanted_models(replace(plan, grade=grade), curriculum, grade)]
    if not grades:
        return "No grade has it: topics, skills and standards have to go together. See mathgen list topics, skills or standards."
    return f"These grades have it: {', '.join(map(str, grades))}."


def _nothing(plan: SheetPlan, pool: Pool) -> str:
    stopped = Counter[str]()
    for reasons in pool.stopped.values():
        stopped.update(reasons)
    why = ", ".join(f"{reason} ({n} times)" for reason, n in stopped.most_common(5))
    if not pool.stopped:
        return f"There is no kind of problem for {_demand(plan)}. {_elsewhere(plan)}"
    if not why:
        why = "too few results, or none that differ"
    return (
        f"This table has no problem for {_demand(plan)}. What stood in the way: {why}. "
        "Try another grade, more trials, or other set-up counts."
    )
