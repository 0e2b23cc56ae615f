"""Rules for sentences about things that stand in rows of as many."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.scope import Labels
from mathgen.reading.meaning.sets import InRows, RowHolds
from mathgen.reading.noun_phrases import always, measured, what
from mathgen.reading.pair_frames import Together
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure


def _rows(together: Together, rows: Number, size: Number | None = None, who: Labels = None) -> Claims:
    colors, measure = together
    put = InRows(measure, what(colors, who), rows)
    return (put,) if size is None else (put, RowHolds(size))


def _array(colors: Labels, who: Labels, measure: Measure, when: Labels) -> Claims:
    return (InRows(measured(measure, "down", "standing"), what(colors, who, when), None),)


RULES: tuple[Rule, ...] = (
    rule("fact", "all the? <things> <who> <outcome> make WHOLE rows", lambda c, who, m, rows: _rows((c, m), rows, None, who)),
    rule("fact", "each row has WHOLE <things>", lambda size, colors: (RowHolds(size, colors),)),
    rule("fact", "all the? <things> <who> <outcome> make WHOLE rows of WHOLE", lambda c, who, m, n, size: _rows((c, m), n, size, who)),
    rule("fact", "an array shows all the? <things> <who> <outcome> <when>", _array),
    rule("fact", "the array has WHOLE rows of WHOLE", lambda rows, size: (RowHolds(size, None, rows),)),
    rule("fact", "add the rows", always(())),
)
