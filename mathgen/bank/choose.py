"""Choosing a sheet's problems from its pool.

A greedy choice under the constraints of sheet assembly: models, sources, groups and colors take turns, no two problems clash, a
warm start and a challenge are wanted. Deterministic: the pool was drawn with the seed, and ties keep its order.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Mapping
from functools import lru_cache
from types import MappingProxyType

from sympy import Rational

from mathgen.bank.balance import tips
from mathgen.bank.builder import Candidate
from mathgen.bank.clashes import clash
from mathgen.bank.pool import Pool
from mathgen.models.slips import slip_rule

_NAMES_MOST = 2  # a name is the answer at most twice on a sheet
_CLASHES_MOST = 1  # problems whose words point the wrong way
LEVELS = {"support": 0, "on grade": 1, "challenge": 2}
Joins = Callable[[Candidate, list[Candidate]], bool]  # whether a candidate may join those chosen


def fits(one: Candidate, chosen: list[Candidate], clashing: Callable[[Candidate, Candidate], bool] = clash) -> bool:
    """Whether a candidate may join those chosen, of which none may clash with it."""
    if isinstance(one.exact, str) and sum(other.exact == one.exact for other in chosen) >= _NAMES_MOST:
        return False
    if tips(one.exact, Counter(other.exact for other in chosen)):
        return False
    if one.draft.clash and sum(other.draft.clash for other in chosen) >= _CLASHES_MOST:
        return False
    return not any(clashing(one, other) for other in chosen)


def choose(pool: Pool, count: int, own_at_least: int, most: Mapping[str, int] = MappingProxyType({})) -> list[Candidate]:
    """Up to ``count`` candidates that may share a sheet, own skills first, in no order yet.

    Args:
        pool: what there is.
        count: how many are wanted.
        own_at_least: how many of them should be of the grade's own skills.
        most: how often a model may be used, by its name, where there is a limit.
    """
    chosen: list[Candidate] = []

    def joins(one: Candidate, so_far: list[Candidate]) -> bool:
        name = one.model.name
        return (name not in most or sum(other.model.name == name for other in so_far) < most[name]) and fits(one, so_far)

    # Own models by turns until their share is met, then own and review by turns, own first.
    take_turns(pool.own, own_at_least, chosen, joins)
    if len(chosen) < count:
        take_turns(pool.review, count, chosen, joins)
    if len(chosen) < count:
        take_turns(pool.own, count, chosen, joins)
    return chosen


def take_turns(models: dict[str, list[Candidate]], count: int, chosen: list[Candidate], joins: Joins = fits) -> None:
    """Adds candidates to those chosen, model by model, until there are ``count`` or none may join."""
    while len(chosen) < count:
        uses = Counter(one.model.name for one in chosen)
        skills = Counter(one.model.skill for one in chosen)
        # The model used least has its turn; among equals the one whose skill was used least.
        order = sorted(models, key=lambda name: (uses[name], skills[models[name][0].model.skill]))
        for name in order:
            suited = best(models[name], chosen, joins)
            if suited is not None:
                chosen.append(suited)
                break
        else:
            return


def best(candidates: Iterable[Candidate], chosen: list[Candidate], joins: Joins = fits) -> Candidate | None:
    """The candidate that suits the sheet best, or None where each clashes with something."""
    fitting = [one for one in candidates if joins(one, chosen)]
    if not fitting:
        return None
    labels = Counter(label for one in chosen for label in labels_of(one))
    sources = Counter(one.words.source for one in chosen)
    levels = Counter(one.level for one in chosen)

    def cost(one: Candidate) -> tuple[int, int]:
        worn = sum(labels[label] for label in labels_of(one))
        # Numbers on which the likeliest mistakes give another answer are worth a little wear.
        return (3 * sources[one.words.source] + 2 * levels[one.level] + worn - _showing(one.draft.slips, one.exact), one.difficulty)

    return min(fitting, key=cost)


@lru_cache(maxsize=4096)
def _showing(slips: tuple[tuple[str, tuple[int | str, ...]], ...], exact: object) -> int:
    """How many likely mistakes would show on these numbers: each gives an answer of its own."""
    wrong = [one for one in (slip_rule(name).wrong(*numbers) for name, numbers in slips) if one is not None]
    return len({one if isinstance(one, str) else Rational(*one) for one in wrong} - {exact})


def labels_of(candidate: Candidate) -> tuple[str, ...]:
    """The groups and colors that a candidate names."""
    found: dict[str, None] = {}
    for given in candidate.givens:
        if given.scope is not None:
            for label in (*(given.scope.groups or ()), *(given.scope.colors or ())):
                found[label] = None
    return tuple(found)


def in_order(chosen: list[Candidate]) -> list[Candidate]:
    """Print order: level by level, easy to hard, and within a level no two neighbors of one model where that can be."""
    rising = sorted(chosen, key=lambda one: (LEVELS[one.level], one.difficulty))
    ordered: list[Candidate] = []
    while rising:
        last = ordered[-1].model.name if ordered else ""
        following = next((one for one in rising if one.level == rising[0].level and one.model.name != last), rising[0])
        rising.remove(following)
        ordered.append(following)
    return ordered


def unlike(first: Candidate, other: Candidate) -> tuple[bool, int, bool, int]:
    """How far a problem is from the one in its place on another form: level, difficulty, source of its numbers, length."""
    words, others = first.words, other.words
    return (
        first.level != other.level,
        abs(first.difficulty - other.difficulty),
        words.source != others.source,
        abs(len(words.facts) - len(others.facts)),
    )
