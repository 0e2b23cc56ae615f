"""Claims about two groups of which not as many pins or trials are told: whether they are fair by fractions, by means, or per trial."""

from __future__ import annotations

from collections.abc import Callable
from math import lcm

from mathgen.asks.expression import Ask, Expr, Op, Quantity, Stat, Stated, Truth
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.models.written_fractions import unlike
from mathgen.problems.draft import Draft, Role
from mathgen.trials.scope import Label

_RUBRIC = Demand("rubric")
_COMMON = 100  # the largest bottom number that two fractions may be brought to
_FEW = 4  # pins that are shared among trials
_MOST_GROUPS = 8  # of which any two are compared

_Rated = tuple[Expr, int, int]  # what is held against the other: top and bottom of its value
_Rate = Callable[[Quantity, tuple[Label, ...]], _Rated]


def _two_groups(view: TableView, rate: _Rate, slip: str, features: frozenset[str], fits: Callable[[_Rated, _Rated], bool]) -> AskSpace:
    """Drafts of every two groups over unlike spans of trials, where counts alone say the opposite; of either group it is claimed.

    A trial that is left out must not turn the verdict: all results of the two groups say the same.
    """
    table = view.table
    spots = [spot for spot in view.spots if spot.groups is not None] if 1 < len(table.groups) <= _MOST_GROUPS else []

    def in_all(one: Spot, color: str | None) -> _Rated:
        own = tuple(trial for trial in table.trials if view.totals.complete(view.scope(Spot(one.groups, (trial,)))))
        return rate(view.quantity("down", Spot(one.groups, own), color), own)

    def build(spot: Spot, spot2: Spot, color: str | None, of_more: bool) -> Draft | None:
        trials, trials2 = (one.trials or table.trials for one in (spot, spot2))
        if spot.groups == spot2.groups or len(trials) == len(trials2):
            return None
        first, second = (view.quantity("down", one, color) for one in (spot, spot2))
        k, k2 = map(view.number, (first, second))
        one, other = rate(first, trials), rate(second, trials2)
        # The group with more counts is told first; its rate is less.
        if not k > k2 > 1 or one[1] * other[2] >= other[1] * one[2] or not fits(one, other):
            return None
        (_, top, bottom), (_, top2, bottom2) = in_all(spot, color), in_all(spot2, color)
        if top * bottom2 >= top2 * bottom:
            return None
        claimed = (one, other) if of_more else (other, one)
        wholes = tuple(Quantity("set_up", quantity.scope) for quantity in (first, second))
        roles: dict[str, Role] = {"first": first, "second": second, "whole": wholes[0], "whole2": wholes[1]}
        roles |= {"claimed": first if of_more else second, "rest": second if of_more else first}
        if isinstance(one[0], Stat) and isinstance(other[0], Stat):
            roles |= {"series": one[0].series, "series2": other[0].series}  # type: ignore[dict-item]
        return Draft(
            ask=Ask(Truth(claimed[0][0], ">", claimed[1][0]), (), _RUBRIC),
            roles=roles,
            structure="is it so",
            slips=((slip, (int(of_more),)),),
            features=features,
            sets=tuple(map(view.number, wholes)) if "unequal_sets" in features else (),
            unlike=unlike(one[2], other[2]),
        )

    return AskSpace((spots, spots, view.colors_or_all, (True, False)), build)


@problem_model(skill="judge whether a claim is fair by fractions")
def fair_by_fraction(view: TableView) -> AskSpace:
    """Whether one group had the stronger result, by the fractions of the pins that were knocked down."""

    def rate(down: Quantity, _: tuple[Label, ...]) -> _Rated:
        whole = Quantity("set_up", down.scope)
        return Op("/", (down, whole)), view.number(down), view.number(whole)

    def fits(one: _Rated, other: _Rated) -> bool:
        return one[2] != other[2] and other[1] < other[2] and lcm(one[2], other[2]) <= _COMMON

    return _two_groups(view, rate, "V01", frozenset({"unequal_sets"}), fits)


@problem_model(skill="judge whether a claim is fair per trial")
def fair_per_trial(view: TableView) -> AskSpace:
    """Whether one group had the stronger result, by the number of pins knocked down per trial, told as a fraction."""

    def rate(down: Quantity, trials: tuple[Label, ...]) -> _Rated:
        return Op("/", (down, Stated(len(trials), "how many"))), view.number(down), len(trials)

    def fits(one: _Rated, other: _Rated) -> bool:
        return min(one[2], other[2]) > 1 and other[1] > _FEW and (one[1] % one[2] > 0 or other[1] % other[2] > 0)

    return _two_groups(view, rate, "V16", frozenset(), fits)


@problem_model(skill="judge whether a claim is fair by means")
def fair_by_mean(view: TableView) -> AskSpace:
    """Whether one group had the stronger result, by the means of lists of unlike length; neither mean goes on without end."""

    def rate(down: Quantity, trials: tuple[Label, ...]) -> _Rated:
        scope = down.scope
        own = tuple(view.quantity("down", Spot(scope.groups, (trial,)), scope.colors) for trial in trials)
        return Stat("mean", own), view.number(down), len(trials)

    def fits(one: _Rated, other: _Rated) -> bool:
        return min(one[2], other[2]) > 1 and all(100 * top % bottom == 0 for _, top, bottom in (one, other))

    return _two_groups(view, rate, "V16", frozenset({"mean_median_iqr_mad"}), fits)
