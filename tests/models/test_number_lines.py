"""Fractions on a number line and whole numbers as fractions, on a small table; every value, step and slip worked by hand."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Op, Stated, Value
from mathgen.exact.demand import Demand
from tests.models.asked import every_draft, problem, quantity, worked
from tests.tables import TWO_GROUPS

WHOLE = Demand("whole")


def test_a_row_of_a_number_line_worked_by_hand() -> None:
    """The Owls knocked down 1 of 4 red pins in Trial 2: 3 of 4 parts are left to 1."""
    down, set_up = quantity("down", "Owls", (2,), "red"), quantity("set_up", "Owls", (2,), "red")
    one = problem("parts_from_one", TWO_GROUPS, 3, Ask(Value(Op("-", (set_up, down))), (), WHOLE))
    assert worked(one) == ("3", "1 + x = 4", ("4 - 1 = 3",), {"B40": "1", "B41": "4", "B42": "2"})
    assert one.answer.display == "3 parts"
    assert one.standards == ("3.NF.A.2b",)


def test_halves_and_a_single_part_are_left_out() -> None:
    """From a half it is as far to 0 as to 1; "parts" on the answer line would be wrong for 1."""
    left = list(every_draft("parts_from_one", TWO_GROUPS))
    assert left
    goals = [draft.ask.goal.expr for draft in left]
    assert quantity("down", "Owls", (1,), "red") not in [goal.args[1] for goal in goals]  # 3 of 4
    assert quantity("down", "Herons", (2,), "red") not in [goal.args[1] for goal in goals]  # 2 of 4


def test_a_row_of_sets_worked_by_hand() -> None:
    """A set of 4 red pins for each of 2 trials: 2 is 8/4."""
    ask = Ask(Value(Op("*", (Stated(2, "trials"), quantity("set_up", "Owls", (1,), "red")))), (), WHOLE)
    one = problem("sets_as_a_fraction", TWO_GROUPS, 3, ask)
    assert worked(one) == ("8", "x = 2*4", ("2 * 4 = 8",), {"B43": "2", "B44": "6", "B45": "4"})
    assert one.standards == ("3.NF.A.3c",)


def test_a_fraction_told_by_its_distance_from_1_worked_by_hand() -> None:
    """The Owls left 3 of 4 red pins standing in Trial 2: 3 of 4 parts lie between the fraction knocked down and 1."""
    set_up, standing = quantity("set_up", "Owls", (2,), "red"), quantity("standing", "Owls", (2,), "red")
    ask = Ask(Value(Op("/", (Op("-", (set_up, standing)), set_up))), (), Demand("any"))
    one = problem("fraction_from_one", TWO_GROUPS, 3, ask)
    assert worked(one) == ("1/4", "4*x = 4 - 3", ("4 - 3 = 1", "1 / 4 = 1/4"), {"B46": "3/4", "B47": "2/4", "A05": "1"})
    assert one.standards == ("3.NF.A.2b",)


def test_a_fraction_that_is_a_whole_number_worked_by_hand() -> None:
    """4 red pins for each of 2 trials: 8/4 is 2."""
    total = quantity("set_up", "Owls", None, "red")
    ask = Ask(Value(Op("/", (total, Op("/", (total, Stated(2, "trials")))))), (), WHOLE)
    one = problem("fraction_as_sets", TWO_GROUPS, 3, ask)
    assert worked(one) == ("2", "8/2*x = 8", ("8 / 4 = 2",), {"B48": "8", "B49": "4"})
    assert one.standards == ("3.NF.A.3c",)
