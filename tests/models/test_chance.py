"""Chance: each model by hand on one small table, and what no draft of theirs may be."""

from __future__ import annotations

from random import Random

import pytest

from mathgen.asks.expression import Ask, Choice, Op, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.reading.read_problem import read_problem
from mathgen.reading.tokens import NotRead
from mathgen.scenario.words import scenario
from tests.models.asked import every_draft, problem, quantity, worked
from tests.tables import TWO_GROUPS, table

ANY, WHOLE, NAME = Demand("any"), Demand("whole"), Demand("name")

COLORS = ("red", "blue", "gold")
OWLS_DOWN = tuple(quantity("down", "Owls", (1,), color) for color in COLORS)  # 3 red, 2 blue, 4 gold
CLASS_RED, CLASS_BLUE = ((quantity("down", None, None, color), quantity("set_up", None, None, color)) for color in ("red", "blue"))
CLASS_DOWN = quantity("down")  # 32 pins: 10 red, 8 blue, 14 gold
CLASS_GOLD = quantity("down", None, None, "gold")
SIX_GROUPS = table({"red": 4, "blue": 3, "gold": 5}, {(name, 1): (1, 1, 1) for name in ("Owls", "Herons", "Kites", "Wrens")})

ROWS = {
    # model: (table, grade, ask, answer, relation, steps, slips), each worked by hand
    "picked_color": (
        TWO_GROUPS,
        7,
        Ask(Value(Op("/", (OWLS_DOWN[1], Op("+", OWLS_DOWN)))), (), ANY),
        "2/9",
        "(3 + 2 + 4)*x = 2",
        ("3 + 2 + 4 = 9", "2 / 9 = 2/9"),
        {"K03": "2/7", "K13": "1/2", "K02": "1/3"},
    ),
    "picked_color, not of a color": (
        TWO_GROUPS,
        7,
        Ask(Value(Op("/", (Op("+", (OWLS_DOWN[0], OWLS_DOWN[2])), Op("+", OWLS_DOWN)))), (), ANY),
        "7/9",
        "(3 + 2 + 4)*x = 3 + 4",
        ("3 + 4 = 7", "3 + 2 + 4 = 9", "7 / 9 = 7/9"),
        {"K09": "2/9", "K03": "7/2", "K13": "1/2", "K02": "2/3"},
    ),
    "estimated_probability": (
        TWO_GROUPS,
        7,
        Ask(Value(Op("/", CLASS_RED)), (), ANY),
        "10/16",
        "16*x = 10",
        ("10 / 16 = 10/16",),
        {"K09": "6/16", "K03": "10/6", "K41": "1/2"},
    ),
    "estimated_probability, left standing": (
        TWO_GROUPS,
        7,
        Ask(Value(Op("/", (Op("-", (CLASS_RED[1], CLASS_RED[0])), CLASS_RED[1]))), (), ANY),
        "6/16",
        "16*x = 16 - 10",
        ("16 - 10 = 6", "6 / 16 = 6/16"),
        {"K14": "10/16", "K03": "6/10", "K41": "1/2"},
    ),
    "color_of_the_next": (
        TWO_GROUPS,
        7,
        Ask(Value(Op("/", (CLASS_GOLD, CLASS_DOWN))), (), ANY),
        "14/32",
        "32*x = 14",
        ("14 / 32 = 14/32",),
        {"K03": "14/18", "K41": "1/2", "K42": "1/3", "A19": "14/20"},
    ),
    "color_of_the_next, not of a color": (
        TWO_GROUPS,
        7,
        Ask(Value(Op("/", (Op("-", (CLASS_DOWN, CLASS_GOLD)), CLASS_DOWN))), (), ANY),
        "18/32",
        "32*x = 32 - 14",
        ("32 - 14 = 18", "18 / 32 = 18/32"),
        {"K09": "14/32", "K03": "18/14", "K41": "1/2", "K42": "2/3"},
    ),
    "pairs_not_put_back": (
        SIX_GROUPS,
        7,
        Ask(Value(Op("*", (Stated(4, "groups"), Op("-", (Stated(4, "groups"), Stated(1, "whole")))))), (), WHOLE),
        "12",
        "x = 4*(4 - 1)",
        ("4 - 1 = 3", "4 * 3 = 12"),
        {"K31": "16", "K16": "7", "K32": "6"},
    ),
    "ordered_pairs": (
        TWO_GROUPS,
        7,
        Ask(Value(Op("*", (Stated(3, "kinds"), Stated(3, "kinds")))), (), WHOLE),
        "9",
        "x = 3*3",
        ("3 * 3 = 9",),
        {"K16": "6"},
    ),
    "ordered_pairs, of a group and a kind": (
        SIX_GROUPS,
        7,
        Ask(Value(Op("*", (Stated(4, "groups"), Stated(3, "kinds")))), (), WHOLE),
        "12",
        "x = 4*3",
        ("4 * 3 = 12",),
        {"K16": "7"},
    ),
    "ordered_pairs, of two groups": (
        SIX_GROUPS,
        7,
        Ask(Value(Op("*", (Stated(4, "groups"), Stated(4, "groups")))), (), WHOLE),
        "16",
        "x = 4*4",
        ("4 * 4 = 16",),
        {"K16": "8", "K17": "12", "K18": "10"},
    ),
    "more_likely": (  # more gold pins fell, but a smaller part of them
        table({"red": 5, "gold": 8}, {("Owls", 1): (4, 5), ("Owls", 2): (3, 4)}),
        7,
        Ask(
            Choice(
                ("red", "gold"),
                tuple(Op("/", (quantity("down", "Owls", None, c), quantity("set_up", "Owls", None, c))) for c in ("red", "gold")),
                True,
            ),
            (),
            NAME,
        ),
        "red",
        "x = Max(7/10, 9/16)",
        ("7 / 10 = 7/10", "9 / 16 = 9/16", "7/10 = 56/80", "9/16 = 45/80"),
        {"K04": "gold"},
    ),
    "more_likely, less": (
        table({"red": 5, "gold": 8}, {("Owls", 1): (4, 5), ("Owls", 2): (3, 4)}),
        7,
        Ask(
            Choice(
                ("red", "gold"),
                tuple(Op("/", (quantity("down", "Owls", None, c), quantity("set_up", "Owls", None, c))) for c in ("red", "gold")),
                False,
            ),
            (),
            NAME,
        ),
        "gold",
        "x = Min(7/10, 9/16)",
        ("7 / 10 = 7/10", "9 / 16 = 9/16", "7/10 = 56/80", "9/16 = 45/80"),
        {"K04": "red"},
    ),
}


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    trials, grade, ask, *expected = ROWS[row]
    one = problem(row.partition(",")[0], trials, grade, ask)
    assert worked(one) == tuple(expected)


def test_one_pin_is_picked_from_the_pins_of_one_trial() -> None:
    """The same pins stand again in each trial."""
    asked = [draft.roles["whole"].scope.trials for draft in every_draft("picked_color", TWO_GROUPS)]
    assert asked
    assert all(trials is not None and len(trials) == 1 for trials in asked)


def test_only_several_trials_say_how_likely() -> None:
    for name in ("estimated_probability", "color_of_the_next"):
        asked = [draft.roles["part"].scope.trials for draft in every_draft(name, TWO_GROUPS)]
        assert asked
        assert all(trials is None or len(trials) > 1 for trials in asked)


def test_which_is_more_likely_is_asked_of_sets_of_two_sizes_where_a_count_misleads() -> None:
    drafts = [draft for seed in range(4) for draft in every_draft("more_likely", _some_table(seed))]
    assert drafts
    for draft in drafts:
        assert len(set(draft.sets)) == 2
        assert any(slip in ("K04", "K05") for slip, _ in draft.slips)


def _some_table(seed: int):  # type: ignore[no-untyped-def]
    rng = Random(seed)
    return table({"red": 5, "gold": 8}, {("Owls", trial): (rng.randint(1, 5), rng.randint(1, 8)) for trial in (1, 2, 3)})


@pytest.mark.parametrize(
    "text",
    [
        # from which pins one is picked has to be said, and only once
        "One of these pins is picked at random. What is the probability that the pin is a red pin?",
        "In Trial 1, the Owls knocked down 3 red, 2 blue, and 4 gold pins. What is the probability that the pin is a red pin?",
        # the same pins stand again
        "The Owls knocked down 16 pins in both trials. One of these pins is picked at random. "
        "What is the probability that the pin is a red pin?",
        # false counts
        "A bag has pins of 4 kinds. A pin is picked, the kind is written down, and the pin is put back. Then a second pin is picked. "
        "How many ordered pairs of kinds are possible?",
        "A bag has pins of 3 kinds. A pin is picked, the kind is written down, and the pin is put back. "
        "How many ordered pairs of kinds are possible?",
        "Use these results to compare chances. Which is more likely to be knocked down, a red pin or a red pin?",
    ],
)
def test_what_is_not_said_is_not_read(text: str) -> None:
    with pytest.raises(NotRead):
        read_problem(text, TWO_GROUPS, scenario())


def test_a_model_used_for_many_picks_worked_by_hand() -> None:
    """7.SP.C.7a: of 4, 1 and 3 pins, 3 in 8 of 40 picks."""
    parts = tuple(quantity("down", "Herons", (1,), color) for color in ("red", "blue", "gold"))
    ask = Ask(Value(Op("*", (Op("/", (parts[2], Op("+", parts))), Stated(40, "picks")))), (), Demand("whole"))
    one = problem("times_picked", TWO_GROUPS, 7, ask)
    assert worked(one) == (
        "15",
        "(4 + 1 + 3)*x = 3*40",
        ("4 + 1 + 3 = 8", "3 / 8 = 3/8", "3/8 * 40 = 15"),
        {"K34": "25", "K35": "3"},
    )
    assert one.standards == ("7.SP.C.6", "7.SP.C.7a")
