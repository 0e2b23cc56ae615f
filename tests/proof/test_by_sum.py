"""A check line is proved in two ways: what is wrong in the line, in an answer or in the table is found."""

from __future__ import annotations

from dataclasses import replace

import pytest
from sympy import Rational

from mathgen.bank.deck import make_deck
from mathgen.bank.deck_plan import CheckSet, ChosenDeck, DeckPlan
from mathgen.problems.record import Problem
from mathgen.proof.by_sum import verdict
from mathgen.proof.raw import RawRows
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.table import TrialTable


@pytest.fixture(scope="module")
def table() -> TrialTable:
    return read_table("samples/main.csv", ReadOptions()).table


@pytest.fixture(scope="module")
def deck(table: TrialTable) -> ChosenDeck:
    return make_deck(table, DeckPlan((6,)))


def of(deck: ChosenDeck, one: CheckSet) -> tuple[Problem, ...]:
    return deck.problems[one.first - 1 : one.last]


def test_every_line_of_a_deck_agrees_and_they_are_of_several_forms(deck: ChosenDeck, table: TrialTable) -> None:
    decks = [deck, *(make_deck(table, DeckPlan((grade,))) for grade in (4, 5))]
    assert all(len(one.sets) >= 3 for one in decks)
    assert any("/" in one.line for some in decks for one in some.sets)
    assert all(verdict(one.line, one.first, of(some, one), RawRows(table)) == "agrees" for some in decks for one in some.sets)


def test_a_wrong_total_is_found(deck: ChosenDeck, table: TrialTable) -> None:
    one = deck.sets[0]
    wrong = f"{one.line.rstrip('.')}1."
    assert "add up to" in verdict(wrong, one.first, of(deck, one), RawRows(table))


def test_other_cards_than_the_line_names_are_found(deck: ChosenDeck, table: TrialTable) -> None:
    one = deck.sets[0]
    assert "names other cards" in verdict(one.line, one.first + 1, of(deck, one), RawRows(table))
    assert "no check line" in verdict("Add the answers.", one.first, of(deck, one), RawRows(table))


def test_a_wrong_key_is_found_by_the_equations_though_the_line_fits_it(deck: ChosenDeck, table: TrialTable) -> None:
    one = deck.sets[0]
    first, *others = of(deck, one)
    wrong = first._replace(answer=first.answer._replace(exact=Rational(99), shown="99"))
    total = 99 + sum(int(other.answer.shown) for other in others)
    said = verdict(f"Answers {one.first} to {one.last} add up to {total}.", one.first, [wrong, *others], RawRows(table))
    assert said.startswith("the solutions add up to")


def test_a_key_printed_wrong_is_found_by_its_text(deck: ChosenDeck, table: TrialTable) -> None:
    one = deck.sets[0]
    first, *others = of(deck, one)
    wrong = first._replace(answer=first.answer._replace(shown="99"))
    assert verdict(one.line, one.first, [wrong, *others], RawRows(table)).startswith("the printed answers add up to")


def test_another_table_is_found(deck: ChosenDeck, table: TrialTable) -> None:
    other = replace(table, rows=tuple(replace(row, down=row.set_up - row.down) for row in table.rows))
    assert any(verdict(one.line, one.first, of(deck, one), RawRows(other)) != "agrees" for one in deck.sets)


def test_a_name_cannot_be_added(deck: ChosenDeck, table: TrialTable) -> None:
    one = deck.sets[0]
    name = next(problem for problem in deck.problems if problem.answer.kind == "name")
    assert "is no number" in verdict(one.line, one.first, [name, *of(deck, one)[1:]], RawRows(table))
