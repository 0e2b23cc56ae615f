"""Results that were never taken, told to a pupil."""

from __future__ import annotations

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
