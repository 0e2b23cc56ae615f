"""Lists of counts that a statistic is of: those of the trials of a group, or those of groups in one trial."""

from __future__ import annotations

from itertools import combinations

from mathgen.asks.expression import Quantity
from mathgen.models.view import Spot, TableView

MOST_NUMBERS = 6  # in one list that a pupil adds
_MOST_MIXED = 8  # groups of which any three or four may share a mean


def list_choices(groups: tuple[str, ...]) -> list[tuple[str, ...] | None]:
    """Which numbers a list may hold: those of the trials (None), of all groups, or of some."""
    ways: list[tuple[str, ...] | None] = [None]
    if 3 <= len(groups) <= MOST_NUMBERS:
        ways.append(groups)
    for size in (3, 4):
        if size < len(groups) <= _MOST_MIXED:
            ways += combinations(groups, size)
        elif size < len(groups):
            ways += [groups[start : start + size] for start in range(len(groups) - size + 1)]  # neighbors are plenty
    return ways


def listed(view: TableView, spot: Spot, way: tuple[str, ...] | None, color: str | None) -> tuple[tuple[Quantity, ...], Quantity] | None:
    """The list at a spot, and the total that it makes; None where the spot has no such list, or has it already elsewhere."""
    table = view.table
    if way is None:
        if (spot.trials is not None and len(spot.trials) != len(table.trials)) or not 3 <= len(table.trials) <= MOST_NUMBERS:
            return None
        series = tuple(view.quantity("down", Spot(spot.groups, (trial,)), color) for trial in table.trials)
        return series, view.quantity("down", spot, color)
    # Each combination is met once: at the class's spots of one trial.
    if (spot.groups is not None and len(table.groups) > 1) or spot.trials is None or len(spot.trials) != 1:
        return None
    series = tuple(view.quantity("down", Spot((group,), spot.trials), color) for group in way)
    return series, view.quantity("down", Spot(way, spot.trials), color)
