"""From a plan to a chosen sheet: draw, choose, prove what was chosen, and say what could not be done as asked."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

from mathgen.bank.builder import Candidate
from mathgen.bank.code import sheet_code
from mathgen.bank.desk import Desk
from mathgen.bank.draw import stream
from mathgen.bank.each_group import choose_for_groups, fill_group_pool
from mathgen.bank.graph import graph_of
from mathgen.bank.length import usual, wanted_count
from mathgen.bank.options import offers_choices, options_of
from mathgen.bank.parallel import parallel_forms
from mathgen.bank.plan import ChosenForm, ChosenSheet, SheetPlan
from mathgen.bank.pool import Pool, fill_pool, wanted_models
from mathgen.bank.tiers import TIERS, choose_tiers, off_level
from mathgen.bank.wishes import settled
from mathgen.errors import RequestFault
from mathgen.grades.curriculum import load
from mathgen.problems.record import Problem
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.trials.table import TableKind, TrialTable

_MARKS = "ABCDEFGH"


def make_sheet(table: TrialTable, plan: SheetPlan, scenario_name: str = "ramp") -> ChosenSheet:
    """The sheet of a plan, whatever pages it takes: for tests. ``press.sheet_files`` makes it fit its pages.

    Raises:
        RequestFault: the plan cannot be met at all; the message says why and what to try.
    """
    return SheetMaker(table, plan, scenario_name).make()


class SheetMaker:
    """Makes the sheet of a plan, again with fewer problems where a page does not hold them all: draws once, proves each once."""

    def __init__(self, table: TrialTable, plan: SheetPlan, scenario_name: str = "ramp") -> None:
        """Draws the candidates.

        Args:
            table: the class's results.
            plan: what the teacher wishes.
            scenario_name: what things are called.
        Raises:
            RequestFault: no problem fits the plan; the message says why and what to try.
        """
        curriculum = load(plan.curriculum)
        if plan.grade not in curriculum.grades:
            raise RequestFault(f"{curriculum.title} has no grade {plan.grade} here; it has {', '.join(map(str, curriculum.grades))}.")
        if table.prices and (plan.each_group or plan.same_story):
            option = "--each-group" if plan.each_group else "--same-story"
            raise RequestFault(f"A price list has no groups and trials, which {option} goes by. Leave {option} out.")
        self._plan = settled(plan, curriculum)
        self._count = wanted_count(self._plan)
        self._desk = Desk(table, scenario(scenario_name))
        self._pool = (fill_group_pool if plan.each_group else fill_pool)(self._desk, curriculum, self._plan)
        self._code = sheet_code(self._plan, table, scenario_name)
        self._made: dict[int, tuple[Candidate, Problem]] = {}  # by the candidate's id; holding it keeps the id its own
        self._failed: Counter[str] = Counter()

    def make(self, fewer: int = 0) -> ChosenSheet:
        """The sheet, with ``fewer`` problems than the plan has.

        Raises:
            RequestFault: no problem passes its proof.
        """
        count = max(self._count - fewer, 1)
        forms, gaps = self._proved_forms(count)
        changes = [*self._left_out(), *self._missing(forms[0], count), *gaps]
        tiers = TIERS if self._plan.tiers else ("",) * len(forms)
        if self._plan.each_group:
            marked = [self._marked(label, form, group=label) for label, form in zip(self._desk.table.groups, forms, strict=True)]
        else:
            marked = [self._marked(mark, form, tier) for mark, form, tier in zip(_MARKS, forms, tiers, strict=False)]
        return ChosenSheet(self._plan, self._code, tuple(marked), tuple(changes))

    @property
    def pool(self) -> Pool:
        """The candidates that are left."""
        return self._pool

    def all_proved(self, form: list[Candidate]) -> bool:
        """Whether a form may be printed; what may not is taken out of the pool."""
        bad = [one for one in form if not proved(self._problem(one))]
        dull = [one for one in form if self._plan.choices and not offers_choices(self._problem(one))]
        self._failed.update(one.model.name for one in bad)
        self._pool.drop([*bad, *dull])
        return not bad and not dull

    def sheet_of(self, form: list[Candidate], changes: list[str]) -> ChosenSheet:
        """The sheet of one form that was chosen elsewhere and is proved."""
        return ChosenSheet(self._plan, self._code, (self._marked(_MARKS[0], form),), (*self._left_out(), *changes))

    def _proved_forms(self, count: int) -> tuple[list[list[Candidate]], list[str]]:
        """Forms of proved problems only: what fails is taken out of the pool, and the choice is made again."""
        while True:
            if self._plan.each_group:
                forms, gaps = choose_for_groups(self._pool, self._desk, count)
            else:
                forms, gaps = self._tiers(count) if self._plan.tiers else self._forms(count)
            if not forms[0]:
                raise RequestFault(_nothing(self._plan, self._pool, self._desk.table.kind))
            if self.all_proved([one for form in forms for one in form]):
                return forms, gaps

    def _forms(self, count: int) -> tuple[list[list[Candidate]], list[str]]:
        top, bottom = usual(self._plan.grade).own_share
        forms, short = parallel_forms(self._pool, count, -(-count * top // bottom), self._plan.forms)
        if short and not forms[0]:
            raise RequestFault(
                f"This table has no kind of problem for {_demand(self._plan)} with other numbers on each of {self._plan.forms} forms. "
                "Ask for fewer forms."
            )
        return forms, [_less_of(short, self._plan.forms)] if short else []

    def _tiers(self, count: int) -> tuple[list[list[Candidate]], list[str]]:
        slots = choose_tiers(self._pool, count, self._plan.standards)
        forms = [[slot.problems[at] for slot in slots] for at in range(len(TIERS))]
        return forms, off_level(slots, _MARKS, self._pool, _demand(self._plan))

    def _marked(self, mark: str, form: list[Candidate], tier: str = "", group: str = "") -> ChosenForm:
        problems = tuple(map(self._problem, form))
        options = options_of(problems, stream(self._plan.seed, "options", self._plan.grade, mark)) if self._plan.choices else ()
        return ChosenForm(mark, problems, graph_of(form, self._desk), options, tier, group)

    def _problem(self, candidate: Candidate) -> Problem:
        if id(candidate) not in self._made:
            self._made[id(candidate)] = candidate, self._pool.builders[candidate.grade].finish(candidate)
        return self._made[id(candidate)][1]

    def _left_out(self) -> list[str]:
        if not self._failed:
            return []
        named = ", ".join(f"{name} ({number})" for name, number in sorted(self._failed.items()))
        return [f"Left out, for a route of the proof did not agree: {named}."]

    def _missing(self, first: list[Candidate], count: int) -> list[str]:
        plan, changes = self._plan, []
        if len(first) < count:
            changes.append(
                f"{count} problems were wanted, {len(first)} {'is' if len(first) == 1 else 'are'} here: "
                f"this table has no more for {_demand(plan)} that do not give one another away."
            )
        if not any(one.grade == plan.grade for one in first):
            if plan.level is not None:
                changes.append(f"This table has no {plan.level} problems for grade {plan.grade}.")
            changes.append(f"No problem of grade {plan.grade} itself fits this table and plan; all of them review grade {plan.grade - 1}.")
        return changes


def _less_of(skills: tuple[str, ...], forms: int) -> str:
    return (
        f"Less is asked, or nothing, of {'; '.join(skills)}: this table has too few such problems with other numbers for {forms} forms. "
        "So each number is of one kind on every form."
    )


def _demand(plan: SheetPlan) -> str:
    wishes = [f"grade {plan.grade}", *plan.topics, *plan.skills, *plan.standards, *([plan.level] if plan.level else [])]
    return ", ".join(wishes)


def _grades_of(plan: SheetPlan, kind: TableKind) -> list[int]:
    curriculum = load(plan.curriculum)
    return [grade for grade in curriculum.grades if wanted_models(replace(plan, grade=grade), curriculum, grade, kind)]


def _elsewhere(plan: SheetPlan, kind: TableKind) -> str:
    """Which grades, or which kind of table, have what the plan asks for."""
    grades = _grades_of(plan, kind)
    if not grades:
        if kind == "results" and _grades_of(plan, "price list"):
            return "It is asked about a price list, not about results."
        if kind == "price list" and _grades_of(plan, "results"):
            return "It is asked about a results table: problems about a price list are about money."
        return "No grade has it: topics, skills and standards have to go together. See mathgen list topics, skills or standards."
    return f"These grades have it: {', '.join(map(str, grades))}."


def _nothing(plan: SheetPlan, pool: Pool, kind: TableKind) -> str:
    stopped = Counter[str]()
    for reasons in pool.stopped.values():
        stopped.update(reasons)
    why = ", ".join(f"{reason} ({n} times)" for reason, n in stopped.most_common(5))
    if not pool.stopped:
        return f"There is no kind of problem for {_demand(plan)}. {_elsewhere(plan, kind)}"
    if plan.level is not None and stopped["level"]:
        return (
            f"This table has no {plan.level} problems for {_demand(replace(plan, level=None))}; it has some of other levels. "
            "Try another --level, or leave it out."
        )
    if not why:
        why = f"too few {'prices' if kind == 'price list' else 'results'}, or none that differ"
    advice = "more items, or other prices" if kind == "price list" else "more trials, or other set-up counts"
    return f"This table has no problem for {_demand(plan)}. What stood in the way: {why}. Try another grade, {advice}."
