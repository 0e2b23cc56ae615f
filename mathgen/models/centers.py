"""Lists and their centers: two questions of which one is statistical, a number left out, a mean that does not say what was counted."""

from __future__ import annotations

from mathgen.asks.expression import OF_TWO, Ask, Choice, Op, Quantity, Stat, Stated, StatName, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.models.lists import MOST_NUMBERS, list_choices, listed
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace, joined
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft
from mathgen.trials.scope import Measure

_NAME, _ANY, _DECIMAL = Demand("name"), Demand("any"), Demand("decimal")
_FEATURES = frozenset({"mean_median_iqr_mad"})
_FAR = 3  # pins at least that a number left out is from every other one
_FEWEST = 4  # numbers in the list, one of them left out


@problem_model(skill="statistical question")
def which_is_statistical(view: TableView) -> AskSpace:
    """Which of two questions about the same trial is a statistical one: that about every group, where the groups' answers differ.

    Half of the others are about every group's set, which is the same for all: "each group" does not tell which is the statistical one.
    """
    table = view.table
    groups = table.groups if 3 <= len(table.groups) <= MOST_NUMBERS else ()
    spots = [spot for spot in view.spots if spot.groups is None and spot.trials is not None and len(spot.trials) == 1 and groups]

    def build(spot: Spot, color: str | None, vary_first: bool, other: int | None) -> Draft | None:
        """``other``: of which group, by its place, the other question is; None for how many each group set up."""
        everybody = [Spot((group,), spot.trials) for group in groups]
        series = tuple(view.quantity("down", one, color) for one in everybody)
        sets = tuple(view.quantity("set_up", one, color) for one in everybody)
        against = sets if other is None else (series[other],)
        # A set of several colors would have to be added up from the table.
        unlike = other is None and (len(set(map(view.number, sets))) > 1 or (color is None and len(table.colors) > 1))
        if len(set(map(view.number, series))) == 1 or unlike or 0 in map(view.number, against):
            return None
        ranges = Stat("range", series), Stat("range", against)
        order = ranges if vary_first else ranges[::-1]
        return Draft(
            ask=Ask(Choice(OF_TWO, order), (), _NAME),
            roles={
                "series": series,
                "whole": view.quantity("down", spot, color),
                "one": against[0],
                "turn": "each first" if vary_first else "each second",
            },
            structure="statistic",
            slips=(("I51", ("second" if vary_first else "first",)),),
            unit=False,
            wanted=frozenset({"same" if other is None else "one"}),
        )

    both, colors = (True, False), table.colors or (None,)
    # One group a trial, each in turn: questions about one group are not to outnumber those about every group's set.
    single = [(spot, place % len(groups)) for place, spot in enumerate(spots)]
    return joined(
        AskSpace((single, colors, both), lambda one, color, first: build(one[0], color, first, one[1])),
        AskSpace((spots, colors, both), lambda spot, color, first: build(spot, color, first, None)),
    )


def _left_out(numbers: tuple[int, ...]) -> int | None:
    """The place of the one number that is far from all others: at least twice as far from the nearest as these are spread."""
    for place, one in enumerate(numbers):
        others = numbers[:place] + numbers[place + 1 :]
        gap = min(abs(one - other) for other in others)
        if gap >= _FAR and gap >= 2 * (max(others) - min(others)) and not min(others) < one < max(others):
            return place
    return None


def _center(name: StatName, numbers: tuple[int, ...]) -> tuple[int, int]:
    if name == "mean":
        return sum(numbers), len(numbers)
    ordered, half = sorted(numbers), len(numbers) // 2
    return ordered[-half - 1] + ordered[half], 2


@problem_model(skill="a number left out")
def center_without(view: TableView) -> AskSpace:
    """By how much the mean or the median changes where the one number far from the others is left out."""

    def build(spot: Spot, way: tuple[str, ...] | None, color: str | None, name: StatName) -> Draft | None:
        found = listed(view, spot, way, color)
        if found is None or len(found[0]) < _FEWEST:
            return None
        series, whole = found
        numbers = tuple(map(view.number, series))
        place = _left_out(numbers)
        if place is None:
            return None
        rest: tuple[Quantity, ...] = series[:place] + series[place + 1 :]
        kept = numbers[:place] + numbers[place + 1 :]
        (a, b), (c, d) = _center(name, numbers), _center(name, kept)
        # Whole, or halves or fourths: nobody is to divide without end.
        if a * d == c * b or 4 * a % b or 4 * c % d or min(a, c) <= 0:
            return None
        up = c * b > a * d
        stats = Stat(name, rest), Stat(name, series)
        return Draft(
            ask=Ask(Value(Op("-", stats if up else stats[::-1])), (), _ANY),
            roles={
                "series": series,
                "whole": whole,
                "out": series[place],
                "over": "trials" if way is None else "groups",
                "name": name,
                "greater": "greater" if up else "less",
            },
            structure="statistic",
            slips=(("I52", (c, d)), ("I53", (numbers[place], a, b)), *((("I54", (a, b, sum(kept))),) if name == "mean" else ())),
            features=_FEATURES,
            shown_as=_DECIMAL,
        )

    ways = [way for way in list_choices(view.table.groups) if way is None or len(way) >= _FEWEST]
    return AskSpace((view.spots, ways, view.colors_or_all, ("mean", "median")), build)


@problem_model(skill="what was counted")
def mean_of_which_count(view: TableView) -> AskSpace:
    """Whether a mean without a heading is that of the pins knocked down, or of those left standing."""
    trials = view.table.trials
    groups = [spot for spot in view.spots if spot.groups is not None and (spot.trials is None or len(spot.trials) == len(trials))]
    kinds: tuple[Measure, ...] = ("down", "standing")

    def build(spot: Spot, color: str | None, asked: Measure, told: Measure) -> Draft | None:
        found = listed(view, spot, None, color)
        racks = [view.quantity("set_up", Spot(spot.groups, (trial,)), color) for trial in trials]
        if found is None or len(set(map(view.number, racks))) > 1:
            return None
        series, whole = found
        down, number = sum(map(view.number, series)), view.number(racks[0])
        mean = down // len(series)
        # Whole, and not the same of both kinds; a list of one number again and again needs no mean.
        if down % len(series) or not 0 < mean < number or 2 * mean == number or len({*map(view.number, series)}) == 1:
            return None
        stated = Stated(mean if told == "down" else number - mean, "mean told")
        stat = Stat("mean", series)
        return Draft(
            ask=Ask(Truth(stat if asked == "down" else Op("-", (racks[0], stat)), "=", stated), (), Demand("truth")),
            roles={"series": series, "whole": whole, "rack": racks[0], "told": stated, "asked": Quantity(asked, whole.scope)},
            structure="is it so",
            slips=(("I71", ("false" if asked == told else "true",)),),
            features=_FEATURES,
            unit=False,
        )

    return AskSpace((groups, view.colors_or_all, kinds, kinds), build)
