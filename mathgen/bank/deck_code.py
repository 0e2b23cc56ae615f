"""Signs by which a teacher sorts cards: four of the deck, and a letter each for topic, level and grade. They name no level or grade."""

from __future__ import annotations

from collections.abc import Iterable
from hashlib import blake2b

from mathgen.bank.code import MARK_LENGTH, RELEASE, SIGNS, table_digest
from mathgen.problems.record import Problem
from mathgen.trials.table import TrialTable

_LETTERS = "ABCDEFGHJKMNPQRSTVWXYZ"
# In no order that a pupil could guess.
_LEVELS = {"support": "N", "on grade": "H", "challenge": "T"}
_GRADES = "KWDYPVRG"


def deck_mark(problems: Iterable[Problem], table: TrialTable) -> str:
    """Four signs of the cards in their order: decks that are not the same, card by card, nearly always bear others, so that a key
    is not taken for that of another deck.
    """
    text = repr(([(one.id, one.text) for one in problems], table_digest(table), RELEASE))
    number = int.from_bytes(blake2b(text.encode(), digest_size=4).digest(), "big")
    return "".join(SIGNS[number >> 5 * place & 31] for place in range(MARK_LENGTH))


def topic_letters(topics: list[str]) -> dict[str, str]:
    """A letter for each topic of a deck, in the order in which they come."""
    return dict(zip(dict.fromkeys(topics), _LETTERS, strict=False))


def sorting_letters(problem: Problem, topic_letter: str, several_grades: bool) -> str:
    """Topic, level and, where a deck mixes grades, grade: "AH", "AHY"."""
    return topic_letter + _LEVELS[problem.level] + (_GRADES[problem.grade - 1] if several_grades else "")


def level_letter(level: str) -> str:
    """The letter of a level."""
    return _LEVELS[level]


def grade_letter(grade: int) -> str:
    """The letter of a grade."""
    return _GRADES[grade - 1]
