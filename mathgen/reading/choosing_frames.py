"""Rules for sentences about fractions of a set that groups had, and that ask which of them have a sum."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.counts import Count
from mathgen.reading.meaning.parts import PartsOfSets
from mathgen.reading.meaning.scope import Labels
from mathgen.reading.meaning.sets import SumOfSome
from mathgen.reading.noun_phrases import Counted, Tail, measured, what
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure


def _set(each: Labels, thing: Counted, tail: Tail | None) -> Claims:
    return (Count("set_up", what(thing.colors, each, None if tail is None else tail.trials), thing.number),)


def _parts(measure: Measure, parts: tuple[Number, ...]) -> Claims:
    return (PartsOfSets(measured(measure, "down", "standing"), parts),)


def _so_many(number: Number) -> int:
    if number.text not in ("two", "three"):
        raise Clash
    return int(number.value)


RULES: tuple[Rule, ...] = (
    rule("clause", "<each_group> had a set of <counted> <tail>?", _set),
    rule("clause", "<each_group> SET a set of <counted> <tail>?", lambda each, _, thing, tail: _set(each, thing, tail)),
    rule("parts_and", "FRACTION ,? and FRACTION", lambda one, other: (one, other)),
    rule("parts_and", "FRACTION , <parts_and>", lambda one, more: (one, *more)),
    rule("parts_or", "FRACTION ,? or FRACTION", lambda one, other: (one, other)),
    rule("parts_or", "FRACTION , <parts_or>", lambda one, more: (one, *more)),
    rule("fact", "<each_group> <outcome> <parts_or> of the set", lambda _, m, parts: _parts(m, parts)),
    rule("fact", "all groups <outcome> <parts_or> of a set", _parts),
    rule("fact", "the fractions of a set <that_outcome> were <parts_and>", _parts),
    rule("so_many", "WHOLE", _so_many),
    rule("fact", "find <so_many> of these fractions that have the sum NUM", lambda size, total: (SumOfSome(size, total),)),
    rule("fact", "find <so_many> of these fractions with the sum NUM", lambda size, total: (SumOfSome(size, total),)),
    rule("fact", "choose <so_many> of these fractions that add up to NUM", lambda size, total: (SumOfSome(size, total),)),
)
