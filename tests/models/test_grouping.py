"""Pins in pairs, on a small table; every answer, step and slip worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import PAIR, Ask, Op, Truth
from mathgen.exact.demand import Demand
from mathgen.proof.record import proved
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
    assert proved(one)
    assert one.standards == ("2.OA.C.3",)


def test_no_pin_is_paired_with_itself_in_the_next_trial() -> None:
    assert {scope.trials for draft in every_draft("odd_or_even", TWO_GROUPS) for scope in [draft.roles["whole"].scope]} == {(1,), (2,)}


def test_what_is_seen_at_once_and_doubles_are_left_out() -> None:
    """Owls, Trial 1: 3 red and 2 blue pins are 5."""
    goals = [draft.ask.goal for draft in every_draft("odd_or_even", TWO_GROUPS)]
    assert not any(goal.left == Op("+", (RED, BLUE)) for goal in goals)
