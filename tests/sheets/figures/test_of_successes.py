"""Figures of problems about successes speak of trials, not of pins."""

from __future__ import annotations

import json
from random import Random

import pytest

from mathgen.bank.builder import Builder, Candidate
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.scenario.words import scenario
from mathgen.sheets.figures.choice import makers, rules
from mathgen.sheets.figures.scene import Scene
from mathgen.sheets.page_words import page_words
from tests.audit.banks import sample
from tests.models.asked import every_draft, model


@pytest.mark.parametrize(
    ("name", "grade", "kind"),
    [
        ("fraction_down", 3, "fraction-bars"),
        ("fraction_left_standing", 4, "fraction-bars"),
        ("part_as_decimal", 4, "hundred-grid"),
        ("percent_of_set", 6, "double-number-line"),
        ("expected_count", 7, "ratio-table"),
    ],
)
def test_figures_of_successes_speak_of_trials(name: str, grade: int, kind: str) -> None:
    table, ramp, curriculum = sample("accuracy"), scenario("ramp"), load("ccss")
    desk = Desk(table, ramp)
    builder, words = Builder(desk, curriculum, grade), page_words(ramp, curriculum, table, grade)
    drafts = [draft for draft in every_draft(name, table) if "hits" in draft.roles]
    found = [builder.candidate(model(name), draft, Random(1)) for draft in drafts]
    scenes = [Scene(builder.finish(one), table, desk.totals, words) for one in found if isinstance(one, Candidate)]
    made = [makers()[figure](scene) for scene in scenes for figure in rules().figures[scene.problem.skill, grade]]
    kept = [one for one in made if one is not None]
    assert {one.blank["kind"] for one in kept} == {kind}
    assert all("pins" not in json.dumps([one.blank, one.worked]) for one in kept)
