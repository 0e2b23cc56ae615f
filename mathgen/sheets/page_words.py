"""The words that pages need, gathered from scenario and curriculum."""

from __future__ import annotations

from typing import Any

from mathgen.grades.curriculum import Curriculum
from mathgen.scenario.naming import group_name, trial_name, upper_first
from mathgen.scenario.words import Scenario
from mathgen.trials.table import TrialTable

_ABOUT_MONEY = [  # common practice, no source
    "25¢ and $0.25 are the same price. Write one sign only: $0.25¢ would be a quarter of a cent.",
    "A dollar is 100 cents; a quarter is 25, a dime 10, a nickel 5, a penny 1. Let pupils lay prices with coins.",
]
CHECKED = "Every answer was checked three ways."


def page_words(scenario: Scenario, curriculum: Curriculum, table: TrialTable, grade: int, proof_line: str = CHECKED) -> dict[str, Any]:
    """The ``scenario_words`` of ``worksheet_data`` and ``key_data``.

    Args:
        scenario: what things are called.
        curriculum: "I can" phrases, topics, and the grade's name for the key.
        table: its groups and trials get the names under which pages show them.
        grade: of the sheet.
        proof_line: what the key says about how its answers were checked.
    """
    skills = [curriculum.words(skill) for skill in curriculum.all_skills()]
    counted = upper_first(f"{scenario.items} {scenario.after_noun['down']}")
    return {
        "title": "Our class store" if table.prices else scenario.title,
        "table_caption": "Price list" if table.prices else counted,
        "group_heading": scenario.group,
        "color_heading": "Color",
        "target_heading": "Target color",
        "row_heading": f"{scenario.group} and {scenario.trial}",
        "set_up": scenario.after_noun["set_up"],
        "down": scenario.after_noun["down"],
        "standing": scenario.after_noun["standing"],
        "successes": "successes",
        "thing": scenario.item,
        "things": scenario.items,
        "trial": scenario.trial,
        "trials": scenario.trials,
        "graph_title": counted,
        "graph_axis": f"Number of {scenario.items}",
        "group_labels": {label: shown_group(label, scenario) for label in table.groups},
        "trial_labels": {label: trial_name(label, scenario) for label in table.trials},
        "i_can": {words.skill: words.i_can for words in skills},
        "topics": {words.skill: words.topic for words in skills},
        "grade_name": curriculum.label(grade),
        "proof_line": proof_line,
        "cautions_head": "About money" if table.prices else scenario.cautions_head,
        "cautions": _ABOUT_MONEY if table.prices else list(scenario.cautions),
    }


def shown_group(label: str, scenario: Scenario) -> str:
    """A group at the head of a row: "Owls" where a sentence has "the Owls", "Group 7" as in a sentence."""
    name = group_name(label, scenario)
    return label if name == f"the {label}" else name


def table_names(table: TrialTable, words: dict[str, Any]) -> list[str]:
    """Every name that a class gave, as typed and as shown on pages: data that is never read as a number."""
    trials = [str(trial) for trial in table.trials]
    items = [one.item for one in table.prices]
    return [*items, *table.groups, *words["group_labels"].values(), *trials, *words["trial_labels"].values(), *table.colors]
