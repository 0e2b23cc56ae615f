"""The words of a page, from scenario and curriculum."""

from __future__ import annotations

from mathgen.grades.curriculum import load
from mathgen.scenario.words import scenario
from mathgen.sheets.page_words import page_words
from mathgen.trials.table import Row, TrialTable

GROUPS = ("Owls", "7", "The Most", "Zoë", "Group 3")
TABLE = TrialTable(tuple(Row(group, trial, "red", 4, 3) for group in GROUPS for trial in (1, "B", "Last try")))


def test_groups_and_trials_head_their_rows_as_a_teacher_writes_them() -> None:
    """A bare number is a group's number; a plural stands without its article; a label that says trial is left alone."""
    words = page_words(scenario("ramp"), load("ccss"), TABLE, 4)
    assert list(words["group_labels"].values()) == ["Owls", "Group 7", "The Most", "Zoë", "Group 3"]
    assert list(words["trial_labels"].values()) == ["Trial 1", "Trial B", "Last try"]


def test_another_scenario_changes_the_words_of_the_page_and_nothing_else() -> None:
    """Seeds planted and sprouted use the same pages."""
    ramp, seeds = (page_words(scenario(name), load("ccss"), TABLE, 4) for name in ("ramp", "seeds"))
    assert ramp.keys() == seeds.keys()
    assert seeds["things"] == "seeds"
    assert "pin" not in seeds["table_caption"] + seeds["graph_axis"] + seeds["title"]


def test_every_skill_has_its_phrase_and_its_topic() -> None:
    """From the curriculum's skill list."""
    words = page_words(scenario("ramp"), load("ccss"), TABLE, 4)
    assert words["i_can"].keys() == words["topics"].keys() == set(load("ccss").all_skills())
    assert all(phrase.startswith("I can ") and phrase.endswith(".") for phrase in words["i_can"].values())
