"""Answers of several numbers judged: lists of pairs, of sums and of changes; a quotient with its remainder."""

from __future__ import annotations

import re
from functools import lru_cache

from sympy import Rational

from mathgen.exact.judge.verdict import FORM, RIGHT, UNREADABLE, WRONG, Judged
from mathgen.exact.parse import tidy

_TERM = "([0-9]+(?:/[0-9]+)?)"
_OF_PAIRS = " *(?:[*x×+]|and|by|times|to) *"
_OF_MORE = " *(?:[+&]|,? *and|,) *"  # "8/12, 5/12, and 6/12" is one sum of three
_BETWEEN = re.compile(r"(?:[ ,;.()]|and )*")
_CHANGE = re.compile(" *(?:-+>|=>|\N{RIGHTWARDS ARROW}|becomes|changed? to|changes to) *")
_WHOSE = re.compile("trial [0-9]+ *:? +(?:from +)?(?=[0-9]+ +to)")  # "Trial 1: 6 to 8"
_REMAINDER = re.compile(r"([0-9]+)(?:\s*[a-z]+)*\s*(?:,|\br|[a-z]|\s)\s*(?:[a-z]+\s*)*([0-9]+)(?:\s*[a-z]+)*", re.IGNORECASE)


def judge_list(expected: str, typed: str) -> Judged:
    """Pairs or sums in any order: "1 x 12, 2 x 6, 3 x 4", "2/8 + 3/8 and 4/8 + 1/8". Changes go one way: "6 to 8", "6 -> 8"."""
    size, changes = expected.partition(",")[0].count(" ") // 2 + 1, " to " in expected
    key, said = (_groups(text, size, changes) for text in (expected, typed))
    if not said or any(term.endswith("/0") for one in said for term in one):
        return UNREADABLE, "no list of pairs" if size == 2 else f"no list of sums of {size} numbers"
    assert key is not None  # keys are written "1 * 12, 2 * 6"
    if said == key:
        named = changes and "trial" in typed.casefold()
        return (FORM, "the same list; the trials that are named are to be read") if named else (RIGHT, "the same list")
    if _values(said) == _values(key) and not changes:
        return FORM, "the same list, its fractions written in another way"
    missing = len(key - said)
    return WRONG, "something that is none of them" if said - key else f"{missing} {'is' if missing == 1 else 'are'} missing"


@lru_cache(maxsize=8)
def _group(size: int, in_order: bool) -> re.Pattern[str]:
    return re.compile((" +to +" if in_order else _OF_PAIRS if size == 2 else _OF_MORE).join([_TERM] * size))


def _groups(text: str, size: int, in_order: bool) -> set[tuple[str, ...]] | None:
    """The pairs of a list, or its sums of three; None where something else stands there. A pair with nothing is left out.

    Args:
        text: "1 x 12, 2 x 6".
        size: how many numbers stand together.
        in_order: whether which comes first says something: a change goes one way.
    """
    tidied = tidy(text).lower()
    if in_order:
        tidied = _WHOSE.sub("", _CHANGE.sub(" to ", tidied))
    if _BETWEEN.fullmatch(_group(size, in_order).sub("", tidied)) is None:
        return None
    found = [match.groups() for match in _group(size, in_order).finditer(tidied)]
    if in_order:
        return set(found)
    return {tuple(sorted(one)) for one in found if "0" not in [term.partition("/")[0] for term in one]}


def _values(groups: set[tuple[str, ...]]) -> list[list[Rational]]:
    pairs = [[term.split("/") for term in one] for one in groups]
    return sorted(sorted(Rational(*map(int, pair)) for pair in one) for one in pairs)


def judge_remainder(expected: str, typed: str) -> Judged:
    """Two whole numbers in their order: "7 r 1", "7 R1", "7 remainder 1", "7 boxes and 1 pin"."""
    key, said = (_REMAINDER.fullmatch(tidy(text).strip(" .!")) for text in (expected, typed))
    if said is None:
        return UNREADABLE, "not a quotient and a remainder"
    assert key is not None  # keys are written "7 r 1"
    numbers, right = [int(one) for one in said.groups()], [int(one) for one in key.groups()]
    if numbers == right:
        return RIGHT, "the same quotient and remainder"
    return WRONG, "the order is reversed" if numbers == right[::-1] else "another quotient or remainder"
