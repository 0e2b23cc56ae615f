"""Spread: the mean absolute deviation, the interquartile range, the ends of a box plot, and how many results there are."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Op, Stat, Stated, StatName, Value
from mathgen.exact.demand import Demand
from mathgen.models.lists import list_choices, listed
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role
from mathgen.trials.scope import Scope

_ANY = Demand("any")
_WHOLE = Demand("whole")
_DECIMAL = Demand("decimal")
_FEATURES = frozenset({"mean_median_iqr_mad"})
_FEWEST_WITH_HALVES = 4  # numbers that have a lower and an upper half of two each
_Way = tuple[str, ...] | None


@problem_model(skill="mean absolute deviation")
def mean_absolute_deviation(view: TableView) -> AskSpace:
    """How far the counts of the trials, or of the groups in one trial, are from their mean, on average. The mean is a whole number."""

    def build(spot: Spot, way: _Way, color: str | None) -> Draft | None:
        found = listed(view, spot, way, color)
        if found is None:
            return None
        series, whole = found
        numbers = tuple(map(view.number, series))
        total, count = sum(numbers), len(numbers)
        apart = sum(abs(count * number - total) for number in numbers) // count if total % count == 0 else 0
        # A mean of 1 is a list of next to nothing, and a deviation below 1 is no number of pins. Where it is the mean again, one line
        # of working would be two.
        if apart < count or total <= count or 100 * apart % count or apart == total:
            return None
        return Draft(
            ask=Ask(Value(Stat("mean absolute deviation", series)), (), _ANY),
            roles={"series": series, "whole": whole, "over": "trials" if way is None else "groups"},
            structure="statistic",
            slips=(("I20", (apart,)), ("I21", (total // count,)), ("I22", numbers), ("I23", numbers)),
            features=_FEATURES,
            shown_as=_DECIMAL,
        )

    return AskSpace((view.spots, list_choices(view.table.groups), view.colors_or_all), build)


def _halves(numbers: tuple[int, ...]) -> tuple[list[int], list[int]] | None:
    """The lower and the upper half of a list, where every way of halving that schools teach gives the same two, and order matters."""
    ordered, half = sorted(numbers), len(numbers) // 2
    if len(numbers) < _FEWEST_WITH_HALVES or list(numbers) == ordered:
        return None
    lower, upper = ordered[:half], ordered[-half:]
    # "Values less than the median": numbers equal to the median would fall out of both halves.
    middles = ordered[half - 1 : half + 1] if len(numbers) % 2 == 0 else ordered[half - 1 : half + 2]
    if len(set(middles)) < len(middles):
        return None
    # Below 1, a quartile or a range is no number of pins.
    low, high = _twice_the_middle(lower), _twice_the_middle(upper)
    return (lower, upper) if low >= 2 and high - low >= 2 else None


def _twice_the_middle(ordered: list[int]) -> int:
    return ordered[(len(ordered) - 1) // 2] + ordered[len(ordered) // 2]


@problem_model(skill="interquartile range")
def interquartile_range(view: TableView) -> AskSpace:
    """How far the upper quartile is from the lower one, by the medians of both halves."""

    def build(spot: Spot, way: _Way, color: str | None) -> Draft | None:
        found = listed(view, spot, way, color)
        halves = None if found is None else _halves(tuple(map(view.number, found[0])))
        if found is None or halves is None:
            return None
        series, whole = found
        numbers = tuple(map(view.number, series))
        return Draft(
            ask=Ask(Value(Stat("interquartile range", series)), (), _ANY),
            roles={"series": series, "whole": whole, "over": "trials" if way is None else "groups"},
            structure="statistic",
            slips=(("I24", numbers), ("I25", numbers), ("I26", (_twice_the_middle(halves[1]),))),
            features=_FEATURES,
            shown_as=_DECIMAL,
        )

    return AskSpace((view.spots, list_choices(view.table.groups), view.colors_or_all), build)


_BOX: dict[StatName, str] = {
    "lower quartile": "At what number is the left end of the box",
    "upper quartile": "At what number is the right end of the box",
    "interquartile range": "How long is the box from the lower to the upper quartile",
}


@problem_model(skill="box plot")
def box_plot(view: TableView) -> AskSpace:
    """Where the box of a box plot starts or ends, or how long it is."""

    def build(spot: Spot, way: _Way, color: str | None, name: StatName) -> Draft | None:
        found = listed(view, spot, way, color)
        halves = None if found is None else _halves(tuple(map(view.number, found[0])))
        if found is None or halves is None:
            return None
        series, whole = found
        numbers = tuple(map(view.number, series))
        lower, upper = map(_twice_the_middle, halves)
        middle = ("I28", (_twice_the_middle(sorted(numbers)),))
        slips: dict[StatName, tuple[tuple[str, tuple[int | str, ...]], ...]] = {
            "lower quartile": (("I27", (min(numbers),)), middle, ("I29", (upper,))),
            "upper quartile": (("I27", (max(numbers),)), middle, ("I29", (lower,))),
            "interquartile range": (("I24", numbers), ("I25", numbers), ("I26", (upper,))),
        }
        return Draft(
            ask=Ask(Value(Stat(name, series)), (), _ANY),
            roles={"series": series, "whole": whole, "over": "trials" if way is None else "groups", "question": _BOX[name]},
            structure="statistic",
            slips=slips[name],
            features=_FEATURES,
            shown_as=_DECIMAL,
            unit=True,
        )

    return AskSpace((view.spots, list_choices(view.table.groups), view.colors_or_all, tuple(_BOX)), build)


@problem_model(skill="trials behind a mean")
def trials_behind_mean(view: TableView) -> AskSpace:
    """How many trials there were, from the total of a group and its mean per trial."""
    trials = len(view.table.trials)
    groups = [spot for spot in view.spots if spot.trials is None and spot.groups is not None]

    def build(spot: Spot, color: str | None) -> Draft | None:
        total = view.quantity("down", spot, color)
        number = view.number(total)
        mean = number // trials
        if number % trials or trials < 3 or mean in (0, 1, trials):
            return None
        per_trial = Op("/", (total, Stated(trials, "trials")))
        return Draft(
            ask=Ask(Value(Op("/", (total, per_trial))), (), _WHOLE),
            roles={"total": total, "mean": per_trial},
            structure="part unknown",
            slips=(("I46", (number, mean)), ("I47", (number, mean)), ("I48", (number,))),
            rates=((per_trial, str(mean)),),
            unit="asked",
        )

    return AskSpace((groups, view.colors_or_all), build)


@problem_model(skill="number of observations")
def results_recorded(view: TableView) -> AskSpace:
    """How many results there are: one for each group in each trial, or one for each color as well."""
    table = view.table
    groups, trials, kinds = len(table.groups), len(table.trials), len(table.colors)
    whole = view.totals.complete(Scope()) and min(groups, trials) > 1 and groups != trials

    def build(by_kind: bool) -> Draft | None:
        if not whole or (by_kind and kinds < 2):
            return None
        roles: dict[str, Role] = {"groups": Stated(groups, "groups"), "trials": Stated(trials, "trials")}
        factors: tuple[Stated, ...] = (Stated(groups, "groups"), Stated(trials, "trials"))
        counts: tuple[int, ...] = (groups, trials)
        if by_kind:
            roles["kinds"] = Stated(kinds, "kinds")
            factors, counts = (*factors, Stated(kinds, "kinds")), (*counts, kinds)
        return Draft(
            ask=Ask(Value(Op("*", factors)), (), _WHOLE),
            roles=roles,
            structure="times",
            slips=(("I30", counts), ("I31", (counts[-1],))),
            features=frozenset(),
            unit="asked",
            wanted=frozenset({"kinds" if by_kind else "trials"}),
        )

    return AskSpace(((False, True),), build)
