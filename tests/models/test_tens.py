"""Tens and ones in grade 1, on a class whose totals are tens: every story that takes away serves tens from tens."""

from __future__ import annotations

from mathgen.proof.judge import proved
from tests.models.asked import every_problem
from tests.tables import table

TENS = table({"red": 20, "blue": 30}, {("Owls", 1): (13, 17), ("Owls", 2): (8, 12), ("Herons", 1): (19, 21), ("Herons", 2): (4, 6)})
STORIES = ("how_many_more", "compare_smaller_unknown", "take_apart", "take_from_result", "add_to_change", "add_to_start")


def test_every_story_that_takes_away_may_take_tens_from_tens():
    """1.NBT.C.6: multiples of 10 from multiples of 10, 10 to 90."""
    served = {model: [one for one in every_problem(model, TENS, 1, draws=3) if one.standards == ("1.NBT.C.6",)] for model in STORIES}
    assert all(served.values()), {model: len(found) for model, found in served.items()}
    assert all(proved(one) for found in served.values() for one in found)
    numbers = [int(number) for found in served.values() for one in found for number in one.steps[0].text.replace("=", "-").split(" - ")]
    assert all(number % 10 == 0 and 10 <= number <= 90 for number in numbers)


def test_numbers_past_20_serve_no_story_standard():
    """1.OA.A.1 stops at 20."""
    for model in (*STORIES, "put_together_total", "compare_bigger_unknown", "add_to_result"):
        for one in every_problem(model, TENS, 1):
            largest = max(int(number) for step in one.steps for number in step.text.split() if number.isdigit())
            assert (largest > 20) == (set(one.standards) <= {"1.NBT.C.4", "1.NBT.C.6"}), one.text
