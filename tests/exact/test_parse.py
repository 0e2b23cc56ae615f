"""Text to number."""

import pytest
from flint import fmpq
from hypothesis import given
from hypothesis import strategies as st
from sympy import Rational

from mathgen.exact import parse
from mathgen.exact.forms import decimal, mixed, money, percent, repeating
from mathgen.exact.parse import NotANumber, repeating_block, tidy, written

RATIONALS = st.builds(Rational, st.integers(-5000, 5000), st.integers(1, 120))

READINGS = [
    ("12", "12", "whole", 0, True),
    ("1,234", "1234", "whole", 0, True),
    ("1,234,567", "1234567", "whole", 0, True),
    ("12.", "12", "whole", 0, True),
    ("-7", "-7", "whole", 0, True),
    ("−7", "-7", "whole", 0, True),
    ("+7", "7", "whole", 0, True),
    ("007", "7", "whole", 0, True),
    ("３", "3", "whole", 0, True),
    ("twelve", "12", "whole", 0, True),
    ("one thousand two hundred", "1200", "whole", 0, True),
    ("3/4", "3/4", "fraction", None, True),
    ("6/8", "3/4", "fraction", None, False),
    ("9/4", "9/4", "fraction", None, True),
    ("4/1", "4", "fraction", None, False),
    ("0/4", "0", "fraction", None, False),
    ("3 / 4", "3/4", "fraction", None, True),
    ("3⁄4", "3/4", "fraction", None, True),
    ("3∕4", "3/4", "fraction", None, True),
    ("¾", "3/4", "fraction", None, True),
    ("-½", "-1/2", "fraction", None, True),
    ("³/₄", "3/4", "fraction", None, True),
    ("3 out of 4", "3/4", "fraction", None, True),
    ("6 of 8", "3/4", "fraction", None, False),
    ("3 out of the 4", "3/4", "fraction", None, True),
    ("three out of four", "3/4", "fraction", None, True),
    ("three fourths", "3/4", "fraction", None, True),
    ("Three-Fourths", "3/4", "fraction", None, True),
    ("three quarters", "3/4", "fraction", None, True),
    ("one half", "1/2", "fraction", None, True),
    ("a half", "1/2", "fraction", None, True),
    ("half", "1/2", "fraction", None, True),
    ("twenty-one hundredths", "21/100", "fraction", None, True),
    ("one twenty-first", "1/21", "fraction", None, True),
    ("six eighths", "3/4", "fraction", None, False),
    ("five over one hundred twenty-one", "5/121", "fraction", None, True),
    ("1 1/2", "3/2", "mixed", None, True),
    ("1-1/2", "3/2", "mixed", None, True),
    ("1 and 1/2", "3/2", "mixed", None, True),
    ("1 & 1/2", "3/2", "mixed", None, True),
    ("1½", "3/2", "mixed", None, True),
    ("1 ½", "3/2", "mixed", None, True),
    ("1³/₄", "7/4", "mixed", None, True),
    ("-2 1/4", "-9/4", "mixed", None, True),
    ("1 2/4", "3/2", "mixed", None, False),
    ("1 5/4", "9/4", "mixed", None, False),
    ("two and one fourth", "9/4", "mixed", None, True),
    (".75", "3/4", "decimal", 2, True),
    ("0.75", "3/4", "decimal", 2, True),
    ("0.750", "3/4", "decimal", 3, True),
    ("1,234.5", "2469/2", "decimal", 1, True),
    ("two point five", "5/2", "decimal", 1, True),
    ("75%", "3/4", "percent", 0, True),
    ("75％", "3/4", "percent", 0, True),
    ("75 percent", "3/4", "percent", 0, True),
    ("75 per cent", "3/4", "percent", 0, True),
    ("62.5 %", "5/8", "percent", 1, True),
    ("37 1/2%", "3/8", "percent", None, True),
    ("37½%", "3/8", "percent", None, True),
    ("37 2/4%", "3/8", "percent", None, False),
    ("sixty-two point five percent", "5/8", "percent", 1, True),
    ("33.333...%", "1/3", "percent", None, True),
    ("33.(3)%", "1/3", "percent", None, True),
    ("3:4", "3/4", "ratio", None, True),
    ("3 : 4", "3/4", "ratio", None, True),
    ("3∶4", "3/4", "ratio", None, True),
    ("3 to 4", "3/4", "ratio", None, True),
    ("6:8", "3/4", "ratio", None, False),
    ("3:1", "3", "ratio", None, True),
    ("0:3", "0", "ratio", None, False),
    ("seventeen to seven", "17/7", "ratio", None, True),
    ("0.3 repeating", "1/3", "repeating", None, True),
    ("0.33...", "1/3", "repeating", None, True),
    ("0.33…", "1/3", "repeating", None, True),
    (".3...", "1/3", "repeating", None, True),
    ("0.41666...", "5/12", "repeating", None, True),
    ("0.2727...", "3/11", "repeating", None, True),
    ("0.(3)", "1/3", "repeating", None, True),
    ("0.41(6)", "5/12", "repeating", None, True),
    ("0.3\u0305", "1/3", "repeating", None, True),
    ("0.416\u0305", "5/12", "repeating", None, True),
    ("0.2\u03057\u0305", "3/11", "repeating", None, True),
    ("0.999...", "1", "repeating", None, True),
    ("-1.(3)", "-4/3", "repeating", None, True),
    ("$1.25", "5/4", "money", 2, True),
    ("$ 3", "3", "money", 0, True),
    ("$.50", "1/2", "money", 2, True),
    ("-$1.25", "-5/4", "money", 2, True),
    ("$1,234.50", "2469/2", "money", 2, True),
    ("25¢", "1/4", "money", None, True),
    ("25 cents", "1/4", "money", None, True),
    ("1.25 dollars", "5/4", "money", 2, True),
    ("0,75", "3/4", "comma", 2, True),
    ("0,750", "3/4", "comma", 3, True),
    ("12,5", "25/2", "comma", 1, True),
    ("62,5%", "5/8", "comma", 1, True),
]
REFUSED = [
    *["", "   ", "abc", "pins", "-", "/", "%", "$", ".", "...", "?", "NaN", "inf", "1e5", "0x10", "٣", "1_000", "five two", "3 4"],
    *["1.2.3", "--3", "-$-3", "3/4/5", "1 - 1/2", "3/", "/4", "1 2 3/4", "3:4:5", "3//4", "0.5/2", "1.234,5", "1,23,456", "1 000"],
    *["1/0", "0/0", "2 1/0", "3:0", "0:0", "3 out of 0", "three over zero", "$3/4", "$5%", "$1.25¢", "0.5 of 2", "0.()", "0.(3)4"],
    *["0.3\u03056", "0.16...", "0.16 repeating", "0.142857...", "three hundred and", "and one half", "two and", "point five", "1/2 1/2"],
]


@pytest.mark.parametrize(("text", "value", "form", "places", "lowest"), READINGS)
def test_every_school_form_is_read(text, value, form, places, lowest):
    """Common practice in US classrooms, no source; the decimal comma is common practice elsewhere."""
    assert written(text)[:5] == (Rational(value), form, text, places, lowest)


def test_a_mixed_number_with_another_whole_in_its_fraction_is_told():
    said = ("1 1/2", "1 2/4", "1 5/4", "1 4/4", "1 0/4", "9/4", "one and two fourths", "one and five fourths")
    assert [written(one).proper for one in said] == [True, True, False, False, False, True, True, False]


@pytest.mark.parametrize("text", REFUSED)
def test_what_is_no_number_is_refused_with_a_reason(text):
    with pytest.raises(NotANumber, match=r"\w{3}"):
        written(text)


@pytest.mark.parametrize("text", ["3/0", "3:0", "4 1/0", "3 of 0"])
def test_division_by_zero_is_named(text):
    with pytest.raises(NotANumber, match="zero"):
        written(text)


def test_a_very_long_text_is_refused_before_it_is_read():
    with pytest.raises(NotANumber, match="too long"):
        written("9" * (parse.LONGEST + 1))


@given(st.text(alphabet="0123456789.,/:%$¢()- …½¾\u0305andofutrepignh", max_size=12))
def test_any_text_is_a_number_or_refused_and_nothing_else(text):
    try:
        number = written(text)
    except NotANumber:
        return
    assert isinstance(number.value, Rational)
    assert number.text == text


@given(st.integers(0, 9999), st.integers(1, 999))
def test_fractions_agree_with_flint(top, bottom):
    value, form, _, _, lowest, _ = written(f"{top}/{bottom}")
    reference = fmpq(top, bottom)
    assert (value.numerator, value.denominator, form) == (int(reference.p), int(reference.q), "fraction")
    assert lowest == (bottom > 1 and int(reference.q) == bottom)


@given(st.integers(0, 99), st.text("0123456789", max_size=4), st.text("0123456789", min_size=1, max_size=4))
def test_repeating_decimals_agree_with_flint(whole, before, block):
    """A block of m digits after k others is worth block over (10^m - 1) 10^k. From memory."""
    ends = fmpq(int(before or "0"), 10 ** len(before))
    reference = whole + ends + fmpq(int(block), (10 ** len(block) - 1) * 10 ** len(before))
    barred = "".join(digit + "\u0305" for digit in block)
    for text in (f"{whole}.{before}({block})", f"{whole}.{before}{barred}"):
        value = written(text).value
        assert (value.numerator, value.denominator) == (int(reference.p), int(reference.q))


@given(RATIONALS)
def test_what_is_written_reads_back(x):
    assert written(mixed(x)).value == x
    assert written(mixed(x)).lowest
    assert written(decimal(x)).value == x
    start, block = repeating(x)
    assert written(f"{start}({block})" if block else start).value == x
    assert written(percent(x)).value == x
    assert written(percent(x)).form == "percent"
    assert written(f"{x.numerator}:{x.denominator}").value == x


@given(st.integers(-(10**6), 10**6))
def test_money_and_grouped_thousands_read_back(count):
    assert written(money(Rational(count, 100))).value == Rational(count, 100)
    assert written(f"{count:,}")[:5] == (count, "whole", f"{count:,}", 0, True)


def test_the_shortest_account_of_the_digits_is_the_block():
    assert repeating_block("1212") == ("", "12")
    assert repeating_block("0909") == ("", "09")
    assert repeating_block("8333") == ("8", "3")
    assert repeating_block("27") is None


def test_plain_signs_are_left_alone():
    assert tidy("1 1/2") == "1 1/2"
    assert tidy("1\u00a01/2\t") == "1 1/2"
