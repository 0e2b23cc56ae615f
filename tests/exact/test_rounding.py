"""Rounding half up."""

from math import gcd

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sympy import Rational

from mathgen.exact.parse import written
from mathgen.exact.rounding import rounded, rounded_text, ties

RATIONALS = st.builds(Rational, st.integers(-5000, 5000), st.integers(1, 400))

# numerator over 64 or less, as printed to four places
POCKETBOOK = {
    **{"1/32": ".0313", "3/32": ".0938", "5/32": ".1563", "7/32": ".2188", "9/32": ".2813"},
    **{"1/16": ".0625", "3/16": ".1875", "1/8": ".1250", "1/4": ".2500"},
}


@pytest.mark.parametrize(("fraction", "printed"), POCKETBOOK.items())
def test_four_places_as_the_pocketbook_prints_them(fraction, printed):
    """International Correspondence Schools, The Building Trades Pocketbook, decimal equivalents of 64ths (halves go up)."""
    assert rounded_text(Rational(fraction), 4) == f"0{printed}"


@pytest.mark.parametrize(
    ("part", "whole", "percent"),
    [(1198, 2691, "44.5"), (557, 1835, "30.4")],
)
def test_published_percents_come_out(part, whole, percent):
    """R manual, package datasets, UCBAdmissions (Bickel, Hammel & O'Connell 1975)."""
    assert rounded_text(Rational(100 * part, whole), 1) == percent


def test_percent_change_of_a_fee():
    """From $26 to $36: 38.5% to the nearest tenth, after OpenStax Prealgebra."""
    assert rounded_text(Rational(100 * (36 - 26), 26), 1) == "38.5"


def test_halves_go_away_from_zero_where_built_in_rounding_goes_to_even():
    """2.5 -> 3 and 0.125 -> 0.13, common practice in US schools."""
    assert [rounded(Rational(n, 2), 0) for n in (1, 3, 5, -1, -3, -5)] == [1, 2, 3, -1, -2, -3]
    assert rounded_text(Rational(1, 8), 2) == "0.13"
    assert rounded_text(Rational(5, 8), 2) == "0.63"
    assert rounded_text(Rational(-1, 8), 2) == "-0.13"


def test_zeros_are_kept_and_no_minus_stands_before_zero():
    assert rounded_text(Rational(4, 5), 2) == "0.80"
    assert rounded_text(Rational(3), 1) == "3.0"
    assert rounded_text(Rational(-1, 1000), 2) == "0.00"
    assert rounded_text(Rational(1, 1000), 2) == "0.00"
    assert rounded_text(Rational(149), -2) == "100"
    assert rounded_text(Rational(150), -2) == "200"


@given(RATIONALS, st.integers(-2, 5))
def test_the_rounded_number_is_the_nearest_and_ties_go_outward(x, places):
    step = Rational(10) ** -places
    near = rounded(x, places)
    assert (near / step).denominator == 1
    assert abs(near - x) <= step / 2
    assert ties(x, places) == (abs(near - x) == step / 2)
    if ties(x, places):
        assert abs(near) > abs(x)


@given(RATIONALS, st.integers(0, 5))
def test_rounded_text_reads_back_with_its_places(x, places):
    number = written(rounded_text(x, places))
    assert (number.value, number.places) == (rounded(x, places), places)


@pytest.mark.parametrize(
    ("places", "bottoms"),
    [(1, {4, 20}), (2, {8, 40, 200}), (3, {16, 80, 400, 2000})],
)
def test_ties_stand_over_few_denominators(places, bottoms):
    """In lowest terms only fractions over 4 or 20 tie at tenths, over 8, 40 or 200 at hundredths, and so on.

    A tie at tenths is an odd number of twentieths, so in lowest terms it stands over a divisor of 20 that 10 is no multiple of.
    """
    assert {d for d in range(1, 2001) if any(ties(Rational(k, d), places) for k in (1, 3, 7) if gcd(k, d) == 1)} == bottoms
