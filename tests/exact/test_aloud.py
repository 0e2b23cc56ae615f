"""Numbers said aloud."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sympy import Rational

from mathgen.exact.aloud import aloud
from mathgen.exact.forms import mixed
from mathgen.exact.parse import NotANumber, written

SAID = {
    "0": "zero",
    "12": "twelve",
    "1,234": "one thousand two hundred thirty-four",
    "1000000": "one million",
    "-3": "negative three",
    "−3/4": "negative three fourths",
    "3/12": "three twelfths",
    "1/2": "one half",
    "3/2": "three halves",
    "1/4": "one fourth",
    "3/4": "three fourths",
    "1/21": "one twenty-first",
    "21/100": "twenty-one hundredths",
    "4/1": "four over one",
    "7/120": "seven over one hundred twenty",
    "100/25": "one hundred over twenty-five",
    "¾": "three fourths",
    "2 1/4": "two and one fourth",
    "2½": "two and one half",
    "3 out of 4": "three out of four",
    "0.75": "seventy-five hundredths",
    ".75": "seventy-five hundredths",
    "0.1": "one tenth",
    "0.40": "forty hundredths",
    "2.5": "two and five tenths",
    "0.0625": "zero point zero six two five",
    "62.5%": "sixty-two point five percent",
    "75%": "seventy-five percent",
    "41 2/3%": "forty-one and two thirds percent",
    "17:7": "seventeen to seven",
    "3 to 4": "three to four",
    "$1.25": "one dollar and twenty-five cents",
    "$3": "three dollars",
    "25¢": "twenty-five cents",
    "0.41666...": "zero point four one, then six repeating",
    "0.(3)": "zero point three repeating",
    "0.3\u0305": "zero point three repeating",
    "0.416\u0305": "zero point four one, then six repeating",
    "0,75": "zero point seven five",
    "three fourths": "three fourths",
    "9 pins": "nine pins",
    "3/4 of the red pins": "three fourths of the red pins",
}


@pytest.mark.parametrize(("text", "said"), SAID.items())
def test_numbers_are_said_as_us_teachers_say_them(text, said):
    """Common practice, no source."""
    assert aloud(text) == said


@given(st.integers(0, 10**6), st.integers(0, 300), st.integers(1, 300))
def test_what_is_said_can_be_read_back(whole, top, bottom):
    assert written(aloud(str(whole))).value == whole
    assert written(aloud(f"{top}/{bottom}")).value == Rational(top, bottom)
    x = whole + Rational(top, bottom)
    assert written(aloud(mixed(x))).value == x


@given(st.integers(0, 10**6), st.integers(0, 6))
def test_decimals_and_percents_that_are_said_can_be_read_back(count, places):
    digits = str(count).zfill(places + 1)
    text = f"{digits[:-places]}.{digits[-places:]}" if places else digits
    assert written(aloud(text)).value == Rational(text)
    assert written(aloud(f"{text}%")).value == Rational(text) / 100


@pytest.mark.parametrize("text", ["", "pins", "1/0", "9999999999999", "1/9999999999999"])
def test_what_cannot_be_said_is_refused(text):
    with pytest.raises(NotANumber):
        aloud(text)
