"""Drawing from a model's space of asks, seeded, without laying it all out."""

from __future__ import annotations

from collections.abc import Iterator
from random import Random

from mathgen.models.space import AskSpace
from mathgen.problems.draft import Draft

_SMALL = 4096  # a space up to here is shuffled whole; a larger one is drawn from until the caller stops or this many tries are up
_TRIES = 20_000


def stream(seed: int, *spot: str | int) -> Random:
    """The random stream of one spot, so that a new model leaves the draws of every other as they were."""
    return Random("/".join(map(str, (seed, *spot))))  # text seeds do not depend on PYTHONHASHSEED


def drafts(space: AskSpace, rng: Random, tries: int = _TRIES) -> Iterator[Draft]:
    """Drafts of a space in seeded order, none twice; choices that make no question are passed over, at most so many of a large space."""
    for index in _indices(space.size, rng, tries):
        draft = space.draft(index)
        if draft is not None:
            yield draft


def _indices(size: int, rng: Random, tries: int) -> Iterator[int]:
    if size <= _SMALL:
        order = list(range(size))
        rng.shuffle(order)
        yield from order
        return
    seen: set[int] = set()
    for _ in range(tries):
        index = rng.randrange(size)
        if index not in seen:
            seen.add(index)
            yield index
