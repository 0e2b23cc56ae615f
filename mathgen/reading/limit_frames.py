"""Rules for sentences about a limit that a loss of points must keep to."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning import Labels, LossLimit, Np
from mathgen.reading.noun_phrases import measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted import MostAllowed


def _limit(below: tuple[Number, bool], who: Labels = None) -> Claims:
    number, strict = below
    return (LossLimit(Np(who), number, strict),)


RULES: tuple[Rule, ...] = (
    rule("below", "less than WHOLE points", lambda n: (n, True)),
    rule("below", "at most WHOLE points", lambda n: (n, False)),
    rule("fact", "the loss must be <below> after one extra trial", _limit),
    rule("fact", "together with one extra trial , the loss must be <below>", _limit),
    rule("fact", "<who> would like to lose <below> with one extra trial", lambda who, below: _limit(below, who)),
    rule(
        "ask",
        "what is the (greatest|largest) number of <things> that may be <outcome> in the extra trial",
        lambda colors, m: MostAllowed(measured(m, "standing"), what(colors)),
    ),
)
