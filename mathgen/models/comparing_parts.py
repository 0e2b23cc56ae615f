"""Parts that are held side by side: two colors of one rack, and one set in two trials."""

from __future__ import annotations

from itertools import combinations, pairwise
from math import lcm

from mathgen.asks.expression import Ask, Choice, Op, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.models.written_decimals import decimal_features, decimals
from mathgen.models.written_fractions import two_of_one_whole, unlike
from mathgen.problems.draft import Draft, Role
from mathgen.trials.scope import Label

_ANY = Demand("any")
_DECIMAL = Demand("decimal")
_NAME = Demand("name")
_COLORS = frozenset({"colors"})


def _two_colors(view: TableView, spot: Spot, pair: tuple[str, str]) -> tuple[dict[str, Role], tuple[Op, Op], tuple[int, int, int]] | None:
    """Two colors knocked down, each as a part of all pins set up; None where there is nothing to compare."""
    first, second = (view.quantity("down", spot, color) for color in pair)
    whole = view.quantity("set_up", spot)
    k, k2, n = map(view.number, (first, second, whole))
    if not k or not k2 or k == k2 or n < 4:
        return None
    rate, rate2 = Op("/", (first, whole)), Op("/", (second, whole))
    return {"first": first, "second": second, "whole": whole, "rate": rate, "rate2": rate2}, (rate, rate2), (k, k2, n)


def _by_own_set(view: TableView, spot: Spot, pair: tuple[str, str], first_wins: bool) -> tuple[tuple[str, tuple[int | str, ...]], ...]:
    """The slip of a pupil who takes each color's own set for the whole, where that color wins which should not."""
    (k, k2), (n, n2) = ([view.count(measure, spot, color) for color in pair] for measure in ("down", "set_up"))
    if k * n2 == k2 * n or (k * n2 > k2 * n) == first_wins:
        return ()
    return (("B34", (pair[1] if first_wins else pair[0],)),)


@problem_model(skill="compare parts of one whole")
def greater_part_of_one_whole(view: TableView) -> AskSpace:
    """Which of two colors knocked down was the greater fraction of one rack."""

    def build(spot: Spot, pair: tuple[str, str], like: bool) -> Draft | None:
        found = _two_colors(view, spot, pair)
        if found is None:
            return None
        roles, rates, (k, k2, n) = found
        forms = two_of_one_whole(k, k2, n, like)
        if forms is None:
            return None
        a, b, c, d = forms
        first, second, first_wins = *pair, k > k2
        # Over two bottom numbers, a slip has to show: else bigger numbers win and happen to be right.
        misled = not like and ((a > c) != first_wins or (b > d) != first_wins or (b - a < d - c) != first_wins)
        if not like and not misled:
            return None
        return Draft(
            ask=Ask(Choice(pair, rates), (), _NAME),
            roles=roles,
            structure="what fraction",
            slips=(
                *_by_own_set(view, spot, pair, first_wins),
                ("B11", (first, second, a, c)),
                ("B04", (first, second, b, d)),
                ("B12", (first, second, b - a, d - c)),
                ("B10", (second if first_wins else first,)),
            ),
            features=frozenset() if like else frozenset({"unlike_denominators"}),
            rates=((rates[0], f"{a}/{b}"), (rates[1], f"{c}/{d}")),
            sets=(n, n),
            unit=False,
            unlike=unlike(b, d),
            wanted=_COLORS,
        )

    return AskSpace((view.spots, tuple(combinations(view.table.colors, 2)), (True, False)), build)


@problem_model(skill="compare decimal parts of one whole")
def greater_decimal_of_one_whole(view: TableView) -> AskSpace:
    """Which of two colors knocked down was the greater decimal part of one rack: decimals of two lengths."""

    def build(spot: Spot, pair: tuple[str, str]) -> Draft | None:
        found = _two_colors(view, spot, pair)
        if found is None:
            return None
        roles, rates, (k, k2, n) = found
        texts = decimals((k, n), (k2, n))
        if texts is None or len(texts[0]) == len(texts[1]):
            return None
        first, second, first_wins = *pair, k > k2
        return Draft(
            ask=Ask(Choice(pair, rates), (), _NAME),
            roles=roles,
            structure="what fraction",
            slips=(
                ("E01", (first, second, *texts)),
                ("E02", (first, second, *texts)),
                *_by_own_set(view, spot, pair, first_wins),
                ("B10", (second if first_wins else first,)),
            ),
            features=decimal_features("decimal_notation", *texts),
            rates=((rates[0], texts[0]), (rates[1], texts[1])),
            sets=(n, n),
            unit=False,
            wanted=_COLORS,
        )

    return AskSpace((view.spots, tuple(combinations(view.table.colors, 2))), build)


_Group = tuple[str, ...] | None


def _two_trials(
    view: TableView, group: _Group, trials: tuple[Label, Label], color: str | None
) -> tuple[dict[str, Role], tuple[Op, Op], tuple[int, int, int]] | None:
    """One set in two trials, the greater part first; None where there is no difference, or the sets differ."""
    spots = [Spot(group, (trial,)) for trial in trials]
    if not all(spot in view.spots for spot in spots):
        return None
    one, other = (view.quantity("down", spot, color) for spot in spots)
    sizes = {view.count("set_up", spot, color) for spot in spots}
    k, k2 = view.number(one), view.number(other)
    if len(sizes) > 1 or k == k2 or not k or not k2:
        return None
    n = sizes.pop()
    told = tuple(view.quantity("set_up", spot, color) for spot in spots)
    wholes = told
    if k < k2:
        one, other, k, k2, wholes = other, one, k2, k, told[::-1]
    # A part that is twice the other differs from it by the other: the answer would stand in the text.
    if k in (n, 2 * k2) or n < 3:
        return None
    rate, rate2 = Op("/", (one, wholes[0])), Op("/", (other, wholes[1]))
    roles: dict[str, Role] = {"first": one, "second": other, "whole": wholes[0], "whole2": wholes[1], "rate": rate, "rate2": rate2}
    roles["wholes"] = told
    return roles, (rate, rate2), (k, k2, n)


@problem_model(skill="difference of two fractions")
def how_much_greater(view: TableView) -> AskSpace:
    """How much greater the fraction of a set was in one trial than in the one beside it."""

    def build(group: _Group, trials: tuple[Label, Label], color: str | None, like: bool) -> Draft | None:
        found = _two_trials(view, group, trials, color)
        if found is None:
            return None
        roles, (rate, rate2), (k, k2, n) = found
        forms = two_of_one_whole(k, k2, n, like)
        if forms is None:
            return None
        a, b, c, d = forms
        return Draft(
            ask=Ask(Value(Op("-", (rate, rate2))), (), _ANY),
            roles=roles,
            structure="difference unknown",
            slips=(
                ("C43", forms),
                *((("A05", (a - c,)),) if like else (("C05", forms), ("C14", forms))),
                ("C44", (a, b)),
            ),
            rates=((rate, f"{a}/{b}"), (rate2, f"{c}/{d}")),
            sets=(n, n),
            over=lcm(b, d),
            unit=False,
            unlike=unlike(b, d),
        )

    return AskSpace((view.groups_or_class, list(pairwise(view.table.trials)), view.colors_or_all, (True, False)), build)


@problem_model(skill="difference of two decimals")
def how_much_greater_decimal(view: TableView) -> AskSpace:
    """How much greater the decimal part of a set was in one trial than in the one beside it."""

    def build(group: _Group, trials: tuple[Label, Label], color: str | None) -> Draft | None:
        found = _two_trials(view, group, trials, color)
        if found is None:
            return None
        roles, (rate, rate2), (k, k2, n) = found
        texts = decimals((k, n), (k2, n))
        if texts is None:
            return None
        return Draft(
            ask=Ask(Value(Op("-", (rate, rate2))), (), _DECIMAL),
            roles=roles,
            structure="what fraction",
            slips=(("E37", texts), ("E39", texts), ("C43", (k, n, k2, n)), ("C44", (k, n))),
            features=decimal_features("decimal_compute", *texts),
            rates=((rate, texts[0]), (rate2, texts[1])),
            sets=(n, n),
            unit=False,
        )

    return AskSpace((view.groups_or_class, list(pairwise(view.table.trials)), view.colors_or_all), build)
