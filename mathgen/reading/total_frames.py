"""Rules for questions whether a number is a total."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.meaning.scope import Labels
from mathgen.reading.noun_phrases import Counted, Tail, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.counts import IsTotal
from mathgen.trials.scope import Measure


def _is_total(number: Number, colors: Labels, who: Labels, measure: Measure, tail: Tail | None) -> IsTotal:
    return IsTotal(number, measure, what(colors, who, None if tail is None else tail.trials))


def _did(who: Labels, measure: Measure, thing: Counted, tail: Tail | None) -> IsTotal:
    return _is_total(thing.number, thing.colors, who, measure, tail)


RULES: tuple[Rule, ...] = (
    rule("ask", "did <who> <base> <counted> <tail>?", _did),
    rule("ask", "is WHOLE the total number of <things> <that_outcome>", lambda n, c, m: _is_total(n, c, None, m, None)),
    rule("ask", "is WHOLE the total number of <things> that? <who> <outcome>", lambda n, c, w, m: _is_total(n, c, w, m, None)),
    rule("ask", "is the total number of <things> <that_outcome> WHOLE", lambda c, m, n: _is_total(n, c, None, m, None)),
)
