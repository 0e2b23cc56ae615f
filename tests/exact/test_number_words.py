"""Numbers in words."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from mathgen.exact.number_words import LARGEST, cardinal, part_name, read_cardinal, read_part_name


def taken_apart(words):
    return tuple(words.replace("-", " ").split())


@given(st.integers(0, LARGEST))
def test_cardinals_read_back(number):
    assert read_cardinal(taken_apart(cardinal(number))) == number


@pytest.mark.parametrize("denominator", [*range(2, 100), 100, 1000, 10_000, 100_000, 1_000_000])
def test_part_names_read_back(denominator):
    for many in (False, True):
        assert read_part_name(taken_apart(part_name(denominator, many))) == denominator


def test_the_irregular_names():
    """Common practice, no source."""
    names = [part_name(n, many=False) for n in (2, 3, 4, 5, 8, 9, 12, 20, 22, 33, 40, 99)]
    said = "half third fourth fifth eighth ninth twelfth twentieth twenty-second thirty-third fortieth ninety-ninth"
    assert names == said.split()


def test_ill_formed_words_are_no_number():
    for words in ("", "five two", "hundred", "one hundred and five", "twenty twelve", "zero five", "pins"):
        assert read_cardinal(tuple(words.split())) is None


@pytest.mark.parametrize("number", [-1, LARGEST + 1])
def test_numbers_without_words_are_refused(number):
    with pytest.raises(ValueError, match="no words"):
        cardinal(number)


def test_odd_denominators_have_no_part_name():
    assert [part_name(n, many=True) for n in (0, 1, 101, 120)] == [None] * 4
