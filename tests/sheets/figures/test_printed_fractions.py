"""Fractions of one whole, as printed or as counted."""

from __future__ import annotations

from mathgen.asks.expression import Choice, Op, Stated
from mathgen.sheets.figures.printed_fractions import parts_of
from tests.sheets.figures.scenes import down, over, scene, up

RED = over(down(color="red"), up())


def test_a_printed_fraction_comes_before_the_counts() -> None:
    """3 of 12 printed as 1/4."""
    for printed, wanted in (((), (3, 12)), ((("1/4", RED),), (1, 4))):
        found = parts_of(scene(RED, printed=printed))
        assert found is not None
        assert [(part.top, part.bottom) for part in found.parts] == [wanted]


def test_the_way_says_how_the_fractions_belong_together() -> None:
    """One, a sum, the rest of a whole, a gap, a comparison; and nothing for whole numbers."""
    goals = (
        RED,
        Op("+", (RED, RED)),
        Op("-", (Stated(1, "whole"), RED)),
        Op("-", (RED, RED)),
        Choice(("red", "blue"), (RED, RED)),
        Op("+", (down(), down())),
    )
    ways = [None if found is None else found.way for found in map(parts_of, map(scene, goals))]
    assert ways == ["one", "together", "rest", "gap", "compared", None]
