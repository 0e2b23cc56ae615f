"""The bank of a table: every model's problems for every grade, proved, one after another."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from random import Random

from sympy import Rational

from mathgen.asks.expression import Ask
from mathgen.bank.balance import tips
from mathgen.bank.builder import TOO_LONG, Builder, Candidate, Stopped
from mathgen.bank.desk import Desk
from mathgen.bank.draw import drafts, stream
from mathgen.bank.why_not import in_words
from mathgen.grades.curriculum import Curriculum
from mathgen.models.registry import ProblemModel, problem_models
from mathgen.problems.record import Problem
from mathgen.proof.judge import proved
from mathgen.proof.verdict import AGREES

_NOT_THE_GATE = (*TOO_LONG, "no wording for this grade", "graph", "twice", "yes and no")


@dataclass
class Report:
    """What became of everything that was proposed."""

    proposed: int = 0
    kept: int = 0
    stopped: Counter[str] = field(default_factory=Counter)  # by limit
    failed: Counter[str] = field(default_factory=Counter)  # by model and route
    kept_by_grade: Counter[int] = field(default_factory=Counter)
    kept_by_kind: Counter[str] = field(default_factory=Counter)  # of answer

    def __str__(self) -> str:
        other = sum(self.stopped[reason] for reason in _NOT_THE_GATE)
        gate = self.proposed - self.kept - sum(self.failed.values()) - other
        lines = [
            f"proposed {self.proposed}, not for the grade {gate}, without fitting words, met twice or too often yes (or no) {other}, "
            f"failed proof {sum(self.failed.values())}, kept {self.kept}",
        ]
        lists, claims = self.kept_by_kind["list"], self.kept_by_kind["rubric"]
        if lists or claims:
            lines.append(f"of those kept, with several right answers {lists}, claims to judge with a reason {claims}")
        if self.stopped:
            lines.append(f"why: {'; '.join(f'{why} ({number})' for why, number in in_words(self.stopped))}")
        if self.failed:
            lines.append(f"failed: {', '.join(f'{name} {number}' for name, number in sorted(self.failed.items()))}")
        return "\n".join(lines)


def build_bank(desk: Desk, curriculum: Curriculum, grades: tuple[int, ...], seed: int, per_model: int, report: Report) -> Iterator[Problem]:
    """The proved problems of a table, at most ``per_model`` for each model and grade; the report grows on the way."""
    for grade in grades:
        builder = Builder(desk, curriculum, grade)
        for model in problem_models(desk.table.kind):
            if curriculum.entry(model.skill, grade) is not None:
                yield from _of_model(builder, model, seed, per_model, report)


def _candidates(builder: Builder, model: ProblemModel, rng: Random, report: Report) -> Iterator[Candidate]:
    for draft in drafts(model.space(builder.desk.view), rng):
        report.proposed += 1
        one = builder.candidate(model, draft, rng)
        if isinstance(one, Stopped):
            report.stopped[one.reasons[0]] += 1
        else:
            yield one


def _others_first(candidates: Iterator[Candidate], answers: Counter[object]) -> Iterator[Candidate]:
    """What has a number for its answer that more than a quarter of those kept have waits until all others have had their turn."""
    late = []
    for one in candidates:
        if isinstance(one.exact, Rational) and answers[one.exact] > 1 + answers.total() // 4:
            late.append(one)
        else:
            yield one
    yield from late


def _of_model(builder: Builder, model: ProblemModel, seed: int, per_model: int, report: Report) -> Iterator[Problem]:
    rng = stream(seed, "bank", builder.grade, model.name)
    kept: set[Ask] = set()
    answers: Counter[object] = Counter()
    for one in _others_first(_candidates(builder, model, rng, report), answers):
        if tips(one.exact, answers):
            report.stopped["yes and no"] += 1
            continue
        problem = builder.finish(one)
        if not proved(problem):
            report.failed[f"{model.name} ({', '.join(route for route, verdict in problem.proof if verdict != AGREES)})"] += 1
            continue
        if problem.ask in kept:  # one ask met along two ways
            report.stopped["twice"] += 1
            continue
        kept.add(problem.ask)
        answers[one.exact] += 1
        report.kept += 1
        report.kept_by_grade[builder.grade] += 1
        report.kept_by_kind[problem.answer.kind] += 1
        yield problem
        if len(kept) == per_model:
            return
