"""Rates: so much for one, at this rate, and equal ratios in a table."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role

_ANY = Demand("any")
_WHOLE = Demand("whole")
_RATE = frozenset({"ratio"})
_MOST = 100  # in a table or a total that pupils work with by hand
_AHEAD = (5, 6, 8, 9, 10, 12, 15, 18, 20, 24, 25, 30)  # trials that a class could still do
_GROWN = (2, 3, 4, 5, 6, 8, 10)  # how many times as many the next row of a ratio table holds


def _per_trial(view: TableView, group: tuple[str, ...] | None, color: str | None) -> tuple[int, int, dict[str, Role]] | None:
    """All that was knocked down in every trial, how many trials, and both as roles; None where the table has one trial or gaps."""
    spot, trials = Spot(group, None), len(view.table.trials)
    if trials < 2 or spot not in view.spots:
        return None
    total, count = view.quantity("down", spot, color), Stated(trials, "trials")
    return view.number(total), trials, {"total": total, "count": count}


@problem_model(skill="unit rate")
def unit_rate(view: TableView) -> AskSpace:
    """How many pins were knocked down per trial, over all trials."""

    def build(group: tuple[str, ...] | None, color: str | None) -> Draft | None:
        found = _per_trial(view, group, color)
        if found is None:
            return None
        k, trials, roles = found
        if not trials < k <= _MOST or k == trials * trials:  # the answer would be the number of trials
            return None
        return Draft(
            ask=Ask(Value(Op("/", (roles["total"], roles["count"]))), (), _ANY),  # type: ignore[arg-type]
            roles=roles,
            structure="what fraction",
            slips=(("G31", (k, trials)), ("G32", (k, trials)), ("G33", (k,))),
            features=_RATE,
            unit="per trial",
        )

    return AskSpace((view.groups_or_class, view.colors_or_all), build)


@problem_model(skill="unit rate")
def unit_rate_of_parts(view: TableView) -> AskSpace:
    """How many pins were knocked down for each one that was left standing, or the other way round."""

    def build(spot: Spot, color: str | None, down_first: bool) -> Draft | None:
        down = view.quantity("down", spot, color)
        standing = Quantity("standing", down.scope)
        k, rest = view.number(down), view.number(standing)
        if min(k, rest) < 2:  # no "other 1 red pin"
            return None
        first, second, a, b = (down, standing, k, rest) if down_first else (standing, down, rest, k)
        if a <= b or a % b or a == b * b:  # "3/2 pins for each pin" is true, but nothing to picture
            return None
        return Draft(
            ask=Ask(Value(Op("/", (first, second))), (), _ANY),
            roles={"down": down, "standing": standing, "first": first, "second": second},
            structure="what fraction",
            slips=(("G34", (a, b)), ("G31", (a, b)), ("G35", (a, a + b)), ("G36", (a, b))),
            features=_RATE,
        )

    return AskSpace((view.spots, view.colors_or_all, (True, False)), build)


@problem_model(skill="a rate carried on")
def count_at_this_rate(view: TableView) -> AskSpace:
    """How many pins would be knocked down in more trials, at the rate of those that were done."""

    def build(group: tuple[str, ...] | None, color: str | None, ahead: int) -> Draft | None:
        found = _per_trial(view, group, color)
        if found is None:
            return None
        k, trials, roles = found
        if not trials < k <= _MOST or ahead <= trials or k * ahead % trials:
            return None
        following = Stated(ahead, "trials at this rate")
        rate = Op("/", (roles["total"], roles["count"]))  # type: ignore[arg-type]
        return Draft(
            ask=Ask(Value(Op("*", (rate, following))), (), _WHOLE),
            roles={**roles, "ahead": following},
            structure="part from rate",
            slips=(("G37", (k, ahead)), ("G38", (k, ahead)), ("G05", (k, trials, ahead))),
            features=_RATE,
        )

    return AskSpace((view.groups_or_class, view.colors_or_all, _AHEAD), build)


@problem_model(skill="a rate carried on")
def trials_at_this_rate(view: TableView) -> AskSpace:
    """In how many trials a number of pins would be knocked down, at the rate of those trials that were done."""

    def build(group: tuple[str, ...] | None, color: str | None, ahead: int) -> Draft | None:
        found = _per_trial(view, group, color)
        if found is None:
            return None
        k, trials, roles = found
        if k <= trials or ahead in (*range(trials + 1), k) or k % trials or k > _MOST:
            return None
        goal = Stated(k * ahead // trials, "goal at this rate")
        rate = Op("/", (roles["total"], roles["count"]))  # type: ignore[arg-type]
        return Draft(
            ask=Ask(Value(Op("/", (goal, rate))), (), _WHOLE),
            roles={**roles, "goal": goal},
            structure="whole from part",
            slips=(("G39", (goal.number, trials)), ("G40", (trials, goal.number, k)), ("G41", (goal.number, k))),
            features=_RATE,
            unit="asked",
        )

    return AskSpace((view.groups_or_class, view.colors_or_all, _AHEAD), build)


@problem_model(skill="equal ratios in a table")
def ratio_table(view: TableView) -> AskSpace:
    """The missing number of a row: as many times more of one color as of the other."""
    sets = [colors for colors in view.color_sets if len(colors) > 1]

    def build(spot: Spot, colors: tuple[str, ...], place: tuple[int, int], times: int) -> Draft | None:
        if max(place) >= len(colors):
            return None
        parts = tuple(view.quantity("down", spot, color) for color in colors)
        numbers = list(map(view.number, parts))
        first, second = parts[place[0]], parts[place[1]]
        a, b = numbers[place[0]], numbers[place[1]]
        if min(numbers) == 0 or a == b or a == 1 or max(a, b) * times > _MOST or b * times in numbers:
            return None
        row = Stated(a * times, "in another row")
        return Draft(
            ask=Ask(Value(Op("*", (second, Op("/", (row, first))))), (), _WHOLE),
            roles={"parts": parts, "whole": view.quantity("down", spot, colors), "first": first, "second": second, "row": row},
            structure="part from rate",
            slips=(("G42", (a, b, row.number)), ("G43", (times,)), ("G44", (b,))),
            features=_RATE,
        )

    places = tuple((one, other) for one in range(4) for other in range(4) if one != other)
    return AskSpace((view.spots, sets, places, _GROWN), build)
