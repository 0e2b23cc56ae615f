"""Comparing: how many more or fewer, and how many times as many. Groups, trials and colors take turns as what is compared."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, NamedTuple

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.off_by_one import off_by_one
from mathgen.models.registry import problem_model
from mathgen.models.side_by_side import Pair, side_by_side
from mathgen.models.space import AskSpace, joined
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_WHOLE = Demand("whole")
_MORE_OR_FEWER = ("more", "fewer")
_AT_A_GLANCE = 3  # so few pins are compared without counting, and so are neighbors such as 9 and 10


class Compared(NamedTuple):
    """Two counts of pins knocked down that differ: the quantities in table order, and the bigger and the smaller."""

    pair: tuple[Quantity, Quantity]
    bigger: Quantity
    smaller: Quantity
    most: int
    least: int


def _at_a_glance(compared: Compared) -> bool:
    """Whether the two counts are so small or so near that nothing is left to work out."""
    return compared.most <= _AT_A_GLANCE or compared.most - compared.least == 1


def _compared(view: TableView, two: tuple[Quantity, Quantity]) -> Compared | None:
    """The two quantities, or None where they tie or one is 0."""
    a, b = map(view.number, two)
    if a == b or min(a, b) == 0:
        return None
    bigger, smaller = two if a > b else two[::-1]
    return Compared(two, bigger, smaller, max(a, b), min(a, b))


def _every_comparison(view: TableView, build: Callable[..., Draft | None], *more: Sequence[Any]) -> AskSpace:
    """Drafts of every two counts that can be compared, over any further axes."""

    def compared(pair: Pair, *rest: Any) -> Draft | None:
        found = _compared(view, (pair.one, pair.other))
        return None if found is None else build(found, *rest)

    return side_by_side(view, compared, *more)


@problem_model(skill="compare, difference unknown")
def how_many_more(view: TableView) -> AskSpace:
    """How many more (or fewer) pins: two groups, two trials or two colors side by side."""

    def build(compared: Compared, word: str) -> Draft | None:
        pair, bigger, smaller, most, least = compared
        # 8 and 4: the answer would stand in the words, and "I took the smaller number" would be right.
        if most == 2 * least or _at_a_glance(compared):
            return None
        left = tuple(view.number(Quantity("standing", one.scope)) for one in (bigger, smaller))
        # Of sets of one size, as many more are down as are fewer standing; and what is the smaller number is taken for that.
        uneven = left[0] + most != left[1] + least and abs(left[0] - left[1]) != least
        return Draft(
            ask=Ask(Value(Op("-", (bigger, smaller))), (), _WHOLE),
            roles={"pair": pair, "asked": (bigger, smaller) if word == "more" else (smaller, bigger), "word": word},
            structure="difference unknown",
            slips=(
                ("H01", (most, least)),
                ("H02", (most, least)),
                ("H10", (most, least)),
                *off_by_one(most - least, most - least + 1),
                *((("H05", left),) if uneven else ()),
            ),
            fewer=word == "fewer",
        )

    return _every_comparison(view, build, _MORE_OR_FEWER)


@problem_model(skill="compare, smaller unknown")
def compare_smaller_unknown(view: TableView) -> AskSpace:
    """The smaller count, from the bigger one and how many more or fewer. "More" points to the wrong operation."""

    def build(compared: Compared, word: str) -> Draft | None:
        both, bigger, smaller, most, least = compared
        if view.is_cell(smaller) or most == 2 * least or _at_a_glance(compared):
            return None
        difference = Stated(most - least, "more than")
        return Draft(
            ask=Ask(Value(smaller), (Equation(bigger, Op("+", (smaller, difference))),), _WHOLE),
            roles={
                "bigger": bigger,
                "smaller": smaller,
                "both": both,
                "pair": (bigger, smaller) if word == "more" else (smaller, bigger),
                "difference": difference,
                "word": word,
            },
            structure="compared unknown",
            slips=(("H03", (most, most - least)), ("H10", (most, most - least)), *off_by_one(most - least, least + 1)),
            clash=word == "more",
            fewer=word == "fewer",
            must_not_show=(smaller.scope,),
        )

    return _every_comparison(view, build, _MORE_OR_FEWER)


@problem_model(skill="compare, bigger unknown")
def compare_bigger_unknown(view: TableView) -> AskSpace:
    """The bigger count, from the smaller one and how many more or fewer. "Fewer" points to the wrong operation."""

    def build(compared: Compared, word: str) -> Draft | None:
        both, bigger, smaller, most, least = compared
        # A double: the difference is the number that the words give, and taking away would leave nothing.
        if view.is_cell(bigger) or most == 2 * least or _at_a_glance(compared):
            return None
        difference = Stated(most - least, "more than")
        return Draft(
            ask=Ask(Value(bigger), (Equation(bigger, Op("+", (smaller, difference))),), _WHOLE),
            roles={
                "bigger": bigger,
                "smaller": smaller,
                "both": both,
                "pair": (bigger, smaller) if word == "more" else (smaller, bigger),
                "difference": difference,
                "word": word,
            },
            structure="compared unknown",
            slips=(
                # "How many more" has meant taking away so often that it is done here, too.
                ("H03", (max(least, most - least), -min(least, most - least))),
                ("H11", (least, most - least)),
                *off_by_one(min(least, most - least), most - 1),
            ),
            clash=word == "fewer",
            fewer=word == "fewer",
            must_not_show=(bigger.scope,),
        )

    return _every_comparison(view, build, _MORE_OR_FEWER)


@problem_model(skill="times as many")
def times_as_many(view: TableView) -> AskSpace:
    """The bigger count, from the smaller one and how many times as many; or the pins of all colors, from those of one."""

    def build(compared: Compared) -> Draft | None:
        both, bigger, smaller, most, least = compared
        # 2 and 2 times as many: adding 2 would be right as well.
        if view.is_cell(bigger) or most % least or (most, least) == (4, 2):
            return None
        times = Stated(most // least, "times")
        return Draft(
            ask=Ask(Value(bigger), (Equation(bigger, Op("*", (times, smaller))),), _WHOLE),
            roles={"bigger": bigger, "smaller": smaller, "both": both, "pair": (bigger, smaller), "times": times},
            structure="times",
            slips=(("G08", (least, times.number)), ("G10", (least, times.number)), ("G09", (least, times.number))),
            features=frozenset({"times_as_many"}),
            must_not_show=(bigger.scope,),
        )

    def of_all(spot: Spot, color: str) -> Draft | None:
        compared = _compared(view, (view.quantity("down", spot, color), view.quantity("down", spot)))
        return None if compared is None else build(compared)

    return joined(_every_comparison(view, build), AskSpace((view.spots, view.table.colors), of_all))


@problem_model(skill="times as many")
def times_smaller_unknown(view: TableView) -> AskSpace:
    """The smaller count, from the bigger one and how many times as many. "Times" points to the wrong operation."""

    def build(compared: Compared) -> Draft | None:
        both, bigger, smaller, most, least = compared
        # 9 and 3 times as many: the answer would stand in the words. 4 and 2 times as many: taking away 2 would be right as well.
        if view.is_cell(smaller) or most % least or least in (1, most // least):
            return None
        times = Stated(most // least, "times")
        return Draft(
            ask=Ask(Value(smaller), (Equation(bigger, Op("*", (times, smaller))),), _WHOLE),
            roles={"bigger": bigger, "smaller": smaller, "both": both, "pair": (bigger, smaller), "times": times},
            structure="times",
            slips=(("G14", (most, times.number)), ("G15", (most, times.number)), ("M05", (least, times.number))),
            features=frozenset({"times_as_many"}),
            clash=True,
            must_not_show=(smaller.scope,),
        )

    return _every_comparison(view, build)


@problem_model(skill="times as many")
def how_many_times(view: TableView) -> AskSpace:
    """How many times as many pins, where one count is a whole number of times the other."""

    def build(compared: Compared) -> Draft | None:
        pair, bigger, smaller, most, least = compared
        # 9 and 3: the answer would stand in the words. 6 and 1: the same.
        if most % least or least in (1, most // least):
            return None
        return Draft(
            ask=Ask(Value(Op("/", (bigger, smaller))), (), _WHOLE),
            roles={"pair": pair, "asked": (bigger, smaller)},
            structure="times",
            slips=(("G11", (most, least)), ("G12", (most, least))),
            features=frozenset({"times_as_many"}),
            unit=False,
        )

    return _every_comparison(view, build)
