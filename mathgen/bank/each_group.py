"""A sheet for every group on its own trials: number n is of the same kind and level on all of them.

Where a group's results have nothing of that kind, and where the kind is about the whole class anyway, class data stands in.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from functools import partial
from typing import NamedTuple

from mathgen.bank.builder import Builder, Candidate
from mathgen.bank.choose import LEVELS, best, fits, unlike
from mathgen.bank.desk import Desk
from mathgen.bank.draw import drafts, stream
from mathgen.bank.length import usual, wanted_count
from mathgen.bank.plan import SheetPlan
from mathgen.bank.pool import Pool, stop_of, wanted_models
from mathgen.bank.spot import spot_of
from mathgen.grades.curriculum import Curriculum
from mathgen.models.registry import ProblemModel
from mathgen.scenario.naming import group_name, listed
from mathgen.trials.table import TrialTable

_EACH = 3  # candidates of one model for one group: other levels, sources and colors to choose from
_PATIENCE = 400  # drafts looked at in a row that no group has use for
_OF_THE_CLASS = 3  # at most every third number is about the whole class on all sheets
_ALL = ""  # stands for the whole class among the names of groups


class _Row(NamedTuple):
    """The problems of one number, one a group in table order, and the groups for which class data stands in."""

    problems: tuple[Candidate, ...]
    filled: tuple[str, ...]

    @property
    def of_class(self) -> bool:
        """Whether it is about the whole class on every sheet."""
        return len(self.filled) == len(self.problems)

    @property
    def misses(self) -> int:
        """Sheets on which it is not about the group, or of another level than on most."""
        levels = Counter(one.level for one in self.problems)
        return (0 if self.of_class else len(self.filled)) + len(self.problems) - max(levels.values())


def fill_group_pool(desk: Desk, curriculum: Curriculum, plan: SheetPlan) -> Pool:
    """Candidates about one group each, and about the whole class; nothing is proved yet.

    Args:
        desk: where the table lies.
        curriculum: whose models and limits.
        plan: what the teacher wishes.
    """
    pool = Pool({}, {}, {}, {})
    enough = usual(plan.grade).models_each * wanted_count(plan)
    for grade, kept, most in ((plan.grade, pool.own, enough), (plan.grade - 1, pool.review, -(-enough // 2))):
        if grade not in curriculum.grades:
            continue
        builder = pool.builders[grade] = Builder(desk, curriculum, grade)
        models = list(wanted_models(plan, curriculum, grade, desk.table.kind))
        stream(plan.seed, "models", grade).shuffle(models)
        for model in models:
            if len(kept) == most:
                break
            found = _draw(builder, model, plan, pool)
            if found:
                kept[model.name] = found
    return pool


def _draw(builder: Builder, model: ProblemModel, plan: SheetPlan, pool: Pool) -> list[Candidate]:
    """A few candidates of one model for every group, and for the whole class."""
    table = builder.desk.table
    rng = stream(plan.seed, "each group", builder.grade, model.name)
    stopped = pool.stopped.setdefault(model.name, Counter())
    found: dict[str, list[Candidate]] = {label: [] for label in (*table.groups, _ALL)}
    idle = 0
    for draft in drafts(model.space(builder.desk.view), rng):
        if idle > _PATIENCE or all(len(kept) == _EACH for kept in found.values()):
            break
        idle += 1
        whose = _whose(spot_of(draft, table).groups, table)
        if whose is None or len(found[whose]) == _EACH:
            continue
        pool.proposed += 1
        one = builder.candidate(model, draft, rng)
        reasons = stop_of(one, plan)
        stopped.update(reasons)
        if not reasons and isinstance(one, Candidate):
            found[whose].append(one)
            idle = 0
    return [one for kept in found.values() for one in kept]


def _whose(groups: tuple[str, ...], table: TrialTable) -> str | None:
    """The group that a problem is about, or all of them; None for some of them."""
    if len(groups) == 1:
        return groups[0]
    return _ALL if groups == table.groups else None


def choose_for_groups(pool: Pool, desk: Desk, count: int) -> tuple[list[list[Candidate]], list[str]]:
    """A form for each group in table order, and sentences on what the table could not give.

    Args:
        pool: candidates of every group.
        desk: where the table lies.
        count: how many problems a form has.
    """
    table = desk.table
    by_model = {name: _by_group(candidates, table) for kept in (pool.own, pool.review) for name, candidates in kept.items()}
    rows: list[_Row] = []
    uses: Counter[str] = Counter()
    of_class = 0
    while len(rows) < count:
        forms = [[row.problems[at] for row in rows] for at in range(len(table.groups))]
        found: list[tuple[tuple[int, ...], str, _Row]] = []
        for name, candidates in by_model.items():
            made = [row for level in LEVELS if (row := _row(candidates, level, table, forms)) is not None]
            allowed = [row for row in made if not row.of_class or (of_class + 1) * _OF_THE_CLASS <= count]
            # The grade's own models first, the one used least, and a row that fits every group.
            found.extend(((name not in pool.own, uses[name], row.of_class, row.misses), name, row) for row in allowed)
        if not found:
            break
        _, name, row = min(found, key=lambda one: one[0])
        rows.append(row)
        uses[name] += 1
        of_class += row.of_class
    rows.sort(key=lambda row: (LEVELS[row.problems[0].level], row.problems[0].difficulty))
    return [[row.problems[at] for row in rows] for at in range(len(table.groups))], _said(rows, desk)


def _by_group(candidates: list[Candidate], table: TrialTable) -> dict[str, list[Candidate]]:
    found: dict[str, list[Candidate]] = {}
    for one in candidates:
        found.setdefault(_whose(spot_of(one.draft, table).groups, table) or _ALL, []).append(one)
    return found


def _row(found: dict[str, list[Candidate]], level: str, table: TrialTable, forms: list[list[Candidate]]) -> _Row | None:
    """One problem a group of one model, of one level where the table has it; None where most groups have none."""
    lead = next((at for at, label in enumerate(table.groups) if _of_level(found.get(label, ()), level)), None)
    first = best(_of_level(found[table.groups[lead]], level), forms[lead]) if lead is not None else None
    first = first or best(_of_level(found.get(_ALL, ()), level), forms[0])
    if first is None:
        return None
    problems, filled = [], []
    for at, label in enumerate(table.groups):
        own = [one for one in found.get(label, ()) if fits(one, forms[at])]
        of_class = [one for one in found.get(_ALL, ()) if fits(one, forms[at])]
        alike = _of_level(own, level) or _of_level(of_class, level) or own or of_class
        if not alike:
            return None
        one = first if first in alike else min(alike, key=partial(unlike, first))
        problems.append(one)
        if one not in own:
            filled.append(label)
    row = _Row(tuple(problems), tuple(filled))
    return row if row.of_class or 2 * len(filled) < len(table.groups) else None


def _of_level(candidates: Iterable[Candidate], level: str) -> list[Candidate]:
    return [one for one in candidates if one.level == level]


def _said(rows: list[_Row], desk: Desk) -> list[str]:
    """What a teacher has to know: whose results were too thin for which number, and where a level differs."""
    groups, said = desk.table.groups, []

    def names(labels: Iterable[str]) -> str:
        return listed([group_name(label, desk.scenario) for label in labels])

    for number, row in enumerate(rows, start=1):
        if row.filled and len(row.filled) < len(groups):
            said.append(f"Number {number}: {names(row.filled)} have no results for a problem of that kind and level; class data stands in.")
        usual = Counter(one.level for one in row.problems).most_common(1)[0][0]
        others = [label for label, one in zip(groups, row.problems, strict=True) if one.level != usual]
        if others:
            said.append(f"Number {number} is {usual}, but not for {names(others)}: the results there have none of that level.")
    return said
