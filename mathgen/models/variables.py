"""Expressions with a letter, put together from a story, and written in another form."""

from __future__ import annotations

from itertools import permutations

from mathgen.asks.expression import Ask, Expr, Op, Quantity, Same, Stated, Unknown
from mathgen.exact.demand import Demand
from mathgen.models.expressions import earned
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role
from mathgen.scenario.naming import listed
from mathgen.trials.scope import Label

_EXPRESSION = Demand("expression")
_N = Unknown("n")
_ORDERS = tuple(permutations(range(3)))  # in which three expressions are shown
_POINTS = (2, 3, 4, 5, 10)
_Option = tuple[str, Expr, str]  # as it is written, what it is, and the slip of one who chooses it ("" for the right one)


def _draft(options: tuple[_Option, ...], order: tuple[int, ...], letter: Quantity, roles: dict[str, Role], structure: str) -> Draft:
    shown = [options[place] for place in order]
    labels = tuple(one[0] for one in shown)
    return Draft(
        ask=Ask(Same(labels, tuple(one[1] for one in shown), options[0][1], letter), (), _EXPRESSION),
        roles={**roles, "options": listed(list(labels))},
        structure=structure,
        slips=tuple((slip, (text,)) for text, _, slip in options if slip),
        unit=False,
    )


@problem_model(skill="expression with a letter")
def rest_with_letter(view: TableView) -> AskSpace:
    """12 - n: the pins left standing, where n of the 12 set up fall."""

    def build(spot: Spot, color: str | None, order: tuple[int, ...]) -> Draft | None:
        whole = view.quantity("set_up", spot, color)
        n = view.number(whole)
        if n < 3:
            return None
        options: tuple[_Option, ...] = (
            (f"{n} \N{MINUS SIGN} n", Op("-", (whole, _N)), ""),
            (f"n \N{MINUS SIGN} {n}", Op("-", (_N, whole)), "Q01"),
            (f"n + {n}", Op("+", (_N, whole)), "Q02"),
        )
        roles: dict[str, Role] = {
            "whole": whole,
            "down": Quantity("down", whole.scope),
            "standing": Quantity("standing", whole.scope),
        }
        return _draft(options, order, Quantity("down", whole.scope), roles, "part unknown")

    return AskSpace((view.group_trials, view.colors_or_all, _ORDERS), build)


@problem_model(skill="expression with a letter")
def total_with_letter(view: TableView) -> AskSpace:
    """9 + n: the pins knocked down in two trials, n of them in the second."""
    pairs = tuple(zip(view.table.trials, view.table.trials[1:], strict=False))

    def build(group: str, pair: tuple[Label, Label], color: str | None, order: tuple[int, ...]) -> Draft | None:
        first, then = (view.quantity("down", Spot((group,), (trial,)), color) for trial in pair)
        if not all(view.totals.complete(one.scope) for one in (first, then)):
            return None
        k = view.number(first)
        if k < 3:
            return None
        options: tuple[_Option, ...] = (
            (f"{k} + n", Op("+", (first, _N)), ""),
            (f"{k}n", Op("*", (first, _N)), "Q03"),
            (f"n \N{MINUS SIGN} {k}", Op("-", (_N, first)), "Q04"),
        )
        return _draft(options, order, then, {"first": first, "then": then}, "whole unknown")

    return AskSpace((view.table.groups, pairs, view.colors_or_all, _ORDERS), build)


@problem_model(skill="expression in another form")
def points_in_another_form(view: TableView) -> AskSpace:
    """5(8 + n) and 5 x 8 + 5n: the points of two trials, counted together and trial by trial."""
    pairs = tuple(zip(view.table.trials, view.table.trials[1:], strict=False))

    def build(group: str, pair: tuple[Label, Label], color: str | None, points: int, order: tuple[int, ...]) -> Draft | None:
        first, then = (view.quantity("down", Spot((group,), (trial,)), color) for trial in pair)
        if not all(view.totals.complete(one.scope) for one in (first, then)):
            return None
        k = view.number(first)
        if k < 3 or k == points:
            return None
        p: Stated = earned(points)
        product = Op("*", (p, first))
        options: tuple[_Option, ...] = (
            (f"{points} \N{MULTIPLICATION SIGN} {k} + {points}n", Op("+", (product, Op("*", (p, _N)))), ""),
            (f"{points} \N{MULTIPLICATION SIGN} {k} + n", Op("+", (product, _N)), "Q05"),
            (f"{k} + {points}n", Op("+", (first, Op("*", (p, _N)))), "Q06"),
        )
        return _draft(options, order, then, {"first": first, "then": then, "p": p}, "whole unknown")

    return AskSpace((view.table.groups, pairs, view.colors_or_all, _POINTS, _ORDERS), build)


@problem_model(skill="inequality with a letter")
def inequality_for_goal(view: TableView) -> AskSpace:
    """n > 8: to knock down more than the 8 of a trial. An inequality a > b is held against others as a - b, which is above 0."""

    def build(spot: Spot, color: str | None, order: tuple[int, ...]) -> Draft | None:
        down, whole = view.quantity("down", spot, color), view.quantity("set_up", spot, color)
        k, n = view.number(down), view.number(whole)
        if not 2 <= k <= n - 2:
            return None
        options: tuple[_Option, ...] = (
            (f"n > {k}", Op("-", (_N, down)), ""),
            (f"{k} > n", Op("-", (down, _N)), "Q07"),
            (f"n > {n}", Op("-", (_N, whole)), "Q08"),
        )
        return _draft(options, order, down, {"whole": whole, "down": down}, "compared unknown")

    return AskSpace((view.group_trials, view.colors_or_all, _ORDERS), build)
