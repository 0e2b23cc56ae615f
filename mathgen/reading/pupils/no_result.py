"""Results that were never taken, told to a pupil."""

from __future__ import annotations

import re
from collections.abc import Sequence

from mathgen.reading.evaluate import Cell
from mathgen.scenario.naming import group_name, listed, trial_name
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Label
from mathgen.trials.table import TrialTable

_MOST_TOLD = 3


def no_result(cells: Sequence[Cell], table: TrialTable, scenario: Scenario) -> str:
    """ "There is no result for the Owls in Trial 2": which results are not there, a color only where the others are."""
    spots: dict[tuple[str, Label], list[str]] = {}
    for group, trial, color in cells:
        spots.setdefault((group, trial), []).append(color)
    there = {(row.group, row.trial) for row in table.rows}
    told = []
    for (group, trial), colors in spots.items():
        where = f"{group_name(group, scenario)} in {trial_name(trial, scenario)}"
        told.append(f"{where} ({listed(colors)})" if (group, trial) in there else where)
    if len(told) > _MOST_TOLD:
        told = [*told[: _MOST_TOLD - 1], f"in {len(told) - _MOST_TOLD + 1} other places"]
    joint = "or" if len(told) > 1 else "and"
    return f"There is no result for {listed(told, joint)}"


def with_results(question: str, cells: Sequence[Cell], table: TrialTable, scenario: Scenario) -> list[str]:
    """The same question about the trials in which nothing is missing, and about the other groups; it may be that none can be answered."""
    asked = question.rstrip("?.!; ")
    asked = asked[:1].upper() + asked[1:]
    without_results = {trial for _, trial, _ in cells}
    trials = [trial for trial in table.trials if trial not in without_results]
    absent = {group for group, _, _ in cells}
    groups = [group for group in table.groups if group in absent]
    found = []
    if trials:
        found.append(f"{asked} in {_trials(trials, scenario)}?")
    named = any(re.search(rf"\b{re.escape(group)}\b", question, re.IGNORECASE) for group in groups)
    if not named and len(groups) < min(_MOST_TOLD, len(table.groups) - 1):
        found.append(f"{asked}, without {listed([group_name(group, scenario) for group in groups])}?")
    return found


def _trials(trials: Sequence[Label], scenario: Scenario) -> str:
    """ "Trials 1 and 3", "Trial A and Trial B"."""
    if len(trials) > 1 and all(isinstance(trial, int) for trial in trials):
        return f"{scenario.trials.capitalize()} {listed([str(trial) for trial in trials])}"
    return listed([trial_name(trial, scenario) for trial in trials])
