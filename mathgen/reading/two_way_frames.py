"""Rules for sentences about two-way tables of kinds and results."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.counts import Count, Look
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.meaning.statistics import OtherRow
from mathgen.reading.noun_phrases import Counted, always, what
from mathgen.reading.wanted.statistics import OtherThan
from mathgen.trials.scope import Measure


def _counted(things: tuple[Counted, ...], measure: Measure, who: Labels = None) -> Claims:
    return tuple(Count(measure, what(thing.colors, who), thing.number) for thing in things)


RULES: tuple[Rule, ...] = (
    rule("fact", "these results go in a two-way table", always(())),
    rule("labelled", "COLOR WHOLE", lambda color, n: Counted(n, (color,))),
    rule("all_labelled", "<labelled> and <labelled>", lambda one, other: (one, other)),
    rule("all_labelled", "<labelled> , <more_labelled>", lambda first, rest: (first, *rest)),
    rule("more_labelled", "<labelled> ,? and <labelled>", lambda one, other: (one, other)),
    rule("more_labelled", "<labelled> , <more_labelled>", lambda first, rest: (first, *rest)),
    rule("fact", "in a two-way table , the row totals of ITEM SET are <all_labelled>", lambda _, m, things: _counted(things, m)),
    rule("fact", "a two-way table of kinds and results counts <counts> <outcome> by <who>", _counted),
    rule("fact", "put these numbers in a two-way table", always(())),
    rule("fact", "make a two-way table of kinds and results", always(())),
    rule(
        "fact",
        "a two-way table has one row for <things> and one row for all the other ITEM",
        lambda colors, _: (OtherRow(colors),),
    ),
    rule("ask", "how many ITEM other than the <things> <fell>", lambda _, colors, m: OtherThan(m, colors)),
    rule("ask", "how many of the other ITEM <fell>", lambda _, m: OtherThan(m, None)),
    rule("job", "make a two-way table of kinds and results", always((Look(Np(), "table"),))),
)
