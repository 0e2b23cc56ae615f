"""Rows and columns that sum up, told from groups with such a name."""

from __future__ import annotations

import pytest

from mathgen.trials.summing import Summed, judge

ONE = ((3,), (2,))
TWO = ((3, 1), (2, 1))


@pytest.mark.parametrize(
    ("label", "texts", "choices", "verdict"),
    [
        ("Totals", ("4", "3"), TWO, "sums up"),
        ("Totals", ("4", "2"), TWO, "unclear"),
        ("Totals", ("0", "1"), TWO, "group"),
        ("Totals", ("1", "2"), ONE, "group"),
        ("Totals", ("absent", ""), TWO, "no counts"),
        ("Totals", ("0", "1"), ((), ()), "group"),
        ("Means", ("2", "2"), TWO, "sums up"),
        ("Means", ("2", "1"), TWO, "sums up"),
        ("Means", ("2", "0"), TWO, "group"),
        ("Average", ("2.25", "0"), TWO, "sums up"),
        ("Percent", ("50%", "43%"), TWO, "sums up"),
        ("Percent", ("50", "43"), TWO, "unclear"),
        ("Max", ("3", "2"), TWO, "sums up"),
        ("Max", ("1", "1"), TWO, "group"),
        ("Minimum", ("1", "1"), TWO, "sums up"),
        ("Median", ("2", "1"), TWO, "sums up"),
        ("Range", ("2", "1"), TWO, "sums up"),
    ],
)
def test_the_numbers_tell_sums_from_groups(label: str, texts: tuple[str, ...], choices: tuple[tuple[int, ...], ...], verdict: str) -> None:
    cells = [Summed(text, (choice,)) for text, choice in zip(texts, choices, strict=True)]
    assert judge(label, cells) == verdict


def test_all_cells_must_sum_up_the_same_rows() -> None:
    first, second = (3, 1), (2, 2)
    assert judge("Total", [Summed("4", (first, (1,))), Summed("2", (second, (2,)))]) == "unclear"


def test_more_than_half_of_the_averages_right_is_unclear() -> None:
    cells = [Summed("2", ((3, 1),)), Summed("2", ((2, 2),)), Summed("5", ((0, 0),))]
    assert judge("Average", cells) == "unclear"
