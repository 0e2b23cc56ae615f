"""Ratios: one part to another, a part to the whole, and the fraction that one tells.

The order is that of the words; any equal ratio is right.
"""

from __future__ import annotations

from itertools import combinations

from mathgen.asks.expression import Ask, Expr, Op, Quantity, Ratio, Value
from mathgen.exact.demand import Demand
from mathgen.models.aimed import SUCCESS, Record, of_successes
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace, joined
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role

_ANY = Demand("ratio:any")
_RATIO = frozenset({"ratio"})
_FATE = frozenset({"fate"})  # knocked down and left standing
_COLORS = frozenset({"colors"})
_DOWN_FIRST = (True, False)
_FEWEST, _MOST = 3, 60  # in both parts together, where only the ratio is told


def _draft(
    first: Expr, second: Expr, counts: tuple[int, int], slip: tuple[str, tuple[int, int]], roles: dict[str, Role], mark: frozenset[str]
) -> Draft:
    """A ratio as it is counted: 6 to 4 stays 6:4."""
    return Draft(
        ask=Ask(Ratio(first, second), (), _ANY),
        roles=roles,
        structure="what fraction",
        slips=(slip, ("G03", counts)),
        features=_RATIO,
        over=counts[1],
        unit=False,
        wanted=mark,
    )


def _told(view: TableView, spot: Spot, colors: tuple[str, ...]) -> tuple[tuple[Quantity, ...], tuple[int, ...]]:
    parts = tuple(view.quantity("down", spot, color) for color in colors)
    return parts, tuple(map(view.number, parts))


@problem_model(skill="ratio of two parts")
def ratio_part_to_part(view: TableView) -> AskSpace:
    """Knocked down to left standing (or the other way round) of one set; or one color to another among those knocked down."""
    sets = [colors for colors in view.color_sets if len(colors) > 1]
    places = tuple((one, other) for one in range(4) for other in range(4) if one != other)

    def of_fate(spot: Spot, color: str | None, down_first: bool) -> Draft | None:
        whole, down = view.quantity("set_up", spot, color), view.quantity("down", spot, color)
        n, k = view.number(whole), view.number(down)
        rest = n - k
        # As many down as standing: the order would not matter.
        if not 0 < k < n or k == rest:
            return None
        standing = Quantity("standing", whole.scope)
        left = Op("-", (whole, down))
        roles: dict[str, Role] = {"down": down, "whole": whole, "first": down, "second": standing}
        if down_first:
            return _draft(down, left, (k, rest), ("G01", (k, n)), roles, _FATE)
        return _draft(left, down, (rest, k), ("G01", (rest, n)), roles | {"first": standing, "second": down}, _FATE)

    def of_colors(spot: Spot, colors: tuple[str, ...], place: tuple[int, int]) -> Draft | None:
        if max(place) >= len(colors):
            return None
        parts, numbers = _told(view, spot, colors)
        a, b = numbers[place[0]], numbers[place[1]]
        if min(numbers) == 0 or a == b:
            return None
        first, second = parts[place[0]], parts[place[1]]
        roles: dict[str, Role] = {"parts": parts, "whole": view.quantity("down", spot, colors), "first": first, "second": second}
        return _draft(first, second, (a, b), ("G01", (a, sum(numbers))), roles, _COLORS)

    def of_trials(record: Record, negated: bool) -> Draft | None:
        rest = record.n - record.k
        if rest == record.k:
            return None
        others = record.meant(True)[0]
        names = ("other trials", "successes") if negated else ("successes", "other trials")
        said: dict[str, Role] = {"first": names[0], "second": names[1]}
        first, second = (others, record.hits) if negated else (record.hits, others)
        counts = (rest, record.k) if negated else (record.k, rest)
        return _draft(first, second, counts, ("T13", (counts[0], record.n)), record.roles(negated) | said, SUCCESS)

    return joined(
        AskSpace((view.spots, view.colors_or_all, _DOWN_FIRST), of_fate),
        AskSpace((view.spots, sets, places), of_colors),
        of_successes(view, of_trials),
    )


@problem_model(skill="ratio of a part to the whole")
def ratio_part_to_whole(view: TableView) -> AskSpace:
    """Knocked down (or left standing) to set up, from the two parts; or one color to all the colors knocked down."""
    sets = [colors for colors in view.color_sets if len(colors) > 1]

    def of_fate(spot: Spot, color: str | None, down_first: bool) -> Draft | None:
        whole, down = view.quantity("set_up", spot, color), view.quantity("down", spot, color)
        standing = Quantity("standing", whole.scope)
        k, rest = view.number(down), view.number(standing)
        if min(k, rest) < 2 or k == rest:  # no "other 1 red pin"
            return None
        n = k + rest
        first, part = (down, k) if down_first else (standing, rest)
        roles: dict[str, Role] = {"down": down, "standing": standing, "whole": whole, "first": first}
        return _draft(first, Op("+", (down, standing)), (part, n), ("G02", (part, n)), roles, _FATE)

    def of_colors(spot: Spot, colors: tuple[str, ...], place: int) -> Draft | None:
        if place >= len(colors):
            return None
        parts, numbers = _told(view, spot, colors)
        part, total = numbers[place], sum(numbers)
        if min(numbers) == 0 or 2 * part == total:
            return None
        roles: dict[str, Role] = {"parts": parts, "whole": view.quantity("down", spot, colors), "first": parts[place]}
        return _draft(parts[place], Op("+", parts), (part, total), ("G02", (part, total)), roles, _COLORS)

    return joined(AskSpace((view.spots, view.colors_or_all, _DOWN_FIRST), of_fate), AskSpace((view.spots, sets, (0, 1, 2, 3)), of_colors))


@problem_model(skill="fraction from a ratio")
def fraction_from_ratio(view: TableView) -> AskSpace:
    """The fraction of all that one of two parts is, from the ratio of the parts: two colors knocked down, or knocked down and standing."""
    pairs = tuple(combinations(view.table.colors, 2))
    sets = view.one_trial_spots  # what was left standing is set up again

    def fraction(first: Quantity, second: Quantity, roles: dict[str, Role], mark: frozenset[str]) -> Draft | None:
        a, b = view.number(first), view.number(second)
        # A zero is no ratio to speak of; even parts have nothing to tell apart.
        if min(a, b) < 1 or a == b or not _FEWEST <= a + b <= _MOST:
            return None
        return Draft(
            ask=Ask(Value(Op("/", (first, Op("+", (first, second))))), (), Demand("any")),
            roles={**roles, "first": first, "second": second},
            structure="what fraction",
            slips=(("G04", (a, b)), ("A03", (a, a + b))),
            features=_RATIO,
            over=a + b,
            unit=False,
            wanted=mark,
        )

    def of_fate(spot: Spot, down_first: bool) -> Draft | None:
        down = view.quantity("down", spot)
        standing = Quantity("standing", down.scope)
        first, second = (down, standing) if down_first else (standing, down)
        return fraction(first, second, {"whole": view.quantity("set_up", spot)}, _FATE)

    def of_colors(spot: Spot, colors: tuple[str, ...], place: int) -> Draft | None:
        parts, _ = _told(view, spot, colors)
        return fraction(parts[place], parts[1 - place], {"whole": view.quantity("down", spot, colors)}, _COLORS)

    return joined(AskSpace((sets, _DOWN_FIRST), of_fate), AskSpace((view.spots, pairs, (0, 1)), of_colors))
