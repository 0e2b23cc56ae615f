"""Rules for sentences about parts of parts, parts held side by side, and a fraction that comes again in several trials."""

from __future__ import annotations

from mathgen.exact.demand import Demand
from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.counts import Portion
from mathgen.reading.meaning.parts import PartOf, SameInTrials, ShareFraction, ShownPart, SomePart
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.noun_phrases import Counted, always, measured, what
from mathgen.reading.part_frames import Known
from mathgen.reading.questions import GREATER
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.parts import AsFraction, FractionGap, FractionShare, GreaterPart, SameValue, SetsDown, SetsInAll
from mathgen.trials.scope import Label, Measure

ANY, DECIMAL = Demand("any"), Demand("decimal")


def _of_outcome(colors: Labels, part: Number, known: Known) -> Claims:
    return (PartOf(None, known.np, part, colors, known.number, known.counted),)


def _greater(one: Label, other: Label, measure: Measure) -> GreaterPart:
    if one == other:
        raise Clash
    return GreaterPart(measured(measure, "down", "standing"), str(one), str(other))


def _full_sets(one: Counted, total: Counted) -> SetsDown:
    if one.colors != total.colors:
        raise Clash
    return SetsDown(what(total.colors), one.number, total.number, ANY)


def _gap(demand: Demand, first: Labels, other: Labels) -> FractionGap:
    if first == other:
        raise Clash
    return FractionGap(first, other, demand)


def _same_in(number: Number, who: Labels = None, measure: Measure | None = None) -> Claims:
    return (SameInTrials(number, Np(who), measure),)


def _sets(thing: Counted, measure: Measure, who: Labels = None) -> SetsInAll:
    return SetsInAll(measured(measure, "down", "standing"), what(thing.colors, who), thing.number)


def _share(thing: Counted) -> FractionShare:
    return FractionShare(what(thing.colors), thing.number)


RULES: tuple[Rule, ...] = (
    # a repeating decimal, as a fraction
    rule(
        "fact",
        "the part of the <things> that <who> <outcome> <when> was NUM , a repeating decimal",
        lambda colors, who, m, when, number: (Portion(m, Np(who, when, colors), number, None),),
    ),
    rule("fact", "<who> <outcome> a part of the <things> <when>", lambda who, m, colors, when: (SomePart(m, Np(who, when, colors)),)),
    rule("fact", "a calculator shows this part as NUM , and the decimal does not end", lambda number: (ShownPart(number),)),
    rule("ask", "is FRACTION equal to this repeating decimal", SameValue),
    rule("ask", "does the fraction FRACTION have the same value", SameValue),
    rule("ask", "is this part of the ITEM equal to FRACTION", lambda _, claimed: SameValue(claimed)),
    rule("ask", "(which|what) fraction of the <things> is equal to this repeating decimal", AsFraction),
    rule("ask", "(which|what) fraction of the <things> has the same value", AsFraction),
    rule("ask", "(which|what) fraction of the <things> is this part", AsFraction),
    rule("passive", "the? <sort_things> (was|were) NUM <outcome_of>", _of_outcome),
    # two parts held side by side
    rule("ask", f"which was the {GREATER} , COLOR or COLOR ITEM <that_outcome>", lambda a, b, _, m: _greater(a, b, m)),
    rule("ask", "which part was greater , COLOR or COLOR ITEM <that_outcome>", lambda a, b, _, m: _greater(a, b, m)),
    rule("gap_of", "how much greater is the fraction", always(ANY)),
    rule("gap_of", "how much greater is the decimal", always(DECIMAL)),
    rule("ask", "<gap_of> for TRIALS than for TRIALS", lambda demand, first, other: _gap(demand, first, other)),
    # the same fraction again
    rule(
        "fact",
        "suppose <who> <outcome> the same fraction in each of WHOLE trials",
        lambda who, m, n: _same_in(n, who, m),
    ),
    rule("fact", "suppose the fraction stays the same for WHOLE trials", lambda n: _same_in(n)),
    rule("fact", "suppose each of WHOLE trials had the same fraction <fall>", lambda n, m: _same_in(n, None, m)),
    rule("ask", "how many sets of <counted> would <who> <outcome_base> <in_all>", lambda thing, who, m, _: _sets(thing, m, who)),
    rule("ask", "how many sets of <counted> would be <outcome> <in_all>", lambda thing, m, _: _sets(thing, m)),
    rule("ask", "how many sets of <counted> would those <that_outcome> make <in_all>", lambda thing, m, _: _sets(thing, m)),
    rule("ask", "how many sets of <counted> do <counted> make", _full_sets),
    # its equal shares
    rule("fact", "suppose the number <that_outcome> was the same in each of the WHOLE trials", lambda _, n: (ShareFraction(n),)),
    rule("fact", "share this fraction equally among the WHOLE trials", lambda n: (ShareFraction(n),)),
    rule(
        "ask", "what fraction of the <counted> would that be for one trial", lambda thing: FractionShare(what(thing.colors), thing.number)
    ),
    rule(
        "ask", "what fraction of the <counted> is one of these equal shares", lambda thing: FractionShare(what(thing.colors), thing.number)
    ),
)
