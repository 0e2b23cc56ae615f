"""Numbers of printed steps are read as pairs."""

from __future__ import annotations

import pytest

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


@pytest.mark.parametrize(
    ("text", "pair"), [("-4", (-4, 1)), ("0.333...", (1, 3)), ("0.41666...", (5, 12)), ("4.166...", (25, 6)), ("0.3636...", (4, 11))]
)
def test_numbers_below_zero_and_repeating_decimals_are_read(text: str, pair: tuple[int, int]) -> None:
    assert number(text) == pair
