"""Route 1 alone: true, made of what is known, of use, and ending in the answer in its form."""

from __future__ import annotations

import pytest

from mathgen.proof.by_steps import follow
from mathgen.proof.step_numbers import NotTrue, number


@pytest.mark.parametrize(
    ("text", "pair"),
    [
        ("12", (12, 1)),
        ("9/12", (3, 4)),
        ("2 1/4", (9, 4)),
        ("0.75", (3, 4)),
        ("75%", (3, 4)),
        ("62.5%", (5, 8)),
        ("41 2/3%", (5, 12)),
        ("0", (0, 1)),
    ],
)
def test_numbers_are_read_as_pairs_in_lowest_terms(text: str, pair: tuple[int, int]) -> None:
    """62.5% = 5/8 and 41 2/3% = 5/12: table of equivalents (public-domain handbooks; computed)."""
    assert number(text) == pair


@pytest.mark.parametrize("text", ["", "x", "3/0", "1.2.3", "--4", "-", "0.(3)", "0.41...", "3 / 4"])
def test_what_is_no_number_is_not_true(text: str) -> None:
    with pytest.raises(NotTrue):
        number(text)


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


@pytest.mark.parametrize(
    ("text", "pair"), [("-4", (-4, 1)), ("0.333...", (1, 3)), ("0.41666...", (5, 12)), ("4.166...", (25, 6)), ("0.3636...", (4, 11))]
)
def test_numbers_below_zero_and_repeating_decimals_are_read(text: str, pair: tuple[int, int]) -> None:
    assert number(text) == pair


@pytest.mark.parametrize("step", ["|-3| = -3", "-(3) = 3", "|-3| = 4", "-(-3) = -3"])
def test_an_absolute_value_or_an_opposite_that_is_wrong_is_not_true(step: str) -> None:
    with pytest.raises(NotTrue):
        follow((step,), ("3", "-3"), 0, ((3, 1), (-3, 1), (4, 1)))
