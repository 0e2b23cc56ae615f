"""What a question asks, before its gaps are filled: one record for each kind, a file for each subject, as in ``meaning``.

Kinds are named once: in the table ``ASKED`` of the room that works them out.
"""

from __future__ import annotations

from typing import Any, NamedTuple

from mathgen.exact.demand import Demand
from mathgen.reading.meaning import Claim

Question = tuple[Any, ...]  # one of the records of these files


class Meaning(NamedTuple):
    """One way to read a sentence."""

    claims: tuple[Claim, ...] = ()
    question: Question | None = None
    demand: Demand | None = None  # a form that the question's sentence asks for by itself
