"""Place value: which of two totals is greater, read off their digits; and counting on from a total."""

from __future__ import annotations

from typing import Literal

from mathgen.asks.expression import Ask, Choice, Op, Stated, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.side_by_side import Pair, side_by_side
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_NAME = Demand("name")
_TWO_DIGITS = 10


@problem_model(skill="compare totals")
def greater_total(view: TableView) -> AskSpace:
    """Which of two groups, trials or colors had more (or fewer) pins knocked down: two totals with as many digits."""

    def build(pair: Pair, word: str) -> Draft | None:
        a, b = view.number(pair.one), view.number(pair.other)
        # With more digits a number is greater at a glance.
        if a == b or min(a, b) < _TWO_DIGITS or len(str(a)) != len(str(b)):
            return None
        first, second = str(pair.first), str(pair.second)
        more, fewer = (first, second) if a > b else (second, first)
        return Draft(
            ask=Ask(Choice((first, second), (pair.one, pair.other), word == "more"), (), _NAME),
            roles={"pair": (pair.one, pair.other), "first": pair.one, "last": pair.other, "word": word},
            structure="which is greater",
            slips=(("H21", (first, second, a, b, word)), ("H22", (fewer if word == "more" else more,))),
            unit=False,
            fewer=word == "fewer",
            wanted=frozenset({pair.kind}),
        )

    return side_by_side(view, build, ("more", "fewer"))


@problem_model(skill="compare totals")
def comparison_true(view: TableView) -> AskSpace:
    """Whether 27 > 31, or 27 < 31, of two totals with as many digits."""

    def build(pair: Pair, test: Literal[">", "<"]) -> Draft | None:
        a, b = view.number(pair.one), view.number(pair.other)
        if a == b or min(a, b) < _TWO_DIGITS or len(str(a)) != len(str(b)):
            return None
        return Draft(
            ask=Ask(Truth(pair.one, test, pair.other), (), Demand("truth")),
            roles={"pair": (pair.one, pair.other), "first": pair.one, "last": pair.other, "test": test},
            structure="is it so",
            slips=(
                ("H21", ("true", "false", a, b, "more" if test == ">" else "fewer")),
                ("H46", ("false" if (a > b) == (test == ">") else "true",)),
            ),
        )

    return side_by_side(view, build, (">", "<"))


_ONE = Stated(1, "whole")
_MOST_COUNTED = 118  # two more are 120
_BEYOND_TEN = 11


@problem_model(skill="count on")
def next_number(view: TableView) -> AskSpace:
    """The number after the next one: counting on by ones from the pins knocked down."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        whole = view.quantity("down", spot, color)
        number = view.number(whole)
        # Within one ten there is little to find out: the count goes on into the next ten, or past 100.
        if not _BEYOND_TEN <= number <= _MOST_COUNTED or (number % 10 < 8 and number < 99) or view.is_cell(whole):
            return None
        return Draft(
            ask=Ask(Value(Op("+", (whole, _ONE, _ONE))), (), Demand("whole")),
            roles={"whole": whole, "next": Stated(number + 1, "counted next")},
            structure="whole unknown",
            slips=(("H43", (number,)), ("H44", (number,)), ("H45", (number,))),
            unit=False,
        )

    return AskSpace((view.spots, view.colors_or_all), build)


@problem_model(skill="count back")
def number_before(view: TableView) -> AskSpace:
    """The number that is said right before the last one, where the pins knocked down are counted one by one: 39 before 40."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        whole = view.quantity("down", spot, color)
        number = view.number(whole)
        # Within one ten the ones alone tell: the count goes back to a ten or over it, or is a little more than 100.
        if not _BEYOND_TEN <= number <= _MOST_COUNTED + 2 or (number % 10 > 1 and not 100 < number <= 110) or view.is_cell(whole):
            return None
        return Draft(
            ask=Ask(Value(Op("-", (whole, _ONE))), (), Demand("whole")),
            roles={"whole": whole},
            structure="whole unknown",
            slips=(("H60", (number,)), ("H61", (number,)), ("H62", (number,))),
            unit=False,
        )

    return AskSpace((view.spots, view.colors_or_all), build)
