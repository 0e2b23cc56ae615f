"""Parallel forms of one sheet: number n is of one kind on all of them, with other numbers, groups and colors."""

from __future__ import annotations

from collections import Counter
from functools import partial
from typing import NamedTuple

from mathgen.asks.expression import Quantity
from mathgen.bank.builder import Candidate
from mathgen.bank.choose import choose, fits, in_order, unlike
from mathgen.bank.pool import Pool
from mathgen.trials.scope import Scope


class ParallelForms(NamedTuple):
    """Forms of one length, and the skills that had too few problems to stand on each of them as often as on a sheet alone."""

    forms: list[list[Candidate]]
    short: tuple[str, ...]


def parallel_forms(pool: Pool, count: int, own_at_least: int, forms: int) -> ParallelForms:
    """As many forms as asked. Of what the table has too few for each of them, none has more than another; other kinds stand in.

    Args:
        pool: candidates of every model.
        count: how many problems a form should have.
        own_at_least: how many of them should be of the grade's own skills.
        forms: how many forms there are.
    """
    most: dict[str, int] = {}
    short: dict[str, None] = {}
    while True:
        made = [in_order(choose(pool, count, own_at_least, most))]
        lacking: dict[str, Candidate] = {}
        for _ in range(forms - 1):
            form, missing = parallel(made[0], pool, [one for other in made for one in other])
            made.append(form)
            lacking |= {made[0][slot].model.name: made[0][slot] for slot in missing}
        if not lacking:
            return ParallelForms(made, tuple(short))
        uses = Counter(one.model.name for one in made[0])
        for name, one in lacking.items():
            held = sum(len(kept.get(name, ())) for kept in (pool.own, pool.review))
            most[name] = min(uses[name] - 1, held // forms)
            short[one.model.skill] = None


def parallel(first: list[Candidate], pool: Pool, taken: list[Candidate]) -> tuple[list[Candidate], list[int]]:
    """Another form of a sheet: slot by slot the same model and, where the table has it, the same level; other numbers.

    Returns:
        The form, in the same order, and the slots (from 0) for which the table had no parallel problem.
    """
    form: list[Candidate] = []
    missing: list[int] = []
    for slot, model_of in enumerate(first):
        name = model_of.model.name
        candidates = pool.own[name] if model_of in pool.own.get(name, ()) else pool.review[name]
        used = [*taken, *form]
        same_kind = [other for other in used if other.model.name == name]
        fresh = [
            one
            for one in candidates
            if all(one.draft.ask != other.draft.ask for other in used)
            and (isinstance(one.exact, str) or one.exact != model_of.exact)
            and fits(one, form)
        ]
        if not fresh:
            missing.append(slot)
            continue
        # Not the same results turned round, where the table has others.
        others = [one for one in fresh if all(_results(one) != _results(other) for other in same_kind)]
        form.append(min(others or fresh, key=partial(unlike, model_of)))
    return form, missing


def _results(one: Candidate) -> frozenset[Scope]:
    return frozenset(leaf.scope for leaf in one.draft.leaves() if isinstance(leaf, Quantity))
