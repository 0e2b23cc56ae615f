"""Runs of spans as one bag, and where a run is parted in two."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import cast

from mathgen.reading.chart import Clash
from mathgen.reading.pupils.bags import EMPTY, Bag, only, plus, verb
from mathgen.reading.pupils.span import Span
from mathgen.trials.scope import Label

# Words that hold others together and carry nothing of their own.
_FILL = frozenset(("be", "do", "that", "prep", "only", "NUMBER", "WHATIS", "exactly", "TOTALS", "outof", "all", "there", "ADD"))


def gather(spans: Sequence[Span], union: bool = False) -> Bag:
    """Everything the spans name, as one bag.

    Args:
        spans: a run of spans, in any order.
        union: "red or blue" is both together.

    Raises:
        Clash: a span that is no part of a bag, or two that name the same part differently.
    """
    made = EMPTY
    for place, span in enumerate(spans):
        if span.kind in ("bag", "TOTALS"):
            if span.value == "verb" and span.bag.measure is not None and span.bag.measure == made.measure and span.bag.measure == "down":
                raise Clash  # two verbs that say the same are about different things
            made = plus(made, span.bag)
        elif span.kind == "number":
            made = plus(made, Bag(number=span.value))  # type: ignore[arg-type]
        elif span.kind == "either" and union:
            part, labels = cast(tuple[str, tuple[Label, ...]], span.value)
            made = plus(made, only(EMPTY, part, labels))
        elif (
            span.kind in _FILL
            or (span.kind == "and" and place in (0, len(spans) - 1))
            or (span.kind == "to" and place + 1 < len(spans) and spans[place + 1].value in ("verb", "negated"))
        ):
            continue
        else:
            raise Clash
    return verb(made)


def find(spans: Sequence[Span], *kinds: str, start: int = 0) -> int | None:
    """The place of the first span of some kinds."""
    return next((place for place in range(start, len(spans)) if spans[place].kind in kinds), None)


def has(spans: Iterable[Span], *kinds: str) -> bool:
    """Whether a span of some kinds is among them."""
    return any(span.kind in kinds for span in spans)


def count(spans: Iterable[Span], *kinds: str) -> int:
    """How many spans of some kinds are among them."""
    return sum(span.kind in kinds for span in spans)


def without(spans: Iterable[Span], *kinds: str) -> list[Span]:
    """The other spans."""
    return [span for span in spans if span.kind not in kinds]


def names_something(spans: Iterable[Span]) -> bool:
    """Whether there is more than words that hold others together."""
    return any(span.kind in ("bag", "number", "either", "change") for span in spans)


def infinitive(spans: Sequence[Span], place: int) -> bool:
    """Whether the "to" at a place leads in a verb: "to knock down"."""
    after = spans[place + 1] if place + 1 < len(spans) else None
    if after is None or after.value not in ("verb", "negated") or after.before or after.bag.measure is None:
        return False
    return after.text.casefold().split()[0] in _BASES


_BASES = frozenset(("knock", "fall", "tip", "topple", "hit", "go", "get", "sprout", "come", "grow", "leave", "stay", "miss"))
