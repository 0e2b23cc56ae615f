"""The candidates that a sheet may choose from: a few of every model, the grade's own and, for review, the grade before."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass

from mathgen.bank.balance import tips
from mathgen.bank.builder import Builder, Candidate, Stopped
from mathgen.bank.desk import Desk
from mathgen.bank.draw import drafts, stream
from mathgen.bank.length import usual, wanted_count
from mathgen.bank.plan import SheetPlan
from mathgen.exact.printed_step import Printed, printed_number, printed_step
from mathgen.grades.curriculum import Curriculum
from mathgen.models.registry import ProblemModel, problem_models
from mathgen.trials.table import TableKind

_SEARCH, _LONG_SEARCH = 1_500, 20_000  # choices looked at in a large space
_PATIENCE = 40  # drafts looked at for each candidate wanted: a model that finds so little on a table has nothing for it
_STORY_DRAWS = 4  # times as many, for grades can meet only where each has something


@dataclass
class Pool:
    """Candidates by model, and why the others are not among them."""

    own: dict[str, list[Candidate]]
    review: dict[str, list[Candidate]]
    builders: dict[int, Builder]
    stopped: dict[str, Counter[str]]  # by model: what stopped its drafts
    proposed: int = 0

    def drop(self, bad: list[Candidate]) -> None:
        """Takes candidates out, and models that have none left."""
        gone = set(map(id, bad))
        for kept in (self.own, self.review):
            for name, candidates in list(kept.items()):
                kept[name] = [one for one in candidates if id(one) not in gone]
                if not kept[name]:
                    del kept[name]


def wanted_models(plan: SheetPlan, curriculum: Curriculum, grade: int, table: TableKind) -> tuple[ProblemModel, ...]:
    """The models about a kind of table that a plan's topics, skills and standards leave for a grade."""

    def wanted(model: ProblemModel) -> bool:
        entry = curriculum.entry(model.skill, grade)
        if entry is None:
            return False
        topic = curriculum.words(model.skill).topic
        codes = {*entry.standards, *(code for other in entry.when for code in other.standards)}
        return (
            topic not in plan.not_yet
            and (not plan.topics or topic in plan.topics)
            and (not plan.skills or model.skill in plan.skills)
            and (not plan.standards or bool(codes & set(plan.standards)))
        )

    return tuple(model for model in problem_models(table) if wanted(model))


_SIGNS_OF: dict[str, Callable[[Printed], bool]] = {  # what shows in a problem's numbers that it needs a topic, whatever its own topic is
    "fractions": lambda number: number.kind in ("fraction", "mixed") and not number.percent,
    "decimals": lambda number: number.kind == "decimal" and not number.percent,
    "percents": lambda number: number.percent,
}


def uses(candidate: Candidate, topics: tuple[str, ...]) -> bool:
    """Whether the givens, the answer or a step of a candidate need a topic."""
    texts = [*(given.number for given in candidate.givens), candidate.shown]
    numbers = [number for number in map(printed_number, texts) if number is not None]
    numbers += [number for step in candidate.steps for number in printed_step(step).numbers]
    return any(_SIGNS_OF[topic](number) for topic in topics if topic in _SIGNS_OF for number in numbers)


def fill_pool(desk: Desk, curriculum: Curriculum, plan: SheetPlan, count: int | None = None, draws_each: int = 1) -> Pool:
    """Draws candidates for a sheet; nothing is proved yet.

    A sheet holds few problems: models are tried in seeded order until enough of them have something, so that a sheet costs the same
    however many models there are.

    Args:
        desk: where the table lies.
        curriculum: whose models and limits.
        plan: what the teacher wishes.
        count: how many problems are wanted; as many as the plan says where it is left out.
        draws_each: how many times a sheet's candidates are drawn of each model.
    """
    sizes = usual(plan.grade)
    pool = Pool({}, {}, {}, {})
    # Tiers need every level of a standard, and a story every spot; a model at the end of the row may have it.
    wanted = wanted_count(plan) if count is None else count
    enough = len(problem_models(desk.table.kind)) if plan.tiers or plan.same_story else sizes.models_each * wanted
    for grade, kept, draws, most in (
        (plan.grade, pool.own, sizes.own_draws, enough),
        (plan.grade - 1, pool.review, sizes.review_draws, -(-enough // 2)),
    ):
        if grade not in curriculum.grades or (plan.same_story and grade != plan.grade):
            continue  # a story is told by each grade's own problems
        builder = pool.builders[grade] = Builder(desk, curriculum, grade)
        models = list(wanted_models(plan, curriculum, grade, desk.table.kind))
        stream(plan.seed, "models", grade).shuffle(models)
        for model in models:
            if len(kept) == most:
                break
            found = _draw(builder, model, plan, draws * draws_each * (_STORY_DRAWS if plan.same_story else plan.form_count), pool)
            if found:
                kept[model.name] = found
    return pool


def _draw(builder: Builder, model: ProblemModel, plan: SheetPlan, draws: int, pool: Pool) -> list[Candidate]:
    rng = stream(plan.seed, "sheet", builder.grade, model.name)
    stopped = pool.stopped.setdefault(model.name, Counter())
    found: list[Candidate] = []
    answers: Counter[object] = Counter()
    # Where a teacher names what she wants, it is looked for long; else another model is as good.
    tries = _LONG_SEARCH if plan.topics or plan.skills or plan.standards or plan.level else _SEARCH
    for tried, draft in enumerate(drafts(model.space(builder.desk.view), rng, tries)):
        if len(found) == draws or tried == draws * _PATIENCE:
            break
        pool.proposed += 1
        one = builder.candidate(model, draft, rng)
        reasons = stop_of(one, plan)
        if isinstance(one, Stopped) or reasons:
            stopped.update(reasons)
        elif tips(one.exact, answers):
            stopped["yes and no"] += 1
        else:
            found.append(one)
            answers[one.exact] += 1
    return found


def stop_of(one: Candidate | Stopped, plan: SheetPlan) -> tuple[str, ...]:
    """Why a draft is not for this plan; () where it is."""
    if isinstance(one, Stopped):
        return one.reasons
    if uses(one, plan.not_yet):
        return ("a topic not taught yet",)
    if plan.standards and not set(one.standards) & set(plan.standards):
        return ("standard",)
    return ("level",) if plan.level is not None and one.level != plan.level else ()
