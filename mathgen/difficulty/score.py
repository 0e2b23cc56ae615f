"""The difficulty score: a sum of weights, in quarter points."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.difficulty.numbers import Hardness, hardness
from mathgen.difficulty.weights import Weights, weights

Structure = Literal[
    "whole unknown",
    "result unknown",
    "change unknown",
    "part unknown",
    "difference unknown",
    "compared unknown",
    "start unknown",
    "times",
    "part from rate",
    "part of a part",
    "what fraction",
    "which is greater",
    "whole from part",
    "percent change",
    "pooled rate",
    "statistic",
    "is it so",
    "remainder",
    "list",
]


class Features(NamedTuple):
    """What makes a problem easy or hard. No label is here: swapping names or colors cannot move the score."""

    structure: Structure
    clash: bool = False  # the words point to the wrong operation
    fewer: bool = False  # "fewer" or "less" rather than "more"
    extra_numbers: int = 0  # in the words, not needed
    operations: int = 1
    steps: tuple[str, ...] = ()
    answer: str = ""
    display: Literal["read", "between"] | None = None  # a table or graph: one value, or values compared
    words: int = 0
    explain: bool = False
    unlike: Literal["one divides", "neither"] | None = None  # denominators that are compared or added


def score(features: Features, grade: int) -> int:
    """The difficulty of a problem for a grade from 1 to 8.

    Args:
        features: what the problem asks of a pupil.
        grade: whose weights count.
    Returns:
        Quarter points, 0 or more; one point is meant as about one logit within a band of grades.
    Raises:
        RequestFault: there are no weights for the grade.
        UnreadableStepError: a step is no equality of printed numbers.

    >>> score(Features("whole unknown", steps=("3 + 4 = 7",), answer="7"), 2)
    0
    >>> score(Features("start unknown", clash=True, steps=("6 - 2 = 4",), answer="4"), 2)
    20
    """
    of = weights(grade)
    total = of.structure[features.structure]
    total += of.clash * features.clash + of.fewer * features.fewer
    total += of.extra_number * features.extra_numbers + of.operation * max(0, features.operations - 1)
    total += _numbers(hardness(features.steps, features.answer), of)
    if features.unlike is not None:
        total += of.one_bottom_divides if features.unlike == "one divides" else of.neither_bottom_divides
    if features.display is not None:
        total += of.display[features.display]
    total += of.ten_words * max(0, (features.words - of.median_words) // 10)
    return total + of.explain * features.explain


def _numbers(found: Hardness, of: Weights) -> int:
    easy = of.easy_percents
    hard_percent = any(top % bottom or top // bottom not in easy for top, bottom in found.percents)
    return (
        of.carry_or_borrow * found.carry_or_borrow
        + of.beyond_facts * found.beyond_facts
        + of.not_whole_ratio * found.not_whole_ratio
        + of.unequal_places * found.unequal_places
        + of.result_repeats * found.result_repeats
        + of.hard_percent * hard_percent
    )
