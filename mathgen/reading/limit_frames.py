"""Rules for sentences about a limit that a loss of points must keep to."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.letters import LossLimit
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.noun_phrases import measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.letters import MostAllowed


def _limit(when: Labels, below: tuple[Number, bool], who: Labels = None) -> Claims:
    number, strict = below
    return (LossLimit(Np(who, when), number, strict),)


RULES: tuple[Rule, ...] = (
    rule("below", "less than WHOLE points", lambda n: (n, True)),
    rule("below", "at most WHOLE points", lambda n: (n, False)),
    rule("fact", "the whole loss for TRIALS and one extra trial must be <below>", _limit),
    rule("fact", "the loss for TRIALS and one extra trial together must be <below>", _limit),
    rule(
        "fact",
        "in TRIALS and one extra trial together , <who> would like to lose <below>",
        lambda when, who, below: _limit(when, below, who),
    ),
    rule(
        "ask",
        "what is the (greatest|largest) number of <things> that may be <outcome> in the extra trial",
        lambda colors, m: MostAllowed(measured(m, "standing"), what(colors)),
    ),
)
