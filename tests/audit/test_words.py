"""Every word of every bank is one that readers of its grade are held to know, by lists from outside the project."""

from __future__ import annotations

import tomllib
from collections import Counter
from pathlib import Path

import pytest

from mathgen.scenario.naming import several_of
from tests.audit.banks import EVERY_NAME, sample, sample_problems, words
from tests.audit.readability import counted, flesch_kincaid, is_easy, reading_grade, syllables, words_of

LISTED = tomllib.loads((Path(__file__).parent / "taught.toml").read_text(encoding="utf-8"))


def known(grade: int) -> set[str]:
    """Words of the activity, and those that mathematics lessons have taught up to a grade."""
    taught = {word for entry in LISTED["taught"] if entry["grade"] <= grade for word in entry["words"]}
    return taught | set(LISTED["activity"]["words"])


@pytest.mark.parametrize("name", EVERY_NAME)
def test_every_word_is_on_a_published_list_of_the_grade_or_taught_by_then(name: str) -> None:
    """Spache 1953 for grades 1-3, Dale and Chall 1948 from grade 4 on."""
    table, said = sample(name), words(name)
    items = [form for one in table.prices for form in (one.item, several_of(one.item) or "")]
    said_here = (*items, *table.groups, *table.colors, said.item, said.items, *dict(said.after).values(), *dict(said.base).values())
    names = {word for label in said_here for word in words_of(label)}
    strange: Counter[tuple[int, str]] = Counter()
    for problem in sample_problems(name):
        may = names | known(problem.grade)
        strange.update((problem.grade, word) for word in words_of(problem.text) if word not in may and not is_easy(word, problem.grade))
    assert not strange


def test_no_word_is_excused_for_nothing() -> None:
    assert not [word for entry in LISTED["taught"] for word in entry["words"] if is_easy(word, entry["grade"])]


def test_a_hard_word_is_found() -> None:
    assert is_easy("knocked", 1)
    assert not is_easy("toppled", 1)
    assert not is_easy("cumulative", 8)


def test_the_reading_grade_is_the_published_one() -> None:
    """The sentence about the platypus: 13 words, 24 syllables, grade 11.3 (worked value of an encyclopedia's article on the tests)."""
    text = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature."
    assert counted([text]) == (13, 1, 24)
    assert round(flesch_kincaid(13, 1, 24), 1) == round(reading_grade([text]), 1) == 11.3


def test_words_of_one_syllable_reach_the_lowest_grade() -> None:
    """-3.40, the lowest that the formula gives: one word of one syllable a sentence (Kincaid and others 1975)."""
    assert round(reading_grade(["Go. Stop. Run."]), 2) == -3.4


def test_words_that_no_dictionary_has_are_counted_by_their_vowels() -> None:
    assert syllables("zoggled") == 2
    assert syllables("zogged") == 1
    assert syllables("3/4") == 1
