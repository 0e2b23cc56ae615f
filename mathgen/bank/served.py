"""Which skills of a grade a table has problems for."""

from __future__ import annotations

from collections import Counter
from typing import NamedTuple

from mathgen.bank.builder import Builder, Stopped
from mathgen.bank.desk import Desk
from mathgen.bank.draw import drafts, stream
from mathgen.bank.why_not import NO_SPACES, NO_TARGETS, wants_spaces, wants_targets, why_not
from mathgen.grades.curriculum import Curriculum
from mathgen.models.registry import problem_models


class Served(NamedTuple):
    """The skills of a grade with a problem on this table, and those without, each with what mostly stood in the way, in words."""

    served: tuple[str, ...]
    missing: tuple[tuple[str, str], ...]


def served_skills(desk: Desk, curriculum: Curriculum, grade: int, seed: int = 1) -> Served:
    """What a table can be asked about in a grade.

    Args:
        desk: where the table lies.
        curriculum: whose skills.
        grade: one of its grades.
        seed: of the draws that are looked at.
    """
    builder = Builder(desk, curriculum, grade)
    reasons: dict[str, Counter[str]] = {}
    served: set[str] = set()
    for model in problem_models(desk.table.kind):
        if model.skill in served or curriculum.entry(model.skill, grade) is None:
            continue
        rng = stream(seed, "served", grade, model.name)
        found = reasons.setdefault(model.skill, Counter())
        for draft in drafts(model.space(desk.view), rng):  # to the last: of some skills a table has one problem only
            one = builder.candidate(model, draft, rng)
            if not isinstance(one, Stopped):
                served.add(model.skill)
                break
            found.update(list(dict.fromkeys(one.reasons)))
    skills = [skill for skill in curriculum.skills(grade) if skill in reasons or skill in served]
    missing = [(skill, _why(skill, reasons[skill], desk, seed)) for skill in skills if skill not in served]
    return Served(tuple(skill for skill in skills if skill in served), tuple(missing))


def _why(skill: str, found: Counter[str], desk: Desk, seed: int) -> str:
    if not found and wants_spaces([model for model in problem_models() if model.skill == skill], desk, seed):
        return NO_SPACES.format(items=desk.scenario.items)
    if not found and wants_targets([model for model in problem_models() if model.skill == skill], desk, seed):
        return NO_TARGETS
    return why_not(found)
