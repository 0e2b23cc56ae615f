"""Products held against a factor, on a small table; every value, step and slip worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Choice, Op, Truth
from mathgen.exact.demand import Demand
from tests.models.asked import every_draft, problem, quantity, worked
from tests.tables import TWO_GROUPS

FIRST, LATER = quantity("down", "Owls", (1,)), quantity("down", "Owls", (2,))  # 9, then 6 pins
PRODUCT = Op("*", (Op("/", (LATER, FIRST)), FIRST))


@pytest.mark.parametrize(("test", "answer", "slips"), [(">", "No", {"S01": "Yes"}), ("<", "Yes", {"S01": "No"})])
def test_a_row_worked_by_hand(test: str, answer: str, slips: dict[str, str]) -> None:
    """2/3 × 9 is less than 9, for 2/3 is less than 1."""
    one = problem("product_against_factor", TWO_GROUPS, 5, Ask(Truth(PRODUCT, test, FIRST), (), Demand("truth")))
    assert worked(one) == (answer, "x = 6/9*9 - 9", ("2/3 * 9 = 6",), slips)
    assert one.standards == ("5.NF.B.5a",)


@pytest.mark.parametrize(
    ("most", "answer", "word", "slips"), [(True, "factor", "Max", {"S03": "product"}), (False, "product", "Min", {"S03": "factor"})]
)
def test_which_of_the_two_worked_by_hand(most: bool, answer: str, word: str, slips: dict[str, str]) -> None:
    """2/3 × 9 is the less, 9 the greater."""
    ask = Ask(Choice(("product", "factor"), (PRODUCT, FIRST), most), (), Demand("name"))
    one = problem("product_or_factor", TWO_GROUPS, 5, ask)
    assert worked(one) == (answer, f"x = {word}(6/9*9, 9)", ("2/3 * 9 = 6",), slips)
    assert one.standards == ("5.NF.B.5a",)


def test_the_fraction_is_neither_whole_nor_over_the_factor_itself() -> None:
    rates = [text for draft in every_draft("product_against_factor", TWO_GROUPS) for _, text in draft.rates]
    assert rates
    assert all("/" in text and not text.endswith("/1") for text in rates)
    for draft in every_draft("product_against_factor", TWO_GROUPS):
        first = draft.ask.goal.right
        assert int(draft.rates[0][1].partition("/")[2]) < sum(
            row.down
            for row in TWO_GROUPS.rows
            if row.group in (first.scope.groups or TWO_GROUPS.groups)
            and row.trial in first.scope.trials
            and row.color in (first.scope.colors or TWO_GROUPS.colors)
        )
