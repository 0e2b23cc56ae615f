"""Lines, inequalities and two equations: scores that grow by so many points a pin."""

from __future__ import annotations

from itertools import combinations, permutations

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Stated, Unknown, Value
from mathgen.exact.demand import Demand
from mathgen.models.expressions import earned
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role
from mathgen.trials.scope import Scope

_WHOLE = Demand("whole")
_X = Unknown()
_ONE = Stated(1, "whole")  # what "more than" passes a goal by
_RATES = ((2, 4), (2, 5), (2, 6), (3, 5), (3, 6), (4, 6), (5, 8), (6, 8), (4, 10), (5, 10))  # two apart at least: nothing is divided by 1
_STARTS = (5, 6, 8, 10, 12, 15, 20, 25)
_GOALS = (30, 40, 50, 60, 75, 80, 90, 100, 120, 150, 200)
_POINTS = (2, 3, 4, 5, 10)


def neighbors(view: TableView, spot: Spot, two: tuple[str, str], color: str | None) -> tuple[Quantity, Quantity] | None:
    """The counts of two groups in the same trials; each pair of groups is met once, at the class's spots."""
    if spot.groups is not None or not all(view.totals.complete(Scope((one,), spot.trials)) for one in two):
        return None
    return view.quantity("down", Spot((two[0],), spot.trials), color), view.quantity("down", Spot((two[1],), spot.trials), color)


@problem_model(skill="equation with x on both sides")
def level_scores(view: TableView) -> AskSpace:
    """9 + 3x = 5 + 5x: the one behind earns more for each pin of a next time. After how many pins are the scores equal?"""
    pairs = tuple(permutations(view.table.groups, 2)) if len(view.table.groups) <= 8 else tuple(combinations(view.table.groups, 2))

    def build(spot: Spot, two: tuple[str, str], color: str | None, rates: tuple[int, int]) -> Draft | None:
        counts = neighbors(view, spot, two, color)
        if counts is None:
            return None
        a, b = map(view.number, counts)
        low, high = rates
        p, q = (low, high) if a > b else (high, low)
        behind = abs(a - b)
        if min(a, b) < 2 or behind % (high - low) or len({a, b, low, high}) < 4:
            return None
        x = behind // (high - low)
        rack = min(view.count("set_up", Spot((one,), spot.trials), color) for one in two)
        rack //= len(spot.trials or view.table.trials)  # "next time" is one trial
        if not 2 <= x <= rack or x in (a, b, low, high):
            return None
        lead, chase = (counts, rates) if a > b else (counts[::-1], rates)
        slow, fast = earned(chase[0]), earned(chase[1])
        first, second = earned(p), earned(q)
        return Draft(
            ask=Ask(
                Value(Op("/", (Op("-", lead), Op("-", (fast, slow))))),
                (Equation(Op("+", (counts[0], Op("*", (first, _X)))), Op("+", (counts[1], Op("*", (second, _X))))),),
                _WHOLE,
            ),
            roles={"pair": counts, "first": counts[0], "second": counts[1], "p": first, "q": second},
            structure="start unknown",
            slips=(
                ("L27", (a + p * x,)),
                ("H07", (behind,)),
                ("L13", (behind, low + high)),
                ("L14", (max(a, b), min(a, b), low + high)),
                ("L15", (behind, high)),
            ),
        )

    return AskSpace((view.spots, pairs, view.colors_or_all, _RATES), build)


@problem_model(skill="equation with x on both sides")
def level_at_rates(view: TableView) -> AskSpace:
    """5(6 + x) = 3(12 + x): every pin earns points, more for the group behind. After how many more pins are the scores equal?"""
    pairs = tuple(combinations(view.table.groups, 2))

    def build(spot: Spot, two: tuple[str, str], color: str | None, rates: tuple[int, int]) -> Draft | None:
        counts = neighbors(view, spot, two, color)
        if counts is None:
            return None
        a, b = map(view.number, counts)
        low, high = rates
        p, q = (low, high) if a > b else (high, low)
        lead, chase = max(a, b), min(a, b)
        behind = low * lead - high * chase
        if chase < 2 or behind <= 0 or behind % (high - low) or len({a, b, low, high}) < 4:
            return None
        x = behind // (high - low)
        rack = min(view.count("set_up", Spot((one,), spot.trials), color) for one in two)
        if not 2 <= x <= rack or x in (a, b, low, high):
            return None
        first, second = earned(p), earned(q)
        scores = Op("*", (first, counts[0])), Op("*", (second, counts[1]))
        gap = Op("-", scores if a > b else scores[::-1])
        faster = Op("-", (second, first) if a > b else (first, second))
        return Draft(
            ask=Ask(
                Value(Op("/", (gap, faster))),
                (Equation(Op("*", (first, Op("+", (counts[0], _X)))), Op("*", (second, Op("+", (counts[1], _X))))),),
                _WHOLE,
            ),
            roles={"pair": counts, "first": counts[0], "second": counts[1], "p": first, "q": second},
            structure="start unknown",
            slips=(("L27", (p * (a + x),)), ("H07", (behind,)), ("L13", (behind, low + high)), ("L15", (behind, high))),
        )

    return AskSpace((view.spots, pairs, view.colors_or_all, _RATES), build)


def _hidden(view: TableView, down: Quantity) -> bool:
    """Whether a count is no single cell of the table, and no guess."""
    return not view.is_cell(down) and view.number(down) >= 4


@problem_model(skill="two equations from a story")
def points_of_two_colors(view: TableView) -> AskSpace:
    """x + y = 17 and 5x + 3y = 63: how many pins of each of two colors, from how many there were and what all of them earned."""

    def build(spot: Spot, two: tuple[str, str], rates: tuple[int, int], first_more: bool, ask_first: bool) -> Draft | None:
        parts = tuple(view.quantity("down", spot, color) for color in two)
        if not all(_hidden(view, part) for part in parts):
            return None
        p, q = rates[::-1] if first_more else rates
        k, k2 = map(view.number, parts)
        if k == k2:
            return None
        both, total = view.quantity("down", spot, two), Stated(p * k + q * k2, "points in all")
        n = k + k2
        own, other = (earned(p), earned(q)) if ask_first else (earned(q), earned(p))
        asked, right = (parts[0], k) if ask_first else (parts[1], k2)
        # As if all pins were of the other color: the points that are then missing, or too many.
        as_other = Op("*", (other, both))
        up = own.number > other.number
        gap = Op("-", (total, as_other) if up else (as_other, total))
        return Draft(
            ask=Ask(
                Value(Op("/", (gap, Op("-", (own, other) if up else (other, own))))),
                (Equation(Op("+", (Op("*", (own, _X)), Op("*", (other, Op("-", (both, _X)))))), total),),
                _WHOLE,
                asked,
            ),
            roles={
                "first": parts[0], "second": parts[1], "both": both, "asked": asked, "p": earned(p), "q": earned(q), "total": total,
            },
            structure="start unknown",
            slips=(("L16", (n - right,)), ("L18", (total.number, own.number)), ("L60", (p + q, total.number))),
            must_not_show=(parts[0].scope, parts[1].scope),
        )  # fmt: skip

    return AskSpace((view.spots, tuple(combinations(view.table.colors, 2)), _RATES, (True, False), (True, False)), build)


@problem_model(skill="two equations from a story")
def points_won_and_lost(view: TableView) -> AskSpace:
    """x + y = 36 and 5x - 2y = 110: how many pins were knocked down, from what those earn and what the standing ones lose."""

    def build(spot: Spot, color: str | None, rates: tuple[int, int]) -> Draft | None:
        loss, gain = rates
        down = view.quantity("down", spot, color)
        if not _hidden(view, down):
            return None
        whole = Quantity("set_up", down.scope)
        k, n = view.number(down), view.number(whole)
        points = gain * k - loss * (n - k)
        if n - k < 2 or 2 * k == n or points <= 0:
            return None
        gain_, loss_, total = earned(gain), Stated(loss, "points lost for each"), Stated(points, "points in all")
        return Draft(
            ask=Ask(
                Value(Op("/", (Op("+", (total, Op("*", (loss_, whole)))), Op("+", (gain_, loss_))))),
                (Equation(Op("-", (Op("*", (gain_, _X)), Op("*", (loss_, Op("-", (whole, _X)))))), total),),
                _WHOLE,
                down,
            ),
            roles={
                "down": down,
                "whole": whole,
                "standing": Quantity("standing", down.scope),
                "gain": gain_,
                "loss": loss_,
                "total": total,
            },
            structure="start unknown",
            slips=(("L16", (n - k,)), ("L18", (points, gain)), ("L19", (points + loss * n, gain - loss))),
            must_not_show=(down.scope,),
        )

    return AskSpace((view.spots, view.colors_or_all, _RATES), build)


def _line(view: TableView, spot: Spot, two: tuple[str, str], color: str | None, points: int, start: int, wanted: str) -> Draft | None:
    """Two groups' counts and scores on one line: score = points * pins + start."""
    counts = neighbors(view, spot, two, color)
    if counts is None:
        return None
    a, b = map(view.number, counts)
    # Two pins apart at least: the difference of the scores is not yet the slope.
    if min(a, b) < 2 or abs(a - b) < 2 or len({a, b, points, start}) < 4:
        return None
    scores = Stated(points * a + start, "points in all"), Stated(points * b + start, "points in all")
    high = 0 if a > b else 1
    rise = Op("-", (scores[high], scores[1 - high]))
    run = Op("-", (counts[high], counts[1 - high]))
    slope = Op("/", (rise, run))
    more, gap = max(a, b), abs(a - b)
    top = points * more + start
    roles: dict[str, Role] = {"pair": counts, "first": counts[0], "second": counts[1], "t1": scores[0], "t2": scores[1]}
    if wanted == "slope":
        return Draft(
            ask=Ask(Value(slope), (), _WHOLE),
            roles=roles,
            structure="difference unknown",
            slips=(("L61", (more, top)), ("H07", (points * gap,)), ("L20", (start,))),
            unit=False,
        )
    return Draft(
        ask=Ask(Value(Op("-", (scores[high], Op("*", (slope, counts[high]))))), (), _WHOLE),
        roles=roles,
        structure="start unknown",
        slips=(("L21", (points,)), ("L22", (points * more,)), ("L23", (top, more))),
        unit=False,
    )


def _line_space(view: TableView, wanted: str) -> AskSpace:
    pairs = tuple(combinations(view.table.groups, 2))
    return AskSpace(
        (view.spots, pairs, view.colors_or_all, _POINTS, _STARTS),
        lambda spot, two, color, points, start: _line(view, spot, two, color, points, start, wanted),
    )


@problem_model(skill="slope of a line")
def points_for_each(view: TableView) -> AskSpace:
    """How many points one pin earns: the rise of two scores over the rise of the pins."""
    return _line_space(view, "slope")


@problem_model(skill="start value of a line")
def start_value(view: TableView) -> AskSpace:
    """How many points every score starts with: a score less what its pins earned."""
    return _line_space(view, "start")


@problem_model(skill="two-step inequality")
def fewest_needed(view: TableView) -> AskSpace:
    """5 * 6 + 5x > 50, or at least 50: the least number of pins next time that reaches a goal, or passes it."""

    def build(spot: Spot, color: str | None, points: int, goal: int, passes: bool) -> Draft | None:
        down = view.quantity("down", spot, color)
        k, rack = view.number(down), view.count("set_up", spot, color)
        reached = goal - points * k
        if k < 3 or goal % points or reached <= 0:
            return None
        x = reached // points + passes
        if not 3 <= x <= rack or x in (k, points) or (spot.trials is None or len(spot.trials) > 1):
            return None
        p, wish = earned(points), Stated(goal, "goal in points")
        have = Op("*", (p, down))
        needed = Op("/", (Op("-", (wish, have)), p))
        more = Op("-", (_X, _ONE)) if passes else _X
        return Draft(
            ask=Ask(Value(Op("+", (needed, _ONE)) if passes else needed), (Equation(Op("+", (have, Op("*", (p, more)))), wish),), _WHOLE),
            roles={"down": down, "p": p, "goal": wish},
            structure="start unknown",
            slips=(("L24" if passes else "L25", (x - 1 if passes else x + 1,)), ("L26", (goal // points + passes,)), ("H07", (reached,))),
            wanted=frozenset({"passes" if passes else "reaches"}),
        )

    return AskSpace((view.spots, view.colors_or_all, _POINTS, _GOALS, (True, False)), build)
