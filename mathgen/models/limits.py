"""Limits: the greatest number that keeps a loss of points below a limit."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Stated, Unknown, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_WHOLE = Demand("whole")
_X = Unknown()
_ONE = Stated(1, "whole")  # what "less than" stays under a limit by
_LOSSES = (2, 3, 4, 5, 10)
_LIMITS = (20, 24, 30, 36, 40, 45, 50, 60, 75, 80, 100)


@problem_model(skill="two-step inequality")
def most_allowed(view: TableView) -> AskSpace:
    """2 * 4 + 2x < 20, or at most 20: the greatest number of pins that may stand next time."""

    def build(spot: Spot, color: str | None, loss: int, limit: int, strict: bool) -> Draft | None:
        standing = view.quantity("standing", spot, color)
        s, rack = view.number(standing), view.number(Quantity("set_up", standing.scope))
        left = limit - loss * s
        if s < 2 or limit % loss or left <= 0:
            return None
        x = left // loss - strict
        # The next rack has to hold more than that, or the limit would be none.
        if not 2 <= x < rack or x in (s, loss):
            return None
        each, most = Stated(loss, "points lost for each"), Stated(limit, "limit in points")
        lost = Op("*", (each, standing))
        allowed = Op("/", (Op("-", (most, lost)), each))
        next_time = Op("+", (_X, _ONE)) if strict else _X
        return Draft(
            ask=Ask(
                Value(Op("-", (allowed, _ONE)) if strict else allowed),
                (Equation(Op("+", (lost, Op("*", (each, next_time)))), most),),
                _WHOLE,
            ),
            roles={"standing": standing, "p": each, "limit": most, "below": "less than" if strict else "at most"},
            structure="start unknown",
            slips=(("L46" if strict else "L47", (x + 1 if strict else x - 1,)), ("L48", (limit // loss - strict,)), ("L49", (left,))),
        )

    return AskSpace((view.group_trials, view.colors_or_all, _LOSSES, _LIMITS, (True, False)), build)
