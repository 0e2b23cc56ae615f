"""Route 1 alone: true, made of what is known, of use, and ending in the answer in its form."""

from __future__ import annotations

import pytest

from mathgen.proof.by_steps.equalities import follow
from mathgen.proof.step_numbers import NotTrue


def test_steps_lead_from_the_givens_to_the_end() -> None:
    assert follow(("2 + 2 + 5 = 9", "12 - 9 = 3"), ("12", "2", "5"), 3, ((3, 1),)) == ((9, 1), (3, 1))


@pytest.mark.parametrize(
    ("steps", "givens", "operations", "ends", "why"),
    [
        (("2 + 2 = 5",), ("2",), 1, ((5, 1),), "not true"),
        (("2 + 3 = 5",), ("2",), 1, ((5, 1),), "nobody gave"),
        (("2 + 11 = 13",), ("2",), 1, ((13, 1),), "nobody gave"),
        (("2 + 2 = 4", "2 + 2 + 2 = 6"), ("2",), 3, ((6, 1),), "leads nowhere"),
        (("2 + 2 = 4",), ("2",), 2, ((4, 1),), "2 operations, but steps for 1"),
        (("2 + 2 * 2 = 6",), ("2",), 2, ((6, 1),), "mixes operations"),
        (("4 / 0 = 4",), ("4", "0"), 1, ((4, 1),), "divides by zero"),
        (("4 + 4",), ("4",), 1, ((8, 1),), "no equality"),
    ],
)
def test_a_step_is_refused(
    steps: tuple[str, ...], givens: tuple[str, ...], operations: int, ends: tuple[tuple[int, int], ...], why: str
) -> None:
    with pytest.raises(NotTrue, match=why):
        follow(steps, givens, operations, ends)


def test_one_whole_needs_no_giving() -> None:
    assert follow(("12/12 - 9/12 = 3/12",), ("9/12",), 1, ((1, 4),)) == ((1, 4),)


@pytest.mark.parametrize("step", ["|-3| = -3", "-(3) = 3", "|-3| = 4", "-(-3) = -3"])
def test_an_absolute_value_or_an_opposite_that_is_wrong_is_not_true(step: str) -> None:
    with pytest.raises(NotTrue):
        follow((step,), ("3", "-3"), 0, ((3, 1), (-3, 1), (4, 1)))
