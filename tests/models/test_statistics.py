"""Statistics and chance: each model by hand on one small table, and what no draft of theirs may be."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Equation, Op, Stat, Stated, Unknown, Value
from mathgen.exact.demand import Demand
from tests.models.asked import every_draft, problem, quantity, worked
from tests.tables import TWO_GROUPS, table

ANY, WHOLE, DECIMAL = Demand("any"), Demand("whole"), Demand("decimal")

THREE_TRIALS = table(
    {"red": 4, "blue": 3, "gold": 5},
    {
        ("Owls", 1): (3, 2, 4),
        ("Owls", 2): (1, 3, 2),
        ("Owls", 3): (4, 1, 2),
        ("Herons", 1): (4, 1, 3),
        ("Herons", 2): (2, 2, 5),
        ("Herons", 3): (3, 1, 0),
    },
)
FOUR_TRIALS = table({"gold": 5}, {("Owls", 1): (0,), ("Owls", 2): (5,), ("Owls", 3): (2,), ("Owls", 4): (4,)})
FIVE_GROUPS = table({"red": 9}, {("Owls", 1): (8,), ("Herons", 1): (3,), ("Kites", 1): (7,), ("Wrens", 1): (4,), ("Swifts", 1): (9,)})

HERONS = tuple(quantity("down", "Herons", (trial,)) for trial in (1, 2, 3))
CLASS_RED = quantity("down", None, None, "red"), quantity("set_up", None, None, "red")
GOAL = Op("*", (Stated(4, "trials"), Stated(8, "goal mean")))

ROWS = {
    # model: (table, grade, ask, answer, relation, steps, slips), each worked by hand
    "mean_down": (
        THREE_TRIALS,
        6,
        Ask(Value(Stat("mean", HERONS)), (), ANY),
        "7",
        "3*x = 8 + 9 + 4",
        ("8 + 9 + 4 = 21", "21 / 3 = 7"),
        {"I02": "21", "I13": "8"},
    ),
    "mean_down, as a decimal": (
        FOUR_TRIALS,
        6,
        Ask(Value(Stat("mean", tuple(quantity("down", "Owls", (trial,), "gold") for trial in (1, 2, 3, 4)))), (), DECIMAL),
        "2.75",
        "4*x = 0 + 5 + 2 + 4",
        ("0 + 5 + 2 + 4 = 11", "11 / 4 = 2.75"),
        {"I01": "3.666...", "I02": "11", "I13": "3", "I04": "5.5"},
    ),
    "median_down": (  # 8, 9, 4 pins: the middle as it stands is 9
        THREE_TRIALS,
        6,
        Ask(Value(Stat("median", HERONS)), (), ANY),
        "8",
        "x = 8",
        ("8 = 8",),
        {"I06": "9", "I08": "6.5", "I13": "7"},
    ),
    "median_down, halfway between two": (  # 0, 5, 2, 4 gold pins
        FOUR_TRIALS,
        6,
        Ask(Value(Stat("median", tuple(quantity("down", "Owls", (trial,), "gold") for trial in (1, 2, 3, 4)))), (), ANY),
        "3",
        "2*x = 2 + 4",
        ("2 + 4 = 6", "6 / 2 = 3"),
        {"I06": "3.5", "I07": "2", "I08": "2.5", "I13": "2.75"},
    ),
    "median_down, a half": (  # 8, 3, 7, 4 red pins
        FIVE_GROUPS,
        6,
        Ask(Value(Stat("median", tuple(quantity("down", group, (1,), "red") for group in ("Owls", "Herons", "Kites", "Wrens")))), (), ANY),
        "5.5",
        "2*x = 4 + 7",
        ("4 + 7 = 11", "11 / 2 = 5.5"),
        {"I06": "5", "I07": "4"},  # the mean is 5.5 as well, and so is halfway between the ends
    ),
    "goal_mean": (
        THREE_TRIALS,
        6,
        Ask(Value(Op("-", (GOAL, Op("+", HERONS)))), (Equation(Op("+", (*HERONS, Unknown())), GOAL),), WHOLE),
        "11",
        "8 + 9 + 4 + x = 4*8",
        ("4 * 8 = 32", "8 + 9 + 4 = 21", "32 - 21 = 11"),
        {"I14": "8", "I15": "3", "I16": "32"},
    ),
    "expected_count": (
        TWO_GROUPS,
        7,
        Ask(Value(Op("*", (Op("/", CLASS_RED), Stated(40, "set up next time")))), (), WHOLE),
        "25",
        "16*x = 10*40",
        ("10 / 16 = 10/16", "10/16 * 40 = 25"),
        {"K06": "34", "K01": "20", "K12": "15"},
    ),
}


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    trials, grade, ask, *expected = ROWS[row]
    one = problem(row.partition(",")[0], trials, grade, ask)
    assert worked(one) == tuple(expected)


def test_a_goal_can_be_reached_in_one_trial_and_lies_above_the_mean_so_far() -> None:
    asked = list(every_draft("goal_mean", THREE_TRIALS))
    assert asked
    for draft in asked:
        counts = [sum(row.down for row in THREE_TRIALS.rows if _in(row, part.scope)) for part in draft.roles["parts"]]
        racks = {sum(row.set_up for row in THREE_TRIALS.rows if _in(row, part.scope)) for part in draft.roles["parts"]}
        goal = draft.roles["goal"].number
        assert sum(counts) < goal * len(counts)
        assert 0 < goal * (len(counts) + 1) - sum(counts) <= max(racks)


def _in(row: object, scope: object) -> bool:
    pairs = ((row.group, scope.groups), (row.trial, scope.trials), (row.color, scope.colors))  # type: ignore[attr-defined]
    return all(labels is None or label in labels for label, labels in pairs)


def test_groups_of_one_trial_share_a_mean() -> None:
    """8, 3, 7, 4, and 9 pins. 8, 7, 9 has the mean 8, which is in the list; 8, 3, 7, 4 and 8, 3, 4, 9 have equal mean and median."""
    asks = [draft.ask for draft in every_draft("mean_down", FIVE_GROUPS)]
    series = {tuple(one.scope.groups[0] for one in ask.goal.expr.series): str(ask.demand) for ask in asks}
    assert series == {
        ("Owls", "Herons", "Kites"): "any",
        ("Owls", "Herons", "Wrens"): "any",
        ("Owls", "Wrens", "Swifts"): "any",
        ("Owls", "Herons", "Kites", "Swifts"): "decimal",
        ("Owls", "Herons", "Kites", "Wrens", "Swifts"): "decimal",
        ("Herons", "Kites", "Wrens", "Swifts"): "decimal",
    }


def test_only_results_of_several_trials_say_what_to_expect() -> None:
    asked = [draft.roles["part"].scope.trials for draft in every_draft("expected_count", THREE_TRIALS)]
    assert asked
    assert all(trials is None or len(trials) > 1 for trials in asked)
    assert not list(every_draft("expected_count", FIVE_GROUPS))


def test_the_key_of_a_median_shows_the_list_in_order() -> None:
    one = problem("median_down", THREE_TRIALS, 6, Ask(Value(Stat("median", HERONS)), (), ANY))
    assert (one.answer.display, one.answer.because) == ("8 pins", "in order: 4, 8, 9")


def test_no_list_stands_in_order_already() -> None:
    """Else nobody would see whether it was put in order."""
    seen = 0
    for draft in every_draft("median_down", FIVE_GROUPS):
        counts = [next(row.down for row in FIVE_GROUPS.rows if _in(row, one.scope)) for one in draft.roles["series"]]
        assert counts not in (sorted(counts), sorted(counts, reverse=True))
        seen += 1
    assert seen
