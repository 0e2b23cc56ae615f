"""Answers to choose from: the key among the answers that likely mistakes give. No value is made up to fill a place."""

from __future__ import annotations

from collections import Counter
from random import Random
from typing import NamedTuple

from sympy import Rational

from mathgen.exact.printed_step import printed_number
from mathgen.problems.record import Problem, Slip

LETTERS = "ABCD"
_WRONG_LEAST, _WRONG_MOST = 2, 3


class Option(NamedTuple):
    """One answer to choose: its letter, its value as the key would be written, and the mistake that it shows (None: it is right)."""

    letter: str
    value: str
    slip: Slip | None


def wrong_answers(problem: Problem) -> tuple[Slip, ...]:
    """The likeliest mistakes whose answers look like the key: a name beside names, a fraction beside fractions."""
    kind = _kind(problem.answer.shown, problem.answer.kind)
    found: dict[object, Slip] = {}
    for slip in problem.slips:
        if _kind(slip.value, problem.answer.kind) == kind:
            found.setdefault(_worth(slip.value), slip)  # 6/8 beside 3/4 would be the same mistake twice
    return tuple(found.values())[:_WRONG_MOST]


def _worth(text: str) -> object:
    number = printed_number(text)
    return text if number is None else Rational(number.top, number.bottom)


def _kind(text: str, answer: str) -> str:
    number = None if answer != "number" else printed_number(text)
    return answer if number is None else f"{number.kind}{'%' if number.percent else ''}"


def offers_choices(problem: Problem) -> bool:
    """Whether there are mistakes enough for a problem with answers to choose from."""
    return len(wrong_answers(problem)) >= _WRONG_LEAST


def options_of(problems: tuple[Problem, ...], rng: Random) -> tuple[tuple[Option, ...], ...]:
    """The answers to choose from of each problem; over the sheet the right one stands under each letter about equally often.

    Args:
        problems: each ``offers_choices``.
        rng: decides between letters used equally often, and the order of the wrong answers.
    """
    used = Counter[str]()
    found = []
    for problem in problems:
        wrong = list(wrong_answers(problem))
        rng.shuffle(wrong)
        letters = LETTERS[: len(wrong) + 1]
        least = min(used[letter] for letter in letters)
        right = rng.choice([letter for letter in letters if used[letter] == least])
        used[right] += 1
        values: list[tuple[str, Slip | None]] = [(slip.value, slip) for slip in wrong]
        values.insert(letters.index(right), (problem.answer.shown, None))
        found.append(tuple(Option(letter, value, slip) for letter, (value, slip) in zip(letters, values, strict=True)))
    return tuple(found)
