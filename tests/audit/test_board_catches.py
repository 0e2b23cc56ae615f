"""The audit's reading of a board: what is so passes, and every number that is one more is named."""

from __future__ import annotations

import re
from typing import Any

import pytest

from tests.audit.board import board_faults
from tests.audit.good_problems import told


def line(kind: str, exact: str, shown: str, demands: str, givens: str, *steps: str, grade: int = 6) -> dict[str, Any]:
    return {
        "grade": grade,
        "answer": {"kind": kind, "exact": exact, "value": exact, "accepted": [shown], "demands": demands},
        "steps": list(steps),
        "givens": [told(number, "pins knocked down") for number in givens.split()],
    }


BOARDS = {
    "rounded": line("number", "36", "40", "whole:10", "36", "36 is between 30 and 40", "36 is nearer to 40", grade=3),
    "halfway": line("number", "35", "40", "whole:10", "35", "35 is halfway between 30 and 40", "halfway: round up to 40", grade=3),
    "a ten already": line("number", "60", "60", "whole:10", "4 15", "4 * 15 = 60", "60 stays 60", grade=4),
    "a percent": line(
        "number", "3/13", "23.1%", "percent:1", "3 13", "3 out of 13: 3/13", "3/13 = 0.23076... = 23.076...%",
        "23.076...% is between 23.0% and 23.1%", "23.076...% is nearer to 23.1%",
    ),
    "compared": line("name", "Trial 2", "Trial 2", "name", "9 6 8", "6 < 8 < 9, so Trial 2"),
    "of a set": line("number", "5/8", "5/8", "any", "5 8", "5 of 8 equal parts: 5/8", grade=3),
    "in order": line("number", "8", "8", "any", "9 6 8", "in order: 6, 8, 9", "the middle number is 8"),
    "in halves": line(
        "number", "2", "2", "any", "9 6 8 9", "in order: 6, 8, 9, 9", "upper half: 9, 9", "9 + 9 = 18", "18 / 2 = 9",
        "lower half: 6, 8", "6 + 8 = 14", "14 / 2 = 7", "9 - 7 = 2",
    ),
    "a loss": line("number", "-3", "-3", "any", "9 6", "9 - 6 = 3", "6 is 3 less than 9, so -3"),
    "an opposite": line("number", "-6", "-6", "any", "6", "the opposite of 6 is -6"),
    "a ratio": line("ratio", "17/7", "17:7", "ratio:any", "17 7", "17 to 7: 17:7"),
    "a half": line("number", "6", "6", "whole", "12", "6 + 6 = 12, so 6", grade=2),
    "a product": line("truth", "false", "No", "truth", "6 9", "2/3 < 1", "2/3 * 9 < 9, so no", grade=5),
    "which way points go": line(
        "name", "negative", "negative", "name", "9 6 8",
        "y for the narrowest spaces: 9, 8", "y for the widest spaces: 6, 8", "y is less for wider spaces, so negative", grade=8,
    ) | {"relation": "x = Max(6 + 8, 9 + 8)"},
    "where a point goes against the rest": line(
        "name", "Trial 3", "Trial 3", "name", "19 15 16 8",
        "y from left to right: 19, 15, 16, 8", "y goes up only from 15 to 16, so Trial 3", grade=8,
    ) | {"relation": "x = Max(15 - 19, 16 - 15, 8 - 16)"},
    "odd": line("truth", "true", "Yes", "truth", "17", "8 + 8 + 1 = 17", "17 is odd, so yes", grade=2),
}  # fmt: skip


def faults(problem: dict[str, Any]) -> list[str]:
    """What the audit says of a board; whether its equalities are true is checked elsewhere."""
    return list(board_faults(problem))


@pytest.mark.parametrize("name", BOARDS)
def test_a_good_board_has_no_fault(name: str) -> None:
    assert faults(BOARDS[name]) == []


@pytest.mark.parametrize("name", BOARDS)
def test_a_number_in_words_that_is_one_more_is_named(name: str) -> None:
    problem = BOARDS[name]
    passed = []
    for place, text in enumerate(problem["steps"]):
        if re.fullmatch(r"\d+ [-+*/] \d+ = \d+", text) or text in ("8 + 8 + 1 = 17", "2/3 * 9 < 9, so no", "2/3 < 1"):
            continue  # an equality, or a rate that is another and as small
        for found in re.finditer(r"\d+", text.partition(", so Trial")[0]):
            altered = f"{text[: found.start()]}{int(found[0]) + 1}{text[found.end() :]}"
            steps = [*problem["steps"][:place], altered, *problem["steps"][place + 1 :]]
            if not faults({**problem, "steps": steps}):
                passed.append(altered)
    assert passed == []


@pytest.mark.parametrize("name", BOARDS)
def test_a_board_without_its_last_line_is_named(name: str) -> None:
    problem = BOARDS[name]
    assert faults({**problem, "steps": problem["steps"][:-1]})


@pytest.mark.parametrize(
    ("name", "steps"),
    [
        ("compared", ["6 > 8 > 9, so Trial 2"]),
        ("compared", ["6 < 8 < 9, so Trial 3"]),
        ("in order", ["in order: 9, 8, 6", "the middle number is 8"]),
        ("of a set", ["5/8 = 5/8"]),
        ("of a set", ["5 / 8 = 5/8"]),
        ("product", ["2/3 > 1", "2/3 * 9 > 9, so no"]),
        ("where a point goes against the rest", ["y from left to right: 19, 15, 16, 8", "y goes down only from 16 to 8, so Trial 3"]),
        ("where a point goes against the rest", ["y from left to right: 8, 16, 15, 19", "y goes up only from 15 to 19, so Trial 3"]),
        ("odd", ["8 + 8 + 1 = 17", "17 is even, so yes"]),
        ("rounded", ["36 = 36"]),
        ("rounded", ["36 is between 30 and 40", "36 is nearer to 30"]),
        ("of a set", ["36 is between 30 and 40", "36 is nearer to 40"]),
    ],
)
def test_a_board_that_says_what_is_not_so_is_named(name: str, steps: list[str]) -> None:
    assert faults({**BOARDS[name if name in BOARDS else f"a {name}"], "steps": steps})
