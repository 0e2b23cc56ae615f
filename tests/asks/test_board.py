"""The board of an ask, by hand on one small table: as common practice has it at school, no source."""

from __future__ import annotations

from itertools import pairwise

import pytest
from sympy import Rational

from mathgen.asks.board import board_lines
from mathgen.asks.expression import NOTHING, PAIR, Ask, Choice, Op, Quantity, Ratio, Stat, Stated, Truth, Value
from mathgen.asks.steps.cell_reader import CellReader
from mathgen.exact.demand import Demand
from tests.asks.cases import ANY, DOWN, RATE, SET_UP, WHOLE, down
from tests.tables import TWO_GROUPS

OWLS, HERONS = down("Owls"), down("Herons")  # 15 and 17 pins
FOUR = (down("Owls", 1), down("Owls", 2), down("Herons", 1), down("Herons", 2))  # 9, 6, 8, 9
PRINTED = dict.fromkeys((*FOUR, OWLS, HERONS, DOWN, SET_UP), "")
TEN, TENTHS = Demand("whole", -1), Demand("decimal", 1)
PERCENT_1, NAME, TRUTH = Demand("percent", 1), Demand("name"), Demand("truth")


def rest(number: int, bottom: int) -> Op:
    return Op("-", (Stated(1, "whole"), Stated(number, "part", bottom)))


def lengths(times: int, top: int, bottom: int) -> Op:
    return Op("*", (Stated(times, "spaces"), Stated(top, "space", bottom)))


BOARDS = {
    # name: (ask, grade, exact, shown, lines)
    "a ten already": (
        Ask(Value(Op("*", (Stated(4, "points"), OWLS))), (), TEN), 4, Rational(60), "60", ("4 * 15 = 60", "60 stays 60"),
    ),
    "a count that is only rounded": (
        Ask(Value(HERONS), (), TEN), 3, Rational(17), "20", ("17 is between 10 and 20", "17 is nearer to 20"),
    ),
    "halfway": (
        Ask(Value(Op("+", (OWLS, SET_UP, Stated(8, "more")))), (), TEN), 3, Rational(35), "40",
        ("15 + 12 + 8 = 35", "35 is halfway between 30 and 40", "halfway: round up to 40"),
    ),
    "a percent that does not end": (
        Ask(Value(Op("/", (FOUR[1], down("Owls", 1, None)))), (), PERCENT_1), 7, Rational(2, 3), "66.7%",
        (
            "6 out of 9: 6/9", "6/9 = 0.66666... = 66.666...%", "66.666...% is between 66.6% and 66.7%",
            "66.666...% is nearer to 66.7%",
        ),
    ),
    "a decimal that repeats": (
        Ask(Value(Op("/", (FOUR[1], FOUR[0]))), (), Demand("decimal")), 7, Rational(2, 3), "0.666...",
        ("6 out of 9: 6/9", "6/9 = 2/3", "2/3 = 0.666..."),
    ),
    "a part of a set before grade 5": (Ask(Value(RATE), (), ANY), 3, Rational(3, 4), "9/12", ("9 of 12 equal parts: 9/12",)),
    "a part of a set from grade 5 on": (Ask(Value(RATE), (), ANY), 5, Rational(3, 4), "9/12", ("9 out of 12: 9/12",)),
    "one whole": (Ask(Value(rest(5, 12)), (), ANY), 4, Rational(7, 12), "7/12", ("1 = 12/12", "12/12 - 5/12 = 7/12")),
    "past one whole": (
        Ask(Value(lengths(4, 21, 8)), (), ANY), 4, Rational(21, 2), "10 1/2",
        ("2 5/8 = 21/8", "4 * 21/8 = 84/8", "84/8 = 10 4/8", "10 4/8 = 10 1/2"),
    ),
    "a fraction divided by": (
        Ask(Value(Op("/", (Stated(6, "pins"), Stated(1, "part", 4)))), (), ANY), 5, Rational(24), "24", ("6 / 1/4 = 6 * 4", "6 * 4 = 24"),
    ),
    "the greater first": (
        Ask(Choice(("Owls", "Herons"), (OWLS, HERONS)), (), NAME), 1, "Herons", "Herons", ("17 > 15, so Herons",),
    ),
    "the least first": (
        Ask(Choice(("1", "2", "3"), FOUR[:3], False), (), NAME), 2, "2", "Trial 2", ("6 < 8 < 9, so Trial 2",),
    ),
    "the same parts": (
        Ask(Truth(Stated(5, "part", 6), "=", Stated(11, "part", 12)), (), TRUTH), 4, "false", "No", ("5/6 = 10/12", "10/12 < 11/12, so no"),
    ),
    "two sides alike": (Ask(Truth(Op("+", FOUR[:2]), "=", OWLS), (), TRUTH), 1, "true", "Yes", ("9 + 6 = 15", "15 = 15, so yes")),
    "odd": (Ask(Truth(HERONS, "multiple", PAIR), (), TRUTH), 2, "false", "No", ("8 + 8 + 1 = 17", "17 is odd, so no")),
    "with some over": (
        Ask(Truth(HERONS, "multiple", Stated(5, "in each row")), (), TRUTH), 4, "false", "No",
        ("3 * 5 = 15", "17 - 15 = 2", "2 are left over, so no"),
    ),
    "with none over": (
        Ask(Truth(OWLS, "multiple", Stated(5, "in each row")), (), TRUTH), 4, "true", "Yes", ("3 * 5 = 15", "nothing is left over, so yes"),
    ),
    "the one of two questions that has several answers": (
        Ask(Choice(("first", "second"), (Stat("range", (SET_UP,)), Stat("range", FOUR))), (), NAME), 6, "second", "second",
        ("the answers to the second question vary, so second",),
    ),
    "which way points go": (
        Ask(Choice(("positive", "negative"), (Op("+", FOUR[1:3]), Op("+", (FOUR[0], FOUR[2])))), (), NAME), 8, "negative", "negative",
        ("y for the narrowest spaces: 9, 8", "y for the widest spaces: 6, 8", "y is less for wider spaces, so negative"),
    ),
    "where a point goes against the rest": (
        Ask(Choice(("2", "3", "4"), tuple(Op("-", (new, old)) for old, new in pairwise(FOUR)), False), (), NAME), 8, "2", "Trial 2",
        ("y from left to right: 9, 6, 8, 9", "y goes down only from 9 to 6, so Trial 2"),
    ),
    "answers that vary": (
        Ask(Truth(Stat("range", FOUR), ">", NOTHING), (), TRUTH), 6, "true", "Yes", ("the answers vary, so yes",),
    ),
    "one answer": (
        Ask(Truth(Stat("range", (SET_UP, SET_UP)), ">", NOTHING), (), TRUTH), 6, "false", "No", ("there is only one answer, so no",),
    ),
    "a product held against its factor": (
        Ask(Truth(Op("*", (Op("/", (FOUR[1], FOUR[0])), FOUR[0])), ">", FOUR[0]), (), TRUTH), 5, "false", "No",
        ("2/3 < 1", "2/3 * 9 < 9, so no"),
    ),
    "a median": (Ask(Value(Stat("median", FOUR[:3])), (), ANY), 6, Rational(8), "8", ("in order: 6, 8, 9", "the middle number is 8")),
    "a median of four": (
        Ask(Value(Stat("median", FOUR)), (), ANY), 6, Rational(17, 2), "8.5", ("in order: 6, 8, 9, 9", "8 + 9 = 17", "17 / 2 = 8.5"),
    ),
    "an interquartile range": (
        Ask(Value(Stat("interquartile range", FOUR)), (), ANY), 6, Rational(2), "2",
        (
            "in order: 6, 8, 9, 9", "upper half: 9, 9", "9 + 9 = 18", "18 / 2 = 9", "lower half: 6, 8", "6 + 8 = 14", "14 / 2 = 7",
            "9 - 7 = 2",
        ),
    ),
    "a mean absolute deviation": (
        Ask(Value(Stat("mean absolute deviation", FOUR)), (), ANY), 6, Rational(1), "1",
        (
            "9 + 6 + 8 + 9 = 32", "32 / 4 = 8", "9 - 8 = 1", "8 - 6 = 2", "8 - 8 = 0", "distances from 8: 1, 2, 0, 1",
            "1 + 2 + 0 + 1 = 4", "4 / 4 = 1",
        ),
    ),
    "a loss in grade 6": (
        Ask(Value(Op("opposite", (Op("-", (FOUR[0], FOUR[1])),))), (), ANY), 6, Rational(-3), "-3",
        ("9 - 6 = 3", "6 is 3 less than 9, so -3"),
    ),
    "a loss in grade 7": (Ask(Value(Op("opposite", (Op("-", (FOUR[0], FOUR[1])),))), (), ANY), 7, Rational(-3), "-3", ("6 - 9 = -3",)),
    "an opposite": (Ask(Value(Op("opposite", (FOUR[1],))), (), ANY), 7, Rational(-6), "-6", ("the opposite of 6 is -6",)),
    "below zero": (Ask(Value(Op("-", (FOUR[1], Stated(-3, "result")))), (), ANY), 7, Rational(9), "9", ("6 - (-3) = 9",)),
    "a ratio": (Ask(Ratio(HERONS, Op("-", (Stated(24, "set up"), HERONS))), (), Demand("ratio:any")), 6, Rational(17, 7), "17:7",
        ("24 - 17 = 7", "17 to 7: 17:7")),
}  # fmt: skip


@pytest.mark.parametrize("name", BOARDS)
def test_each_kind_of_board_by_hand(name: str) -> None:
    ask, grade, exact, shown, lines = BOARDS[name]
    rates = {expr.args[0]: "2/3" for expr in ask.goal.exprs if isinstance(expr, Op) and expr.symbol == "*" and isinstance(expr.args[0], Op)}
    assert board_lines(ask, CellReader(TWO_GROUPS), {**PRINTED, **rates}, grade, exact, shown) == lines


def test_what_the_words_leave_out_is_added_up_first() -> None:
    choice = Ask(Choice(("1", "2"), FOUR[:2]), (), NAME)
    assert board_lines(choice, CellReader(TWO_GROUPS), {}, 1, "1", "Trial 1") == ("3 + 2 + 4 = 9", "1 + 3 + 2 = 6", "9 > 6, so Trial 1")
    whole = Ask(Value(Quantity("down", OWLS.scope)), (), WHOLE)
    assert board_lines(whole, CellReader(TWO_GROUPS), {}, 2, Rational(15), "15")[-1].endswith(" = 15")
