"""Stories in three numbers, as the table can tell them: a count before a trial, in it and after it; a rack set up, down and left."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, NamedTuple

from mathgen.asks.expression import Quantity
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_BY_HEART = 5  # sums and differences within 5 are known before school stories ask for them


class Story(NamedTuple):
    """Three quantities and their numbers: ``start`` and ``change`` make ``result``, or ``result`` is left of ``start``."""

    start: Quantity
    change: Quantity
    result: Quantity
    numbers: tuple[int, int, int]


def adding(view: TableView, build: Callable[..., Draft | None], *more: Sequence[Any]) -> AskSpace:
    """Drafts of every group's (and the class's) count before a trial, in it, and after it; of one color or all, over any further axes."""
    table = view.table

    def told(groups: tuple[str, ...] | None, place: int, color: str | None, *rest: Any) -> Draft | None:
        trials = table.trials
        spans = trials[:place], trials[place : place + 1], trials[: place + 1]
        start, change, result = (view.quantity("down", Spot(groups, span), color) for span in spans)
        if not view.totals.complete(result.scope):
            return None
        a, b, c = view.number(start), view.number(change), view.number(result)
        # As many again as before: the answer would stand in the words.
        if 0 in (a, b) or a == b or c <= _BY_HEART:
            return None
        return build(Story(start, change, result, (a, b, c)), *rest)

    return AskSpace((view.groups_or_class, range(1, len(table.trials)), view.colors_or_all, *more), told)


def taking(view: TableView, build: Callable[..., Draft | None], *more: Sequence[Any]) -> AskSpace:
    """Drafts of every rack of one trial: set up, knocked down and left standing; of one color or all, over any further axes."""

    def told(spot: Spot, color: str | None, *rest: Any) -> Draft | None:
        start, change, result = (view.quantity(measure, spot, color) for measure in ("set_up", "down", "standing"))
        a, b, c = view.number(start), view.number(change), view.number(result)
        # Half of the pins: the answer would stand in the words.
        if 0 in (b, c) or b == c or a <= _BY_HEART:
            return None
        return build(Story(start, change, result, (a, b, c)), *rest)

    return AskSpace((view.one_trial_spots, view.colors_or_all, *more), told)
