"""Claims about results that are to be judged with a reason: whether one is true, and the numbers that show it."""

from __future__ import annotations

from itertools import combinations, permutations
from math import gcd, lcm

from mathgen.asks.expression import Ask, Op, Quantity, Stated, Truth
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.models.written_fractions import lowest, unlike
from mathgen.problems.draft import Draft
from mathgen.trials.scope import Label

_RUBRIC = Demand("rubric")
_PARTS = ((1, 2), (1, 3), (2, 3), (1, 4), (3, 4))
_COMMON = 100  # the largest bottom number that two fractions may be brought to
_NEAR = 4  # no farther than 1/4 from a part that is claimed: else nothing has to be worked out
_PERCENTS = tuple(range(15, 100, 5))
_NEAR_PERCENT = 15
_TIMES = (2, 3, 4, 5)
_TABLE_OF = 8  # pins in a row of a two-way table: of fewer, a fraction says little
_CHANCE_BOTTOM = 24  # the largest bottom number of a probability that is claimed


def _greater_fraction(view: TableView, look_up: bool, fewest: int = 1) -> AskSpace:
    """Drafts of every two colors of a spot whose sets differ, where the counts alone say the opposite of the fractions."""

    def build(spot: Spot, pair: tuple[str, str]) -> Draft | None:
        downs, sets = (tuple(view.quantity(measure, spot, color) for color in pair) for measure in ("down", "set_up"))
        (k, k2), (n, n2) = (tuple(map(view.number, some)) for some in (downs, sets))
        if min(n, n2) < fewest:
            return None
        if k in (0, n) or k2 in (0, n2) or n == n2 or (k > k2) == (k * n2 > k2 * n) or k == k2 or k * n2 == k2 * n or lcm(n, n2) > _COMMON:
            return None
        rates = tuple(Op("/", one) for one in zip(downs, sets, strict=True))
        return Draft(
            ask=Ask(Truth(rates[0], ">", rates[1]), (), _RUBRIC),
            roles={"first": downs[0], "second": downs[1], "whole": sets[0], "whole2": sets[1]},
            structure="is it so",
            slips=(("V01", (int(k > k2),)), ("V02", (int(n - k < n2 - k2),))),
            features=frozenset({"unequal_sets"}),
            sets=(n, n2),
            unlike=unlike(n, n2),
            wanted=frozenset() if not look_up or all(map(view.is_cell, sets)) else frozenset({"class"}),
        )

    return AskSpace((view.one_trial_spots, tuple(permutations(view.table.colors, 2))), build)


@problem_model(skill="judge a claim about fractions")
def greater_fraction_claimed(view: TableView) -> AskSpace:
    """Whether a greater fraction of one color fell than of another."""
    return _greater_fraction(view, True)


@problem_model(skill="judge a claim by a two-way table")
def association_claimed(view: TableView) -> AskSpace:
    """Whether a greater fraction of one color fell than of another: the counts are put in a two-way table of colors and results."""
    return _greater_fraction(view, False, _TABLE_OF)


@problem_model(skill="judge a claim about a part")
def part_claimed(view: TableView) -> AskSpace:
    """Whether more (or less) than half of a set fell, or another well-known part."""

    def build(spot: Spot, color: str | None, claimed: tuple[int, int], more: bool) -> Draft | None:
        part, whole = (view.quantity(measure, spot, color) for measure in ("down", "set_up"))
        k, n = map(view.number, (part, whole))
        top, bottom = claimed
        apart = k * bottom - top * n
        if not 0 < k < n or n < 2 * bottom or not apart or abs(apart) * _NEAR > n * bottom or lcm(n, bottom) > _COMMON or k == top:
            return None
        stated = Stated(top, "claimed part", bottom)
        return Draft(
            ask=Ask(Truth(Op("/", (part, whole)), ">" if more else "<", stated), (), _RUBRIC),
            roles={"part": part, "whole": whole, "claimed": stated},
            structure="is it so",
            slips=(
                ("V03", (int((k > top) == more),)),
                ("V04", (int((n < bottom) == more),)),
                ("V05", (int(((n - k) * bottom > top * n) == more),)),
            ),
            features=frozenset({"unlike_denominators"}),
            sets=(n,),
            unlike="one divides" if n % bottom == 0 else "neither",
            wanted=frozenset({"more" if more else "less"}),
        )

    return AskSpace((view.one_trial_spots, view.colors_or_all, _PARTS, (True, False)), build)


@problem_model(skill="judge a claim about a percent")
def percent_claimed(view: TableView) -> AskSpace:
    """Whether more (or less) than a percent of a set fell, where the count is on one side of the number and the percent on the other."""

    def build(spot: Spot, color: str | None, claimed: int, more: bool) -> Draft | None:
        part, whole = (view.quantity(measure, spot, color) for measure in ("down", "set_up"))
        k, n = map(view.number, (part, whole))
        if not 0 < k < n or n < 4 or 100 % n or n == 100 or not 0 < abs(100 * k // n - claimed) <= _NEAR_PERCENT:
            return None
        true = (100 * k > claimed * n) == more
        misled = {"V10": (k > claimed) == more, "V11": (10 * k > claimed) == more, "V05": (100 * (n - k) > claimed * n) == more}
        if set(misled.values()) == {true}:
            return None  # every likely mistake would happen to be right
        stated = Stated(claimed, "claimed percent", 100)
        return Draft(
            ask=Ask(Truth(Op("/", (part, whole)), ">" if more else "<", stated), (), _RUBRIC),
            roles={"part": part, "whole": whole, "claimed": stated},
            structure="is it so",
            slips=tuple((slip, (int(says_so),)) for slip, says_so in misled.items()),
            features=frozenset({"percent"}),
            sets=(n,),
            wanted=frozenset({"more" if more else "less"}),
        )

    return AskSpace((view.one_trial_spots, view.colors_or_all, _PERCENTS, (True, False)), build)


@problem_model(skill="judge a claim of times as many")
def times_claimed(view: TableView) -> AskSpace:
    """Whether one color's count is so many times another's: it is, or it misses by little, or the number is only added."""

    def build(spot: Spot, pair: tuple[str, str], times: int) -> Draft | None:
        one, other = (view.quantity("down", spot, color) for color in pair)
        k, k2 = map(view.number, (one, other))
        apart = k - times * k2
        if k2 < 2 or k <= k2 or k2 == times or (abs(apart) > 2 and k != k2 + times):
            return None
        stated = Stated(times, "times")
        return Draft(
            ask=Ask(Truth(one, "=", Op("*", (stated, other))), (), _RUBRIC),
            roles={"first": one, "second": other, "times": stated},
            structure="is it so",
            slips=(("V06", (int(k == k2 + times),)), ("V07", (int(k > k2),))),
            features=frozenset({"times_as_many", "multiply_divide"}),
        )

    return AskSpace((view.spots, tuple(permutations(view.table.colors, 2)), _TIMES), build)


@problem_model(skill="judge a claim about a total")
def together_claimed(view: TableView) -> AskSpace:
    """Whether more of one color fell than of two others together, where more fell than of each of them alone."""

    def build(spot: Spot, colors: tuple[str, str, str]) -> Draft | None:
        parts = tuple(view.quantity("down", spot, color) for color in colors)
        most, second, third = map(view.number, parts)
        if not second or not third or most <= max(second, third) or abs(most - second - third) > 3:
            return None
        return Draft(
            ask=Ask(Truth(parts[0], ">", Op("+", parts[1:])), (), _RUBRIC),
            roles={"parts": parts, "first": parts[0], "others": parts[1:]},
            structure="is it so",
            slips=(("V08", (1,)), ("V09", (int(most == second + third),))),
        )

    colors = view.table.colors
    return AskSpace((view.spots, [(one, *two) for one in colors for two in combinations(colors, 2) if one not in two]), build)


@problem_model(skill="judge a claimed sum of fractions")
def sum_claimed(view: TableView) -> AskSpace:
    """Whether two parts of one set with unlike bottom numbers make the part claimed: they do, or tops and bottoms were added."""

    def build(spot: Spot, colors: tuple[str, str], kind: str) -> Draft | None:
        whole, parts = view.quantity("set_up", spot), tuple(view.quantity("down", spot, color) for color in colors)
        n, counts = view.number(whole), tuple(map(view.number, parts))
        (a, b), (c, d) = (lowest(k, n) for k in counts)
        top, bottom = {"right": (sum(counts), n), "tops and bottoms": (a + c, b + d), "tops": (a + c, max(b, d))}[kind]
        shared, right = gcd(top, bottom), top * n == sum(counts) * bottom
        if 0 in counts or b == d or sum(counts) == n or 1 in (b, d) or lcm(b, d, bottom // shared) > _COMMON:
            return None
        if right != (kind == "right") or top == bottom:
            return None
        rates = tuple(Op("/", (part, whole)) for part in parts)
        stated = Stated(top // shared, "claimed part", bottom // shared)
        return Draft(
            ask=Ask(Truth(Op("+", rates), "=", stated), (), _RUBRIC),
            roles={
                "first": parts[0], "second": parts[1], "rate": rates[0], "rate2": rates[1],
                "whole": whole, "parts": parts, "claimed": stated,
            },
            structure="is it so",
            slips=(("V12", (int(kind == "tops and bottoms"),)), ("V15", (int(kind == "tops"),))),
            rates=tuple(zip(rates, (f"{a}/{b}", f"{c}/{d}"), strict=True)),
            features=frozenset({"unlike_denominators"}),
            sets=(n,),
            unlike=unlike(b, d),
        )  # fmt: skip

    pairs = tuple(combinations(view.table.colors, 2)) if len(view.table.colors) > 2 else ()
    return AskSpace((view.one_trial_spots, pairs, ("right", "tops and bottoms", "tops")), build)


@problem_model(skill="judge a claimed percent change")
def change_claimed(view: TableView) -> AskSpace:
    """Whether a count rose (or fell) by a percent: it did, or the percent is the bare difference, or one of the later count."""

    def build(group: tuple[str, ...] | None, trials: tuple[Label, Label], color: str | None, kind: str) -> Draft | None:
        before, after = (view.quantity("down", Spot(group, (trial,)), color) for trial in trials)
        whole, whole2 = (view.scope(Spot(group, (trial,)), color) for trial in trials)
        if not view.totals.complete(before.scope) or not view.totals.complete(after.scope):
            return None
        if view.totals.total("set_up", whole) != view.totals.total("set_up", whole2):
            return None
        old, new = view.number(before), view.number(after)
        gap = abs(new - old)
        if old < 4 or new < 4 or not 0 < gap < old or 100 * gap % old:
            return None
        claims = {"right": 100 * gap // old, "difference": gap, "of the later": 0 if 100 * gap % new else 100 * gap // new}
        claimed = claims[kind]
        if not 0 < claimed < 100 or (kind != "right" and claimed == claims["right"]) or claimed in (old, new):
            return None
        rise = new > old
        stated = Stated(claimed, "claimed percent", 100)
        return Draft(
            ask=Ask(Truth(Op("/", (Op("-", (after, before) if rise else (before, after)), before)), "=", stated), (), _RUBRIC),
            roles={"old": before, "new": after, "claimed": stated},
            structure="is it so",
            slips=(("V13", (int(kind == "difference"),)), ("V14", (int(kind == "of the later"),))),
            features=frozenset({"percent", "percent_change"}),
            wanted=frozenset({"increase" if rise else "decrease"}),
        )

    kinds = ("right", "difference", "of the later")
    return AskSpace((view.groups_or_class, tuple(combinations(view.table.trials, 2)), view.colors_or_all, kinds), build)


@problem_model(skill="judge a claim about the next one")
def next_claimed(view: TableView) -> AskSpace:
    """Whether one result makes the other one due: the estimated probability stays what all the results say."""
    spots = [spot for spot in view.spots if len(spot.trials or view.table.trials) > 1]

    def build(spot: Spot, color: str | None, right: bool) -> Draft | None:
        part, whole = (view.quantity(measure, spot, color) for measure in ("down", "set_up"))
        k, n = map(view.number, (part, whole))
        if k in (0, n) or 2 * k == n or n < 8 or n // gcd(k, n) > _CHANCE_BOTTOM:
            return None
        top, shared = (k if right else n - k), gcd(k, n)
        stated = Stated(top // shared, "claimed part", n // shared)
        return Draft(
            ask=Ask(Truth(Op("/", (part, whole)), "=", stated), (), _RUBRIC),
            roles={
                "part": part, "whole": whole, "claimed": stated,
                "one": part if 2 * k > n else Quantity("standing", part.scope),
            },
            structure="is it so",
            slips=(("K07", (int(not right),)),),
            features=frozenset({"probability"}),
            sets=(n,),
        )  # fmt: skip

    return AskSpace((spots, view.colors_or_all, (True, False)), build)
