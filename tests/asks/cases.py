"""Asks by hand on one small table: what each comes to, its equation, and its steps. The tests of all three share them."""

from __future__ import annotations

from sympy import Rational

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Ratio, Stat, Stated, Unknown, Value
from mathgen.exact.demand import Demand
from mathgen.trials.scope import Scope

ANY, WHOLE, PERCENT = Demand(), Demand("whole"), Demand("percent")


def down(group: str | None = None, trial: int | None = None, color: str | None = None, measure: str = "down") -> Quantity:
    return Quantity(measure, Scope((group,) if group else None, (trial,) if trial else None, (color,) if color else None))  # type: ignore[arg-type]


OWLS_1 = tuple(down("Owls", 1, color) for color in ("red", "blue", "gold"))
SET_UP = down("Owls", 1, None, "set_up")
DOWN = down("Owls", 1)
RATE = Op("/", (DOWN, SET_UP))

CASES = {
    # name: (ask, printed, value, relation, steps), each worked by hand
    "total": (Ask(Value(Op("+", OWLS_1)), (), WHOLE), {}, 9, "3 + 2 + 4 = x", ("3 + 2 + 4 = 9",)),
    "two steps": (Ask(Value(Op("-", (SET_UP, Op("+", OWLS_1)))), (), WHOLE), {}, 3, "3 + 2 + 4 + x = 12", ("3 + 2 + 4 = 9", "12 - 9 = 3")),
    "fraction of a set": (Ask(Value(RATE), (), ANY), {DOWN: "9"}, Rational(9, 12), "12*x = 9", ("9 / 12 = 9/12",)),
    "fraction from cells": (Ask(Value(RATE), (), ANY), {}, Rational(9, 12), "12*x = 9", ("3 + 2 + 4 = 9", "9 / 12 = 9/12")),
    "rest of one whole": (
        Ask(Value(Op("-", (Stated(1, "whole"), RATE))), (), ANY),
        {RATE: "9/12"},
        Rational(3, 12),
        "9/12 + x = 1",
        ("12/12 - 9/12 = 3/12",),
    ),
    "percent": (
        Ask(Value(RATE), (), PERCENT),
        {DOWN: "9"},
        Rational(3, 4),
        "12*x = 9",
        ("9 / 12 = 9/12", "9/12 = 3/4", "3/4 = 75/100", "75/100 = 75%"),
    ),
    "part from percent": (
        Ask(Value(Op("*", (RATE, Stated(40, "set up next time")))), (), WHOLE),
        {RATE: "75%"},
        30,
        "12*x = 9*40",
        ("75% = 75/100", "75/100 * 40 = 30"),
    ),
    "smaller unknown": (
        Ask(Value(down("Owls")), (Equation(down("Herons"), Op("+", (down("Owls"), Stated(2, "more than")))),), WHOLE),
        {down("Herons"): "17"},
        15,
        "17 = x + 2",
        ("17 - 2 = 15",),
    ),
    "mean": (
        Ask(Value(Stat("mean", (down("Owls", 1), down("Owls", 2), down("Herons", 1)))), (), ANY),
        {down("Owls", 1): "9", down("Owls", 2): "6", down("Herons", 1): "8"},
        Rational(23, 3),
        "3*x = 9 + 6 + 8",
        ("9 + 6 + 8 = 23", "23 / 3 = 23/3"),
    ),
    "median of three": (  # in order: 6, 8, 9
        Ask(Value(Stat("median", (down("Owls", 1), down("Owls", 2), down("Herons", 1)))), (), ANY),
        {down("Owls", 1): "9", down("Owls", 2): "6", down("Herons", 1): "8"},
        8,
        "x = 8",
        ("8 = 8",),
    ),
    "median of four": (  # the model problem's 9, 6, 8, 9; in order: 6, 8, 9, 9
        Ask(Value(Stat("median", (down("Owls", 1), down("Owls", 2), down("Herons", 1), down("Herons", 2)))), (), ANY),
        {down("Owls", 1): "9", down("Owls", 2): "6", down("Herons", 1): "8", down("Herons", 2): "9"},
        Rational(17, 2),
        "2*x = 8 + 9",
        ("8 + 9 = 17", "17 / 2 = 8.5"),
    ),
    "ratio of two parts": (  # the model problem's 17 to 7
        Ask(Ratio(down("Herons"), Op("-", (down("Herons", measure="set_up"), down("Herons")))), (), Demand("ratio:any")),
        {down("Herons"): "17", down("Herons", measure="set_up"): "24"},
        Rational(17, 7),
        "(24 - 17)*x = 17",
        ("24 - 17 = 7", "17 / 7 = 17/7"),
    ),
    "ratio that could be shorter": (
        Ask(Ratio(DOWN, down("Owls", 1, "red")), (), Demand("ratio:any")),
        {DOWN: "9", down("Owls", 1, "red"): "3"},
        3,
        "3*x = 9",
        ("9 / 3 = 9/3",),
    ),
    "ratio to all": (
        Ask(Ratio(OWLS_1[0], Op("+", OWLS_1)), (), Demand("ratio:any")),
        {},
        Rational(3, 9),
        "(3 + 2 + 4)*x = 3",
        ("3 + 2 + 4 = 9", "3 / 9 = 3/9"),
    ),
    "bigger unknown": (
        Ask(Value(down("Herons")), (Equation(down("Herons"), Op("+", (down("Owls"), Stated(2, "more than")))),), WHOLE),
        {down("Owls"): "15"},
        17,
        "x = 15 + 2",
        ("15 + 2 = 17",),
    ),
    "missing part": (
        Ask(Value(OWLS_1[2]), (Equation(Op("+", OWLS_1), DOWN),), WHOLE),
        {DOWN: "9", OWLS_1[0]: "3", OWLS_1[1]: "2"},
        4,
        "3 + 2 + x = 9",
        ("3 + 2 = 5", "9 - 5 = 4"),
    ),
    "goal mean": (
        Ask(
            Value(Op("-", (Op("*", (Stated(3, "trials"), Stated(9, "goal mean"))), Op("+", (down("Herons", 1), down("Herons", 2)))))),
            (Equation(Op("+", (down("Herons", 1), down("Herons", 2), Unknown())), Op("*", (Stated(3, "trials"), Stated(9, "goal mean")))),),
            WHOLE,
        ),
        {down("Herons", 1): "8", down("Herons", 2): "9"},
        10,
        "8 + 9 + x = 3*9",
        ("3 * 9 = 27", "8 + 9 = 17", "27 - 17 = 10"),
    ),
}
