"""Spread: each model by hand on small tables, and what no draft of theirs may be."""

from __future__ import annotations

import pytest

from mathgen.asks.evaluate import value
from mathgen.asks.expression import Ask, Op, Stat, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.reading.evaluate import Counts, evaluate
from mathgen.trials.totals import Totals
from tests.models.asked import every_draft, problem, quantity, worked
from tests.tables import TWO_GROUPS, table

ANY, WHOLE = Demand("any"), Demand("whole")

FIVE_GROUPS = table({"red": 9}, {("Owls", 1): (8,), ("Herons", 1): (3,), ("Kites", 1): (7,), ("Wrens", 1): (2,), ("Swifts", 1): (5,)})
FIVE = tuple(quantity("down", group, (1,), "red") for group in ("Owls", "Herons", "Kites", "Wrens", "Swifts"))  # 8, 3, 7, 2, 5
SIX_GROUPS = table({"red": 9}, {(f"G{n}", 1): (down,) for n, down in enumerate((4, 9, 6, 2, 7, 3))})
SIX = tuple(quantity("down", f"G{n}", (1,), "red") for n in range(6))
THREE_TRIALS = table({"red": 4, "blue": 3, "gold": 5}, {(name, n): (2, 1, 3) for name in ("Owls", "Herons") for n in (1, 2, 3)})

ROWS = {
    # model: (table, grade, ask, answer, relation, steps, slips), each worked by hand
    "mean_absolute_deviation": (
        FIVE_GROUPS,
        6,
        Ask(Value(Stat("mean absolute deviation", FIVE)), (), ANY),
        "2",
        "5*x = (8 - 5) + (5 - 3) + (7 - 5) + (5 - 2) + (5 - 5)",
        (
            "8 + 3 + 7 + 2 + 5 = 25",
            "25 / 5 = 5",
            "8 - 5 = 3",
            "5 - 3 = 2",
            "7 - 5 = 2",
            "5 - 2 = 3",
            "5 - 5 = 0",
            "3 + 2 + 2 + 3 + 0 = 10",
            "10 / 5 = 2",
        ),
        {"I20": "10", "I21": "5", "I22": "2.5", "I23": "3"},
    ),
    "interquartile_range": (  # 2, 3 | 5 | 7, 8
        FIVE_GROUPS,
        6,
        Ask(Value(Stat("interquartile range", FIVE)), (), ANY),
        "5",
        "(2 + 3)/2 + x = (7 + 8)/2",
        ("7 + 8 = 15", "15 / 2 = 7.5", "2 + 3 = 5", "5 / 2 = 2.5", "7.5 - 2.5 = 5"),
        {"I24": "6", "I26": "7.5"},
    ),
    "interquartile_range, halves of three": (  # 2, 3, 4 | 6, 7, 9
        SIX_GROUPS,
        6,
        Ask(Value(Stat("interquartile range", SIX)), (), ANY),
        "4",
        "3 + x = 7",
        ("7 - 3 = 4",),
        {"I24": "7", "I26": "7"},
    ),
    "box_plot": (
        SIX_GROUPS,
        6,
        Ask(Value(Stat("upper quartile", SIX)), (), ANY),
        "7",
        "x = 7",
        ("7 = 7",),
        {"I27": "9", "I28": "5", "I29": "3"},
    ),
    "box_plot, its start": (
        FIVE_GROUPS,
        6,
        Ask(Value(Stat("lower quartile", FIVE)), (), ANY),
        "2.5",
        "2*x = 2 + 3",
        ("2 + 3 = 5", "5 / 2 = 2.5"),
        {"I27": "2", "I28": "5", "I29": "7.5"},
    ),
    "results_recorded": (
        THREE_TRIALS,
        6,
        Ask(Value(Op("*", (Stated(2, "groups"), Stated(3, "trials")))), (), WHOLE),
        "6",
        "x = 2*3",
        ("2 * 3 = 6",),
        {"I30": "5", "I31": "3"},
    ),
    "results_recorded, of each kind": (
        THREE_TRIALS,
        6,
        Ask(Value(Op("*", (Stated(2, "groups"), Stated(3, "trials"), Stated(3, "kinds")))), (), WHOLE),
        "18",
        "x = 2*3*3",
        ("2 * 3 * 3 = 18",),
        {"I30": "8", "I31": "3"},
    ),
}
ROWS["interquartile_range, halves of three"][-1].pop("I26")  # both slips give 7: the first is kept


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    trials, grade, ask, *expected = ROWS[row]
    one = problem(row.partition(",")[0], trials, grade, ask)
    assert worked(one) == tuple(expected)


def ten_numbers(numbers: tuple[int, ...]):  # type: ignore[no-untyped-def]
    trials = table({"red": 200}, {(f"G{n}", 1): (down,) for n, down in enumerate(numbers)})
    return trials, tuple(quantity("down", f"G{n}", (1,), "red") for n in range(len(numbers)))


@pytest.mark.parametrize(("name", "expected"), [("lower quartile", 6), ("upper quartile", 15), ("interquartile range", 9), ("median", 11)])
def test_quartiles_are_the_medians_of_both_halves(name: str, expected: int) -> None:
    """The data set {1, 3, 6, 7, 10, 12, 14, 15, 22, 120}. Common Core State Standards for Mathematics, 2010, glossary."""
    trials, series = ten_numbers((1, 3, 6, 7, 10, 12, 14, 15, 22, 120))
    stat = Stat(name, series)  # type: ignore[arg-type]
    assert value(stat, Totals(trials)) == evaluate(stat, Counts(trials)) == expected


def test_the_mean_absolute_deviation_is_the_mean_of_the_distances_from_the_mean() -> None:
    """The data set {2, 3, 6, 7, 10, 12, 14, 15, 22, 120}: 20. Common Core State Standards for Mathematics, 2010, glossary."""
    trials, series = ten_numbers((2, 3, 6, 7, 10, 12, 14, 15, 22, 120))
    stat = Stat("mean absolute deviation", series)
    found = value(stat, Totals(trials))
    assert found == evaluate(stat, Counts(trials))
    assert str(found) == "499/25"  # 19.96, which the glossary rounds


def test_every_way_to_halve_a_list_gives_the_same_halves() -> None:
    """Where numbers are equal to the median, "the values less than the median" are fewer than half."""
    tied = table({"red": 9}, {(f"G{n}", 1): (down,) for n, down in enumerate((7, 5, 5, 2, 8))})
    asked = [draft for name in ("interquartile_range", "box_plot") for draft in every_draft(name, tied)]
    assert all(len(draft.roles["series"]) < 5 for draft in asked)


def test_the_key_of_a_quartile_shows_both_halves_in_order() -> None:
    one = problem("box_plot", FIVE_GROUPS, 6, Ask(Value(Stat("lower quartile", FIVE)), (), ANY))
    assert one.answer.because == "in order: 2, 3 | 5 | 7, 8"


def test_results_are_counted_only_where_none_is_missing() -> None:
    gap = table({"red": 4}, {("Owls", 1): (1,), ("Owls", 2): (2,), ("Owls", 3): (2,), ("Herons", 1): (3,)})
    assert not list(every_draft("results_recorded", gap))
    assert not list(every_draft("results_recorded", TWO_GROUPS))  # 2 groups, 2 trials: nobody could tell which is which


def test_the_trials_behind_a_mean_worked_by_hand() -> None:
    """6.SP.B.5c: 12 pins at 4 a trial are of 3 trials."""
    down = {
        ("Owls", 1): (1, 1),
        ("Owls", 2): (2, 1),
        ("Owls", 3): (4, 3),
        ("Herons", 1): (1, 0),
        ("Herons", 2): (1, 2),
        ("Herons", 3): (1, 1),
    }
    results = table({"red": 5, "blue": 4}, down)
    total = quantity("down", "Owls")
    ask = Ask(Value(Op("/", (total, Op("/", (total, Stated(3, "trials")))))), (), Demand("whole"))
    one = problem("trials_behind_mean", results, 6, ask)
    assert worked(one) == ("3", "12/3*x = 12", ("12 / 4 = 3",), {"I46": "8", "I47": "48", "I48": "12"})
    assert one.standards == ("6.SP.B.5c",)
