"""Simulations of compound events: runs of random digits, counted."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Equation, Op, Stated, Tally, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

# The first digits of the RAND Corporation's "A Million Random Digits with 100,000 Normal Deviates" (1955), from memory. Pairs that
# start with 0 are left out, and so is a pair that is there already: a run is told as a number.
_RANDOM = (
    "10097325337652013586346735487680959091173929274945"
    "37542048056489474296248052403720636104020082291665"
    "08422689531964509303232090256015953347643508033606"
    "99019025290937670715383113116588676743970443627659"
)
_PAIRS = tuple(dict.fromkeys(int(_RANDOM[at : at + 2]) for at in range(0, len(_RANDOM), 2) if _RANDOM[at] != "0"))
_RUNS = 10
_DIGITS = 10
_FEWEST = 5  # results that say something about chance


def _count(runs: tuple[int, ...], last: int, need: int) -> int:
    return sum(sum(1 <= digit <= last for digit in divmod(run, 10)) >= need for run in runs)


@problem_model(skill="simulation of two pins")
def two_simulated(view: TableView) -> AskSpace:
    """The estimated probability that both of two pins fall, or at least one, from ten runs of two random digits."""
    spots = [spot for spot in view.spots if spot.groups is not None or len(view.table.groups) == 1]

    def build(spot: Spot, color: str | None, start: int, need: int) -> Draft | None:
        whole, part = view.quantity("set_up", spot, color), view.quantity("down", spot, color)
        n, k = view.number(whole), view.number(part)
        if n < _FEWEST or _DIGITS * k % n or not 2 <= _DIGITS * k // n <= 8:
            return None
        last = _DIGITS * k // n
        runs = _PAIRS[start : start + _RUNS]
        found, other = _count(runs, last, need), _count(runs, last, 3 - need)
        # Neither none nor all of the runs, and not the part of one pin.
        if {0, _RUNS} & {found, other} or found in (last, other):
            return None
        series, digits = tuple(Stated(run, "run") for run in runs), Stated(last, "last digit")
        tally = Tally(series, "digits", digits, Stated(need, "whole"))
        # As many digits of the ten as pins fell of those set up.
        fitting = Equation(Op("*", (Stated(_DIGITS, "whole"), part)), Op("*", (digits, whole)))
        return Draft(
            ask=Ask(Value(Op("/", (tally, Stated(_RUNS, "runs")))), (fitting,), Demand("any")),
            roles={
                "part": part,
                "whole": whole,
                "first": Stated(1, "first digit"),
                "last": digits,
                "runs": series,
                "number": Stated(_RUNS, "runs"),
                "event": "both" if need == 2 else "at least one",
            },
            structure="part unknown",
            slips=(("K81", (other, _RUNS)), ("K82", (last, _DIGITS)), ("K83", (found,))),
            features=frozenset({"probability"}),
            unit=False,
        )

    return AskSpace((spots, view.colors_or_all, range(0, len(_PAIRS) - _RUNS + 1, 3), (2, 1)), build)
