"""Percents of one count by which another is more or fewer."""

from __future__ import annotations

from itertools import permutations

from mathgen.asks.expression import Ask, Op, Value
from mathgen.models.lines import neighbors
from mathgen.models.percents import percent_demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft


@problem_model(skill="percent more or fewer")
def percent_more(view: TableView) -> AskSpace:
    """What percent more (or fewer) one group knocked down than another: the base is the group after "than"."""
    pairs = tuple(permutations(view.table.groups, 2))

    def build(spot: Spot, two: tuple[str, str], color: str | None) -> Draft | None:
        counts = neighbors(view, spot, two, color)
        if counts is None:
            return None
        racks = [view.count("set_up", Spot((one,), spot.trials), color) for one in two]
        first, second = counts
        k, base = map(view.number, counts)
        gap = abs(k - base)
        # Small counts give wild percents; with other racks, more pins would say nothing; a percent that is a count would stand in the text.
        if racks[0] != racks[1] or base < 4 or k < 2 or not 0 < gap < base or 100 * gap in (base * base, base * k):
            return None
        demand = percent_demand(gap, base)
        if demand is None:
            return None
        more = k > base
        return Draft(
            ask=Ask(Value(Op("/", (Op("-", counts if more else counts[::-1]), second))), (), demand),
            roles={"pair": counts, "first": first, "second": second, "place": "" if demand.places is None else "tenth"},
            structure="percent change",
            slips=(("F15", (base, k)), ("F16", (base, k)), ("F17", (base, k))),
            features=frozenset({"percent", "percent_change"}),
            unit=False,
            wanted=frozenset({"more" if more else "fewer"}),
        )

    return AskSpace((view.spots, pairs, view.colors_or_all), build)
