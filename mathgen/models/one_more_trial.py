"""One more trial: what a number for it would do to the mean."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Op, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.lists import MOST_NUMBERS
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_FROM_THE_MEAN = (-6, -4, -3, -2, 2, 3, 4, 6)  # how far the new number is from the whole part of the mean so far


@problem_model(skill="mean after one more trial")
def mean_after_one_more(view: TableView) -> AskSpace:
    """The mean that one more trial would make: whole, and not what it was."""
    trials = view.table.trials
    spots = (
        [spot for spot in view.spots if spot.trials is None or len(spot.trials) == len(trials)] if 2 <= len(trials) < MOST_NUMBERS else []
    )

    def build(spot: Spot, color: str | None, step: int) -> Draft | None:
        parts = tuple(view.quantity("down", Spot(spot.groups, (trial,)), color) for trial in trials)
        numbers = tuple(map(view.number, parts))
        so_far, count = sum(numbers), len(numbers) + 1
        new = so_far // len(numbers) + step
        total = so_far + new
        rack = min(view.count("set_up", Spot(spot.groups, (trial,)), color) for trial in trials)
        # One that can be, that is not in the text yet, and that changes the mean.
        if not 2 <= new <= rack or new in (*numbers, count) or total % count or total <= count or new * len(numbers) == so_far:
            return None
        whole = view.quantity("down", spot, color)
        next_one, all_trials = Stated(new, "in one more trial"), Stated(count, "trials")
        return Draft(
            ask=Ask(Value(Op("/", (Op("+", (*parts, next_one)), all_trials))), (), Demand("any")),
            roles={"parts": parts, "whole": whole, "next": next_one, "count": all_trials},
            structure="statistic",
            slips=(("I40", (total, len(numbers))), ("I41", (so_far, len(numbers), new)), ("I42", (so_far, len(numbers)))),
            features=frozenset({"mean_median_iqr_mad"}),
            shown_as=Demand("decimal"),
        )

    return AskSpace((spots, view.colors_or_all, _FROM_THE_MEAN), build)
