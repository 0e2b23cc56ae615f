"""Pins in pairs and in boxes, on a small table; every answer, step and slip worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import PAIR, Ask, Equation, Listing, Op, QuotientRemainder, Stated, Truth, Value
from mathgen.exact.demand import Demand
from tests.models.asked import every_draft, problem, quantity, worked
from tests.tables import TWO_GROUPS

TRUTH = Demand("truth")
OWLS, HERONS = quantity("down", "Owls", (1,)), quantity("down", "Herons", (1,))
RED, BLUE = quantity("down", "Owls", (1,), "red"), quantity("down", "Owls", (1,), "blue")
GOLD_1, GOLD_2 = quantity("down", "Owls", (1,), "gold"), quantity("down", "Herons", (1,), "gold")

ROWS = {
    # Owls, Trial 1: 3 red, 2 blue, 4 gold are 9 of 12 pins; Herons, Trial 1: 4, 1 and 3 are 8.
    "odd_or_even, pairs": (Truth(OWLS, "multiple", PAIR), "No", "x = Mod(9, 2)", ("4 + 4 + 1 = 9",), {"P04": "Yes"}),
    "odd_or_even, odd": (Truth(OWLS, "no multiple", PAIR), "Yes", "x = Mod(9, 2)", ("4 + 4 + 1 = 9",), {"P04": "No"}),
    "odd_or_even, two groups": (
        Truth(Op("+", (GOLD_1, GOLD_2)), "multiple", PAIR),
        "No",
        "x = Mod(4 + 3, 2)",
        ("4 + 3 = 7", "3 + 3 + 1 = 7"),
        {"P01": "Yes"},
    ),
    "odd_or_even, all pins of two groups": (
        Truth(Op("+", (OWLS, HERONS)), "no multiple", PAIR),
        "Yes",
        "x = Mod(9 + 8, 2)",
        ("9 + 8 = 17", "8 + 8 + 1 = 17"),
        {"P04": "No"},  # 9 is odd as well, and so are the 1 of 17 and the 7 pins left standing
    ),
}


@pytest.mark.parametrize(("goal", "answer", "relation", "steps", "slips"), ROWS.values(), ids=ROWS)
def test_a_row_worked_by_hand(goal: Truth, answer: str, relation: str, steps: tuple[str, ...], slips: dict[str, str]) -> None:
    one = problem("odd_or_even", TWO_GROUPS, 2, Ask(goal, (), TRUTH))
    assert worked(one) == (answer, relation, steps, slips)
    assert one.standards == ("2.OA.C.3",)


PINS = quantity("down", None, (1,))  # 9 + 8 = 17 pins
BOTH, WHOLE = Demand("quotient_remainder"), Demand("whole")


def each(size: int) -> Stated:
    return Stated(size, "in each group")


IN_BOXES = {
    "quotient_and_remainder": (
        QuotientRemainder(PINS, each(5)),
        "3 R 2",
        "5*x = 17 - Mod(17, 5)",
        ("3 * 5 = 15", "17 - 15 = 2"),
        {"P09": "2 R 3", "P10": "2 R 7", "P12": "4 R 3", "P11": "3 R 1"},
    ),
    "boxes_for_pins, full": (
        QuotientRemainder(PINS, each(5), "full"),
        "3",
        "5*x = 17 - Mod(17, 5)",
        ("3 * 5 = 15", "17 - 15 = 2", "15 / 5 = 3"),
        {"P06": "4", "P07": "2"},
    ),
    "boxes_for_pins, needed": (
        QuotientRemainder(PINS, each(5), "needed"),
        "4",
        "5*x = 17 - Mod(17, 5) + 5",
        ("3 * 5 = 15", "17 - 15 = 2", "3 + 1 = 4"),
        {"P05": "3", "P07": "2"},
    ),
    "boxes_for_pins, over": (
        QuotientRemainder(PINS, each(6), "over"),
        "5",
        "x = Mod(17, 6)",
        ("2 * 6 = 12", "17 - 12 = 5"),
        {"P08": "2", "P13": "1"},
    ),
}


@pytest.mark.parametrize("name", IN_BOXES)
def test_a_row_of_boxes_worked_by_hand(name: str) -> None:
    goal, *rest = IN_BOXES[name]
    one = problem(name.partition(",")[0], TWO_GROUPS, 4, Ask(goal, (), BOTH if goal.want == "both" else WHOLE))
    assert worked(one) == tuple(rest)
    assert one.standards == (("4.NBT.B.6",) if goal.want == "both" else ("4.OA.A.3",))


def test_something_is_always_over() -> None:
    """17 pins: 16 of 17 would go into pairs; groups of 3 to 9 never hold all of a prime."""
    sizes = {draft.roles["size"].number for draft in every_draft("quotient_and_remainder", TWO_GROUPS) if draft.roles["whole"] == PINS}
    assert sizes == {3, 4, 5, 6, 7, 8} - {size for size in range(3, 9) if 17 // size in (17 % size, size)}


def test_no_pin_is_paired_with_itself_in_the_next_trial() -> None:
    assert {scope.trials for draft in every_draft("odd_or_even", TWO_GROUPS) for scope in [draft.roles["whole"].scope]} == {(1,), (2,)}


def test_what_is_seen_at_once_and_doubles_are_left_out() -> None:
    """Owls, Trial 1: 3 red and 2 blue pins are 5."""
    goals = [draft.ask.goal for draft in every_draft("odd_or_even", TWO_GROUPS)]
    assert not any(goal.left == Op("+", (RED, BLUE)) for goal in goals)


EQUAL_ROWS = {
    # All 17 pins of Trial 1 are a prime; in Trial 2, the Owls knock down 1 + 3 + 2 = 6, the Herons 2 + 2 + 5 = 9: 15 pins.
    "fits": (5, "Yes", "x = Mod(15, 5)", ("3 * 5 = 15",)),
    "one over and more": (6, "No", "x = Mod(15, 6)", ("2 * 6 = 12", "15 - 12 = 3")),
}


@pytest.mark.parametrize(("size", "answer", "relation", "steps"), EQUAL_ROWS.values(), ids=EQUAL_ROWS)
def test_a_row_of_equal_rows_worked_by_hand(size: int, answer: str, relation: str, steps: tuple[str, ...]) -> None:
    """4.OA.B.4: whether a number from 1 to 100 is a multiple of a one-digit number."""
    pins = quantity("down", None, (2,))
    one = problem("equal_rows", TWO_GROUPS, 4, Ask(Truth(pins, "multiple", each(size)), (), TRUTH))
    assert worked(one)[:3] == (answer, relation, steps)
    assert one.standards == ("4.OA.B.4",)


def test_for_each_size_that_fits_one_that_does_not() -> None:
    """15 pins make rows of 3 and 5, and none of 4 and 6; 17 pins are a prime."""
    pins = quantity("down", None, (2,))
    goals = [draft.ask.goal for draft in every_draft("equal_rows", TWO_GROUPS)]
    assert sorted(goal.right.number for goal in goals if goal.left == pins) == [3, 4, 5, 6]


def test_a_row_of_factor_pairs_worked_by_hand() -> None:
    """15 pins of the class in Trial 2; 17 in Trial 1 is a prime, and makes no list."""
    one = problem("factor_pairs", TWO_GROUPS, 4, Ask(Listing(quantity("down", None, (2,)), "*"), (), Demand("list")))
    assert worked(one) == (
        "1 × 15, 3 × 5",
        "2*x = divisor_count(15) + Mod(divisor_count(15), 2)",
        ("1 * 15 = 15", "3 * 5 = 15"),
        {"P17": "3 × 5", "P18": "1 × 15", "P19": "1 + 14, 2 + 13"},
    )
    assert one.standards == ("4.OA.B.4",)
    assert PINS not in [draft.roles["whole"] for draft in every_draft("factor_pairs", TWO_GROUPS)]


def test_a_row_of_an_array_worked_by_hand() -> None:
    """15 pins of the class in Trial 2: 3 rows of 5."""
    class_two = quantity("down", None, (2,))
    ask = Ask(Value(class_two), (Equation(Op("+", (Stated(5, "in each row"),) * 3), class_two),), WHOLE)
    one = problem("array_total", TWO_GROUPS, 2, ask)
    assert worked(one) == ("15", "5 + 5 + 5 = x", ("5 + 5 + 5 = 15",), {"P20": "8", "P21": "10", "P22": "20"})
    assert one.standards == ("2.OA.C.4",)


def test_an_array_has_at_most_five_rows_and_columns() -> None:
    """17 pins are a prime; 15 stand in 3 rows of 5 or 5 of 3."""
    found = [(draft.roles["rows"].number, draft.roles["each"].number) for draft in every_draft("array_total", TWO_GROUPS)]
    assert {(3, 5), (5, 3)} <= set(found)
    assert all(2 <= number <= 5 for pair in found for number in pair)


def test_a_number_that_is_doubled_worked_by_hand() -> None:
    """2.OA.C.3: 8 pins are 4 + 4."""
    one = problem("number_of_pairs", TWO_GROUPS, 2, Ask(QuotientRemainder(HERONS, PAIR, "full"), (), Demand("whole")))
    assert worked(one) == ("4", "2*x = 8 - Mod(8, 2)", ("4 + 4 = 8",), {"P25": "8", "P26": "5", "P27": "6"})
    assert one.standards == ("2.OA.C.3",)
    assert OWLS not in [draft.roles["whole"] for draft in every_draft("number_of_pairs", TWO_GROUPS)]  # 9 is odd


@pytest.mark.parametrize(("claimed", "answer", "slips"), [(15, "Yes", {"P23": "No"}), (10, "No", {"P24": "Yes"})])
def test_the_total_of_an_array_judged_by_hand(claimed: int, answer: str, slips: dict[str, str]) -> None:
    """15 pins of the class in Trial 2: 3 rows of 5; 10 are 2 rows."""
    total = Op("+", (Stated(5, "in each row"),) * 3)
    ask = Ask(Truth(total, "=", Stated(claimed, "claimed")), (Equation(total, quantity("down", None, (2,))),), TRUTH)
    one = problem("is_that_the_array", TWO_GROUPS, 2, ask)
    assert worked(one) == (answer, f"x = 5 + 5 + 5 - {claimed}", ("5 + 5 + 5 = 15",), slips)
    assert one.standards == ("2.OA.C.4",)
