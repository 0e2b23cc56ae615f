"""The scale of a graph: how many things one of its numbered lines stands for, and what a pupil gets who counts each line as 1."""

from __future__ import annotations

from collections.abc import Sequence

from sympy import Rational

UNIT_LINES = 30  # up to here a fine line for every pin can be told apart; beyond it each bar carries its number
_STEPS = (1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500, 1000)


def scale_step(highest: int, grade: int, large_print: bool = False) -> int:
    """How many pins one line of the scale stands for: single units in grade 2 (2.MD.D.10), then at most 10 lines, 6 in large print.

    >>> scale_step(14, 2), scale_step(14, 4), scale_step(37, 4), scale_step(9, 4, large_print=True)
    (1, 2, 5, 2)
    """
    lines = 20 if grade <= 2 else 6 if large_print else 10
    return next((step for step in _STEPS if highest <= lines * step), 10 * (highest // 80 + 1))


def scale_top(highest: int, step: int) -> int:
    """The scale's highest line, over the tallest bar."""
    return step * (highest // step + 1)


def lines_as_ones(read: Sequence[int], highest: int, grade: int, answer: Rational | str) -> tuple[tuple[str, tuple[int, ...]], ...]:
    """The slip J01 with its numbers, where each bar that is read ends at a numbered line and the answer is a sum or difference of them."""
    step = scale_step(highest, grade)
    if step == 1 or scale_top(highest, step) > UNIT_LINES or any(number % step for number in read):
        return ()
    if isinstance(answer, str) or answer.denominator != 1 or answer % step:
        return ()
    return (("J01", (int(answer), step)),)
