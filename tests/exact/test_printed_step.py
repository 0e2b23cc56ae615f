"""Printed numbers and steps, read with their forms."""

import pytest

from mathgen.exact.printed_step import UnreadableStepError, _plain_step, _Reader, printed_number, printed_step, repeat_length


@pytest.mark.parametrize(
    ("text", "kind", "value"),
    [
        ("3", "whole", (3, 1)),
        ("1,234", "whole", (1234, 1)),
        ("-2", "whole", (-2, 1)),
        ("9/12", "fraction", (9, 12)),
        ("2 1/4", "mixed", (9, 4)),
        ("0.75", "decimal", (75, 100)),
        (".7", "decimal", (7, 10)),
        ("0.8(3)", "decimal", (75, 90)),
        ("75%", "whole", (75, 100)),
        ("62.5%", "decimal", (625, 1000)),
        ("41 2/3%", "mixed", (125, 300)),
    ],
)
def test_numbers_keep_form_and_value(text, kind, value):
    number = printed_number(text)
    assert number.kind == kind
    assert number.top * value[1] == value[0] * number.bottom
    assert number.percent == text.endswith("%")


@pytest.mark.parametrize("text", ["Owls", "", ".", "3/0", "1 2", "7 of 8", "Group 7"])
def test_what_is_no_number_is_none(text):
    assert printed_number(text) is None


def test_the_written_denominator_is_kept():
    assert printed_number("5/10").written_bottom == 10
    assert printed_step("1 - 9/12 = 3/12").operations[0].result.written_bottom == 12


def test_spaces_tell_a_division_from_a_fraction():
    assert [operation.symbol for operation in printed_step("17 / 4 = 4 1/4").operations] == ["/"]
    assert printed_step("17/4 = 4 1/4").operations == ()


def test_products_come_before_sums_and_brackets_before_both():
    assert printed_step("2 + 3 * 4 = 14").operations[-1].result.top == 14
    bracket = printed_step("(8 + 9) / 2 = 8.5").operations[-1].result
    assert (bracket.top, bracket.bottom) == (17, 2)


@pytest.mark.parametrize("text", ["9/10 > 8/10", "3 +", "3", "", "4 / 0 = 0", "(3 + 4 = 7", "three = 3", "3 4 = 7"])
def test_what_is_no_equality_is_refused(text):
    with pytest.raises(UnreadableStepError):
        printed_step(text)


def test_repeating_blocks_have_the_published_lengths():
    """Lengths for bottoms up to 24: 1 for 3, 6, 9, 12, 15, 18, 24; 2 for 11, 22; 6 for 7, 14, 21; 16 for 17; 18 for 19; 22 for 23."""
    lengths = {bottom: repeat_length(1, bottom) for bottom in range(2, 25)}
    assert {bottom for bottom, length in lengths.items() if length == 0} == {2, 4, 5, 8, 10, 16, 20}
    assert {bottom for bottom, length in lengths.items() if length == 1} == {3, 6, 9, 12, 15, 18, 24}
    assert {bottom for bottom, length in lengths.items() if length == 2} == {11, 22}
    assert {bottom for bottom, length in lengths.items() if length == 6} == {7, 13, 14, 21}
    assert (lengths[17], lengths[19], lengths[23]) == (16, 18, 22)


@pytest.mark.parametrize(
    "text",
    [
        "3 + 2 + 4 = 9",
        "12 - 9 = 3",
        "3 * 12 = 36",
        "9 / 12 = 9/12",
        "12/12 - 9/12 = 3/12",
        "75% = 75/100",
        "75/100 * 40 = 30",
        "0.625 = 62.5%",
        "27 - 8 - 9 = 10",
        "17/3 = 5 2/3",
    ],
)
def test_the_short_way_reads_a_step_as_the_grammar_does(text: str) -> None:
    assert _plain_step(text) == _Reader(text).step()


def test_the_short_way_leaves_other_steps_to_the_grammar() -> None:
    for text in ("2 * (3 + 4) = 14", "1 1/2 + 1 1/2 = 3", "2 + 3 * 4 = 14", "5"):
        assert _plain_step(text) is None
