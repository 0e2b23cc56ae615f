"""Displays of a list of counts that pupils draw: dot plots and histograms, read once they are drawn."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.asks.expression import Ask, Quantity, Stated, Tally, Value
from mathgen.exact.demand import Demand
from mathgen.models.lists import MOST_NUMBERS, list_choices, listed
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role

_WHOLE = Demand("whole")
_FEWEST = 5  # numbers worth a display
_WIDTHS = (2, 3, 4, 5, 10)  # whole numbers that a bar of a histogram may take in
_BARS = (3, 4)  # that the words can list

_Way = tuple[str, ...] | None
_Side = Literal["=", ">", "<"]
_WHERE: dict[_Side, str] = {
    "=": "are stacked over the number",
    ">": "stand for numbers greater than",
    "<": "stand for numbers less than",
}


class Listed(NamedTuple):
    """A list of counts that is long enough and whose numbers differ."""

    series: tuple[Quantity, ...]
    numbers: tuple[int, ...]
    roles: dict[str, Role]


def _ways(view: TableView) -> list[_Way]:
    return [way for way in list_choices(view.table.groups) if way is None or len(way) >= _FEWEST]


def _worth_a_display(view: TableView, spot: Spot, way: _Way, color: str | None) -> Listed | None:
    found = listed(view, spot, way, color)
    if found is None or len(found[0]) < _FEWEST:
        return None
    numbers = tuple(map(view.number, found[0]))
    roles: dict[str, Role] = {"series": found[0], "whole": found[1], "over": "trials" if way is None else "groups"}
    return Listed(found[0], numbers, roles) if len(set(numbers)) > 2 else None


def _ends(start: int, width: int) -> tuple[Stated, Stated]:
    return Stated(start, "from"), Stated(start + width - 1, "to")


@problem_model(skill="dot plot to make")
def dots_above(view: TableView) -> AskSpace:
    """How many dots of a dot plot that the pupil makes stand above a number, or for greater or for lesser numbers."""

    def build(spot: Spot, way: _Way, color: str | None, side: _Side, place: int) -> Draft | None:
        found = _worth_a_display(view, spot, way, color)
        # Each number is met once.
        if found is None or place >= len(found.numbers) or found.numbers.index(found.numbers[place]) != place:
            return None
        than, every = found.numbers[place], len(found.numbers)
        at = found.numbers.count(than)
        count = {"=": at, ">": sum(one > than for one in found.numbers), "<": sum(one < than for one in found.numbers)}[side]
        if not 2 <= count < every or count == than:
            return None
        stated = Stated(than, "number on the line")
        beside = (("W33", (count + at,)),) if side != "=" else ()
        return Draft(
            ask=Ask(Value(Tally(found.series, side, stated)), (), _WHOLE),
            roles={**found.roles, "than": stated, "where": _WHERE[side]},
            structure="statistic",
            slips=(("W31", (than,)), *beside, ("W32", (every,))),
            unit="dots",
        )

    return AskSpace((view.spots, _ways(view), view.colors_or_all, ("=", ">", "<"), range(MOST_NUMBERS)), build)


@problem_model(skill="histogram to make")
def numbers_in_bar(view: TableView) -> AskSpace:
    """How many numbers one bar of a histogram that the pupil makes takes in."""

    def build(spot: Spot, way: _Way, color: str | None, width: int, bar: int) -> Draft | None:
        found = _worth_a_display(view, spot, way, color)
        if found is None:
            return None
        bars = max(found.numbers) // width + 1
        if not _BARS[0] <= bars <= _BARS[1]:
            return None
        low, high = width * bar, width * bar + width - 1
        inside = [one for one in found.numbers if low <= one <= high]
        # At least one number that is an end of the bar: who leaves out the ends gets another count.
        if not 2 <= len(inside) < len(found.numbers) or not {low, high} & set(inside) or len(inside) in (low, high):
            return None
        return Draft(
            ask=Ask(Value(Tally(found.series, "from", Stated(low, "from"), Stated(high, "to"))), (), _WHOLE),
            roles={
                **found.roles,
                "low": Stated(low, "from"),
                "high": Stated(high, "to"),
                "bars": tuple(end for start in range(0, width * bars, width) for end in _ends(start, width)),
            },
            structure="statistic",
            slips=(("W34", (sum(low < one < high for one in inside),)), ("W35", (sum(inside),)), ("W36", (len(found.numbers),))),
            unit="numbers",
        )

    return AskSpace((view.spots, _ways(view), view.colors_or_all, _WIDTHS, range(_BARS[1])), build)
