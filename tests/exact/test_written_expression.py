"""One way of writing an expression; worked by hand, no published source."""

import pytest

from mathgen.exact.written_expression import one_way


@pytest.mark.parametrize(
    ("text", "other"),
    [
        ("(2 + 11) × 4", "4(11+2)"),
        ("4x7+4n", "4n + 7 × 4"),
        ("12 - n", "12-n"),
        ("((3 + 4)) * 5", "5 x (4 + 3)"),
        ("n", "(n)"),
        ("007", "7"),
    ],
)
def test_signs_blanks_and_order_do_not_matter(text: str, other: str) -> None:
    assert one_way(text) == one_way(other) is not None


@pytest.mark.parametrize(
    ("text", "other"),
    [("(2 + 11) × 4", "2 + 11 × 4"), ("12 - n", "n - 12"), ("3 × 4 + 3 × 5", "3(4 + 5)"), ("8n", "8 + n")],
)
def test_another_expression_stays_another_even_of_equal_value(text: str, other: str) -> None:
    assert one_way(text) != one_way(other)


@pytest.mark.parametrize("text", ["", "4 +", "(4 + 5", "4 + 5)", "* 4", "4 / 5", "4 ++ 5", "yes!"])
def test_what_is_no_expression_has_no_way(text: str) -> None:
    assert one_way(text) is None
