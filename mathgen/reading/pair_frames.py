"""Rules for sentences about pairs: those that tell and those that ask."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning import InPairs, Labels, Mark
from mathgen.reading.noun_phrases import Tail, always, measured, what
from mathgen.reading.wanted import Paired, Partners
from mathgen.trials.scope import Measure

Together = tuple[Labels, Measure | None]


def _put(together: Together) -> Claims:
    colors, measure = together
    return (InPairs(measure, what(colors)),)


def _can(together: Together, who: Labels = None, tail: Tail | None = None) -> Paired:
    colors, measure = together
    return Paired(measure, what(colors, who, None if tail is None else tail.trials), True)


def _is(colors: Labels, measure: Measure, who: Labels, tail: Tail | None, even: bool) -> Paired:
    measured(measure, "down", "standing")
    return Paired(measure, what(colors, who, None if tail is None else tail.trials), even)


def _partners(thing: Labels, all_have: bool) -> Partners:
    if not isinstance(thing, Mark):
        raise Clash  # all that are in pairs are meant
    return Partners(all_have)


RULES: tuple[Rule, ...] = (
    rule("together", "all? of? (these|those) <things>", lambda colors: (colors, None)),
    rule("together", "all? of? the? <things> <that_outcome>", lambda colors, m: (colors, measured(m, "down", "standing"))),
    rule("fact", "put <together> in pairs", _put),
    rule("ask", "can <together> <by_whom>? <tail>? be put in pairs", _can),
    rule("even_or_odd", "an? even number?", always(True)),
    rule("even_or_odd", "an? odd number?", always(False)),
    rule("ask", "is the total? number of <things> <that_outcome> <by_whom>? <tail>? <even_or_odd>", _is),
    rule("ask", "does every <thing> have a partner", lambda thing: _partners(thing, True)),
    rule("ask", "is one <thing> without a partner", lambda thing: _partners(thing, False)),
)
