"""Rules for sentences about a number line from 0 to 1, and about whole sets as a fraction."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.counts import EachTrial
from mathgen.reading.meaning.parts import AsFraction, FromOne, NumberLine, SetIsWhole, TheFraction, TopAndBottom
from mathgen.reading.meaning.scope import Labels, Mark
from mathgen.reading.noun_phrases import Counted, always, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.parts import PartsFromOne, TopOfSets, WholeOfFraction
from mathgen.trials.scope import Measure


def _line(parts: Number, zero: Number, one: Number) -> Claims:
    if (zero.text, one.text) != ("0", "1"):
        raise Clash
    return (NumberLine(parts),)


def _from_one(measure: Measure | None, one: Number) -> PartsFromOne:
    if one.text != "1":
        raise Clash
    return PartsFromOne(measure)


def _told_from_one(measure: Measure, parts: Number, one: Number) -> Claims:
    if one.text != "1":
        raise Clash
    return (FromOne(measured(measure, "down", "standing"), parts),)


def _one_set(measure: Measure, thing: Counted, each: Mark, who: Labels = None) -> Claims:
    return (EachTrial(measured(measure, "set_up"), what(thing.colors, who, each), thing.number, None),)


RULES: tuple[Rule, ...] = (
    rule("fact", "a number line from WHOLE to WHOLE has WHOLE equal parts", lambda zero, one, parts: _line(parts, zero, one)),
    rule("fact", "a number line from WHOLE to WHOLE is divided into WHOLE equal parts", lambda zero, one, parts: _line(parts, zero, one)),
    rule("fact", "a number line has WHOLE equal parts from WHOLE to WHOLE", _line),
    rule("fact", "mark the fraction <that_outcome>", lambda measure: (TheFraction(measured(measure, "down", "standing")),)),
    rule("ask", "how many parts are between the mark and WHOLE", lambda one: _from_one(None, one)),
    rule("ask", "how many parts are there from the mark to WHOLE", lambda one: _from_one(None, one)),
    rule("ask", "how many parts are between the fraction <that_outcome>? and WHOLE", _from_one),
    rule("ask", "how many parts are there from the fraction <that_outcome>? to WHOLE", _from_one),
    # a fraction told by its distance from 1
    rule("fact", "the fraction <that_outcome> is WHOLE parts (from|before) WHOLE", _told_from_one),
    rule("fact", "count back WHOLE parts from WHOLE to find the fraction <that_outcome>", lambda n, one, m: _told_from_one(m, n, one)),
    rule("fact", "count back WHOLE parts from WHOLE to the fraction <that_outcome>", lambda n, one, m: _told_from_one(m, n, one)),
    rule("fact", "one set is the whole", always((SetIsWhole(),))),
    rule("top_and_bottom", "the top number WHOLE and the bottom number WHOLE", lambda *numbers: (TopAndBottom(*numbers),)),
    rule("fact", "these ITEM make a fraction with <top_and_bottom>", lambda _, claims: claims),
    rule("fact", "as a fraction , these ITEM have <top_and_bottom>", lambda _, claims: claims),
    rule("fact", "the fraction for these ITEM has <top_and_bottom>", lambda _, claims: claims),
    rule("ask", "which whole number is equal to the fraction", always(WholeOfFraction())),
    rule("ask", "which whole number is the fraction equal to", always(WholeOfFraction())),
    rule("ask", "what whole number is the same as the fraction", always(WholeOfFraction())),
    # whole sets
    rule("vp", "<past> one set of <counted> <each_trial>", _one_set),
    rule(
        "fact",
        "for WHOLE trials , <who> <past> one set of <counted> each time",
        lambda n, who, measure, thing: _one_set(measure, thing, Mark("each", n), who),
    ),
    rule("fact", "write WHOLE as a fraction with the? bottom number WHOLE", lambda n, bottom: (AsFraction(n, bottom),)),
    rule("fact", "a fraction with the? bottom number WHOLE is equal to WHOLE", lambda bottom, n: (AsFraction(n, bottom),)),
    rule("ask", "what is the top number of the fraction", TopOfSets),
)
