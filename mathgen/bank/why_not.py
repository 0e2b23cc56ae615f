"""Why a table has no problem of some skill, in words for a teacher."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

from sympy import Rational

from mathgen.bank.builder import TOO_LONG
from mathgen.bank.desk import Desk
from mathgen.bank.draw import drafts, stream
from mathgen.models.registry import ProblemModel
from mathgen.trials.scope import Label

NO_SPACES = "the table has no spaces between {items}"
NO_TARGETS = "the table has no target colors"
_NOTHING = "the table has no results that make such a problem"
_LATER = "with its numbers that is for a later grade"
_WORDS: dict[str, tuple[str, ...]] = {  # the limits of the gate, by what a teacher would see in the table
    "its counts are too small": ("numbers too small", "factor", "set of one", "zero answer", "empty share"),
    "its counts are too large": (
        "numbers too big", "largest number", "largest answer", "product", "addend", "addends", "factors", "divisor", "tens and ones",
    ),
    "its sets are not of the sizes that the grade works with": (
        "set size", "denominator", "common denominator", "same denominator", "different denominators", "nested denominators", "same whole",
        "equal sets", "unequal sets", "number of sets", "sum of different wholes", "difference of different wholes", "whole set",
    ),
    "its decimals have too many places or too few": (
        "decimal places", "decimal places in a step", "answer places", "repeating", "repeating block", "rounded answer", "rounding tie",
    ),
    "too much would have to be read or said": (*TOO_LONG, "cells to read", "graph categories", "operations"),
    "its answers are not whole, or not parts, as the grade wants them": ("whole answer",),
    "with its numbers that is for an earlier grade": ("feature",),  # it lacks what the skill needs to be new in the grade
    # What leaves a problem out although the grade allows it.
    "there are no words for it in this grade": ("no wording for this grade",),
    "its graph does not fit": ("graph",),
    "met twice": ("twice",),
    "yes or no too often": ("yes and no",),
}  # fmt: skip
_LOOKED_AT = 300  # choices of a model
_OF_LIMIT = {limit: words for words, limits in _WORDS.items() for limit in limits}
_TRIED = tuple(Rational(quarters, 4) for quarters in (8, 9, 12, 10, 16, 14, 6, 11))  # inches, as classes set them
_VARIED = (8, 3, 2, 1)  # spaces in turn: many, or the same ones again and again


def why_not(stops: Counter[str]) -> str:
    """What mostly stood in the way; ``stops`` are the limits that drafts did not keep.

    >>> why_not(Counter({"set size": 9, "words": 2})), why_not(Counter())
    ('its sets are not of the sizes that the grade works with', 'the table has no results that make such a problem')
    """
    return in_words(stops)[0][0] if stops else _NOTHING


def in_words(stops: Counter[str]) -> list[tuple[str, int]]:
    """Why problems were left out, in words, with how many each; the most frequent first.

    >>> in_words(Counter({"set size": 9, "denominator": 4, "skill": 5, "twice": 3, "yes and no": 1}))[0]
    ('its sets are not of the sizes that the grade works with', 13)
    >>> in_words(Counter({"skill": 5, "twice": 3, "yes and no": 1}))[1:]
    [('met twice', 3), ('yes or no too often', 1)]
    """
    told = Counter[str]()
    for limit, times in stops.items():
        told[_OF_LIMIT.get(limit, _LATER)] += times
    return told.most_common()


def wants_spaces(models: list[ProblemModel], desk: Desk, seed: int) -> bool:
    """Whether models that have nothing for a table without spaces would have something if it had some."""
    table = desk.table
    if any(row.gap_inches is not None for row in table.rows):
        return False
    rolls = list(dict.fromkeys((row.group, row.trial) for row in table.rows))
    in_turn = [{roll: _TRIED[at % varied] for at, roll in enumerate(rolls)} for varied in _VARIED]
    fallen = Counter[tuple[str, Label]]()
    for row in table.rows:
        fallen[row.group, row.trial] += row.down
    # Wider where more fell, for models that look for such a tie.
    tied = {roll: 1 + Rational(fallen[roll], 4) for roll in rolls}
    for spaces in (*in_turn, tied):
        rows = tuple(replace(row, gap_inches=spaces[row.group, row.trial]) for row in table.rows)
        view = Desk(replace(table, rows=rows), desk.scenario).view
        if any(next(iter(drafts(model.space(view), stream(seed, "spaces", model.name), _LOOKED_AT)), None) for model in models):
            return True
    return False


def wants_targets(models: list[ProblemModel], desk: Desk, seed: int) -> bool:
    """Whether models that have nothing for a table without target colors would have something if it had them."""
    table = desk.table
    if not table.colors or any(row.target is not None for row in table.rows):
        return False
    color = table.colors[0]
    rolls = list(dict.fromkeys((row.group, row.trial) for row in table.rows))
    # Two of three trials are tried as successes.
    hits = {roll for at, roll in enumerate(rolls) if at % 3}
    rows = tuple(
        replace(row, target=color, down=1 if row.color == color or (row.group, row.trial) not in hits else 0) for row in table.rows
    )
    view = Desk(replace(table, rows=rows), desk.scenario).view
    return any(next(iter(drafts(model.space(view), stream(seed, "targets", model.name), _LOOKED_AT)), None) for model in models)
