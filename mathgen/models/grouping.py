"""Grouping: pairs, and boxes with what is over."""

from __future__ import annotations

from itertools import combinations, pairwise

from mathgen.asks.expression import PAIR, Ask, Equation, Listing, Op, Quantity, QuotientRemainder, Stated, Test, Truth, Value, Want
from mathgen.exact.demand import Demand
from mathgen.models.put_together import of_colors
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace, joined
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_TRUTH = Demand("truth")
_BOTH = Demand("quotient_remainder")
_WHOLE = Demand("whole")
_LIST = Demand("list")
_WORTH_DIVIDING = 12
_ROWS = (2, 3, 4, 5)  # of an array, and pins in each
_SOME_ROWS = 8  # fewer have one pair beside 1 times the number at most
_MOST_LISTED = 5  # pairs of a list
_SEEN_AT_ONCE = 5  # so few pins are paired at a glance
_TESTS: tuple[Test, ...] = ("multiple", "no multiple")
_WANTS: tuple[Want, ...] = ("full", "needed", "over")
_SIZES = tuple(range(3, 10))  # one digit; pairs are another question


@problem_model(skill="odd and even")
def odd_or_even(view: TableView) -> AskSpace:
    """Whether pins knocked down can be put in pairs with none over (or with one over): one count, or two together."""
    colors = view.table.colors

    def build(parts: tuple[Quantity, ...], whole: Quantity, test: Test) -> Draft | None:
        numbers = tuple(map(view.number, parts))
        total = sum(numbers)
        # Two alike: the sum is its own double.
        if min(numbers) == 0 or len(set(numbers)) < len(numbers) or total <= _SEEN_AT_ONCE or not view.totals.complete(whole.scope):
            return None
        several, even = len(parts) > 1, int(test == "multiple")
        return Draft(
            ask=Ask(Truth(Op("+", parts) if several else whole, test, PAIR), (), _TRUTH),
            roles={"parts": parts, "whole": whole} if several else {"whole": whole},
            structure="is it so",
            slips=(*((("P01", (even, *numbers)),) if several else ()), ("P04", (even, total))),
            wanted=frozenset({"several" if several else "one", "even" if even else "odd"}),
        )

    def of_one(spot: Spot, color: str | None, test: Test) -> Draft | None:
        whole = view.quantity("down", spot, color)
        return build((whole,), whole, test)

    def of_groups(spot: Spot, color: str | None, test: Test) -> Draft | None:
        parts = tuple(view.quantity("down", Spot((group,), spot.trials), color) for group in spot.groups or view.table.groups)
        return build(parts, view.quantity("down", spot, color), test)

    twos = [Spot(two, (trial,)) for two in pairwise(view.table.groups) for trial in view.table.trials]
    return joined(
        AskSpace((view.one_trial_spots, view.colors_or_all, _TESTS), of_one),
        AskSpace((view.group_trials, tuple(combinations(colors, 2)), _TESTS), of_colors(view, build)),
        AskSpace((twos, view.colors_or_all, _TESTS), of_groups),
    )


def _in_groups(view: TableView, whole: Quantity, size: int) -> tuple[int, int, int] | None:
    """The pins, how many groups they fill, and what is over; None where nothing is, or too little is filled."""
    number = view.number(whole)
    full, over = divmod(number, size)
    # 7 r 7 or 4 groups of 4: two numbers that a pupil could not tell apart.
    return None if number < _WORTH_DIVIDING or over == 0 or full < 2 or full in (over, size) else (number, full, over)


@problem_model(skill="divide with a remainder")
def quotient_and_remainder(view: TableView) -> AskSpace:
    """How many boxes are full, and how many pins remain: both numbers are the answer."""

    def build(spot: Spot, color: str | None, size: int) -> Draft | None:
        whole = view.quantity("down", spot, color)
        found = _in_groups(view, whole, size)
        if found is None:
            return None
        _, full, over = found
        each = Stated(size, "in each group")
        return Draft(
            ask=Ask(QuotientRemainder(whole, each), (), _BOTH),
            roles={"whole": whole, "size": each},
            structure="remainder",
            slips=(("P09", (full, over)), ("P10", (full, over, size)), ("P12", (full, over, size)), ("P11", (full, over))),
            features=frozenset({"remainder", "two_step", "multiply_divide"}),
            unit=False,
        )

    return AskSpace((view.one_trial_spots, view.colors_or_all, _SIZES), build)


@problem_model(skill="what a remainder means")
def boxes_for_pins(view: TableView) -> AskSpace:
    """How many boxes are full, how many are needed for all, or how many pins are in none that is full: a remainder to be thought about."""

    def build(spot: Spot, color: str | None, size: int, want: Want) -> Draft | None:
        whole = view.quantity("down", spot, color)
        found = _in_groups(view, whole, size)
        if found is None:
            return None
        _, full, over = found
        if full + 1 in (over, size):
            return None
        each = Stated(size, "in each group")
        slips: dict[Want, tuple[tuple[str, tuple[int | str, ...]], ...]] = {
            "full": (("P06", (full,)), ("P07", (over,))),
            "needed": (("P05", (full,)), ("P07", (over,))),
            "over": (("P08", (full,)), ("P13", (over, size))),
        }
        return Draft(
            ask=Ask(QuotientRemainder(whole, each, want), (), _WHOLE),
            roles={"whole": whole, "size": each},
            structure="remainder",
            slips=slips[want],
            features=frozenset({"remainder", "two_step", "multiply_divide"}),
            unit=want == "over" or "asked",
            wanted=frozenset({want}),
        )

    return AskSpace((view.one_trial_spots, view.colors_or_all, _SIZES, _WANTS), build)


@problem_model(skill="odd and even")
def number_of_pairs(view: TableView) -> AskSpace:
    """The number that makes an even number of pins when it is added to itself: how many pairs, or how many in each of two rows."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        whole = view.quantity("down", spot, color)
        number = view.number(whole)
        if number % 2 or number <= _SEEN_AT_ONCE:
            return None
        return Draft(
            ask=Ask(QuotientRemainder(whole, PAIR, "full"), (), _WHOLE),
            roles={"whole": whole},
            structure="part unknown",
            slips=(("P25", (number,)), ("P26", (number,)), ("P27", (number,))),
            unit="asked",
        )

    return AskSpace((view.one_trial_spots, view.colors_or_all), build)


@problem_model(skill="factors and multiples")
def equal_rows(view: TableView) -> AskSpace:
    """Whether pins knocked down make equal rows with none over: whether the number is a multiple of the size of a row."""

    def build(spot: Spot, color: str | None, factor: int, none_over: bool) -> Draft | None:
        whole = view.quantity("down", spot, color)
        number = view.number(whole)
        # For each size that fits, one that does not: yes and no come as often. Two rows at least, or there is nothing to find out.
        size = factor if none_over else factor + 1
        if size not in _SIZES or number % factor or (number % size == 0) != none_over or number < _WORTH_DIVIDING or number // size < 2:
            return None
        each = Stated(size, "in each group")
        return Draft(
            ask=Ask(Truth(whole, "multiple", each), (), _TRUTH),
            roles={"whole": whole, "size": each},
            structure="is it so",
            slips=(("P14", (size, number)),),
            features=frozenset({"multiply_divide"}),
        )

    return AskSpace((view.one_trial_spots, view.colors_or_all, _SIZES, (True, False)), build)


@problem_model(skill="factor pairs")
def factor_pairs(view: TableView) -> AskSpace:
    """All factor pairs of a number of pins knocked down: every way to put them in equal rows."""

    def build(spot: Spot, color: str | None) -> Draft | None:
        whole = view.quantity("down", spot, color)
        number = view.number(whole)
        pairs = sum(number % one == 0 for one in range(1, number + 1) if one * one <= number)
        if number < _SOME_ROWS or not 2 <= pairs <= _MOST_LISTED:
            return None
        return Draft(
            ask=Ask(Listing(whole, "*"), (), _LIST),
            roles={"whole": whole},
            structure="list",
            slips=(("P17", (number,)), ("P18", (number,)), ("P19", (number,))),
            features=frozenset({"multiply_divide"}),
            unit=False,
        )

    return AskSpace((view.one_trial_spots, view.colors_or_all), build)


@problem_model(skill="array as a sum")
def array_total(view: TableView) -> AskSpace:
    """The pins knocked down, told by an array of them: rows of as many, added."""

    def build(spot: Spot, color: str | None, rows: int) -> Draft | None:
        whole = view.quantity("down", spot, color)
        number = view.number(whole)
        size = number // rows
        if number % rows or size not in _ROWS or view.is_cell(whole):
            return None
        each = Stated(size, "in each row")
        return Draft(
            ask=Ask(Value(whole), (Equation(Op("+", (each,) * rows), whole),), _WHOLE),
            roles={"whole": whole, "each": each, "rows": Stated(rows, "rows")},
            structure="whole unknown",
            slips=(("P20", (rows, size)), ("P21", (rows, size)), ("P22", (rows, size))),
            must_not_show=(whole.scope,),
        )

    return AskSpace((view.one_trial_spots, view.colors_or_all, _ROWS), build)


@problem_model(skill="array as a sum")
def is_that_the_array(view: TableView) -> AskSpace:
    """Whether a number is the total of an array; where it is not, a row is missing, or rows and pins in a row are added."""

    def build(spot: Spot, color: str | None, rows: int, right: bool) -> Draft | None:
        whole = view.quantity("down", spot, color)
        number = view.number(whole)
        size = number // rows
        if number % rows or size not in _ROWS:
            return None
        claimed = number if right else number - size if rows % 2 else rows + size
        if claimed in (rows, size) or (claimed == number) != right:
            return None
        each, claim = Stated(size, "in each row"), Stated(claimed, "claimed")
        total = Op("+", (each,) * rows)
        return Draft(
            ask=Ask(Truth(total, "=", claim), (Equation(total, whole),), _TRUTH),
            roles={"whole": whole, "each": each, "rows": Stated(rows, "rows"), "claim": claim},
            structure="is it so",
            slips=(("P23", (rows, size, claimed)), ("P24", (rows, size, claimed))),
            must_not_show=(whole.scope,),
        )

    return AskSpace((view.one_trial_spots, view.colors_or_all, _ROWS, (True, False)), build)
