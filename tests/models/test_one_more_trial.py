"""One more trial: the model by hand on a small table, and what no draft of it may be."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Op, Stated, Value
from mathgen.exact.demand import Demand
from tests.models.asked import every_draft, problem, quantity, worked
from tests.tables import table

THREE = table({"red": 12}, {("Owls", 1): (8,), ("Owls", 2): (10,), ("Owls", 3): (9,)})
PARTS = tuple(quantity("down", "Owls", (n,), "red") for n in (1, 2, 3))


def test_the_mean_with_one_more_trial_by_hand() -> None:
    ask = Ask(Value(Op("/", (Op("+", (*PARTS, Stated(5, "in one more trial"))), Stated(4, "trials")))), (), Demand("any"))
    one = problem("mean_after_one_more", THREE, 6, ask)
    assert worked(one) == (
        "8",
        "4*x = 8 + 10 + 9 + 5",
        ("8 + 10 + 9 + 5 = 32", "32 / 4 = 8"),
        {"I40": "10.666...", "I41": "7", "I42": "9"},
    )


def test_one_more_trial_brings_no_more_than_was_set_up_for_the_others() -> None:
    numbers = [draft.roles["next"].number for draft in every_draft("mean_after_one_more", THREE)]  # type: ignore[union-attr]
    assert numbers
    assert max(numbers) <= 12
