"""One sheet at three levels: problem n serves the same standard on each form.

Standards take turns. A slot is one problem a level, of one model where its level can differ, else of another model of the standard.
"""

from __future__ import annotations

from collections import Counter
from typing import NamedTuple

from mathgen.bank.builder import Candidate
from mathgen.bank.choose import LEVELS, best, fits
from mathgen.bank.pool import Pool

TIERS = tuple(LEVELS)
_FIRST = TIERS.index("on grade")  # the middle form is chosen first, the others beside it
_ORDER = (_FIRST, *(at for at in range(len(TIERS)) if at != _FIRST))
_WEIGHT = 2  # of a level missed by one, against a standard's being used once more


class Slot(NamedTuple):
    """The problems of one number, one a tier, and the standard that all of them serve."""

    standard: str
    problems: tuple[Candidate, ...]

    def off(self) -> int:
        """How far the problems are from the levels that they stand for, in levels."""
        return sum(abs(LEVELS[one.level] - at) for at, one in enumerate(self.problems))


def choose_tiers(pool: Pool, count: int, standards: tuple[str, ...] = ()) -> list[Slot]:
    """Up to ``count`` slots in print order, of the grade's own standards first.

    Args:
        pool: candidates of all levels.
        count: how many problems a form has.
        standards: only these, where there are any.
    """
    slots: list[Slot] = []
    for models in (pool.own, pool.review):
        by_standard: dict[str, list[Candidate]] = {}
        for candidates in models.values():
            for one in candidates:
                for code in one.standards:
                    if not standards or code in standards:
                        by_standard.setdefault(code, []).append(one)
        while len(slots) < count:
            following = _following(by_standard, slots)
            if following is None:
                break
            slots.append(following)
    return sorted(slots, key=lambda slot: (LEVELS[slot.problems[_FIRST].level], slot.problems[_FIRST].difficulty))


def _following(by_standard: dict[str, list[Candidate]], slots: list[Slot]) -> Slot | None:
    """The next slot: a level missed by one weighs as much as a standard's having been used twice more."""
    used = Counter(slot.standard for slot in slots)
    found: Slot | None = None
    cost = 0
    for standard in sorted(by_standard, key=lambda code: used[code]):
        if found is not None and cost <= used[standard]:
            break
        slot = _slot(standard, by_standard[standard], slots)
        if slot is not None and (found is None or used[standard] + _WEIGHT * slot.off() < cost):
            found, cost = slot, used[standard] + _WEIGHT * slot.off()
    return found


def _slot(standard: str, candidates: list[Candidate], slots: list[Slot]) -> Slot | None:
    """One problem a tier, each of the level that is nearest to its own; None where a form has no room for any."""
    asked = [one.draft.ask for slot in slots for one in slot.problems]
    chosen: dict[int, Candidate] = {}
    for at in _ORDER:
        form = [slot.problems[at] for slot in slots]
        mates = list(chosen.values())
        fresh = [
            one
            for one in candidates
            if one.draft.ask not in asked
            and all(one.draft.ask != mate.draft.ask and (isinstance(one.exact, str) or one.exact != mate.exact) for mate in mates)
            and fits(one, form)
        ]
        if not fresh:
            return None
        nearest = min(abs(LEVELS[one.level] - at) for one in fresh)
        near = [one for one in fresh if abs(LEVELS[one.level] - at) == nearest]
        suited = _like_the_first(near, mates[0]) if mates else _of_a_model(near, candidates, form)
        picked = best(suited, form)
        if picked is None:
            return None
        chosen[at] = picked
    return Slot(standard, tuple(chosen[at] for at in range(len(TIERS))))


def _like_the_first(near: list[Candidate], first: Candidate) -> list[Candidate]:
    return [one for one in near if one.model.name == first.model.name] or near


def _of_a_model(near: list[Candidate], candidates: list[Candidate], form: list[Candidate]) -> list[Candidate]:
    """The candidates of the model used least; among equals of the one that has most levels."""
    used = Counter(one.model.name for one in form)
    levels: dict[str, set[str]] = {}
    for one in candidates:
        levels.setdefault(one.model.name, set()).add(one.level)
    name = min((one.model.name for one in near), key=lambda model: (used[model], -len(levels[model])))
    return [one for one in near if one.model.name == name]


def off_level(slots: list[Slot], marks: str, pool: Pool, demand: str) -> list[str]:
    """The sentences for the teacher: levels that the table does not have, and numbers that are of another level than their form."""
    held = {one.level for candidates in (*pool.own.values(), *pool.review.values()) for one in candidates}
    said = [f"This table has no {tier} problems for {demand}." for tier in TIERS if tier not in held]
    for at, (mark, tier) in enumerate(zip(marks, TIERS, strict=False)):
        numbers: dict[str, list[str]] = {}
        for number, slot in enumerate(slots, start=1):
            if slot.problems[at].level != tier:
                numbers.setdefault(slot.problems[at].level, []).append(str(number))
        for level in TIERS:
            if level in numbers:
                are = f"numbers {', '.join(numbers[level])} are" if len(numbers[level]) > 1 else f"number {numbers[level][0]} is"
                said.append(f"Form {mark} ({tier}): {are} {level}; this table has no {tier} problem left for the standard there.")
    return said
