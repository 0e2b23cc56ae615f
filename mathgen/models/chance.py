"""Chance: a pin picked at random, probabilities estimated from results, which is more likely, and counted outcomes."""

from __future__ import annotations

from typing import Literal

from mathgen.asks.expression import Ask, Choice, Expr, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.aimed import SUCCESS, Record, of_successes, slips
from mathgen.models.registry import problem_model
from mathgen.models.side_by_side import Pair, side_by_side
from mathgen.models.space import AskSpace, joined
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role
from mathgen.trials.scope import Measure

_ANY = Demand("any")
_WHOLE = Demand("whole")
_NAME = Demand("name")
_CHANCE = frozenset({"probability"})
_IS_OR_NOT = (False, True)
_FEW_COLORS = 4  # in one list
_FEWEST = 5  # results that say something about chance


def _chance(
    top: Expr, bottom: Expr, numbers: tuple[int, int], slips: tuple[tuple[str, tuple[int | str, ...]], ...], roles: dict[str, Role]
) -> Draft:
    """A probability as a part over a whole, as it is counted."""
    return Draft(
        ask=Ask(Value(Op("/", (top, bottom))), (), _ANY),
        roles=roles,
        structure="what fraction",
        slips=slips,
        features=_CHANCE,
        sets=(numbers[1],),
        over=numbers[1],
        unit=False,
    )


def _counted_slips(
    k: int, n: int, rest: int, negated: bool, even: Literal["K13", "K41"] = "K13"
) -> tuple[tuple[str, tuple[int | str, ...]], ...]:
    """``k`` of ``n`` are meant. Overlooking "not", odds for chance, ``even`` chances."""
    return (*((("K09", (rest, n)),) if negated else ()), ("K03", (k, n)), (even, ()))


@problem_model(skill="probability of a pick")
def picked_color(view: TableView) -> AskSpace:
    """One of the pins set up, or of those knocked down, is picked at random: the probability that it is (or is not) of a color."""
    table = view.table
    spots = tuple(spot for spot in view.spots if spot.trials is not None and len(spot.trials) == 1)
    colors = table.colors if 2 <= len(table.colors) <= _FEW_COLORS else ()
    measures: tuple[Measure, ...] = ("set_up", "down")

    def build(spot: Spot, measure: Measure, color: str, negated: bool) -> Draft | None:
        parts = tuple(view.quantity(measure, spot, one) for one in colors)
        counts = tuple(map(view.number, parts))
        place = colors.index(color)
        n = sum(counts)
        k = n - counts[place] if negated else counts[place]
        # The same set stands again in each trial: of pins set up, one group in one trial is enough.
        if measure == "set_up" and (spot.groups is None or spot.trials != table.trials[:1]):
            return None
        if 0 in counts or n < _FEWEST or 2 * k == n or len(colors) * k == n:
            return None
        rest = tuple(one for one in parts if one is not parts[place])
        happened: tuple[tuple[str, tuple[int, ...]], ...] = ()
        if measure == "set_up":
            downs = [view.number(view.quantity("down", spot, one)) for one in colors]
            fell = sum(downs) - downs[place] if negated else downs[place]
            happened = (("K45", (fell, k)), ("K44", (fell, sum(downs))))
        top: Expr = parts[place] if not negated else rest[0] if len(rest) == 1 else Op("+", rest)
        return _chance(
            top,
            Op("+", parts),
            (k, n),
            (*happened, *_counted_slips(k, n, n - k, negated), ("K02", (len(colors) - 1 if negated else 1, len(colors)))),
            {
                "parts": parts,
                "whole": view.quantity(measure, spot),
                "part": parts[place],
                "neg": "not " if negated else "",
                "in_headings": "yes" if measure == "set_up" else "",
            },
        )

    return AskSpace((spots, measures, colors, _IS_OR_NOT), build)


@problem_model(skill="picks expected")
def times_picked(view: TableView) -> AskSpace:
    """How many of so many picks, each put back, should be of a color: the model that each pin is equally likely, used."""
    table = view.table
    colors = table.colors if 2 <= len(table.colors) <= _FEW_COLORS else ()

    def build(spot: Spot, color: str, number: int) -> Draft | None:
        parts = tuple(view.quantity("down", spot, one) for one in colors)
        counts = tuple(map(view.number, parts))
        place = colors.index(color)
        k, n = counts[place], sum(counts)
        # Even chances: a pupil who counts the kinds would be right.
        if 0 in counts or n < _FEWEST or number * k % n or number <= n or len(colors) * k == n or 2 * k == n:
            return None
        picks = Stated(number, "picks")
        return Draft(
            ask=Ask(Value(Op("*", (Op("/", (parts[place], Op("+", parts))), picks))), (), _WHOLE),
            roles={"parts": parts, "whole": view.quantity("down", spot), "part": parts[place], "picks": picks},
            structure="part from rate",
            slips=(("K33", (number, len(colors))), ("K34", (number, k, n)), ("K35", (k,))),
            features=_CHANCE,
            sets=(n,),
            unit="asked",
        )

    return AskSpace((view.group_trials, colors, (20, 30, 40, 50, 60, 80, 100)), build)


@problem_model(skill="probability from results")
def estimated_probability(view: TableView) -> AskSpace:
    """The relative frequency over several trials as an estimate: the probability that a pin will be knocked down, or left standing."""
    spots = [spot for spot in view.spots if len(spot.trials or view.table.trials) > 1]

    def build(spot: Spot, color: str | None, negated: bool) -> Draft | None:
        whole, down = view.quantity("set_up", spot, color), view.quantity("down", spot, color)
        n, k = view.number(whole), view.number(down)
        if n < _FEWEST or k in (0, n) or 2 * k == n:
            return None
        meant = n - k if negated else k
        return _chance(
            Op("-", (whole, down)) if negated else down,
            whole,
            (meant, n),
            ((("K09" if not negated else "K14"), (n - meant, n)), ("K03", (meant, n)), ("K41", ())),
            {"part": down, "whole": whole, "event": Quantity("standing", whole.scope) if negated else down},
        )

    def of_trials(record: Record, negated: bool) -> Draft | None:
        part, k = record.meant(negated)
        # Whose next trial? Of one group, or of the class.
        if record.n < _FEWEST or 2 * k == record.n or len(record.spot.groups or ("class",)) > 1:
            return None
        roles, mistakes = record.roles(negated), slips(record, negated)
        return _chance(part, record.tries, (k, record.n), (*mistakes[:4], ("K13", ())), roles)._replace(wanted=SUCCESS)

    return joined(AskSpace((spots, view.colors_or_all, _IS_OR_NOT), build), of_successes(view, of_trials))


@problem_model(skill="probability model from results")
def color_of_the_next(view: TableView) -> AskSpace:
    """The colors of the pins knocked down so far as a model: the probability that the next one is (or is not) of a color."""
    spots = [spot for spot in view.spots if len(spot.trials or view.table.trials) > 1]
    colors = view.table.colors if len(view.table.colors) > 1 else ()

    def build(spot: Spot, color: str, negated: bool) -> Draft | None:
        whole, part = view.quantity("down", spot), view.quantity("down", spot, color)
        n, own = view.number(whole), view.number(part)
        k = n - own if negated else own
        set_up = view.count("set_up", spot, color)
        if n < _FEWEST or own < 2 or own == n or 2 * k == n:
            return None
        return _chance(
            Op("-", (whole, part)) if negated else part,
            whole,
            (k, n),
            (
                *_counted_slips(k, n, n - k, negated, "K41"),
                ("K42", (len(colors) - 1 if negated else 1, len(colors))),
                *(() if negated else (("A19", (own, set_up)),)),
            ),
            {"part": part, "whole": whole, "neg": "not " if negated else ""},
        )

    return AskSpace((spots, colors, _IS_OR_NOT), build)


@problem_model(skill="likelihoods compared")
def more_likely(view: TableView) -> AskSpace:
    """Which of two groups, or of two colors, is more (or less) likely, going by the part of each set that was knocked down."""

    def build(pair: Pair, most: bool) -> Draft | None:
        if pair.kind == "trials":
            return None  # a trial is over: nothing in it is likely
        parts = pair.one, pair.other
        wholes = Quantity("set_up", pair.one.scope), Quantity("set_up", pair.other.scope)
        (k, k2), (n, n2) = map(view.number, parts), map(view.number, wholes)
        if k in (0, n) or k2 in (0, n2) or k * n2 == k2 * n or min(n, n2) < _FEWEST or 10 * abs(k * n2 - k2 * n) < n * n2:
            return None
        first, second = str(pair.first), str(pair.second)
        # Of sets of one size, the counts would do. Of two sizes, the count or the gap has to point the wrong way.
        right = k * n2 > k2 * n
        if n == n2 or ((k > k2) == right and (n - k < n2 - k2) == right):
            return None
        sign = 1 if most else -1
        return Draft(
            ask=Ask(Choice((first, second), (Op("/", (parts[0], wholes[0])), Op("/", (parts[1], wholes[1]))), most), (), _NAME),
            roles={
                "first": parts[0],
                "second": parts[1],
                "parts": parts,
                "whole": wholes[0],
                "whole2": wholes[1],
                "likely": "more likely" if most else "less likely",
            },
            structure="what fraction",
            slips=(
                ("K04", (first, second, sign * k, sign * k2)),
                ("K05", (first, second, sign * (n - k), sign * (n2 - k2))),
                ("K15", (second if right == most else first,)),
            ),
            features=frozenset({"probability", "unequal_sets"}),
            sets=(n, n2),
            unit=False,
            wanted=frozenset({pair.kind}),
        )

    return side_by_side(view, build, _IS_OR_NOT)


@problem_model(skill="outcomes counted")
def ordered_pairs(view: TableView) -> AskSpace:
    """How many outcomes two picks have: of two kinds, groups or trials in a row, or of two of these."""
    counts = {"kinds": len(view.table.colors), "groups": len(view.table.groups), "trials": len(view.table.trials)}

    def build(first: str, second: str) -> Draft | None:
        one, other = counts[first], counts[second]
        # As many of both would make two lists alike; a tree of more would not be drawn.
        if not (2 < one <= 12 and 2 < other <= 6) or (first != second and one == other):
            return None
        factors = Stated(one, first), Stated(other, second)
        return Draft(
            ask=Ask(Value(Op("*", factors)), (), _WHOLE),
            roles={"one": factors[0], "other": factors[1], "first": first, "second": second},
            structure="times",
            slips=(("K16", (one, other)), *((("K17", (one,)), ("K18", (one,))) if first == second else ())),
            features=_CHANCE,
            unit="asked",
            wanted=frozenset({"same" if first == second else "two"}),
        )

    two = AskSpace(((("groups", "kinds"), ("groups", "trials"), ("trials", "kinds")),), lambda pair: build(*pair))
    return joined(two, AskSpace((("kinds", "groups", "trials"),), lambda one: build(one, one)))


@problem_model(skill="outcomes without putting back")
def pairs_not_put_back(view: TableView) -> AskSpace:
    """How many ordered pairs two draws have where the first card is not put back: of kinds, or of groups."""
    counts = {"kinds": len(view.table.colors), "groups": len(view.table.groups)}

    def build(sort: str) -> Draft | None:
        count = counts[sort]
        if not 2 < count <= 12:
            return None
        cards = Stated(count, sort)
        return Draft(
            ask=Ask(Value(Op("*", (cards, Op("-", (cards, Stated(1, "whole")))))), (), _WHOLE),
            roles={"cards": cards, "sort": sort},
            structure="times",
            slips=(("K31", (count,)), ("K16", (count, count - 1)), *((("K32", (count,)),) if count > 3 else ())),
            features=_CHANCE,
            unit="asked",
        )

    return AskSpace((("kinds", "groups"),), build)
