"""Claims about results that are to be judged with a reason: whether one is true, and the numbers that show it."""

from __future__ import annotations

from itertools import combinations, permutations
from math import lcm

from mathgen.asks.expression import Ask, Op, Stated, Truth
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_RUBRIC = Demand("rubric")
_PARTS = ((1, 2), (1, 3), (2, 3), (1, 4), (3, 4))
_COMMON = 100  # the largest bottom number that two fractions may be brought to
_NEAR = 4  # no farther than 1/4 from a part that is claimed: else nothing has to be worked out
_PERCENTS = tuple(range(15, 100, 5))
_NEAR_PERCENT = 15
_TIMES = (2, 3, 4, 5)


def _of_one_trial(view: TableView) -> list[Spot]:
    """Where each pin was set up once: of several trials it would take one sentence more to say which whole is meant."""
    return [spot for spot in view.spots if len(spot.trials or view.table.trials) == 1]


@problem_model(skill="judge a claim about fractions")
def greater_fraction_claimed(view: TableView) -> AskSpace:
    """Whether a greater fraction of one color fell than of another, where the sets differ and the counts alone say the opposite."""

    def build(spot: Spot, pair: tuple[str, str]) -> Draft | None:
        downs, sets = (tuple(view.quantity(measure, spot, color) for color in pair) for measure in ("down", "set_up"))
        (k, k2), (n, n2) = (tuple(map(view.number, some)) for some in (downs, sets))
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
            unlike="one divides" if max(n, n2) % min(n, n2) == 0 else "neither",
            wanted=frozenset() if all(map(view.is_cell, sets)) else frozenset({"class"}),
        )

    return AskSpace((_of_one_trial(view), tuple(permutations(view.table.colors, 2))), build)


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

    return AskSpace((_of_one_trial(view), view.colors_or_all, _PARTS, (True, False)), build)


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

    return AskSpace((_of_one_trial(view), view.colors_or_all, _PERCENTS, (True, False)), build)


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
