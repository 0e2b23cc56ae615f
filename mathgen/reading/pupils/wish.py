"""What a sentence of a pupil wants or tells, before it is held against the table."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.exact.demand import Demand
from mathgen.reading.pupils.bags import Bag
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label


class Wish(NamedTuple):
    """The kind of wish, the bags it is about in order, and what else the words say."""

    kind: str
    bags: tuple[Bag, ...] = ()
    demand: Demand | None = None
    sign: int = 1
    by: str = ""
    labels: tuple[Label, ...] = ()
    number: Number | None = None
    test: str = ""
    worth: tuple[tuple[Bag, Number], ...] = ()
