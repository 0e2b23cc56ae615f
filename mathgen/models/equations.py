"""Equations and expressions beside a story: the missing factor, times as many as an equation, and an expression with parentheses."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Equation, Expr, Op, Quantity, Same, Stated, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.models.multiplying import earning
from mathgen.models.registry import problem_model
from mathgen.models.side_by_side import Pair, side_by_side
from mathgen.models.space import AskSpace, joined
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role
from mathgen.scenario.naming import listed

_WHOLE = Demand("whole")
_POINTS = (2, 3, 4, 5, 6, 7, 8, 9, 10)
_HARDER_POINTS = (3, 4, 5, 6, 8, 9, 12, 15, 20, 25)
_BONUS_POINTS, _BONUSES = (4, 6, 8, 15), (2, 5, 10, 20)
_Shown = tuple[str, Expr, str]  # an expression as it is written, what it is, and the slip that leads to it


@problem_model(skill="missing factor")
def missing_number_of_groups(view: TableView) -> AskSpace:
    """n pins at so many points each make so many points: which number is n?"""

    def build(spot: Spot, color: str | None, each: int) -> Draft | None:
        found = earning(view, spot, color, each)
        if found is None or view.is_cell(found.down):
            return None
        down, points, earned, _ = found
        return Draft(
            ask=Ask(Value(down), (Equation(Op("*", (down, points)), earned),), _WHOLE),
            roles={"down": down, "points": points, "earned": earned},
            structure="part unknown",
            slips=_missing(earned.number, each),
            unit=False,
            must_not_show=(down.scope,),
        )

    return AskSpace((view.spots, view.colors_or_all, _POINTS), build)


@problem_model(skill="missing factor")
def missing_group_size(view: TableView) -> AskSpace:
    """So many pins at n points each make so many points: which number is n?"""

    def build(spot: Spot, color: str | None, each: int) -> Draft | None:
        found = earning(view, spot, color, each)
        if found is None:
            return None
        down, _, earned, number = found
        return Draft(
            ask=Ask(Value(Op("/", (earned, down))), (), _WHOLE),
            roles={"down": down, "earned": earned},
            structure="part unknown",
            slips=_missing(earned.number, number),
            unit=False,
        )

    return AskSpace((view.spots, view.colors_or_all, _POINTS), build)


@problem_model(skill="times as many as an equation")
def times_equation_smaller(view: TableView) -> AskSpace:
    """24 = 4 × n, where 24 is 4 times as many as n: the smaller count."""

    def build(pair: Pair) -> Draft | None:
        found = _times(view, pair)
        if found is None:
            return None
        bigger, smaller, times, most, least = found
        if view.is_cell(smaller) or least == times.number:
            return None
        return Draft(
            ask=Ask(Value(smaller), (Equation(bigger, Op("*", (times, smaller))),), _WHOLE),
            roles={"bigger": bigger, "smaller": smaller, "both": (bigger, smaller), "times": times},
            structure="times",
            slips=_missing(most, times.number),
            features=frozenset({"times_as_many"}),
            unit=False,
            must_not_show=(smaller.scope,),
        )

    return side_by_side(view, build)


@problem_model(skill="times as many as an equation")
def times_equation_bigger(view: TableView) -> AskSpace:
    """n = 4 × 6, where n is 4 times as many as 6: the bigger count."""

    def build(pair: Pair) -> Draft | None:
        found = _times(view, pair)
        if found is None:
            return None
        bigger, smaller, times, _, least = found
        if view.is_cell(bigger):
            return None
        return Draft(
            ask=Ask(Value(bigger), (Equation(bigger, Op("*", (times, smaller))),), _WHOLE),
            roles={"bigger": bigger, "smaller": smaller, "both": (bigger, smaller), "times": times},
            structure="times",
            slips=(("G08", (least, times.number)), ("G10", (least, times.number)), ("G09", (least, times.number))),
            features=frozenset({"times_as_many"}),
            unit=False,
            must_not_show=(bigger.scope,),
        )

    return side_by_side(view, build)


@problem_model(skill="expression with parentheses")
def brackets_with_sum(view: TableView) -> AskSpace:
    """(3 + 4) × 5: as many points for each pin of two colors."""
    colors = view.table.colors
    twos = [(one, other) for place, one in enumerate(colors) for other in colors[place + 1 :]]

    def build(spot: Spot, two: tuple[str, str], each: int) -> Draft | None:
        one, other = (view.quantity("down", spot, color) for color in two)
        a, b = view.number(one), view.number(other)
        if min(a, b) == 0 or a == b:
            return None
        points = Stated(each, "points for each")
        return Draft(
            ask=Ask(Value(Op("*", (Op("+", (one, other)), points))), (), _WHOLE),
            roles={"parts": (one, other), "one": one, "other": other, "points": points},
            structure="whole unknown",
            slips=(("O01", (a, b, each)), ("H07", (a + b,)), ("O02", (a, b, each))),
            unit="points",
        )

    return AskSpace((view.spots, twos, _HARDER_POINTS), build)


@problem_model(skill="expression with parentheses")
def brackets_with_difference(view: TableView) -> AskSpace:
    """(12 - 7) × 5: as many points for each pin left standing."""

    def build(spot: Spot, color: str | None, each: int) -> Draft | None:
        set_up, down = view.quantity("set_up", spot, color), view.quantity("down", spot, color)
        n, k = view.number(set_up), view.number(down)
        if k < 2 or n - k < 2 or n == 2 * k:
            return None
        points = Stated(each, "points for each")
        return Draft(
            ask=Ask(Value(Op("*", (Op("-", (set_up, down)), points))), (), _WHOLE),
            roles={"set_up": set_up, "down": down, "rest": Quantity("standing", down.scope), "points": points},
            structure="whole unknown",
            slips=(("O03", (n, k, each)), ("O04", (k, each)), ("H07", (n - k,))),
            unit="points",
        )

    return AskSpace((view.spots, view.colors_or_all, _HARDER_POINTS), build)


_FORMS = ("sum first", "no brackets", "each by itself", "first only")


@problem_model(skill="expressions that record")
def right_expression(view: TableView) -> AskSpace:
    """Whether an expression records how points are worked out: (3 + 4) × 5 or 3 × 5 + 4 × 5, but not 3 + 4 × 5."""
    colors = view.table.colors
    twos = [(one, other) for place, one in enumerate(colors) for other in colors[place + 1 :]]

    def build(spot: Spot, two: tuple[str, str], each: int, form: str) -> Draft | None:
        one, other = (view.quantity("down", spot, color) for color in two)
        a, b = view.number(one), view.number(other)
        if min(a, b) < 2 or len({a, b, each}) < 3:
            return None
        points = Stated(each, "points for each")
        expressions: dict[str, Expr] = {
            "sum first": Op("*", (Op("+", (one, other)), points)),
            "no brackets": Op("+", (one, Op("*", (other, points)))),
            "each by itself": Op("+", (Op("*", (one, points)), Op("*", (other, points)))),
            "first only": Op("+", (Op("*", (one, points)), other)),
        }
        return Draft(
            ask=Ask(Truth(expressions["sum first"], "=", expressions[form]), (), Demand("truth")),
            roles={"parts": (one, other), "one": one, "other": other, "points": points, "form": form},
            structure="is it so",
            slips=(("O07", (form,)), ("O08", (form,)), ("O09", (form,))),
            at_sight=True,
        )

    return AskSpace((view.spots, twos, _HARDER_POINTS, _FORMS), build)


def _missing(product: int, factor: int) -> tuple[tuple[str, tuple[int, ...]], ...]:
    return ("O05", (product, factor)), ("O06", (product, factor)), ("M05", (product // factor, factor))


def _times(view: TableView, pair: Pair) -> tuple[Quantity, Quantity, Stated, int, int] | None:
    """The bigger and the smaller of two counts, and how many times as many; None where that is no whole number above 1."""
    a, b = view.number(pair.one), view.number(pair.other)
    bigger, smaller = (pair.one, pair.other) if a > b else (pair.other, pair.one)
    most, least = max(a, b), min(a, b)
    if least < 2 or most == least or most % least or (most, least) == (4, 2):
        return None
    return bigger, smaller, Stated(most // least, "times"), most, least


@problem_model(skill="expressions that record")
def which_expression_records(view: TableView) -> AskSpace:
    """Which of three expressions records how points are worked out: (3 + 4) × 5 for two colors, 3 × 5 + 4 with a bonus.

    Whether the right one has parentheses, and whether another one has, is the same in no two stories: its look tells nothing.
    """
    colors = view.table.colors
    twos = [(one, other) for place, one in enumerate(colors) for other in colors[place + 1 :]]
    times = "\N{MULTIPLICATION SIGN}"

    def two_colors(spot: Spot, two: tuple[str, str], each: int, wrong: tuple[int, int], order: tuple[int, ...]) -> Draft | None:
        one, other = (view.quantity("down", spot, color) for color in two)
        a, b = view.number(one), view.number(other)
        if min(a, b) < 2 or len({a, b, each}) < 3:
            return None
        points = Stated(each, "points for each")
        options: tuple[_Shown, ...] = (
            (f"({a} + {b}) {times} {each}", Op("*", (Op("+", (one, other)), points)), ""),
            (f"{a} + {b} {times} {each}", Op("+", (one, Op("*", (other, points)))), "O10"),
            (f"{a} {times} {each} + {b}", Op("+", (Op("*", (one, points)), other)), "O11"),
            (f"{a} {times} ({b} + {each})", Op("*", (one, Op("+", (other, points)))), "O12"),
        )
        return records(options, wrong, order, {"parts": (one, other), "one": one, "other": other, "points": points}, "both")

    def bonus(spot: Spot, color: str, each: int, more: int, wrong: tuple[int, int], order: tuple[int, ...]) -> Draft | None:
        one = view.quantity("down", spot, color)
        a = view.number(one)
        if a < 2 or len({a, each, more}) < 3:
            return None
        points, added = Stated(each, "points for each"), Stated(more, "bonus points")
        options: tuple[_Shown, ...] = (
            (f"{a} {times} {each} + {more}", Op("+", (Op("*", (one, points)), added)), ""),
            (f"{a} {times} ({each} + {more})", Op("*", (one, Op("+", (points, added)))), "O13"),
            (f"({a} + {more}) {times} {each}", Op("*", (Op("+", (one, added)), points)), "O14"),
            (f"{a} + {each} {times} {more}", Op("+", (one, Op("*", (points, added)))), "O15"),
        )
        return records(options, wrong, order, {"one": one, "points": points, "bonus": added}, "bonus")

    def records(shown: tuple[_Shown, ...], wrong: tuple[int, int], order: tuple[int, ...], roles: dict[str, Role], story: str) -> Draft:
        three = [shown[place] for place in (0, *wrong)]
        labels, exprs, _ = zip(*(three[place] for place in order), strict=True)
        letter = roles["one"]
        assert isinstance(letter, Quantity)  # both stories start with a count
        return Draft(
            ask=Ask(Same(labels, exprs, shown[0][1], letter), (), Demand("expression")),
            roles={**roles, "options": listed(list(labels))},
            structure="which is greater",
            slips=tuple((slip, (label,)) for label, _, slip in three[1:]),
            unit=False,
            at_sight=True,
            wanted=frozenset({story}),
        )

    orders, wrongs = ((0, 1, 2), (1, 2, 0), (2, 0, 1)), ((1, 2), (1, 3), (2, 3))
    return joined(
        AskSpace((view.spots, twos, _HARDER_POINTS, wrongs, orders), two_colors),
        AskSpace((view.spots, colors, _BONUS_POINTS, _BONUSES, wrongs, orders), bonus),
    )
