"""Points of a scatter plot told one by one: what is read of them, and what is not."""

from __future__ import annotations

import pytest
from sympy import Rational

from mathgen.reading.read_problem import read_problem
from mathgen.reading.tokens import NotRead
from mathgen.scenario.words import scenario
from mathgen.trials.table import Row, TrialTable

POINTS = {"Owls": (("1", 19), ("2", 15), ("4", 16), ("7", 8)), "Wrens": (("3/2", 18), ("5/2", 17), ("5", 9), ("8", 4))}
TABLE = TrialTable(
    tuple(
        Row(group, trial, color, 20, down if color == "red" else 10, gap_inches=Rational(gap))
        for group, some in POINTS.items()
        for trial, (gap, down) in enumerate(some, 1)
        for color in ("red", "blue")
    )
)
TELLS = "Make a scatter plot with x for inches between pins and y for red pins knocked down."
EACH = "Draw a scatter plot of the inches between pins and the number of red pins knocked down."
XY = "Make a scatter plot with inches between pins as x and red pins knocked down as y."
OWLS = "In trial order, the Owls had the points (1, 19), (2, 15), (4, 16), and (7, 8)."
WRENS = "The Wrens had the points (1 1/2, 18), (2 1/2, 17), (5, 9), and (8, 4)."
ONCE = "From each space to the next wider space, y goes down, except once."


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        (f"{TELLS} {OWLS} {WRENS} Is the association positive or negative?", "negative"),
        (f"{EACH} {OWLS} {WRENS} Do the points show a positive or a negative association?", "negative"),
        (f"{OWLS} {WRENS} {XY} Is the association of x and y positive or negative?", "negative"),
        (f"{TELLS} {OWLS} {ONCE} In which trial does y go up instead?", "Trial 3"),
        (
            f"{EACH} {OWLS} For each wider space, the number of red pins knocked down is less, except once. "
            "For which trial is the number greater instead?",
            "Trial 3",
        ),
        (
            f"{OWLS} {XY} Toward the right, each point but one is lower than the point before. "
            "For which trial is the point higher instead?",
            "Trial 3",
        ),
    ],
)
def test_points_that_are_told_are_understood(text: str, answer: str) -> None:
    """From 1 to 7 inches the Owls' red pins go 19, 15, 16, 8: up in Trial 3 only."""
    assert read_problem(text, TABLE, scenario("ramp")).value == answer


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        (f"{TELLS} {OWLS} Is the association positive or negative?", "show no association"),
        (f"{OWLS} {WRENS} Is the association positive or negative?", "not said what the points tell"),
        (f"{TELLS} {OWLS.replace('16', '15')} {WRENS} Is the association positive or negative?", "does not say 15"),
        (f"{TELLS} {OWLS} {OWLS} {WRENS} Is the association positive or negative?", "the same is said twice"),
        (f"{TELLS} {WRENS.replace('The', 'In trial order, the')} {ONCE} In which trial does y go up instead?", "do not go that way"),
        (f"{TELLS} {OWLS} {ONCE} In which trial does y go down instead?", "which way the other points go"),
        (f"{TELLS} {OWLS} {ONCE} In which trial does x go up instead?", "no sentence"),
        (f"{TELLS} {OWLS} In which trial does y go up instead?", "which way the other points go"),
        (f"{TELLS} {OWLS} {WRENS} {ONCE} Is the association positive or negative?", "plays no part"),
        (f"{TELLS.replace('red', 'blue')} {OWLS} {WRENS} Is the association positive or negative?", "does not say 19"),
        (f"{TELLS} {OWLS} {ONCE.replace('down', 'sideways')} In which trial does y go up instead?", "no word"),
    ],
)
def test_points_that_are_false_or_unclear_are_not_read(text: str, reason: str) -> None:
    with pytest.raises(NotRead, match=reason):
        read_problem(text, TABLE, scenario("ramp"))
