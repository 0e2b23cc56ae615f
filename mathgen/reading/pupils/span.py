"""A span: some words of a pupil's sentence that belong together, and what they say."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.exact.demand import Demand
from mathgen.reading.pupils.bags import EMPTY, Bag

FORMS = {"FRACTION": Demand("any"), "PROPORTION": Demand("any"), "PERCENT": Demand("percent"), "DECIMAL": Demand("decimal")}


class Span(NamedTuple):
    """Some words that belong together: a sign of what is wanted, a bag, or a word that holds others together."""

    kind: str
    bag: Bag = EMPTY
    value: object = None
    before: frozenset[str] = frozenset()  # prepositions and articles that lead it in
    text: str = ""
