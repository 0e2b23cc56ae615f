"""A fraction that comes again: the same in each of several trials, shared out among them, and full sets counted in a total."""

from __future__ import annotations

from math import gcd

from mathgen.asks.expression import Ask, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_ANY = Demand("any")
_MIXED = Demand("mixed:any")
_ONE = Stated(1, "whole")
_TIMES = (2, 3, 4, 5, 6)  # trials
_SHARES = (2, 3, 4, 5)
_MOST_SET = 25  # pins of a set that a total is counted in


def _set_of_one_trial(view: TableView, spot: Spot, color: str | None) -> tuple[int, int] | None:
    """How many of a set were knocked down in one trial: some, neither half nor all."""
    if spot.trials is None or len(spot.trials) != 1:
        return None
    k, n = view.count("down", spot, color), view.count("set_up", spot, color)
    return (k, n) if 0 < k < n and 2 * k != n and n > 2 else None


def _repeated(view: TableView, spot: Spot, color: str | None, times: int, standing: bool) -> Draft | None:
    found = _set_of_one_trial(view, spot, color)
    if found is None:
        return None
    k, n = found
    shared = gcd(k, n)
    a, b = k // shared, n // shared
    top = b - a if standing else a
    if top * times % b == 0 or top * times < b:  # full sets, or not one
        return None
    part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
    rate, count = Op("/", (part, whole)), Stated(times, "trials at this rate")
    amount = Op("-", (_ONE, rate)) if standing else rate
    return Draft(
        ask=Ask(Value(Op("*", (count, amount))), (), _ANY),
        roles={"part": part, "standing": Quantity("standing", whole.scope), "whole": whole, "rate": rate, "times": count},
        structure="part from rate",
        slips=(
            *((("C45", (a * times, b)),) if standing else (("C45", ((b - a) * times, b)),)),
            ("C40", (top, b, times)),
            ("C41", (top, b, times)),
            ("C42", (top, times)),
        ),
        features=frozenset({"n_times_fraction"}),
        rates=((rate, f"{a}/{b}"),),
        sets=(n,),
        shown_as=_MIXED,
        unit="asked",
    )


@problem_model(skill="several times a fraction")
def sets_knocked_down(view: TableView) -> AskSpace:
    """How many sets are knocked down in several trials, where each trial knocks down the same fraction of a set."""
    return AskSpace((view.spots, view.colors_or_all, _TIMES), lambda spot, color, times: _repeated(view, spot, color, times, False))


@problem_model(skill="several times a fraction")
def sets_left_standing(view: TableView) -> AskSpace:
    """How many sets are left standing in several trials, where each trial knocks down the same fraction of a set."""
    return AskSpace((view.spots, view.colors_or_all, _TIMES), lambda spot, color, times: _repeated(view, spot, color, times, True))


@problem_model(skill="share of a fraction")
def share_of_a_fraction(view: TableView) -> AskSpace:
    """A unit fraction of a set, shared equally among several trials."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        trials = len(spot.trials or view.table.trials)
        k, n = view.count("down", spot, color), view.count("set_up", spot, color)
        if trials not in _SHARES or not 0 < k < n or n % k or k % trials:  # a share is some whole pins
            return None
        part, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        rate, count, b = Op("/", (part, whole)), Stated(trials, "trials"), n // k
        return Draft(
            ask=Ask(Value(Op("/", (rate, count))), (), _ANY),
            roles={"part": part, "whole": whole, "rate": rate, "count": count},
            structure="what fraction",
            slips=(("C46", (b, trials)), ("C47", (b, trials)), ("C48", (b, trials))),
            features=frozenset({"unit_fraction_division"}),
            rates=((rate, f"1/{b}"),),
            sets=(n,),
            unit=False,
        )

    return AskSpace((view.spots, view.colors_or_all), build)


@problem_model(skill="full sets in a total")
def full_sets(view: TableView) -> AskSpace:
    """How many sets of one trial the pins knocked down in several trials make, as a mixed number."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        trials = spot.trials or view.table.trials
        sizes = {view.count("set_up", Spot(spot.groups, (trial,)), color) for trial in trials}
        total, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(total), max(sizes)
        if len(trials) < 2 or len(sizes) > 1 or not 3 <= n <= _MOST_SET or k < n or k % n == 0:
            return None
        each = Op("/", (whole, Stated(len(trials), "trials")))
        return Draft(
            ask=Ask(Value(Op("/", (total, each))), (), _MIXED),
            roles={"total": total, "whole": whole, "each": each},
            structure="what fraction",
            slips=(("C50", (k, n)), ("C51", (k, n)), ("C49", (k, view.number(whole))), ("C52", (k,))),
            features=frozenset({"fraction_as_quotient"}),
            rates=((each, str(n)),),
            unit="asked",
        )

    return AskSpace((view.spots, view.colors_or_all), build)
