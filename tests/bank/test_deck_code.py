"""Marks of decks and sorting letters."""

from __future__ import annotations

from dataclasses import replace

from mathgen.bank.deck import make_deck
from mathgen.bank.deck_code import deck_mark, grade_letter, level_letter, sorting_letters, topic_letters
from mathgen.bank.deck_plan import DeckPlan
from tests.tables import TWO_GROUPS


def test_another_plan_seed_or_table_has_another_mark() -> None:
    plan = DeckPlan((4,))
    other = replace(TWO_GROUPS, rows=TWO_GROUPS.rows[:-1])
    marks = [
        deck_mark(plan, TWO_GROUPS, "ramp"),
        deck_mark(replace(plan, seed=2), TWO_GROUPS, "ramp"),
        deck_mark(replace(plan, grades=(5,)), TWO_GROUPS, "ramp"),
        deck_mark(plan, other, "ramp"),
    ]
    assert len(set(marks)) == 4
    assert marks[0] == deck_mark(plan, TWO_GROUPS, "ramp")
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
