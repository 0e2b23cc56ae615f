"""Which of two totals is greater, on a table of large racks."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Choice, Op, Stated, Truth, Value
from mathgen.bank.desk import Desk
from mathgen.exact.demand import Demand
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.wording.frames import frames
from tests.models.asked import every_draft, every_problem, problem, quantity, said, worked
from tests.tables import TWO_GROUPS, table

RACKS = table({"red": 40, "blue": 40}, {("Owls", 1): (12, 19), ("Owls", 2): (13, 8), ("Herons", 1): (20, 9), ("Herons", 2): (14, 15)})
SCHOOL = table({"red": 400, "blue": 400}, {("Owls", 1): (128, 190), ("Owls", 2): (131, 88), ("Herons", 1): (209, 97)})

OWLS, HERONS = quantity("down", "Owls", (1,)), quantity("down", "Herons", (1,))  # 31 and 29, 318 and 306


@pytest.mark.parametrize(
    ("results", "grade", "numbers", "word", "winner", "slips"),
    [  # worked by hand: 31 > 29 though 9 ones are more than 1; 318 > 306, and so are the ones
        (RACKS, 1, "31, 29", "more", "Owls", {"H21": "Herons"}),
        (RACKS, 1, "31, 29", "fewer", "Herons", {"H21": "Owls"}),
        (SCHOOL, 2, "318, 306", "more", "Owls", {"H22": "Herons"}),
    ],
)
def test_greater_total_worked_by_hand(results, grade: int, numbers: str, word: str, winner: str, slips: dict[str, str]):
    ask = Ask(Choice(("Owls", "Herons"), (OWLS, HERONS), word == "more"), (), Demand("name"))
    (draft,) = [draft for draft in every_draft("greater_total", results) if draft.ask == ask]
    one = said("greater_total", results, grade, draft)
    assert (one.answer.shown, one.relation) == (winner, f"x = {'Max' if word == 'more' else 'Min'}({numbers})")
    assert {slip.id: slip.value for slip in one.slips} == slips


@pytest.mark.parametrize(
    ("results", "grade", "test", "relation", "key", "slips"),
    [
        (RACKS, 1, ">", "x = 31 - 29", "Yes", {"H21": "No"}),
        (RACKS, 1, "<", "x = 31 - 29", "No", {"H21": "Yes"}),
        (SCHOOL, 2, "<", "x = 318 - 306", "No", {"H46": "Yes"}),
    ],
)
def test_a_comparison_judged_by_hand(results, grade: int, test: str, relation: str, key: str, slips: dict[str, str]):
    one = problem("comparison_true", results, grade, Ask(Truth(OWLS, test, HERONS), (), Demand("truth")))
    assert (one.answer.shown, one.relation, {slip.id: slip.value for slip in one.slips}) == (key, relation, slips)


@pytest.mark.parametrize(("results", "grade"), [(RACKS, 1), (SCHOOL, 2)], ids=["two digits", "three digits"])
@pytest.mark.parametrize("activity", ["ramp", "seeds"])
def test_every_problem_is_proved_and_shows_a_likely_mistake(results, grade: int, activity: str):
    problems = every_problem("greater_total", results, grade, activity, draws=4)
    assert problems
    assert [one.proof for one in problems if not proved(one)] == []
    assert [one.text for one in problems if not one.slips] == []
    assert {one.frame for one in problems} <= {frame.name for frame in frames("place_value", "greater_total")}


def test_numbers_have_as_many_digits_and_two_at_least():
    """1.NBT.B.3: two two-digit numbers; 2.NBT.A.4: two three-digit numbers."""
    for results, low, high in ((RACKS, 10, 99), (SCHOOL, 10, 999)):
        view = Desk(results, scenario()).view
        for draft in every_draft("greater_total", results):
            a, b = map(view.number, draft.roles["pair"])
            assert a != b
            assert len(str(a)) == len(str(b))
            assert low <= min(a, b) <= max(a, b) <= high


def test_groups_trials_and_colors_are_compared():
    kinds = {kind for draft in every_draft("greater_total", RACKS) for kind in draft.wanted}
    assert kinds == {"groups", "trials", "colors"}


ONE = Stated(1, "whole")


@pytest.mark.parametrize(
    ("down", "answer", "slips"),
    [(38, "40", {"H43": "30", "H44": "41"}), (99, "101", {"H44": "102", "H45": "1001"})],
)
def test_a_row_of_counting_on_worked_by_hand(down: int, answer: str, slips: dict[str, str]) -> None:
    results = table({"red": 60, "blue": 60}, {("Owls", 1): (down - 20, 20), ("Herons", 1): (1, 1)})
    ask = Ask(Value(Op("+", (quantity("down", "Owls", (1,)), ONE, ONE))), (), Demand("whole"))
    one = problem("next_number", results, 1, ask)
    assert worked(one) == (answer, f"{down} + 1 + 1 = x", (f"{down} + 1 + 1 = {answer}",), slips)
    assert one.standards == ("1.NBT.A.1",)


def test_counting_on_leads_into_the_next_ten() -> None:
    """17 pins of the class in Trial 1: 18 and 19 are of the same ten; 15 in Trial 2; 32 in all."""
    assert list(every_draft("next_number", TWO_GROUPS)) == []


@pytest.mark.parametrize(
    ("down", "answer", "slips"),
    [(40, "39", {"H60": "41", "H61": "30", "H62": "49"}), (103, "102", {"H60": "104", "H61": "93"})],
)
def test_a_row_of_counting_back_worked_by_hand(down: int, answer: str, slips: dict[str, str]) -> None:
    results = table({"red": 60, "blue": 90}, {("Owls", 1): (down - 20, 20), ("Herons", 1): (1, 1)})
    one = problem("number_before", results, 1, Ask(Value(Op("-", (quantity("down", "Owls", (1,)), ONE))), (), Demand("whole")))
    assert worked(one) == (answer, f"1 + x = {down}", (f"{down} - 1 = {answer}",), slips)
    assert one.standards == ("1.NBT.A.1",)
