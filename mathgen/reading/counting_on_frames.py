"""Rules for sentences about counting on or back by ones."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.meaning.counts import CountOn
from mathgen.reading.noun_phrases import always
from mathgen.reading.wanted.counts import NextNumber

RULES: tuple[Rule, ...] = (
    rule("fact", "count on by ones : WHOLE , WHOLE , _ _", lambda start, following: (CountOn(2, start, following),)),
    rule("fact", "start at WHOLE and count two more numbers", lambda start: (CountOn(2, start),)),
    rule("fact", "name the next two numbers after WHOLE", lambda start: (CountOn(2, start),)),
    rule("ask", "which number comes next", always(NextNumber(2, None, True))),
    rule("ask", "which number comes second", always(NextNumber(2))),
    rule("ask", "which of the two numbers comes second", always(NextNumber(2))),
    # back
    rule("fact", "count these <things> by ones", lambda colors: (CountOn(0, None, None, colors),)),
    rule("fact", "count up to WHOLE by ones", lambda start: (CountOn(0, start),)),
    rule("fact", "start at WHOLE and count back one", lambda start: (CountOn(-1, start),)),
    rule("ask", "which number comes right before WHOLE", lambda start: NextNumber(0, start)),
    rule("ask", "what is the number before WHOLE", lambda start: NextNumber(0, start)),
    rule("ask", "which number is that", always(NextNumber(-1))),
)
