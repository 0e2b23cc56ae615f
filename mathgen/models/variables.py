"""Expressions with a letter, put together from a story, and written in another form."""

from __future__ import annotations

from itertools import permutations
from typing import Literal

from mathgen.asks.expression import Ask, Expr, Op, Quantity, Same, Stated, Tally, Unknown, Value
from mathgen.asks.steps.written_number import terminating
from mathgen.exact.demand import Demand
from mathgen.models.expressions import earned
from mathgen.models.lists import MOST_NUMBERS, list_choices
from mathgen.models.lists import listed as list_of
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
_ONE = Stated(1, "whole")
_DECIMAL_SET = 10  # a set of which a decimal part is told
_FEWEST = 4  # numbers worth going through one by one
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
    """5(8 + n) and 5 x 8 + 5n: the points of two trials, counted together and trial by trial.

    The right one is not always the only one in which both numbers are multiplied.
    """
    pairs = tuple(zip(view.table.trials, view.table.trials[1:], strict=False))

    def build(
        group: str, pair: tuple[Label, Label], color: str | None, points: int, wrong: tuple[int, int], order: tuple[int, ...]
    ) -> Draft | None:
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
            (
                f"{points} \N{MULTIPLICATION SIGN} {k} \N{MINUS SIGN} {points}n",
                Op("-", (product, Op("*", (p, _N)))),
                "Q14",
            ),
        )
        three = tuple(options[place] for place in (0, *wrong))
        return _draft(three, order, then, {"first": first, "then": then, "p": p}, "whole unknown")

    return AskSpace((view.table.groups, pairs, view.colors_or_all, _POINTS, ((1, 2), (1, 3), (2, 3)), _ORDERS), build)


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


@problem_model(skill="like terms of a rate")
def left_as_a_multiple(view: TableView) -> AskSpace:
    """n - 0.4n is 0.6n: what is left standing of n pins of which 0.4 fall, as a number times n."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        whole, part = view.quantity("set_up", spot, color), view.quantity("down", spot, color)
        n, k = view.number(whole), view.number(part)
        # Half of n is left where half falls, and nobody has to take it from 1. Of 4 pins nobody says 0.25.
        if n < _DECIMAL_SET or k in (0, n) or 2 * k == n or 100 * k % n:
            return None
        rate, text = Op("/", (part, whole)), terminating(k, n)
        assert text is not None  # two places at the most
        return Draft(
            ask=Ask(Value(Op("-", (_ONE, rate))), (), Demand("any")),
            roles={"part": part, "whole": whole, "standing": Quantity("standing", whole.scope), "rate": rate},
            structure="part unknown",
            slips=(("Q09", (k, n)), ("Q10", (n + k, n))),
            rates=((rate, text),),
            sets=(n,),
            shown_as=Demand("decimal"),
            unit=False,
        )

    return AskSpace((view.spots, view.colors_or_all), build)


@problem_model(skill="numbers that fit an inequality")
def results_in_limit(view: TableView) -> AskSpace:
    """How many results make n > 8, or n < 8, true; one of them is 8."""
    ways = [way for way in list_choices(view.table.groups) if way is None or len(way) >= _FEWEST]

    def build(spot: Spot, way: tuple[str, ...] | None, color: str | None, sign: Literal[">", "<"], place: int) -> Draft | None:
        found = list_of(view, spot, way, color)
        if found is None or len(found[0]) < _FEWEST:
            return None
        series, whole = found
        numbers = list(map(view.number, series))
        # Each number is met once, and 0 is no limit.
        if place >= len(numbers) or numbers.index(numbers[place]) != place or numbers[place] == 0:
            return None
        than, at = numbers[place], numbers.count(numbers[place])
        count = sum((one > than) == (sign == ">") and one != than for one in numbers)
        if not 2 <= count < len(numbers) - at or count == than:
            return None
        limit = Stated(than, "limit")
        return Draft(
            ask=Ask(Value(Tally(series, sign, limit)), (), Demand("whole")),
            roles={"series": series, "whole": whole, "over": "trials" if way is None else "groups", "limit": limit, "sign": sign},
            structure="statistic",
            slips=(("Q11", (count + at,)), ("Q12", (len(numbers) - count - at,)), ("Q13", (than,))),
            unit=False,
        )

    return AskSpace((view.spots, ways, view.colors_or_all, (">", "<"), range(MOST_NUMBERS)), build)
