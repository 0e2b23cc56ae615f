"""Rules for sentences about points for each pin knocked down, and about equal racks: those that tell and those that ask."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims, at, of
from mathgen.reading.meaning.counts import Count, EachTrial
from mathgen.reading.meaning.rates import Classes, OneSet, PointsEach, SamePoints, SameRacks, ScoreIs
from mathgen.reading.meaning.scope import Labels, Mark, Np
from mathgen.reading.noun_phrases import Counted, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.counts import HowMany
from mathgen.reading.wanted.letters import HowManyPoints
from mathgen.reading.wanted.rates import OfClasses, OneRack, PointsOfOne
from mathgen.trials.scope import Measure

Thing = tuple[Measure, Labels]  # what was done to it, and its color


def _each(thing: Thing, number: Number, who: Labels = None) -> Claims:
    return (PointsEach(thing[0], what(thing[1], who), number),)


def _costs(thing: Thing, number: Number) -> Claims:
    return _each((measured(thing[0], "standing"), thing[1]), number)


def _same(thing: Thing) -> Claims:
    return (SamePoints(thing[0], what(thing[1])),)


def _told(number: Number, colors: Labels, when: Labels = None) -> Claims:
    return (ScoreIs(what(colors, None, when), number),)


def _down_and_points(measure: Measure, thing: Counted, number: Number) -> Claims:
    return (Count(measured(measure, "down", "standing"), what(thing.colors), thing.number), *_told(number, thing.colors))


def _worth(thing: Counted, number: Number, colors: Labels) -> Claims:
    if colors != thing.colors:
        raise Clash
    np = what(thing.colors)
    return (ScoreIs(np, number), SamePoints(None, np, thing.number))


def _asked(who: Labels, colors: Labels, when: Labels) -> HowManyPoints:
    return HowManyPoints(what(colors, who, when))


def _rack(colors: Labels, who: Labels, measure: Measure) -> OneRack:
    measured(measure, "set_up")
    return OneRack(what(colors, who))


def _each_of_these(count: Number, who: Labels, measure: Measure, thing: Counted) -> Claims:
    return (EachTrial(measured(measure, "set_up"), what(thing.colors, who, Mark("each", count)), thing.number, None),)


def _sets(measure: Measure, count: Number, colors: Labels, total: Counted) -> Claims:
    measured(measure, "set_up")
    if colors != total.colors:
        raise Clash
    return (Count(measure, what(colors), total.number), SameRacks(what(colors), count))


POINTS: tuple[Rule, ...] = (
    rule("for_things", "for the? <things>", lambda colors: colors),
    rule("one_thing", "(each|one) <thing> <that_outcome>", lambda color, measure: (measure, color)),
    rule("fact", "<one_thing> (earns|earned) WHOLE points", _each),
    rule("fact", "<one_thing> (costs|cost) WHOLE points", _costs),
    rule("fact", "<one_thing> (is|was) worth WHOLE points", _each),
    rule("for_each", "for each <thing> <that_outcome>", lambda color, measure: (measure, color)),
    rule("fact", "<who> earned WHOLE points <for_each>", lambda who, n, thing: _each(thing, n, who)),
    rule(
        "fact",
        "<who> earned WHOLE points <for_each> , WHOLE points <in_all>",
        lambda who, n, thing, total, _: (*_each(thing, n, who), *of(who, _told(total, thing[1]))),
    ),
    rule("earned_for", "<who> earned WHOLE points <for_things> <when>?", lambda who, n, c, when: of(who, _told(n, c, when))),
    rule("earned_for", "<who> <past> <counted> and earned WHOLE points", lambda who, m, thing, n: of(who, _down_and_points(m, thing, n))),
    rule("fact", "<earned_for>", lambda claims: claims),
    rule("fact", "<when> , <earned_for>", at),
    rule("fact", "<one_thing> (earns|earned) the same number of points", _same),
    rule("fact", "each <thing> (earns|earned) the same number of points", lambda color: (SamePoints(None, what(color)),)),
    rule("fact", "<one_thing> (costs|cost) WHOLE points", _costs),
    rule("fact", "<one_thing> (is|was) worth the same number of points", _same),
    rule(
        "fact",
        "the <counted> were worth WHOLE points <in_all> , the same number for each <thing>",
        lambda thing, n, _, color: _worth(thing, n, color if isinstance(color, tuple) else Mark("bare")),
    ),
    rule("ask", "how many points did <who> earn <for_things>? <when>?", _asked),
    rule("ask", "(what|find) (is|was)? the total? number of points <for_things>", lambda colors: HowManyPoints(what(colors))),
    rule("ask", "(what|find) (is|was)? the total? number of points <who> earned <for_things>? <when>?", _asked),
    rule(
        "ask",
        "how many points (are|were) the? <counted> <that_outcome>? worth <in_all>?",
        lambda thing, m, _: HowManyPoints(what(thing.colors), thing.number, m),
    ),
    rule("ask", "how many points did <one_thing> earn", lambda thing: PointsOfOne(thing[0], what(thing[1]))),
    rule("ask", "how many points (is|was) <one_thing> worth", lambda thing: PointsOfOne(thing[0], what(thing[1]))),
    rule("ask", "how many points (is|was) (each|one) <thing> worth", lambda color: PointsOfOne(None, what(color))),
)

RACKS: tuple[Rule, ...] = (
    rule("fact", "for each of these WHOLE trials , <who> <past> <counted>", _each_of_these),
    rule("fact", "each trial had the same number of <things>", lambda colors: (SameRacks(what(colors)),)),
    rule("fact", "the number was the same for each of the WHOLE trials", lambda n: (SameRacks(Np(), n),)),
    rule("sets", "<who> <past> WHOLE equal sets of <things> , <counted> <in_all>", lambda w, m, n, c, t, _: of(w, _sets(m, n, c, t))),
    rule("fact", "<sets>", lambda claims: claims),
    rule("fact", "<when> ,? <sets>", at),
    rule("classes", "WHOLE classes each <past> the same number of <things>", lambda n, m, colors: (Classes(m, what(colors), n),)),
    rule("classes", "each of WHOLE classes <past> the same number of <things>", lambda n, m, colors: (Classes(m, what(colors), n),)),
    rule("fact", "suppose <classes>", lambda claims: claims),
    rule("fact", "suppose that <classes>", lambda claims: claims),
    rule("ask", "how many <things> would the WHOLE classes <base> <in_all>?", lambda c, n, m, _: OfClasses(m, what(c), n)),
    rule(
        "ask",
        "(what|find) (is|was)? the total? number of <things> <that_past> by the WHOLE classes",
        lambda c, m, n: OfClasses(m, what(c), n),
    ),
    rule("that_past", "that? (was|were)? <past>", lambda measure: measure),
    rule(
        "ask",
        "(what|find) (is|was)? the total? number of <things> SET <when>?",
        lambda c, m, when: HowMany(m, what(c, None, when), None, True),
    ),
    rule("ask", "how many <things> were SET <when>?", lambda colors, m, when: HowMany(m, what(colors, None, when))),
    rule(
        "ask",
        "(what|find) (is|was)? the total? number of <things> SET by <who> <when>?",
        lambda c, m, who, when: HowMany(m, what(c, who, when), None, True),
    ),
    rule("fact", "each trial had one set", lambda: (OneSet(),)),
    rule("ask", "how many <things> did <who> <base> for (each|one) trial", lambda colors, who, m: _rack(colors, who, m)),
    rule("ask", "how many <things> (was|were) <past> for (each|one) trial", lambda colors, m: _rack(colors, None, m)),
    rule("ask", "how many <things> (was|were) in one set", lambda colors: OneRack(what(colors))),
)

RULES: tuple[Rule, ...] = (*POINTS, *RACKS)
