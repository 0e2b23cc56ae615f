"""Rules for sentences about equal boxes of two colors, and about totals that two groups both reach."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.scope import Labels
from mathgen.reading.meaning.sets import BoxesAlike, PutInBoxes, Repeated
from mathgen.reading.noun_phrases import measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.sets import GreatestBoxes, LeastBoth
from mathgen.trials.scope import Measure


def _put(together: tuple[Labels, Measure | None], box: str) -> Claims:
    colors, measure = together
    return (PutInBoxes(measure, what(colors), box),)


def _from_zero(zero: Number, made: Claims) -> Claims:
    if zero.value != 0:
        raise Clash
    return made


def _all_alike(together: tuple[Labels, Measure | None], box: str, other: str) -> Claims:
    if box != other:
        raise Clash
    return (*_put(together, box), BoxesAlike(box))


RULES: tuple[Rule, ...] = (
    rule("fact", "put <together> in <boxes>", _put),
    rule("fact", "all the <boxes> are alike", lambda box: (BoxesAlike(box),)),
    rule("fact", "<together> go in <boxes> , and all the <boxes> are alike", _all_alike),
    rule("ask", "what is the greatest number of <boxes>", GreatestBoxes),
    rule("ask", "what is the greatest number of <boxes> that can be made", GreatestBoxes),
    rule("fact", "suppose every trial had the same result as TRIALS", lambda trials: (Repeated(trials),)),
    rule("fact", "count on from WHOLE by each of these numbers", lambda zero: _from_zero(zero, (Repeated(),))),
    rule("ask", "what is the least total of <things> that both groups can reach", lambda colors: LeastBoth(None, colors)),
    rule("ask", "what is the least number of <things> that both counts reach", lambda colors: LeastBoth(None, colors)),
    rule(
        "ask",
        "what is the least total of <things> <that_outcome> that both groups can reach",
        lambda colors, m: LeastBoth(measured(m, "down", "standing"), colors),
    ),
)
