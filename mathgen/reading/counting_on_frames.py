"""Rules for sentences about counting on by ones."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning import CountOn
from mathgen.reading.tokens import Number
from mathgen.reading.wanted import NextNumber


def _on(first: Number, following: Number) -> Claims:
    return (CountOn(first, following),)


RULES: tuple[Rule, ...] = (
    rule("fact", "count on by ones : WHOLE , WHOLE", _on),
    rule("fact", "count on from WHOLE to WHOLE", _on),
    rule("fact", "the number after WHOLE is WHOLE", _on),
    rule("ask", "which number (comes|is) next", lambda: NextNumber(None)),
    rule("ask", "which number comes after WHOLE", NextNumber),
)
