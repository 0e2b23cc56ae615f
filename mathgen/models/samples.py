"""Samples and simulations: a class estimated from groups drawn at random, digits that stand for results, more likely than not."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, NamedTuple

from mathgen.asks.expression import Ask, Expr, Op, Quantity, Stat, Stated, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.models.lists import MOST_NUMBERS, list_choices, listed
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role

_ANY, _WHOLE, _TRUTH = Demand("any"), Demand("whole"), Demand("truth")
_CHANCE = frozenset({"probability"})
_FEWEST = 5  # results that say something about chance
_DIGITS = 10
_POPULATION = 15
_SIZES = (5, 6, 8, 9, 10, 12, 15, 16, 18, 20, 24, 25)  # of a sample of pins


class _Sample(NamedTuple):
    """Groups drawn at random, in one trial, and the estimate that they give for the class."""

    series: tuple[Quantity, ...]
    roles: dict[str, Role]
    total: int
    estimate: int
    formula: Op


def _drawn(view: TableView, spot: Spot, way: tuple[str, ...], color: str | None) -> _Sample | None:
    """A sample whose mean is whole, more than 1, and not the half of the class, which is doubled without a mean."""
    groups = len(view.table.groups)
    found = listed(view, spot, way, color)
    if found is None:
        return None
    series, whole = found
    total, size = sum(map(view.number, series)), len(series)
    if total % size or total <= size or 2 * size == groups:
        return None
    drawn, everybody = Stated(size, "in the sample"), Stated(groups, "groups")
    formula = Op("*", (Op("/", (Op("+", series), drawn)), everybody))
    roles: dict[str, Role] = {"series": series, "whole": whole, "drawn": drawn, "groups": everybody}
    return _Sample(series, roles, total, total // size * groups, formula)


def _some_groups(view: TableView) -> tuple[Sequence[Any], ...]:
    """The axes of a sample: a trial, which groups are drawn, and a color."""
    groups = view.table.groups if len(view.table.groups) > 4 else ()
    spots = [Spot(None, (trial,)) for trial in view.table.trials if view.totals.complete(view.scope(Spot(None, (trial,))))]
    ways = [way for way in list_choices(groups) if way is not None and 3 <= len(way) < min(len(groups), MOST_NUMBERS)]
    return spots if groups else [], ways, view.colors_or_all


@problem_model(skill="estimate from a sample")
def sample_estimate(view: TableView) -> AskSpace:
    """About how many the class knocked down in a trial, going by some of its groups, drawn at random."""

    def build(spot: Spot, way: tuple[str, ...], color: str | None) -> Draft | None:
        found = _drawn(view, spot, way, color)
        if found is None or view.count("down", spot, color) == found.total:
            return None
        return Draft(
            ask=Ask(Value(found.formula), (), _WHOLE),
            roles=found.roles,
            structure="part from rate",
            slips=(
                ("K20", (found.total,)),
                ("K21", (found.total // len(found.series),)),
                ("K22", (found.total, len(view.table.groups))),
            ),
            features=frozenset(),
            must_not_show=(view.scope(spot, color),) if found.estimate == view.count("down", spot, color) else (),
        )

    return AskSpace(_some_groups(view), build)


@problem_model(skill="how far off an estimate is")
def estimate_off(view: TableView) -> AskSpace:
    """How many pins too high or too low an estimate is that a sample gives for the class."""

    def build(spot: Spot, way: tuple[str, ...], color: str | None) -> Draft | None:
        found = _drawn(view, spot, way, color)
        if found is None:
            return None
        known = view.quantity("down", spot, color)
        number = view.number(known)
        off = abs(found.estimate - number)
        # One pin off is a word in the question; half of the class off is no estimate.
        if not 2 <= off <= number // 2 or off in (number, found.total):
            return None
        high = found.estimate > number
        return Draft(
            ask=Ask(Value(Op("-", (found.formula, known) if high else (known, found.formula))), (), _WHOLE),
            roles={**found.roles, "class": known, "side": "high" if high else "low"},
            structure="difference unknown",
            slips=(("K36", (found.estimate,)), ("K37", (number - found.total,)), ("K21", (found.total // len(found.series),))),
        )

    return AskSpace(_some_groups(view), build)


@problem_model(skill="whether a sample represents")
def sample_represents(view: TableView) -> AskSpace:
    """Whether a color is the same fraction of a sample as of its population, the pins of one trial."""
    colors = view.table.colors if len(view.table.colors) > 1 else ()

    def build(spot: Spot, color: str, size: int, alike: bool) -> Draft | None:
        whole, part = view.quantity("down", spot), view.quantity("down", spot, color)
        n, k = view.number(whole), view.number(part)
        if n < _POPULATION or k == 0 or 2 * size > n or size * k % n:
            return None
        has = size * k // n + (0 if alike else 1 if size % 2 else -1)
        # Not none, not all, and not as many as the population has: counts alone must not tell.
        if not 1 < has < size or has == k:
            return None
        of_sample = Op("/", (Stated(has, "of the color"), Stated(size, "in the sample")))
        return Draft(
            ask=Ask(Truth(of_sample, "=", Op("/", (part, whole))), (), _TRUTH),
            roles={"part": part, "whole": whole, "drawn": of_sample.args[1], "has": of_sample.args[0]},  # type: ignore[dict-item]
            structure="is it so",
            slips=(("K84", ("false" if alike else "true",)),),
            sets=(n,),
            unit=False,
        )

    return AskSpace((view.one_trial_spots, colors, _SIZES, (True, False)), build)


@problem_model(skill="sample like its population")
def sample_like_population(view: TableView) -> AskSpace:
    """How many of a color belong in a sample that represents the colors of a population: the pins of one trial."""
    colors = view.table.colors if len(view.table.colors) > 1 else ()

    def build(spot: Spot, color: str, size: int) -> Draft | None:
        whole, part = view.quantity("down", spot), view.quantity("down", spot, color)
        n, k = view.number(whole), view.number(part)
        # Few pins are no population. At most half of them are drawn, and the color has a count of its own in the sample.
        if n < _POPULATION or k == 0 or 2 * size > n or size * k % n or not 2 <= size * k // n < size or k == size:
            return None
        drawn = Stated(size, "in the sample")
        return Draft(
            ask=Ask(Value(Op("*", (Op("/", (part, whole)), drawn))), (), _WHOLE),
            roles={"part": part, "whole": whole, "drawn": drawn},
            structure="part from rate",
            slips=(("K38", (size, len(colors))), ("K39", (size, k, n)), ("K40", (k,))),
            sets=(n,),
        )

    return AskSpace((view.one_trial_spots, colors, _SIZES), build)


@problem_model(skill="simulation by digits")
def simulation_digits(view: TableView) -> AskSpace:
    """How many of 10 random digits stand for a pin knocked down, so that a simulation is as likely to knock one down as the class was."""
    spots = [spot for spot in view.spots if len(spot.trials or view.table.trials) > 1]

    def build(spot: Spot, color: str | None) -> Draft | None:
        whole, part = view.quantity("set_up", spot, color), view.quantity("down", spot, color)
        n, k = view.number(whole), view.number(part)
        if n < _FEWEST or n == _DIGITS or k in (0, n) or 2 * k == n or _DIGITS * k % n:
            return None
        digits = Stated(_DIGITS, "digits")
        return Draft(
            ask=Ask(Value(Op("*", (Op("/", (part, whole)), digits))), (), _WHOLE),
            roles={"part": part, "whole": whole, "digits": digits},
            structure="part from rate",
            slips=(("K23", (_DIGITS * (n - k) // n,)), ("K01", (_DIGITS,)), *((("K24", (k,)),) if k < _DIGITS else ())),
            features=_CHANCE,
            sets=(n,),
            unit=False,
        )

    return AskSpace((spots, view.colors_or_all), build)


@problem_model(skill="more likely than not")
def more_likely_than_not(view: TableView) -> AskSpace:
    """Whether a pin is more likely to be knocked down than to be left standing, or the other way round."""
    spots = [spot for spot in view.spots if len(spot.trials or view.table.trials) > 1]

    def build(spot: Spot, color: str | None, falls: bool) -> Draft | None:
        whole, part = view.quantity("set_up", spot, color), view.quantity("down", spot, color)
        n, k = view.number(whole), view.number(part)
        # About as likely as not is no answer to go by: at least a tenth away from a half.
        if n < _FEWEST or k in (0, n) or 10 * abs(2 * k - n) < 2 * n:
            return None
        rest: Expr = Op("-", (whole, part))
        left, right = (part, rest) if falls else (rest, part)
        so = (2 * k > n) == falls
        standing = Quantity("standing", whole.scope)
        return Draft(
            ask=Ask(Truth(left, ">", right), (), _TRUTH),
            roles={
                "part": part,
                "whole": whole,
                "one": part if falls else standing,
                "other": standing if falls else part,
            },
            structure="is it so",
            slips=(("K25", ("false" if so else "true",)),),
            features=_CHANCE,
            sets=(n,),
            unit=False,
        )

    return AskSpace((spots, view.colors_or_all, (True, False)), build)


@problem_model(skill="sample and population")
def sample_and_population(view: TableView) -> AskSpace:
    """How much greater or less the mean of a random sample is than the mean of the population: both in tenths at the most."""
    groups = view.table.groups if 3 < len(view.table.groups) <= MOST_NUMBERS else ()
    spots = [Spot(None, (trial,)) for trial in view.table.trials if view.totals.complete(view.scope(Spot(None, (trial,))))]
    ways = [way for way in list_choices(groups) if way is not None and 3 <= len(way) < len(groups)]

    def build(spot: Spot, way: tuple[str, ...], color: str | None) -> Draft | None:
        drawn, everybody = listed(view, spot, way, color), listed(view, spot, groups, color)
        if drawn is None or everybody is None:
            return None
        sample, population = drawn[0], everybody[0]
        some, total = sum(map(view.number, sample)), sum(map(view.number, population))
        size, count = len(sample), len(groups)
        # Means in tenths at the most, both over 1, and not the same; the gap is neither of them.
        if 10 * some % size or 10 * total % count or some <= size or total <= count:
            return None
        gap = abs(some * count - total * size)
        if gap in (0, some * count, total * size):
            return None
        means = Stat("mean", sample), Stat("mean", population)
        return Draft(
            ask=Ask(Value(Op("-", means if some * count > total * size else means[::-1])), (), _ANY),
            roles={
                "sample": sample,
                "population": population,
                "whole": everybody[1],
                "groups": Stated(len(groups), "groups"),
                "greater": "greater" if some * count > total * size else "less",
            },
            structure="statistic",
            slips=(("K26", (some, size)), ("K27", (total, count)), ("K28", (total - some,))),
            features=frozenset({"mean_median_iqr_mad"}),
            shown_as=Demand("decimal"),
            unit=True,
        )

    return AskSpace((spots if groups else [], ways, view.colors_or_all), build)


@problem_model(skill="model against results")
def model_against_results(view: TableView) -> AskSpace:
    """How many more or fewer of a color fell than a model predicts in which each color is as likely as any other."""
    colors = view.table.colors if 2 < len(view.table.colors) <= MOST_NUMBERS else ()
    spots = [spot for spot in view.spots if len(spot.trials or view.table.trials) > 1]

    def build(spot: Spot, color: str) -> Draft | None:
        whole, part = view.quantity("down", spot), view.quantity("down", spot, color)
        n, k, kinds = view.number(whole), view.number(part), len(colors)
        predicted = n // kinds
        gap = abs(k - predicted)
        if n % kinds or gap < 2 or k == 0 or gap in (k, predicted):
            return None
        model = Op("/", (whole, Stated(kinds, "kinds")))
        return Draft(
            ask=Ask(Value(Op("-", (part, model) if k > predicted else (model, part))), (), _WHOLE),
            roles={
                "part": part,
                "whole": whole,
                "kinds": Stated(kinds, "kinds"),
                "more": "more" if k > predicted else "fewer",
            },
            structure="difference unknown",
            slips=(("K29", (predicted,)), ("K30", (n - k,))),
            features=_CHANCE,
        )

    return AskSpace((spots, colors), build)
