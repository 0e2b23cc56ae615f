"""What a pupil can ask in place of a question that is not answered as it stands: a yes or no question, or whose change is greatest."""

from __future__ import annotations

import re

from mathgen.scenario.naming import group_name
from mathgen.scenario.words import Scenario
from mathgen.trials.table import TrialTable

_YES_OR_NO = re.compile(r"(?:and |so |but )?(?:did|do|does|is|are|was|were|has|have|had|can|could)\b", re.IGNORECASE)
_ASKS_ANYWAY = re.compile(r"\b(?:how|what|which|who|find|tell)\b", re.IGNORECASE)
_PART = re.compile(r"\b(?:half|thirds?|quarters?|fourths?|fifths?|tenths?|per ?cent|fraction)\b|%|\d/\d", re.IGNORECASE)
_GREATEST_CHANGE = re.compile(
    r"\b(?:who|which|what)\b.*\b(?:biggest|largest|greatest|highest|smallest|most|least)\b.*\b(?:difference|change|increase|improvement|gap|drop)\b"
    r"|\b(?:who|which|what)\b.*\b(?:improved?|changed?|increased?|dropped|went (?:up|down))\b.*\b(?:most|least)\b",
    re.IGNORECASE,
)


def yes_or_no(question: str) -> bool:
    """Whether a question wants "yes" or "no"."""
    return _YES_OR_NO.match(question) is not None and _ASKS_ANYWAY.search(question) is None


def of_a_part(question: str) -> bool:
    """Whether a part is spoken of: "more than half of the gold pins"."""
    return _PART.search(question) is not None


def of_the_greatest_change(question: str) -> bool:
    """Whether the words ask whose change is the greatest or the smallest."""
    return _GREATEST_CHANGE.search(question) is not None


def in_place(question: str, table: TrialTable, scenario: Scenario) -> str:
    """ "How many gold pins did the Puffins knock down?", or "What fraction of ...", or "How many more ... than the Owls?".

    Of what a yes or no question names; nothing where it names more.
    """
    groups, trials, colors = _named(question, table)
    if len(groups) not in (1, 2) or len(colors) > 1 or len(trials) > 1:
        return ""
    things = f"{colors[0]} {scenario.items}" if colors else scenario.items
    when = f" in {scenario.trial.capitalize()} {trials[0]}" if trials else ""
    who, base = group_name(groups[0], scenario), scenario.base["down"]
    if len(groups) == 2:
        return f"How many more {things} did {who} {base} than {group_name(groups[1], scenario)}{when}?"
    what = f"What fraction of the {things}" if of_a_part(question) else f"How many {things}"
    return f"{what} did {who} {base}{when}?"


def change_in_place(question: str, table: TrialTable, scenario: Scenario) -> str:
    """The change of one group between the trials that are named, or the first and the last."""
    _, trials, _ = _named(question, table)
    first, last = (trials[0], trials[-1]) if len(trials) == 2 else (str(table.trials[0]), str(table.trials[-1]))
    trial, who = scenario.trial.capitalize(), group_name(table.groups[0], scenario)
    counted = f"the number of {scenario.items} {who} {scenario.past['down']}"
    return f"What is the difference between {counted} in {trial} {first} and in {trial} {last}?"


def _named(question: str, table: TrialTable) -> tuple[list[str], list[str], list[str]]:
    def found(labels: tuple[str, ...], lead: str = "") -> list[str]:
        at = {label: re.search(rf"{lead}\b{re.escape(label)}\b", question, re.IGNORECASE) for label in labels}
        return [label for label, place in sorted(at.items(), key=lambda one: one[1].start() if one[1] else 0) if place]

    trials = tuple(map(str, table.trials))
    return found(table.groups), found(trials, r"\b(?:trials? |and )"), found(table.colors)
