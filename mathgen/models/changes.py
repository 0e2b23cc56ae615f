"""One number of a list that may change: which, and to what, so that the list has a total or a mean. All right changes are the answer."""

from __future__ import annotations

from typing import Literal

from mathgen.asks.expression import Ask, Changes, Stated
from mathgen.exact.demand import Demand
from mathgen.models.lists import MOST_NUMBERS
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_LIST = Demand("list")
_BY = tuple(number for number in range(-12, 13) if abs(number) > 1)  # how far the total has to move


def _changes(view: TableView, name: Literal["total", "mean"], features: frozenset[str]) -> AskSpace:
    trials = view.table.trials
    spots = (
        [spot for spot in view.spots if spot.trials is None or len(spot.trials) == len(trials)] if 3 <= len(trials) <= MOST_NUMBERS else []
    )

    def build(spot: Spot, color: str | None, by: int) -> Draft | None:
        own = [Spot(spot.groups, (trial,)) for trial in trials]
        parts, sets = (tuple(view.quantity(measure, one, color) for one in own) for measure in ("down", "set_up"))
        numbers, sizes = (tuple(map(view.number, some)) for some in (parts, sets))
        count, most, total = len(numbers), sizes[0], sum(numbers) + by
        if len(set(sizes)) > 1 or len(set(numbers)) < count or (name == "mean" and total % count):
            return None
        news = [one + by for one in numbers]
        right = sum(0 <= one <= most for one in news)
        to = total // count if name == "mean" else total
        # Several are right. For a total not all: what cannot be is to be found out. A mean is work enough.
        if not 2 <= right < count + (name == "mean") or to in numbers or abs(by) in (*numbers, to, most):
            return None
        stated = Stated(to, f"wanted {name}")
        return Draft(
            ask=Ask(Changes(parts, name, stated, sets[0]), (), _LIST),
            roles={"parts": parts, "whole": parts[0], "set": sets[0], "to": stated},
            structure="list",
            slips=(("U01", (by, *numbers)), ("U02", (by, most, *numbers)), *((("U03", (by, most, *numbers)),) if name == "mean" else ())),
            features=features,
            unit=False,
        )

    return AskSpace((spots, view.colors_or_all, _BY), build)


@problem_model(skill="change one number for a total")
def change_for_total(view: TableView) -> AskSpace:
    """Every way to change the count of one trial so that all trials together come to a total."""
    return _changes(view, "total", frozenset({"two_step"}))


@problem_model(skill="change one number for a mean")
def change_for_mean(view: TableView) -> AskSpace:
    """Every way to change the count of one trial so that the trials have a mean."""
    return _changes(view, "mean", frozenset({"mean_median_iqr_mad"}))
