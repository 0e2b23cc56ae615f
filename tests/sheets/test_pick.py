"""The pick-a-card page as plain data."""

from __future__ import annotations

from functools import cache
from typing import Any

import pytest

from mathgen.bank.deck import make_deck
from mathgen.bank.deck_plan import ChosenDeck, DeckPlan
from mathgen.grades.curriculum import load
from mathgen.scenario.words import scenario
from mathgen.sheets.page_words import page_words
from mathgen.sheets.pick import pick_data
from tests.audit.banks import activity, sample

SAMPLES = ("main", "seeds", "tens", "target", "small-sets")


@cache
def made(name: str, *grades: int) -> tuple[ChosenDeck, dict[str, Any]]:
    """A deck of a sample, and its page."""
    table = sample(name)
    deck = make_deck(table, DeckPlan(grades, count=12), activity(name))
    return deck, pick_data(deck, table, page_words(scenario(activity(name)), load("ccss"), table, min(grades)))


@pytest.mark.parametrize("grade", [1, 2, 3, 5, 7])
@pytest.mark.parametrize("name", SAMPLES)
def test_no_card_needs_a_cell_of_the_table_that_would_answer_it(name: str, grade: int) -> None:
    deck, data = made(name, grade)
    assert [card["number"] for card in data["cards"]] == [card.number for card in deck.cards]
