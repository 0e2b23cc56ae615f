"""What a problem is about: its groups and its trials."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.asks.expression import Measured, Quantity
from mathgen.problems.draft import Draft
from mathgen.trials.scope import Label
from mathgen.trials.table import TrialTable


class Spot(NamedTuple):
    """What a problem is about, in table order."""

    groups: tuple[str, ...]
    trials: tuple[Label, ...]


def spot_of(draft: Draft, table: TrialTable) -> Spot:
    """The groups and trials of all that a problem tells and asks."""
    found = [leaf for leaf in (*draft.leaves(), draft.ask.equals) if isinstance(leaf, Quantity | Measured)]
    groups = {group for one in found for group in (table.groups if one.scope.groups is None else one.scope.groups)}
    trials = {trial for one in found for trial in (table.trials if one.scope.trials is None else one.scope.trials)}
    return Spot(tuple(one for one in table.groups if one in groups), tuple(one for one in table.trials if one in trials))
