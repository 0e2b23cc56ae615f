"""What the steps of a problem ask of a pupil's arithmetic."""

from itertools import product

import pytest

from mathgen.difficulty.numbers import borrows, carries, hardness


def test_a_carry_is_where_the_digits_of_the_sum_fall_short():
    """Each carry lowers the sum of digits by 9: Legendre's formula, from memory."""
    for one, other in product(range(120), repeat=2):
        digits = sum(map(int, f"{one}{other}"))
        assert carries(one, other) == (sum(map(int, str(one + other))) < digits)


def test_a_difference_borrows_where_adding_back_carries():
    for rest, other in product(range(120), repeat=2):
        assert borrows(rest + other, other) == carries(rest, other)


@pytest.mark.parametrize(
    ("step", "hard"),
    [
        ("15 + 17 = 32", True),
        ("12 + 17 = 29", False),
        ("32 - 17 = 15", True),
        ("38 - 17 = 21", False),
        ("12/12 - 9/12 = 3/12", True),
        ("8/8 - 3/8 = 5/8", False),
        ("1 - 9/12 = 3/12", True),
        ("4 * 8 = 32", False),
    ],
)
def test_carries_and_borrows_are_found_in_counts_and_in_tops(step, hard):
    assert hardness((step,), "1").carry_or_borrow is hard


@pytest.mark.parametrize(
    ("step", "hard"),
    [
        ("4 * 8 = 32", False),
        ("10 * 10 = 100", False),
        ("4 * 12 = 48", True),
        ("1 * 12 = 12", False),
        ("72 / 9 = 8", False),
        ("72 / 6 = 12", True),
        ("96 / 12 = 8", True),
    ],
)
def test_products_and_quotients_beyond_the_facts(step, hard):
    assert hardness((step,), "1").beyond_facts is hard


@pytest.mark.parametrize(
    ("step", "hard"),
    [("3/4 * 12 = 9", False), ("75/100 * 40 = 30", False), ("3/4 * 10 = 7 1/2", True), ("17 / 4 = 17/4", True), ("16 / 4 = 4", False)],
)
def test_ratios_that_are_not_whole(step, hard):
    assert hardness((step,), "1").not_whole_ratio is hard


def test_to_put_down_a_ratio_is_no_division_whichever_number_is_greater():
    assert not hardness(("17 / 7 = 17/7",), "17:7").not_whole_ratio
    assert not hardness(("7 / 17 = 7/17",), "7:17").not_whole_ratio


def test_decimals_of_unequal_length():
    assert hardness(("0.35 + 0.4 = 0.75",), "0.75").unequal_places
    assert not hardness(("0.35 + 0.40 = 0.75",), "0.75").unequal_places


def test_a_repeating_result_is_one_only_where_a_decimal_or_percent_is_asked():
    assert hardness(("5 / 12 = 5/12",), "0.42").result_repeats
    assert hardness(("5 / 12 = 5/12",), "41.7%").result_repeats
    assert not hardness(("5 / 12 = 5/12",), "5/12").result_repeats
    assert not hardness(("5 / 8 = 5/8",), "62.5%").result_repeats


def test_percents_of_steps_and_answer_are_found_once_each():
    assert hardness(("75% = 75/100", "75/100 * 40 = 30"), "30").percents == ((7500, 100),)
    assert hardness(("3/8 = 37.5%",), "37.5%").percents == ((37500, 1000),)
