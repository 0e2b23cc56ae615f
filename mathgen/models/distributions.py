"""Distributions: two lists compared by range or by median, mean and median of one list, questions whose answers vary."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import combinations, pairwise
from typing import Any, NamedTuple

from mathgen.asks.expression import NOTHING, Ask, Choice, Op, Quantity, Stat, StatName, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.models.lists import MOST_NUMBERS, list_choices, listed
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace, joined
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft
from mathgen.trials.scope import Label

_NAME, _TRUTH = Demand("name"), Demand("truth")
_FEATURES = frozenset({"mean_median_iqr_mad"})
_MOST_GROUPS = 8  # of which any two are compared
_Numbers = tuple[int, ...]
_Made = Callable[..., Draft | None]


class Lists(NamedTuple):
    """The lists of two groups, a number for each trial, or of two trials, a number for each group."""

    kind: str  # "groups" or "trials"
    labels: tuple[str, str]
    first: tuple[Quantity, ...]
    second: tuple[Quantity, ...]
    wholes: tuple[Quantity, Quantity]
    numbers: tuple[_Numbers, _Numbers]


def two_lists(view: TableView, build: _Made, *more: Sequence[Any]) -> AskSpace:
    """Drafts of every two groups or neighboring trials whose lists hold three numbers or more."""
    table = view.table

    def made(
        kind: str, labels: tuple[Label, Label], spots: list[list[Spot]], wholes: list[Spot], color: str | None, rest: Any
    ) -> Draft | None:
        if not all(view.totals.complete(view.scope(one)) for one in wholes):
            return None
        first, second = (tuple(view.quantity("down", one, color) for one in some) for some in spots)
        numbers = tuple(map(view.number, first)), tuple(map(view.number, second))
        both = view.quantity("down", wholes[0], color), view.quantity("down", wholes[1], color)
        return build(Lists(kind, (str(labels[0]), str(labels[1])), first, second, both, numbers), *rest)

    def of_groups(labels: tuple[str, str], color: str | None, *rest: Any) -> Draft | None:
        spots = [[Spot((group,), (trial,)) for trial in table.trials] for group in labels]
        return made("groups", labels, spots, [Spot((group,), None) for group in labels], color, rest)

    def of_trials(labels: tuple[Label, Label], color: str | None, *rest: Any) -> Draft | None:
        spots = [[Spot((group,), (trial,)) for group in table.groups] for trial in labels]
        return made("trials", labels, spots, [Spot(None, (trial,)) for trial in labels], color, rest)

    groups = table.groups if 3 <= len(table.trials) <= MOST_NUMBERS else ()
    twos = list(combinations(groups, 2)) if len(groups) <= _MOST_GROUPS else list(pairwise(groups))
    trials = list(pairwise(table.trials)) if 3 <= len(table.groups) <= MOST_NUMBERS else []
    return joined(AskSpace((twos, view.colors_or_all, *more), of_groups), AskSpace((trials, view.colors_or_all, *more), of_trials))


def _compared(lists: Lists, name: StatName, values: tuple[int, int], most: bool, slips: Sequence[tuple[str, int, int]]) -> Draft | None:
    """Which list has the greater (or smaller) value; None where every likely mistake leads to the right one."""
    first, second = lists.labels
    sign = 1 if most else -1
    right = first if sign * values[0] > sign * values[1] else second
    found = [(slip, first if sign * one > sign * other else second) for slip, one, other in slips if one != other]
    wrong = [slip for slip in found if slip[1] != right]
    if values[0] == values[1] or not wrong:
        return None
    return Draft(
        ask=Ask(Choice(lists.labels, (Stat(name, lists.first), Stat(name, lists.second)), most), (), _NAME),
        roles={
            "first": lists.first,
            "second": lists.second,
            "whole": lists.wholes[0],
            "whole2": lists.wholes[1],
            "greater": "greater" if most else "smaller",
        },
        structure="statistic",
        slips=tuple((slip, (label,)) for slip, label in wrong),
        features=_FEATURES,
        unit=False,
        wanted=frozenset({lists.kind}),
    )


@problem_model(skill="spreads compared")
def spreads_compared(view: TableView) -> AskSpace:
    """Which of two lists has the greater (or smaller) range, where its numbers or its total point to the other one."""

    def build(lists: Lists, most: bool) -> Draft | None:
        one, other = lists.numbers
        spans = max(one) - min(one), max(other) - min(other)
        if 0 in spans:
            return None
        return _compared(lists, "range", spans, most, (("I32", max(one), max(other)), ("I33", sum(one), sum(other))))

    return two_lists(view, build, (True, False))


@problem_model(skill="medians compared")
def medians_compared(view: TableView) -> AskSpace:
    """Which of two lists has the greater (or smaller) median, where its total or its middle as it stands points to the other one."""

    def build(lists: Lists, most: bool) -> Draft | None:
        one, other = lists.numbers
        (low, middle), (low2, middle2) = map(_twice_the_middles, lists.numbers)
        if min(middle, middle2) < 2:
            return None  # no number of pins to speak of
        return _compared(lists, "median", (middle, middle2), most, (("I34", sum(one), sum(other)), ("I35", low, low2)))

    return two_lists(view, build, (True, False))


def _twice_the_middles(numbers: _Numbers) -> tuple[int, int]:
    """Twice what stands in the middle of a list, as it is and in order."""
    ordered, half = sorted(numbers), len(numbers) // 2
    return numbers[-half - 1] + numbers[half], ordered[-half - 1] + ordered[half]


@problem_model(skill="mean or median")
def mean_or_median(view: TableView) -> AskSpace:
    """Whether the mean or the median of a list is the greater: a number far away draws the mean to it, the median stays."""

    def build(spot: Spot, way: tuple[str, ...] | None, color: str | None, most: bool) -> Draft | None:
        found = listed(view, spot, way, color)
        if found is None:
            return None
        series, whole = found
        numbers = tuple(map(view.number, series))
        total, count = sum(numbers), len(numbers)
        as_it_stands, middle = _twice_the_middles(numbers)
        # As far apart as half a pin, and in whole numbers or halves: to be seen, and not to be divided for long.
        if abs(2 * total - count * middle) < count or 2 * total % count or middle < 2:
            return None
        is_mean = (2 * total > count * middle) == most
        unordered = (2 * total > count * as_it_stands) == most
        ends = (2 * total > count * (min(numbers) + max(numbers))) == most
        wrong = "median" if is_mean else "mean"
        slips = [slip for slip, way_out in (("I35", unordered), ("I36", ends)) if way_out != is_mean]
        if not slips:
            return None
        return Draft(
            ask=Ask(Choice(("mean", "median"), (Stat("mean", series), Stat("median", series)), most), (), _NAME),
            roles={
                "series": series,
                "whole": whole,
                "over": "trials" if way is None else "groups",
                "greater": "greater" if most else "less",
            },
            structure="statistic",
            slips=tuple((slip, (wrong,)) for slip in slips),
            features=_FEATURES,
            unit=False,
        )

    return AskSpace((view.spots, list_choices(view.table.groups), view.colors_or_all, (True, False)), build)


@problem_model(skill="statistical question")
def statistical_question(view: TableView) -> AskSpace:
    """Whether a question about the results is a statistical one: one whose answers differ from group to group or trial to trial."""
    table = view.table
    groups = table.groups if 3 <= len(table.groups) <= MOST_NUMBERS else ()
    several = [spot for spot in view.spots if spot.groups is None and spot.trials is not None and len(spot.trials) == 1 and groups]

    def build(spot: Spot, color: str | None, kind: str) -> Draft | None:
        measure = "set_up" if kind == "same" else "down"
        everybody = [Spot((group,), spot.trials) for group in groups] if spot.groups is None else [spot]
        series = tuple(view.quantity(measure, one, color) for one in everybody)  # type: ignore[arg-type]
        numbers = set(map(view.number, series))
        if (kind == "one") != (len(series) == 1) or (kind == "vary") != (len(numbers) > 1) or min(numbers) < 1:
            return None
        return Draft(
            ask=Ask(Truth(Stat("range", series), ">", NOTHING), (), _TRUTH),
            roles={"series": series, "whole": view.quantity(measure, spot, color)} if kind != "one" else {"whole": series[0]},  # type: ignore[arg-type]
            structure="is it so",
            slips=(("I37", ("false",)),) if kind == "vary" else (("I38", ("true",)),),
            features=frozenset(),
            unit=False,
            wanted=frozenset({kind}),
        )

    return joined(
        AskSpace((several, view.colors_or_all, ("vary", "same")), build),
        # A few will do: else most questions would not be statistical ones.
        AskSpace((view.group_trials[:: len(groups)] if groups else (), view.colors_or_all, ("one",)), build),
    )


@problem_model(skill="means apart in deviations")
def means_apart(view: TableView) -> AskSpace:
    """How many times the mean absolute deviation of one list the means of two are apart; both lists vary about as much."""

    def build(lists: Lists, of_first: bool) -> Draft | None:
        totals, size = tuple(map(sum, lists.numbers)), len(lists.numbers[0])
        if any(total % size for total in totals):
            return None
        means = [total // size for total in totals]
        # Sums of distances from the mean: as many numbers on both sides, so that they compare as the deviations do.
        far = [sum(abs(one - mean) for one in numbers) for numbers, mean in zip(lists.numbers, means, strict=True)]
        own, other = far if of_first else far[::-1]
        gap = abs(means[0] - means[1])
        # One deviation or less is no multiple.
        if 0 in far or max(far) > 2 * min(far) or 2 * gap * size % own or gap * size <= own:
            return None
        # One line of working for two means: a pupil would look for the second.
        if own in totals:
            return None
        series = (lists.first, lists.second)
        high, low = series if means[0] > means[1] else series[::-1]
        spread = series[0] if of_first else series[1]
        return Draft(
            ask=Ask(
                Value(Op("/", (Op("-", (Stat("mean", high), Stat("mean", low))), Stat("mean absolute deviation", spread)))),
                (),
                Demand("any"),
            ),
            roles={
                "first": lists.first,
                "second": lists.second,
                "whole": lists.wholes[0],
                "whole2": lists.wholes[1],
                "spread": lists.wholes[0] if of_first else lists.wholes[1],
            },
            structure="statistic",
            slips=(
                ("I43", (gap,)),
                *((("I44", (gap * size, other)),) if 100 * gap * size % other == 0 else ()),  # nobody writes 1.428571...
                ("I45", (gap * size * size, own)),
            ),
            features=_FEATURES,
            shown_as=Demand("decimal"),
            unit=False,
            wanted=frozenset({lists.kind}),
        )

    return two_lists(view, build, (True, False))
