"""Cards in rows of four, those first whose answers can be added up; and the line that says what they add up to.

A set is added up only where a pupil of the grade may do so: whole numbers within the grade's limits, fractions, decimals and percents
from the grade on that adds them.
"""

from __future__ import annotations

import re
from math import lcm
from typing import NamedTuple

from sympy import Rational

from mathgen.bank.deck_plan import CheckSet
from mathgen.exact.forms import decimal, mixed, percent
from mathgen.grades.entry import Limits
from mathgen.problems.record import Problem

ROW = 4
_FEWEST = 3  # two answers that add up would be one sum to copy from
_PLAIN = re.compile(r"(?P<whole>\d+)|(?P<fraction>(?:\d+ )?\d+/\d+)|(?P<decimal>\d+\.\d+)|(?P<percent>\d+(?:\.\d+)?%)")
_MIXED_FROM = 4  # 4.NF.B.3: fractions of one bottom number are added
_UNLIKE_FROM = 5  # 5.NF.A.1: unlike ones
_DECIMALS_FROM = 5  # 5.NBT.B.7
_PERCENTS_FROM = 6  # 6.RP.A.3c
_BOTTOM_MOST = 12  # our own: checking must not be harder than the problems


class Row(NamedTuple):
    """Problems side by side; the answers of the first ``together`` are added up, 0 where none are."""

    problems: tuple[Problem, ...]
    together: int


def form_of(problem: Problem) -> str:
    """``whole``, ``fraction``, ``decimal`` or ``percent``; "" for an answer that cannot be added up: a name, a ratio, a rounded number."""
    answer = problem.answer
    if answer.kind != "number" or answer.demand.places is not None or isinstance(answer.exact, str):
        return ""
    found = _PLAIN.fullmatch(answer.shown)
    return "" if found is None else str(found.lastgroup)


def may_be_added(problems: list[Problem], limits: Limits) -> bool:
    """Whether pupils of the grade can add the answers up, which all have one form."""
    form = form_of(problems[0])
    exact = [problem.answer.exact for problem in problems if not isinstance(problem.answer.exact, str)]
    if len(problems) > (limits.addends or ROW) or len(set(exact)) < len(exact):
        return False
    total = sum(exact, Rational(0))
    if form == "whole":
        digits = max(len(problem.answer.shown) for problem in problems)
        fits = limits.story_max is None or total <= limits.story_max
        return bool(fits and (limits.addend_digits is None or digits <= limits.addend_digits))
    if form == "fraction":
        bottoms = {int(problem.answer.shown.partition("/")[2]) for problem in problems}
        return limits.grade >= (_MIXED_FROM if len(bottoms) == 1 else _UNLIKE_FROM) and lcm(*bottoms) <= _BOTTOM_MOST
    return limits.grade >= (_PERCENTS_FROM if form == "percent" else _DECIMALS_FROM)


def in_rows(problems: list[Problem], limits: Limits) -> list[Row]:
    """Every problem once, in rows; as many rows as can be begin with a set, and rows with and without one take turns.

    Args:
        problems: in the order in which they were chosen, so that neighbors differ.
        limits: of the youngest pupils who may add the answers up.
    """
    count = -(-len(problems) // ROW)
    rest, sets = list(problems), list[list[Problem]]()
    for form in ("whole", "fraction", "decimal", "percent"):
        while len(sets) < count:
            left = [problem for problem in rest if form_of(problem) == form]
            # Sets of three, where fours would leave some rows without one.
            sizes = (ROW, _FEWEST) if form != "whole" or len(left) >= ROW * (count - len(sets)) else (_FEWEST,)
            found = next((one for one in (_first_set(left, size, limits) for size in sizes) if one), None)
            if found is None:
                break
            sets.append(found)
            taken = {problem.id for problem in found}
            rest = [problem for problem in rest if problem.id not in taken]
    with_set = [_filled(start, rest) for start in sets]  # first, so that short rows are few
    without = [_filled([], rest) for _ in range(count - len(sets))]
    return sorted(_by_turns(with_set, without), key=lambda row: len(row.problems) < ROW)  # a short row comes last


def _first_set(left: list[Problem], size: int, limits: Limits) -> list[Problem] | None:
    """The first problems, of models as different as can be, whose answers may be added up; greedy, for there are many."""
    # Where the first ones are too large, the smallest may do.
    for order in (left, sorted(left, key=lambda problem: problem.answer.exact)):
        found: list[Problem] = []
        for again in (False, True):
            for problem in order:
                if problem in found or (not again and any(problem.model == other.model for other in found)):
                    continue
                if may_be_added([*found, problem], limits):
                    found.append(problem)
                    if len(found) == size:
                        return found
    return None


def _by_turns(with_set: list[Row], without: list[Row]) -> list[Row]:
    """Both lists as one, evenly mixed."""
    places = [((2 * at + 1) * len(without), 0, one) for at, one in enumerate(with_set)]
    places += [((2 * at + 1) * len(with_set), 1, one) for at, one in enumerate(without)]
    return [one for _, _, one in sorted(places, key=lambda place: place[:2])]


def _filled(start: list[Problem], rest: list[Problem]) -> Row:
    """A row from what is left, which gets fewer; neighbors are of different models where that can be."""
    row = list(start)
    while len(row) < ROW and rest:
        models = {problem.model for problem in row}
        following = next((problem for problem in rest if problem.model not in models), rest[0])
        rest.remove(following)
        row.append(following)
    return Row(tuple(row), len(start))


def check_line(problems: tuple[Problem, ...], first: int) -> CheckSet:
    """The line of a set whose first card has the number ``first``."""
    total = sum((problem.answer.exact for problem in problems), Rational(0))
    form = form_of(problems[0])
    shown = percent(total) if form == "percent" else decimal(total) if form == "decimal" else mixed(total)
    last = first + len(problems) - 1
    return CheckSet(first, last, f"Answers {first} to {last} add up to {shown}.")
