"""Decks keep to their constraints: proved, different, telling nothing of one another, mixed in kind and level."""

from __future__ import annotations

import itertools
from collections import Counter
from functools import cache

import pytest

from mathgen.asks.expression import Op, Quantity, Value
from mathgen.bank.deck import DeckMaker, make_deck
from mathgen.bank.deck_order import APART
from mathgen.bank.deck_plan import ChosenDeck, DeckPlan
from mathgen.errors import RequestFault
from mathgen.proof import by_sum
from mathgen.proof.judge import proved
from mathgen.proof.raw import RawRows
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.table import TrialTable
from tests.tables import TWO_GROUPS

SAMPLES = ("main", "small-sets")
GRADES: tuple[tuple[int, ...], ...] = ((1,), (2,), (3,), (4,), (5,), (6,), (7,), (8,), (3, 4, 5))


@cache
def table_of(sample: str) -> TrialTable:
    return read_table(f"samples/{sample}.csv", ReadOptions()).table


@cache
def deck(sample: str, grades: tuple[int, ...]) -> ChosenDeck:
    return make_deck(table_of(sample), DeckPlan(grades))


everywhere = pytest.mark.parametrize(("sample", "grades"), [(sample, grades) for sample in SAMPLES for grades in GRADES])


@everywhere
def test_the_main_samples_fill_a_deck_and_a_thinner_one_is_said(sample: str, grades: tuple[int, ...]) -> None:
    made = deck(sample, grades)
    assert len(made.cards) == 24 or any("24 cards were wanted" in change for change in made.changes)
    assert sample != "main" or len(made.cards) == 24
    assert [card.number for card in made.cards] == list(range(1, len(made.cards) + 1))
    assert sum(made.rows) == len(made.cards)
    assert all(proved(problem) for problem in made.problems)


@everywhere
def test_no_two_cards_are_alike(sample: str, grades: tuple[int, ...]) -> None:
    problems = deck(sample, grades).problems
    assert max(Counter((problem.model, problem.frame) for problem in problems).values()) == 1
    assert len({problem.ask for problem in problems}) == len(problems)
    assert len({problem.model for problem in problems}) * 5 >= len(problems) * 2
    assert len({problem.level for problem in problems}) == 3


@everywhere
def test_no_card_tells_a_fraction_of_a_set_whose_count_another_asks(sample: str, grades: tuple[int, ...]) -> None:
    """ "9/12 of the 12 pins" tells the 9 pins; so do the 3 that were left standing."""
    problems = deck(sample, grades).problems
    for one, other in itertools.permutations(problems, 2):
        tops = [given.expr.args[0] if isinstance(given.expr, Op) and given.expr.symbol == "/" else given.expr for given in one.givens]
        told = {top.scope for top in tops if isinstance(top, Quantity) and top.measure in ("down", "standing")}
        own = {given.scope for given in other.givens}
        goal = other.ask.goal
        if isinstance(goal, Value) and isinstance(goal.expr, Quantity) and goal.expr.measure == "down" and goal.expr.scope not in own:
            assert goal.expr.scope not in told, (one.text, other.text)


@everywhere
def test_the_same_answer_lies_far_apart_and_at_most_twice(sample: str, grades: tuple[int, ...]) -> None:
    places: dict[str, list[int]] = {}
    for card in deck(sample, grades).cards:
        if card.problem.answer.kind not in ("name", "truth"):
            places.setdefault(card.problem.answer.shown, []).append(card.number)
    assert all(len(numbers) <= 2 for numbers in places.values())
    assert all(numbers[-1] - numbers[0] >= APART for numbers in places.values() if len(numbers) == 2)


@everywhere
def test_no_cards_words_or_cells_print_what_another_asks(sample: str, grades: tuple[int, ...]) -> None:
    problems = deck(sample, grades).problems
    for problem in problems:
        told = {given.expr for other in problems if other is not problem for given in other.givens}
        assert getattr(problem.ask.goal, "expr", None) not in told


@everywhere
def test_every_check_line_is_proved_and_some_cards_have_one(sample: str, grades: tuple[int, ...]) -> None:
    made = deck(sample, grades)
    assert made.sets
    rows = RawRows(table_of(sample))
    for one in made.sets:
        assert by_sum.verdict(one.line, one.first, made.problems[one.first - 1 : one.last], rows) == "agrees"
        assert one.first - 1 in {sum(made.rows[:at]) for at in range(len(made.rows))}


def test_grades_share_a_mixed_deck_evenly() -> None:
    assert Counter(problem.grade for problem in deck("main", (3, 4, 5)).problems) == {3: 8, 4: 8, 5: 8}


def test_a_deck_of_one_grade_is_mostly_its_own() -> None:
    for grade in range(1, 8):
        own = sum(problem.grade == grade for problem in deck("main", (grade,)).problems)
        assert own >= 18


def test_a_thin_table_gives_fewer_cards_and_says_so() -> None:
    made = make_deck(TWO_GROUPS, DeckPlan((1,), count=60))
    assert 0 < len(made.cards) < 60
    assert any("60 cards were wanted" in change for change in made.changes)


def test_the_same_seed_gives_the_same_deck_and_another_another() -> None:
    again = make_deck(table_of("main"), DeckPlan((4,)))
    assert again == deck("main", (4,))
    other = make_deck(table_of("main"), DeckPlan((4,), seed=2))
    assert other.mark != again.mark
    assert other.problems != again.problems


def test_problems_left_out_do_not_come_again() -> None:
    maker = DeckMaker(table_of("main"), DeckPlan((4,)))
    first = maker.make()
    maker.leave_out(list(first.problems[:3]))
    second = maker.make()
    assert len(second.cards) == 24
    assert not set(first.problems[:3]) & set(second.problems)


def test_what_is_asked_elsewhere_is_on_no_card() -> None:
    first = deck("main", (4,))
    asked = frozenset(problem.ask for problem in first.problems)
    other = DeckMaker(table_of("main"), DeckPlan((4,)), elsewhere=asked).make()
    assert len(other.cards) == 24
    assert not asked & {problem.ask for problem in other.problems}


def test_wishes_are_kept() -> None:
    topics = make_deck(table_of("main"), DeckPlan((5,), topics=("decimals",)))
    assert len({problem.model for problem in topics.problems}) > 2


def test_a_list_gets_no_card_and_the_refusal_says_so() -> None:
    """Every factor pair of a number is a list."""
    with pytest.raises(RequestFault, match="a list, for which no card has room"):
        make_deck(table_of("main"), DeckPlan((4,), skills=("factor pairs",)))
