"""The pick-a-card page as plain data."""

from __future__ import annotations

import re
from functools import cache
from typing import Any

import pytest

from mathgen.bank.deck import make_deck
from mathgen.bank.deck_plan import ChosenDeck, DeckPlan
from mathgen.exact.judge import judge
from mathgen.grades.curriculum import load
from mathgen.scenario.words import scenario
from mathgen.sheets.page_words import page_words
from mathgen.sheets.pick import expected, own_unit, pick_data, units
from tests.audit.banks import EVERY_NAME, activity, sample, sample_problems

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


@pytest.mark.parametrize("grades", [(2,), (3, 5), (4,), (6,), (7,)], ids=str)
@pytest.mark.parametrize("name", ["main", "seeds"])
def test_what_the_key_prints_is_right_on_the_page_and_no_likely_mistake_is(name: str, grades: tuple[int, ...]) -> None:
    deck, data = made(name, *grades)
    for problem, card in zip(deck.problems, data["cards"], strict=True):
        own = tuple(card["units"])
        for typed in (problem.answer.display, *problem.answer.accepted):
            verdicts = [judge(one, card["demand"], typed, own)[0] for one in card["expected"]]
            assert "right" in verdicts, (problem.text, typed)
        for slip in card["slips"]:
            assert "right" not in [judge(one, card["demand"], slip["value"], own)[0] for one in card["expected"]], problem.text


@pytest.mark.parametrize("grades", [(2,), (4,), (6,), (7,)], ids=str)
def test_names_are_chosen_from_all_that_the_question_compares(grades: tuple[int, ...]) -> None:
    deck, data = made("main", *grades)
    for problem, card in zip(deck.problems, data["cards"], strict=True):
        offered = card["place"]["choices"]
        if problem.answer.kind == "name":
            assert {problem.answer.shown, *(slip.value for slip in problem.slips)} <= set(offered)
        else:
            assert offered == []


@pytest.mark.parametrize("name", EVERY_NAME)
def test_the_answer_as_a_key_prints_it_is_right_for_every_model(name: str) -> None:
    table = sample(name)
    words = page_words(scenario(activity(name)), load("ccss"), table, 4)
    met = set()
    for problem in sample_problems(name, 2):
        taken = tuple(units(problem, words, table))
        verdicts = [judge(one, str(problem.answer.demand), problem.answer.display, taken)[0] for one in expected(problem, words)]
        # Of a claim and its reason, a page takes yes or no, and the reason is for a teacher.
        assert "right" in verdicts or problem.answer.kind == "rubric", (problem.text, problem.answer.display, verdicts)
        met.add(own_unit(problem, words))
    assert len(met) > 1


def test_a_count_takes_its_own_unit_and_no_other() -> None:
    _, data = made("main", 2)
    counts = [card for card in data["cards"] if re.search(r" pins?$", card["expected"][0])]
    assert counts
    for card in counts:
        (key,) = card["expected"]
        number = key.split()[0]
        assert [judge(key, card["demand"], one)[0] for one in (number, f"{number} pins", f"{number} trials")] == ["right", "right", "wrong"]


@pytest.mark.parametrize("grades", [(2,), (4,), (7,)], ids=str)
def test_every_card_has_a_hint_in_words_and_of_a_single_step_it_is_not_the_step(grades: tuple[int, ...]) -> None:
    deck, data = made("main", *grades)
    for problem, card in zip(deck.problems, data["cards"], strict=True):
        assert card["hint"]
        assert all(card["hint"])
        begins = card["hint"][0][0]["text"] == "Start with "
        assert begins == (len(card["steps"]) > 1), problem.text


def test_a_figure_that_the_words_ask_pupils_to_read_stands_with_them_and_is_no_hint() -> None:
    deck, data = made("spaces", 8)
    cards = {problem.skill: card for problem, card in zip(deck.problems, data["cards"], strict=True)}
    read = [card for skill, card in cards.items() if skill in ("prediction by a line", "result and line compared", "slope in context")]
    assert read
    for card in read:
        assert card["graph"]["kind"] == "scatter-plot"
        assert card["figure"] is None
