"""Counting: totals, and what is left."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_WHOLE = Demand("whole")


@problem_model(skill="total of parts")
def put_together_total(view: TableView) -> AskSpace:
    """How many pins in all: the colors of one roll, the trials of one group, or two to four groups in one trial."""
    table = view.table
    neighbors = [table.groups[i : i + size] for size in (2, 3, 4) for i in range(len(table.groups) - size + 1)]
    trials = [table.trials] if 2 <= len(table.trials) <= 4 else []
    ways = [*(("colors", one) for one in view.color_sets), *(("trials", one) for one in trials), *(("groups", one) for one in neighbors)]

    def build(spot: Spot, way: tuple[str, tuple[str, ...]], color: str | None) -> Draft | None:
        kind, labels = way
        if kind == "colors":
            if color is not None:
                return None
            parts = [view.quantity("down", spot, label) for label in labels]
            whole = view.quantity("down", spot, labels)
        elif kind == "trials":
            if spot.trials is not None:
                return None
            parts = [view.quantity("down", Spot(spot.groups, (label,)), color) for label in labels]
            whole = view.quantity("down", spot, color)
        else:
            if spot.groups is not None or (len(labels) == len(table.groups)) != (spot.groups is None and len(labels) == len(table.groups)):
                return None
            parts = [view.quantity("down", Spot((label,), spot.trials), color) for label in labels]
            whole = view.quantity("down", Spot(labels, spot.trials), color)
        numbers = tuple(map(view.number, parts))
        if min(numbers) == 0:
            return None
        return Draft(
            ask=Ask(Value(Op("+", tuple(parts))), (), _WHOLE),
            roles={"parts": tuple(parts), "whole": whole},
            structure="whole unknown",
            slips=(("H14", numbers), ("H11", numbers), ("H06", (*numbers, view.number(Quantity("set_up", whole.scope))))),
            features=frozenset(),
            must_not_show=(whole.scope,),
        )

    return AskSpace((view.spots, ways, view.colors_or_all), build)


@problem_model(skill="two steps, what is left")
def two_step_left_standing(view: TableView) -> AskSpace:
    """How many pins were left standing: add what was knocked down, color by color, then take it from what was set up."""

    def build(spot: Spot, colors: tuple[str, ...]) -> Draft | None:
        whole = view.quantity("set_up", spot, colors)
        parts = tuple(view.quantity("down", spot, color) for color in colors)
        numbers = tuple(map(view.number, parts))
        n, k = view.number(whole), sum(numbers)
        if min(numbers) == 0 or n == k:
            return None
        return Draft(
            ask=Ask(Value(Op("-", (whole, Op("+", parts)))), (), _WHOLE),
            roles={"whole": whole, "parts": parts, "rest": Quantity("standing", whole.scope)},
            structure="part unknown",
            slips=(("H07", (k,)), ("H06", (n, *numbers)), ("H14", numbers)),
            features=frozenset({"two_step"}),
            must_not_show=(whole.scope,),
        )

    return AskSpace((view.spots, view.color_sets), build)


@problem_model(skill="two steps, what is left")
def left_standing_over_trials(view: TableView) -> AskSpace:
    """How many pins were left standing in several trials with equal racks: multiply, then take away."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        trials = spot.trials or view.table.trials
        each = [view.quantity("set_up", Spot(spot.groups, (trial,)), color) for trial in trials]
        sizes = set(map(view.number, each))
        if len(trials) < 2 or len(sizes) != 1:
            return None
        down = view.quantity("down", spot, color)
        size, k = sizes.pop(), view.number(down)
        n = size * len(trials)
        if k in (0, n):
            return None
        count = Stated(len(trials), "trials")
        return Draft(
            ask=Ask(Value(Op("-", (Op("*", (count, each[0])), down))), (), _WHOLE),
            roles={"each": each[0], "count": count, "down": down, "rest": Quantity("standing", down.scope)},
            structure="part unknown",
            slips=(("H07", (n,)), ("H05", (k, 0)), ("H04", (size, k))),
            features=frozenset({"two_step", "multiply_divide"}),
            must_not_show=(down.scope,),
        )

    return AskSpace((view.spots, view.colors_or_all), build)
