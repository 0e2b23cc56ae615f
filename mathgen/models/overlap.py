"""How far the numbers of two lists overlap, seen as two dot plots over one number line."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Op, Value
from mathgen.exact.demand import Demand
from mathgen.models.distributions import Lists, two_lists
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import TableView
from mathgen.problems.draft import Draft

_FEWEST = 3  # different numbers in each list


@problem_model(skill="overlap of two lists")
def dot_plots_overlap(view: TableView) -> AskSpace:
    """How long the part of the number line is where two dot plots overlap; both lists vary about as much."""

    def build(lists: Lists) -> Draft | None:
        one, other = lists.numbers
        # The lower list ends first. A list within the other one has all of itself in common with it.
        low, high = (0, 1) if max(one) < max(other) else (1, 0)
        below, above = lists.numbers[low], lists.numbers[high]
        start, end = min(above), max(below)
        spans = max(below) - min(below), max(above) - min(above)
        if below.count(end) > 1 or above.count(start) > 1:
            return None  # one number is meant, not any of several alike
        apart = max(above) == end or min(below) >= start or end - start < 2
        if apart or min(len(set(one)), len(set(other))) < _FEWEST or max(spans) > 2 * min(spans):
            return None
        series = lists.first, lists.second
        first, last = series[high][above.index(start)], series[low][below.index(end)]
        return Draft(
            ask=Ask(Value(Op("-", (last, first))), (), Demand("whole")),
            roles={"first": lists.first, "second": lists.second, "whole": lists.wholes[0], "whole2": lists.wholes[1]},
            structure="statistic",
            slips=(("I61", (max(above) - min(below),)), ("I62", (max(above) - end,)), ("I63", (end - start + 1,))),
            unit=False,
            wanted=frozenset({lists.kind}),
        )

    return two_lists(view, build)
