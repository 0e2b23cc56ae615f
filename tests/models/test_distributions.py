"""Distributions: each model by hand on small tables, and what no draft of theirs may be."""

from __future__ import annotations

import pytest

from mathgen.asks.evaluate import value
from mathgen.asks.expression import NOTHING, Ask, Choice, Op, Stat, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.reading.evaluate import Counts, evaluate
from mathgen.trials.totals import Totals
from tests.models.asked import every_draft, problem, quantity, worked
from tests.tables import table

ANY, NAME, TRUTH = Demand("any"), Demand("name"), Demand("truth")
# Owls 8, 7, 9 and Herons 2, 6, 4 in three trials; the groups' numbers in Trial 1 are 8, 2, and 5.
CLASS = table(
    {"red": 9},
    {
        ("Owls", 1): (8,),
        ("Owls", 2): (7,),
        ("Owls", 3): (9,),
        ("Herons", 1): (2,),
        ("Herons", 2): (6,),
        ("Herons", 3): (4,),
        ("Kites", 1): (5,),
        ("Kites", 2): (5,),
        ("Kites", 3): (5,),
    },
)
OWLS, HERONS = (tuple(quantity("down", group, (n,), "red") for n in (1, 2, 3)) for group in ("Owls", "Herons"))
FIRST = tuple(quantity("down", group, (1,), "red") for group in ("Owls", "Herons", "Kites"))
SKEWED = table({"red": 9}, {("Owls", 1): (9,), ("Owls", 2): (1,), ("Owls", 3): (2,)})
OWLS_SKEWED = tuple(quantity("down", "Owls", (n,), "red") for n in (1, 2, 3))
MEDIANS = table({"red": 9}, {(g, n): (d,) for g, row in (("Owls", (5, 6, 1)), ("Herons", (4, 9, 4))) for n, d in enumerate(row, 1)})

ROWS = {
    # model: (table, grade, ask, answer, relation, steps, slips), each worked by hand
    "spreads_compared": (
        CLASS,
        6,
        Ask(Choice(("Owls", "Herons"), (Stat("range", OWLS), Stat("range", HERONS))), (), NAME),
        "Herons",
        "x = Max(9 - 7, 6 - 2)",
        ("9 - 7 = 2", "6 - 2 = 4"),
        {"I32": "Owls"},
    ),
    "medians_compared": (
        MEDIANS,
        7,
        Ask(Choice(("Owls", "Herons"), (Stat("median", OWLS), Stat("median", HERONS))), (), NAME),
        "Owls",
        "x = Max(5, 4)",
        (),
        {"I34": "Herons"},
    ),
    "means_apart": (
        CLASS,
        7,
        Ask(Value(Op("/", (Op("-", (Stat("mean", OWLS), Stat("mean", HERONS))), Stat("mean absolute deviation", HERONS)))), (), ANY),
        "3",
        "((4 - 2) + (6 - 4) + (4 - 4))/3*x = (8 + 7 + 9)/3 - (2 + 6 + 4)/3",
        (
            "8 + 7 + 9 = 24",
            "24 / 3 = 8",
            "2 + 6 + 4 = 12",
            "12 / 3 = 4",
            "8 - 4 = 4",
            "4 - 2 = 2",
            "6 - 4 = 2",
            "4 - 4 = 0",
            "2 + 2 + 0 = 4",
            "4 / 3 = 4/3",
            "4 / 4/3 = 3",
        ),
        {"I43": "4", "I44": "6", "I45": "9"},
    ),
    "mean_or_median": (
        SKEWED,
        6,
        Ask(Choice(("mean", "median"), (Stat("mean", OWLS_SKEWED), Stat("median", OWLS_SKEWED))), (), NAME),
        "mean",
        "x = Max((9 + 1 + 2)/3, 2)",
        ("9 + 1 + 2 = 12", "12 / 3 = 4"),
        {"I36": "median"},
    ),
    "statistical_question": (
        CLASS,
        6,
        Ask(Truth(Stat("range", FIRST), ">", NOTHING), (), TRUTH),
        "Yes",
        "x = 8 - 2 - 0",
        ("8 - 2 = 6",),
        {"I37": "No"},
    ),
}


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    results, grade, ask, *expected = ROWS[row]
    one = problem(row, results, grade, ask)
    assert worked(one) == tuple(expected)


def test_the_range_is_the_greatest_less_the_least() -> None:
    """By hand: of the numbers 8, 0, 1, 2, and 9 the least is 0 and the greatest 9."""
    numbers = table({"red": 9}, {("Owls", n): (down,) for n, down in enumerate((8, 0, 1, 2, 9))})
    spread = Stat("range", tuple(quantity("down", "Owls", (n,), "red") for n in range(5)))
    assert value(spread, Totals(numbers)) == evaluate(spread, Counts(numbers)) == 9


@pytest.mark.parametrize("name", ["spreads_compared", "medians_compared"])
def test_some_likely_mistake_points_to_the_other_list(name: str) -> None:
    assert all(draft.slips for results in (CLASS, MEDIANS) for draft in every_draft(name, results))


def test_a_question_with_one_answer_is_no_statistical_question() -> None:
    drafts = list(every_draft("statistical_question", CLASS))
    assert {mark for draft in drafts for mark in draft.wanted} == {"vary", "same", "one"}
    for draft in drafts:
        counts = {Totals(CLASS).total(one.measure, one.scope) for one in draft.ask.goal.exprs[0].series}  # type: ignore[union-attr]
        assert (len(counts) > 1) == (draft.wanted == {"vary"})
