"""Proportional scores: the constant of proportionality, how one number grows with another, two rates compared, proportional or not."""

from __future__ import annotations

from itertools import combinations, permutations

from mathgen.asks.expression import Ask, Choice, Op, Quantity, Stated, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.models.expressions import earned
from mathgen.models.lines import neighbors
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_WHOLE, _NAME, _TRUTH = Demand("whole"), Demand("name"), Demand("truth")
_POINTS = (2, 3, 4, 5, 6, 8, 10)


@problem_model(skill="constant of proportionality")
def constant_of_score(view: TableView) -> AskSpace:
    """k of y = kx: what a score is divided by the pins that earned it."""

    def build(spot: Spot, color: str | None, points: int) -> Draft | None:
        down = view.quantity("down", spot, color)
        k = view.number(down)
        if k < 3 or k == points:
            return None
        total = Stated(points * k, "points in all")
        return Draft(
            ask=Ask(Value(Op("/", (total, down))), (), _WHOLE),
            roles={"down": down, "total": total},
            structure="times",
            slips=(("L62", (k, total.number)), ("L28", (total.number,)), ("L63", (k, total.number))),
            unit=False,
        )

    return AskSpace((view.spots, view.colors_or_all, _POINTS), build)


@problem_model(skill="two related quantities")
def growth_of_score(view: TableView) -> AskSpace:
    """How much p of p = 5d grows when d grows from one trial to another."""
    trials = tuple(combinations(view.table.trials, 2))
    whose = tuple(dict.fromkeys(spot.groups for spot in view.spots))

    def build(groups: tuple[str, ...] | None, two: tuple[object, object], color: str | None, points: int) -> Draft | None:
        spots = [Spot(groups, (trial,)) for trial in two]  # type: ignore[arg-type]
        if not all(view.totals.complete(view.scope(spot)) for spot in spots):
            return None
        before, after = (view.quantity("down", spot, color) for spot in spots)
        a, b = view.number(before), view.number(after)
        if a < 2 or b - a < 2 or b - a == points or len({a, b, points}) < 3:
            return None
        p = earned(points)
        return Draft(
            ask=Ask(Value(Op("*", (p, Op("-", (after, before))))), (), _WHOLE),
            roles={"parts": (before, after), "first": before, "last": after, "p": p},
            structure="difference unknown",
            slips=(("L29", (b - a,)), ("L30", (points * b,)), ("L31", (points * (a + b),))),
            unit="points",
        )

    return AskSpace((whose, trials, view.colors_or_all, _POINTS), build)


_RATES = tuple(permutations(_POINTS, 2))


@problem_model(skill="two rates compared")
def steeper_line(view: TableView) -> AskSpace:
    """Which of two proportional scores grows faster: the group with the greater score has the line that is less steep."""
    pairs = tuple(combinations(view.table.groups, 2))

    def build(spot: Spot, two: tuple[str, str], color: str | None, rates: tuple[int, int]) -> Draft | None:
        counts = neighbors(view, spot, two, color)
        if counts is None:
            return None
        (k, k2), (p, q) = map(view.number, counts), rates
        # Neither more pins nor the greater score may point to the steeper line.
        if min(k, k2) < 3 or (k > k2) == (p > q) or (p * k > q * k2) == (p > q) or p * k == q * k2 or {p, q} & {k, k2}:
            return None
        scores = Stated(p * k, "points in all"), Stated(q * k2, "points in all")
        return Draft(
            ask=Ask(Choice(two, (Op("/", (scores[0], counts[0])), Op("/", (scores[1], counts[1])))), (), _NAME),
            roles={"pair": counts, "first": counts[0], "second": counts[1], "t1": scores[0], "t2": scores[1]},
            structure="times",
            slips=(("L32", (*two, p * k, q * k2)),),
            unit=False,
            wanted=frozenset({"groups"}),
        )

    return AskSpace((view.spots, pairs, view.colors_or_all, _RATES), build)


@problem_model(skill="proportional or not")
def is_proportional(view: TableView) -> AskSpace:
    """Whether two scores are the same number of points for each pin."""
    pairs = tuple(combinations(view.table.groups, 2))

    def build(spot: Spot, two: tuple[str, str], color: str | None, rates: tuple[int, int]) -> Draft | None:
        counts = neighbors(view, spot, two, color)
        if counts is None:
            return None
        (k, k2), (p, q) = map(view.number, counts), rates
        # The greater count has the greater score, or it would be seen at once.
        if min(k, k2) < 3 or abs(k - k2) < 2 or (k > k2) != (p * k > q * k2) or p * k == q * k2 or {p, q} & {k, k2}:
            return None
        scores = Stated(p * k, "points in all"), Stated(q * k2, "points in all")
        same = int(p == q)
        return Draft(
            ask=Ask(Truth(Op("/", (scores[0], counts[0])), "=", Op("/", (scores[1], counts[1]))), (), _TRUTH),
            roles={"pair": counts, "first": counts[0], "second": counts[1], "t1": scores[0], "t2": scores[1]},
            structure="is it so",
            slips=(("L33", (same,)), ("L34", (abs(k - k2), abs(p * k - q * k2)))),
            unit=False,
        )

    # About as many are proportional as are not: of two rates, only the order fits in which the greater count has the greater score.
    rates = tuple(two for p, q in zip(_POINTS, (*_POINTS[1:], _POINTS[0]), strict=True) for two in ((p, p), (p, q), (q, p)))
    return AskSpace((view.spots, pairs, view.colors_or_all, rates), build)


@problem_model(skill="constant of proportionality")
def constant_from_growth(view: TableView) -> AskSpace:
    """k of y = kx: what the score grew by, divided by what the pins grew by, from one trial to another."""
    trials = tuple(combinations(view.table.trials, 2))
    whose = tuple(dict.fromkeys(spot.groups for spot in view.spots))

    def build(groups: tuple[str, ...] | None, two: tuple[object, object], color: str | None, points: int) -> Draft | None:
        found = _grown(view, groups, two, color)
        if found is None:
            return None
        (before, after), (a, b) = found
        rise = points * (b - a)
        if points in (a, b, b - a) or rise in (a, b):
            return None
        grown = Stated(rise, "points more")
        return Draft(
            ask=Ask(Value(Op("/", (grown, Op("-", (after, before))))), (), _WHOLE),
            roles={"parts": (before, after), "first": before, "last": after, "rise": grown},
            structure="times",
            slips=(("L35", (rise,)), ("L36", (rise, b)), ("L37", (b - a,))),
            unit=False,
        )

    return AskSpace((whose, trials, view.colors_or_all, _POINTS), build)


def _grown(
    view: TableView, groups: tuple[str, ...] | None, two: tuple[object, object], color: str | None
) -> tuple[tuple[Quantity, Quantity], tuple[int, int]] | None:
    """The counts of two trials, of which the later is greater by two at the least."""
    spots = [Spot(groups, (trial,)) for trial in two]  # type: ignore[arg-type]
    if not all(view.totals.complete(view.scope(spot)) for spot in spots):
        return None
    before, after = (view.quantity("down", spot, color) for spot in spots)
    a, b = view.number(before), view.number(after)
    return ((before, after), (a, b)) if a >= 2 and b - a >= 2 else None


@problem_model(skill="two related quantities")
def points_for_one_more(view: TableView) -> AskSpace:
    """How much p grows each time d grows by one, from two values of both."""
    trials = tuple(combinations(view.table.trials, 2))
    whose = tuple(dict.fromkeys(spot.groups for spot in view.spots))

    def build(groups: tuple[str, ...] | None, two: tuple[object, object], color: str | None, points: int) -> Draft | None:
        found = _grown(view, groups, two, color)
        if found is None:
            return None
        (before, after), (a, b) = found
        scores = Stated(points * a, "points in all"), Stated(points * b, "points in all")
        if points in (a, b, b - a) or {one.number for one in scores} & {a, b}:
            return None
        rise = Op("-", scores[::-1])
        return Draft(
            ask=Ask(Value(Op("/", (rise, Op("-", (after, before))))), (), _WHOLE),
            roles={"parts": (before, after), "first": before, "last": after, "t1": scores[0], "t2": scores[1]},
            structure="difference unknown",
            slips=(("L38", (points * (b - a),)), ("L37", (b - a,)), ("L39", (points * b,))),
            unit=False,
        )

    return AskSpace((whose, trials, view.colors_or_all, _POINTS), build)


@problem_model(skill="proportional or not")
def score_in_proportion(view: TableView) -> AskSpace:
    """The score that makes two scores proportional to the pins that earned them."""
    pairs = tuple(permutations(view.table.groups, 2)) if len(view.table.groups) <= 6 else tuple(combinations(view.table.groups, 2))

    def build(spot: Spot, two: tuple[str, str], color: str | None, points: int) -> Draft | None:
        counts = neighbors(view, spot, two, color)
        if counts is None:
            return None
        k, k2 = map(view.number, counts)
        if min(k, k2) < 3 or k == k2 or points in (k, k2) or points * k2 in (k, points * k + k2 - k):
            return None
        score = Stated(points * k, "points in all")
        return Draft(
            ask=Ask(Value(Op("*", (Op("/", (score, counts[0])), counts[1]))), (), _WHOLE),
            roles={"pair": counts, "first": counts[0], "second": counts[1], "t1": score},
            structure="times",
            slips=(("L40", (points * k + k2 - k,)), ("L41", (points,)), ("L42", (points * k,))),
            unit=False,
        )

    return AskSpace((view.spots, pairs, view.colors_or_all, _POINTS), build)


@problem_model(skill="two rates compared")
def slopes_apart(view: TableView) -> AskSpace:
    """How much greater the slope of one group's line through the origin is than that of another's."""
    pairs = tuple(combinations(view.table.groups, 2))

    def build(spot: Spot, two: tuple[str, str], color: str | None, rates: tuple[int, int]) -> Draft | None:
        counts = neighbors(view, spot, two, color)
        if counts is None:
            return None
        (k, k2), (p, q) = map(view.number, counts), rates
        if min(k, k2) < 3 or k == k2 or p * k == q * k2 or {p, q} & {k, k2} or abs(p - q) in (p, q):
            return None
        scores = Stated(p * k, "points in all"), Stated(q * k2, "points in all")
        slopes = Op("/", (scores[0], counts[0])), Op("/", (scores[1], counts[1]))
        high = 0 if p > q else 1
        return Draft(
            ask=Ask(Value(Op("-", (slopes[high], slopes[1 - high]))), (), _WHOLE),
            roles={
                "pair": counts,
                "first": counts[0],
                "second": counts[1],
                "t1": scores[0],
                "t2": scores[1],
                "greater": counts[high],
                "less": counts[1 - high],
            },
            structure="difference unknown",
            slips=(("L43", (abs(p * k - q * k2),)), ("L44", (max(p, q),)), ("L45", (p + q,))),
            unit=False,
        )

    return AskSpace((view.spots, pairs, view.colors_or_all, _RATES), build)
