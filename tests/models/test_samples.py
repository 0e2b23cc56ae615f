"""Samples and simulations: each model by hand on small tables, and what no draft of theirs may be."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Op, Stat, Stated, Truth, Value
from mathgen.exact.demand import Demand
from tests.models.asked import every_draft, problem, quantity, worked
from tests.tables import table

WHOLE, TRUTH = Demand("whole"), Demand("truth")
NAMES = ("Owls", "Herons", "Kites", "Wrens", "Swifts")
CLASS = table({"red": 9}, {(name, 1): (down,) for name, down in zip(NAMES, (8, 3, 7, 2, 5), strict=True)})
SAMPLE = tuple(quantity("down", name, (1,), "red") for name in ("Owls", "Herons", "Kites"))  # 8, 3, 7
EVERYBODY = tuple(quantity("down", name, (1,), "red") for name in NAMES)
TWICE = table({"red": 10}, {("Owls", 1): (6,), ("Owls", 2): (8,)})
SET_UP, DOWN = quantity("set_up", "Owls", None, "red"), quantity("down", "Owls", None, "red")

SOURCES = frozenset({"words", "table"})

ROWS = {
    # model: (table, ask, answer, relation, steps, slips), each worked by hand
    "sample_estimate": (
        CLASS,
        Ask(Value(Op("*", (Op("/", (Op("+", SAMPLE), Stated(3, "in the sample"))), Stated(5, "groups")))), (), WHOLE),
        "30",
        "3*x = (8 + 3 + 7)*5",
        ("8 + 3 + 7 = 18", "18 / 3 = 6", "6 * 5 = 30"),
        {"K20": "18", "K21": "6", "K22": "90"},
    ),
    "estimate_off": (
        CLASS,  # 25 in all
        Ask(
            Value(
                Op(
                    "-",
                    (
                        Op("*", (Op("/", (Op("+", SAMPLE), Stated(3, "in the sample"))), Stated(5, "groups"))),
                        quantity("down", None, (1,), "red"),
                    ),
                )
            ),
            (),
            WHOLE,
        ),
        "5",
        "25 + x = (8 + 3 + 7)/3*5",
        ("8 + 3 + 7 = 18", "18 / 3 = 6", "6 * 5 = 30", "30 - 25 = 5"),
        {"K36": "30", "K37": "7", "K21": "6"},
    ),
    "sample_represents": (
        table({"red": 9, "blue": 9}, {("Owls", 1): (4, 8), ("Herons", 1): (6, 2)}),  # 10 red of 20
        Ask(
            Truth(
                Op("/", (Stated(2, "of the color"), Stated(6, "in the sample"))),
                "=",
                Op("/", (quantity("down", None, (1,), "red"), quantity("down", None, (1,)))),
            ),
            (),
            TRUTH,
        ),
        "No",
        "x = 2/6 - 10/20",
        ("2 / 6 = 2/6", "4 + 6 = 10", "4 + 8 + 6 + 2 = 20", "10 / 20 = 10/20"),
        {"K84": "Yes"},
    ),
    "sample_like_population": (
        table({"red": 9, "blue": 9}, {("Owls", 1): (4, 8), ("Herons", 1): (6, 2)}),  # 10 red of 20
        Ask(
            Value(Op("*", (Op("/", (quantity("down", None, (1,), "red"), quantity("down", None, (1,)))), Stated(6, "in the sample")))),
            (),
            WHOLE,
        ),
        "3",
        "20*x = 10*6",
        ("4 + 6 = 10", "4 + 8 + 6 + 2 = 20", "10 / 20 = 10/20", "10/20 * 6 = 3"),
        {"K40": "10"},
    ),
    "simulation_digits": (
        TWICE,
        Ask(Value(Op("*", (Op("/", (DOWN, SET_UP)), Stated(10, "digits")))), (), WHOLE),
        "7",
        "20*x = 14*10",
        ("14 / 20 = 14/20", "14/20 * 10 = 7"),
        {"K23": "3", "K01": "5"},
    ),
    "more_likely_than_not": (
        TWICE,
        Ask(Truth(DOWN, ">", Op("-", (SET_UP, DOWN))), (), TRUTH),
        "Yes",
        "x = 14 - (20 - 14)",
        ("20 - 14 = 6",),
        {"K25": "No"},
    ),
    "sample_and_population": (
        CLASS,
        Ask(Value(Op("-", (Stat("mean", SAMPLE), Stat("mean", EVERYBODY)))), (), Demand("any")),
        "1",
        "(8 + 3 + 7 + 2 + 5)/5 + x = (8 + 3 + 7)/3",
        ("8 + 3 + 7 = 18", "18 / 3 = 6", "8 + 3 + 7 + 2 + 5 = 25", "25 / 5 = 5", "6 - 5 = 1"),
        {"K26": "6", "K27": "5", "K28": "7"},
    ),
    "model_against_results": (
        table({"red": 6, "blue": 8, "gold": 9}, {("Owls", 1): (2, 3, 4), ("Owls", 2): (3, 3, 9)}),  # 5 + 6 + 13 = 24
        Ask(Value(Op("-", (quantity("down", "Owls", None, "gold"), Op("/", (quantity("down", "Owls"), Stated(3, "kinds")))))), (), WHOLE),
        "5",
        "24/3 + x = 13",
        ("24 / 3 = 8", "13 - 8 = 5"),
        {"K29": "8", "K30": "11"},
    ),
}


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    results, ask, *expected = ROWS[row]
    one = problem(row, results, 7, ask, SOURCES)
    assert worked(one) == tuple(expected)


def test_a_sample_is_never_the_class() -> None:
    drafts = list(every_draft("sample_estimate", CLASS))
    assert drafts
    assert all(3 <= len(draft.roles["series"]) < len(CLASS.groups) for draft in drafts)  # type: ignore[arg-type]


def test_about_as_likely_as_not_is_not_asked() -> None:
    even = table({"red": 10}, {("Owls", 1): (6,), ("Owls", 2): (5,)})
    assert not list(every_draft("more_likely_than_not", even))
