"""Expressions and equations about points: a rule evaluated at a result, and results found from an equation in x."""

from __future__ import annotations

from itertools import combinations

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Stated, Unknown, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_WHOLE = Demand("whole")
_X = Unknown()
_POINTS = (2, 3, 4, 5, 10)  # points that one item earns
_LOST = (2, 3)  # a 1 is not written beside a letter
_BONUS = (4, 5, 6, 8, 10, 12, 15, 20)
_FEWEST = 5  # of a count that a pupil solves for: smaller ones are guessed
_SMALL = 15  # a set so small that the missing number is seen at once


def earned(points: int) -> Stated:
    """Points that each item earns."""
    return Stated(points, "points for each")


@problem_model(skill="value of an expression")
def score_by_rule(view: TableView) -> AskSpace:
    """A score by the rule 5d - 2m: points for each pin knocked down, less points for each pin left standing."""

    def build(spot: Spot, color: str | None, gain: int, loss: int) -> Draft | None:
        down, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(down), view.number(whole)
        rest = n - k
        # As many down as standing, or one of either: the letters could be mixed up unseen.
        if loss >= gain or min(k, rest) < 2 or k == rest or gain * k <= loss * rest:
            return None
        gain_, loss_ = earned(gain), Stated(loss, "points lost for each")
        return Draft(
            ask=Ask(Value(Op("-", (Op("*", (gain_, down)), Op("*", (loss_, Op("-", (whole, down))))))), (), _WHOLE),
            roles={"down": down, "standing": Quantity("standing", whole.scope), "whole": whole, "gain": gain_, "loss": loss_},
            structure="whole unknown",
            slips=(("L01", (gain, k, -loss, rest)), ("L02", (gain, rest, -loss, k)), ("L03", (gain, k)), ("L04", (gain, k, loss, n))),
            unit="asked",
        )

    return AskSpace((view.spots, view.colors_or_all, _POINTS, _LOST), build)


@problem_model(skill="value of an expression")
def score_of_colors(view: TableView) -> AskSpace:
    """A score by the rule 5m + 3n: the pins of two colors earn different points."""
    colors = view.table.colors

    def build(spot: Spot, two: tuple[str, str], first: int, second: int) -> Draft | None:
        if first == second:
            return None
        parts = tuple(view.quantity("down", spot, color) for color in two)
        k, k2 = map(view.number, parts)
        if min(k, k2) < 2 or k == k2:
            return None
        p, q = earned(first), earned(second)
        told = parts if len(colors) == 2 or len(colors) > 4 else tuple(view.quantity("down", spot, color) for color in colors)
        return Draft(
            ask=Ask(Value(Op("+", (Op("*", (p, parts[0])), Op("*", (q, parts[1]))))), (), _WHOLE),
            roles={"first": parts[0], "second": parts[1], "told": told, "whole": view.quantity("down", spot), "p": p, "q": q},
            structure="whole unknown",
            slips=(
                ("L02", (first, k2, second, k)),
                ("L01", (first, k, second, k2)),
                ("L05", (first + second, k + k2)),
                ("L03", (first, k)),
            ),
            unit="asked",
        )

    return AskSpace((view.spots, tuple(combinations(colors, 2)), _POINTS, _POINTS), build)


def _hidden(view: TableView, spot: Spot, color: str | None) -> Quantity | None:
    """A count knocked down that is no single cell of the table, so that nobody can copy it, and no guess."""
    down = view.quantity("down", spot, color)
    return down if not view.is_cell(down) and view.number(down) >= _FEWEST else None


@problem_model(skill="one-step equation, sum")
def equation_standing(view: TableView) -> AskSpace:
    """x + 5 = 12: the pins knocked down and those left standing are all that were set up."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        down = _hidden(view, spot, color)
        if down is None:
            return None
        whole, standing = Quantity("set_up", down.scope), Quantity("standing", down.scope)
        n, rest = view.number(whole), view.number(standing)
        if n < _SMALL or rest < 2 or 2 * rest == n:
            return None
        return Draft(
            ask=Ask(Value(Op("-", (whole, standing))), (Equation(Op("+", (_X, standing)), whole),), _WHOLE, down),
            roles={"down": down, "whole": whole, "standing": standing},
            structure="part unknown",
            slips=(("L06", (rest, n)), ("L07", (rest,))),
            unit=False,
            must_not_show=(down.scope,),
        )

    return AskSpace((view.spots, view.colors_or_all), build)


@problem_model(skill="one-step equation, product")
def equation_points(view: TableView) -> AskSpace:
    """5x = 45: each pin knocked down earns 5 points."""

    def build(spot: Spot, color: str | None, points: int) -> Draft | None:
        down = _hidden(view, spot, color)
        if down is None or view.number(down) == points:
            return None
        p, total = earned(points), Stated(points * view.number(down), "points in all")
        return Draft(
            ask=Ask(Value(Op("/", (total, p))), (Equation(Op("*", (p, _X)), total),), _WHOLE, down),
            roles={"down": down, "p": p, "total": total},
            structure="part unknown",
            slips=(("L08", (points, total.number)), ("L09", (points, total.number))),
            unit=False,
            must_not_show=(down.scope,),
        )

    return AskSpace((view.spots, view.colors_or_all, _POINTS), build)


@problem_model(skill="two-step equation")
def points_and_bonus(view: TableView) -> AskSpace:
    """5x + 10 = 45: each pin knocked down earns 5 points, and a bonus is added."""

    def build(spot: Spot, color: str | None, points: int, bonus: int) -> Draft | None:
        down = _hidden(view, spot, color)
        if down is None:
            return None
        k = view.number(down)
        if k in (points, bonus) or points == bonus:
            return None
        p, b, total = earned(points), Stated(bonus, "bonus points"), Stated(points * k + bonus, "points in all")
        left = Op("+", (Op("*", (p, _X)), b))
        return Draft(
            ask=Ask(Value(Op("/", (Op("-", (total, b)), p))), (Equation(left, total),), _WHOLE, down),
            roles={"down": down, "p": p, "bonus": b, "total": total},
            structure="start unknown",
            slips=(
                ("L10", (points, total.number)),
                ("L11", (points, bonus, total.number)),
                ("H07", (points * k,)),
                ("L12", (points, bonus, total.number)),
            ),
            must_not_show=(down.scope,),
        )

    return AskSpace((view.spots, view.colors_or_all, _POINTS, _BONUS), build)
