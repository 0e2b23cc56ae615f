"""Number to text."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sympy import Rational

from mathgen.exact.forms import (
    decimal,
    decimal_places,
    fraction,
    fraction_over,
    mixed,
    money,
    percent,
    percent_rounded,
    period,
    ratio,
    repeating,
    simplest_ratio,
)
from mathgen.exact.parse import written

RATIONALS = st.builds(Rational, st.integers(-5000, 5000), st.integers(1, 120))

# fraction, decimal, exact percent, percent to a whole, percent to a tenth
EQUIVALENTS = """
1/2 0.5 50 50 50.0
1/3 0.(3) 33_1/3 33 33.3
2/3 0.(6) 66_2/3 67 66.7
1/4 0.25 25 25 25.0
3/4 0.75 75 75 75.0
1/5 0.2 20 20 20.0
2/5 0.4 40 40 40.0
3/5 0.6 60 60 60.0
4/5 0.8 80 80 80.0
1/6 0.1(6) 16_2/3 17 16.7
5/6 0.8(3) 83_1/3 83 83.3
1/8 0.125 12_1/2 13 12.5
3/8 0.375 37_1/2 38 37.5
5/8 0.625 62_1/2 63 62.5
7/8 0.875 87_1/2 88 87.5
1/10 0.1 10 10 10.0
3/10 0.3 30 30 30.0
7/10 0.7 70 70 70.0
9/10 0.9 90 90 90.0
1/12 0.08(3) 8_1/3 8 8.3
5/12 0.41(6) 41_2/3 42 41.7
7/12 0.58(3) 58_1/3 58 58.3
11/12 0.91(6) 91_2/3 92 91.7
1/16 0.0625 6_1/4 6 6.3
3/16 0.1875 18_3/4 19 18.8
5/16 0.3125 31_1/4 31 31.3
7/16 0.4375 43_3/4 44 43.8
9/16 0.5625 56_1/4 56 56.3
11/16 0.6875 68_3/4 69 68.8
13/16 0.8125 81_1/4 81 81.3
15/16 0.9375 93_3/4 94 93.8
"""
A051626 = [
    *[0, 0, 1, 0, 0, 1, 6, 0, 1, 0, 2, 1, 6, 6, 1, 0, 16, 1, 18, 0, 6, 2, 22, 1, 0, 6, 3, 6, 28, 1, 15, 0, 2, 16, 6, 1, 3, 18, 6, 0],
    *[5, 6, 21, 2, 1, 22, 46, 1, 42, 0],
]
A051628 = [
    *[0, 1, 0, 2, 1, 1, 0, 3, 0, 1, 0, 2, 0, 1, 1, 4, 0, 1, 0, 2, 0, 1, 0, 3, 2, 1, 0, 2, 0, 1, 0, 5, 0, 1, 1, 2, 0, 1, 0, 3],
    *[0, 1, 0, 2, 1, 1, 0, 4, 0, 2],
]
A003592 = [1, 2, 4, 5, 8, 10, 16, 20, 25, 32, 40, 50, 64, 80, 100, 125, 128, 160, 200, 250, 256, 320, 400, 500, 512, 625, 640, 800, 1000]


@pytest.mark.parametrize("row", EQUIVALENTS.split("\n")[1:-1])
def test_the_equivalents_table_comes_out(row):
    """Eighths and sixteenths: Cosgrove, Principles and Practice of Plumbing, Table LXIII; the rest of the table recomputed by hand.

    Percents 1/3, 1/6, 5/6 and the eighths are printed in a teacher's class list of percent equivalents (April 2011).
    """
    text, endless, exact, whole, tenth = row.split()
    x = Rational(text)
    start, block = repeating(x)
    assert endless == (f"{start}({block})" if block else start)
    assert mixed(x * 100) == exact.replace("_", " ")
    assert written(percent(x)).value == x
    assert percent_rounded(x, 0) == f"{whole}%"
    assert percent_rounded(x, 1) == f"{tenth}%"


def test_lengths_of_repeating_blocks():
    """OEIS A051626, n = 1 to 50 (0 where 1/n ends)."""
    assert [period(n)[1] for n in range(1, 51)] == A051626


def test_digits_before_the_repeating_block():
    """OEIS A051628, n = 1 to 50."""
    assert [period(n)[0] for n in range(1, 51)] == A051628


def test_decimals_end_for_twos_and_fives_only():
    """OEIS A003592, to 1000."""
    assert [n for n in range(1, 1001) if decimal_places(Rational(1, n)) is not None] == A003592


@pytest.mark.parametrize(
    ("denominator", "start", "block"),
    [(7, "0.", "142857"), (17, "0.", "0588235294117647"), (19, "0.", "052631578947368421"), (12, "0.08", "3"), (6, "0.1", "6")],
)
def test_printed_blocks(denominator, start, block):
    """Examples of OEIS A051626."""
    assert repeating(Rational(1, denominator)) == (start, block)


@pytest.mark.parametrize(("order", "length"), [(1, 2), (2, 3), (3, 5), (5, 11), (10, 33), (20, 129)])
def test_different_fractions_are_as_many_as_the_farey_lengths(order, length):
    """OEIS A005728: fractions from 0 to 1 with denominators to n."""
    assert len({fraction(Rational(a, b)) for b in range(1, order + 1) for a in range(b + 1)}) == length


@given(RATIONALS)
def test_each_form_is_exact(x):
    assert written(fraction(x)).value == x
    assert fraction(x) == str(x)
    assert written(fraction_over(x, 6 * x.denominator)).value == x
    assert (decimal_places(x) is None) == decimal(x).endswith("...")
    start, block = repeating(x)
    assert block or start == decimal(x)


@given(st.text("0123456789", max_size=3), st.text("0123456789", min_size=1, max_size=5))
def test_a_pupils_endless_decimal_can_be_read_only_one_way(before, block):
    x = written(f"0.{before}({block})").value
    assert written(decimal(x)).value == x


def test_the_block_is_written_once_more_where_two_turns_look_like_another_block():
    """0.0110 101 101 broken off is 0.01101 01101 as well."""
    x = written("0.0110(101)").value
    assert written("0.0110101101...").value == written("0.(01101)").value != x
    assert decimal(x) == "0.0110101101101..."
    assert written(decimal(x)).value == x


def test_mixed_numbers():
    assert [mixed(Rational(text)) for text in ("9/4", "-9/4", "3/4", "-3/4", "8/4", "0")] == ["2 1/4", "-2 1/4", "3/4", "-3/4", "2", "0"]


def test_decimals():
    assert decimal(Rational(-1, 8)) == "-0.125"
    assert decimal(Rational(1, 3)) == "0.333..."
    assert decimal(Rational(3, 11)) == "0.272727..."
    assert decimal(Rational(-5, 12)) == "-0.41666..."
    assert decimal(Rational(7)) == "7"
    assert decimal(Rational(7), 1) == "7.0"
    assert decimal(Rational(1, 20)) == "0.05"


def test_percents_money_and_ratios():
    assert [percent(Rational(text)) for text in ("3/4", "5/8", "5/12", "1/16", "9/4", "-1/3")] == [
        *("75%", "62.5%", "41 2/3%", "6.25%", "225%", "-33 1/3%")
    ]
    assert money(Rational(5)) == "$5.00"
    assert ratio(6, 8) == "6:8"
    assert simplest_ratio(34, 14) == "17:7"


@pytest.mark.parametrize(
    ("make", "args"),
    [
        (fraction_over, (Rational(3, 4), 10)),
        (fraction_over, (Rational(3, 4), 0)),
        (decimal, (Rational(1, 3), 2)),
        (decimal, (Rational(1, 8), 2)),
        (money, (Rational(1, 8),)),
        (simplest_ratio, (0, 0)),
        (period, (0,)),
    ],
)
def test_a_form_that_a_number_does_not_have_is_refused(make, args):
    with pytest.raises(ValueError, match=r"\w{3}"):
        make(*args)
