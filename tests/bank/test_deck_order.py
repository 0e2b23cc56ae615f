"""The order in which a deck's rows lie."""

from __future__ import annotations

from random import Random

from sympy import Integer

from mathgen.bank.check_sets import Row
from mathgen.bank.deck import make_deck
from mathgen.bank.deck_order import APART, apart
from mathgen.bank.deck_plan import DeckPlan
from mathgen.exact.demand import Demand
from mathgen.problems.record import Answer, Problem
from tests.tables import TWO_GROUPS


def rows(*answers: tuple[int, ...]) -> list[Row]:
    one: Problem = make_deck(TWO_GROUPS, DeckPlan((2,), count=1)).problems[0]

    def with_answer(number: int) -> Problem:
        shown = str(number)
        return one._replace(answer=Answer("number", Integer(number), shown, shown, (shown,), Demand("any")))

    return [Row(tuple(with_answer(number) for number in row), 0) for row in answers]


def order(found: list[Row] | None) -> list[int]:
    assert found is not None
    return [int(problem.answer.shown) for row in found for problem in row.problems]


def test_rows_are_shuffled_until_the_same_answers_are_far_apart_and_a_short_row_stays_last() -> None:
    made = order(apart(rows((1, 2, 3, 4), (1, 5, 6, 7), (8, 9, 10, 11), (12, 13, 14, 15), (16, 17)), Random("rows")))
    assert sorted(made) == sorted([1, *range(1, 18)])
    first, second = (place for place, answer in enumerate(made) if answer == 1)
    assert second - first >= APART
    assert made[-2:] == [16, 17]


def test_rows_that_are_right_keep_their_order() -> None:
    given = rows((1, 2, 3, 4), (5, 6, 7, 8), (1, 9, 10, 11))
    assert apart(given, Random("rows")) == given


def test_no_order_is_found_where_one_row_has_an_answer_twice() -> None:
    assert apart(rows((1, 1, 2, 3), (4, 5, 6, 7)), Random("rows")) is None
