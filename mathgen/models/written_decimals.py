"""Parts of a whole as decimals are printed: within thousandths."""

from __future__ import annotations

from typing import Literal

from mathgen.asks.steps.written_number import terminating

MOST_PLACES = 3


def decimals(*parts: tuple[int, int]) -> tuple[str, ...] | None:
    """Each part as a decimal that ends within thousandths; None where one does not.

    >>> decimals((3, 4), (1, 8)), decimals((1, 2), (1, 3))
    (('0.75', '0.125'), None)
    """
    texts = [terminating(top, bottom) for top, bottom in parts]
    return tuple(text for text in texts if text) if all(text and places(text) <= MOST_PLACES for text in texts) else None


def places(text: str) -> int:
    """How many places a decimal has."""
    return len(text.partition(".")[2])


def decimal_features(what: Literal["decimal_notation", "decimal_compute"], *texts: str) -> frozenset[str]:
    """What the grade has to allow for decimals that are read or worked with: thousandths come later than hundredths."""
    return frozenset({what, "thousandths"} if max(map(places, texts)) == MOST_PLACES else {what})
