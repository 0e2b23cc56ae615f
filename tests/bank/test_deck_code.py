"""Marks of decks and sorting letters."""

from __future__ import annotations

from dataclasses import replace

from mathgen.bank.deck import make_deck
from mathgen.bank.deck_code import deck_mark, grade_letter, level_letter, sorting_letters, topic_letters
from mathgen.bank.deck_plan import DeckPlan
from tests.tables import TWO_GROUPS


def test_other_cards_another_order_or_another_table_have_another_mark() -> None:
    problems = make_deck(TWO_GROUPS, DeckPlan((4,), count=6)).problems
    other = replace(TWO_GROUPS, rows=TWO_GROUPS.rows[:-1])
    marks = [
        deck_mark(problems, TWO_GROUPS),
        deck_mark(problems[:-1], TWO_GROUPS),
        deck_mark(problems[::-1], TWO_GROUPS),
        deck_mark(problems, other),
    ]
    assert len(set(marks)) == 4
    assert marks[0] == deck_mark(problems, TWO_GROUPS)
    assert all(len(mark) == 4 and mark.isalnum() and not set(mark) & set("ILOU") for mark in marks)


def test_sorting_letters_tell_topic_level_and_grade_without_naming_them() -> None:
    problem = make_deck(TWO_GROUPS, DeckPlan((2,), count=1)).problems[0]
    assert sorting_letters(problem, "B", False) == "B" + level_letter(problem.level)
    assert sorting_letters(problem, "B", True)[2] == grade_letter(2)
    assert len({level_letter(level) for level in ("support", "on grade", "challenge")}) == 3
    letters = [grade_letter(grade) for grade in range(1, 9)]
    assert len(set(letters)) == 8
    assert letters != sorted(letters)


def test_topics_have_letters_in_their_order() -> None:
    assert topic_letters(["counting", "fractions", "counting"]) == {"counting": "A", "fractions": "B"}
