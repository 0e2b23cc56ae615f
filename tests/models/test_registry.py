"""Every registered model keeps the same terms, whoever wrote it."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from random import Random
from typing import get_args

import pytest

from mathgen.bank.builder import Builder, Stopped
from mathgen.bank.desk import Desk
from mathgen.difficulty.score import Structure
from mathgen.grades.curriculum import load
from mathgen.models.registry import ProblemModel, problem_models
from mathgen.models.slips import slip_ids
from mathgen.problems.draft import Draft
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.wording.frames import frames

SAMPLES = ("main", "small-sets", "tens", "spaces", "accuracy", "prices")
every_model = pytest.mark.parametrize("model", problem_models(), ids=lambda model: model.name)


def samples_of(model: ProblemModel) -> tuple[str, ...]:
    """The samples of the model's kind of table."""
    return tuple(sample for sample in SAMPLES if desk(sample).table.kind == model.table)


@cache
def desk(sample: str) -> Desk:
    return Desk(read_table(f"samples/{sample}.csv", ReadOptions()).table, scenario())


def some_drafts(model: ProblemModel, sample: str, number: int = 60) -> list[Draft]:
    space = model.space(desk(sample).view)
    order = list(range(space.size))
    Random(model.name).shuffle(order)
    found = (draft for draft in map(space.draft, order) if draft is not None)
    return [draft for draft, _ in zip(found, range(number), strict=False)]


@every_model
def test_a_model_has_a_skill_that_some_grade_offers(model: ProblemModel) -> None:
    assert load("ccss").entries(model.skill), f"no grade of ccss.toml offers {model.skill!r}"


@every_model
def test_a_model_has_wording_and_a_row_worked_by_hand_in_the_test_of_its_strand(model: ProblemModel) -> None:
    assert len(frames(model.strand, model.name)) >= 3
    assert f'"{model.name}' in Path(f"tests/models/test_{model.strand}.py").read_text(encoding="utf-8")


@every_model
def test_what_a_model_names_is_known(model: ProblemModel) -> None:
    drafts = [draft for sample in samples_of(model) for draft in some_drafts(model, sample)]
    assert drafts
    assert {draft.structure for draft in drafts} <= set(get_args(Structure))
    assert {slip for draft in drafts for slip, _ in draft.slips} <= set(slip_ids())
    assert {feature for draft in drafts for feature in draft.features} <= set(load("ccss").first_grade)
    assert all(draft.slips for draft in drafts)


@every_model
def test_every_draft_is_stopped_by_name_or_proved(model: ProblemModel) -> None:
    curriculum, kept = load("ccss"), 0
    for sample in samples_of(model):
        for entry in curriculum.entries(model.skill):
            builder = Builder(desk(sample), curriculum, entry.grade)
            for draft in some_drafts(model, sample):
                one = builder.candidate(model, draft, Random(1))
                if isinstance(one, Stopped):
                    assert one.reasons
                    assert all(one.reasons)
                else:
                    kept += 1
                    made = builder.finish(one)
                    assert proved(made), (made.text, made.proof)
                    assert builder.finish(one) == made
    assert kept
