"""Rules for sentences that claim something of the results, and that ask whether a claim is true."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.judged import (
    AgainstPart,
    ChangedBy,
    Claimed,
    Explain,
    GreaterFraction,
    LastOne,
    MoreThanBoth,
    NextOne,
    PartTogether,
    Statement,
    Stronger,
    TimesAsMany,
)
from mathgen.reading.meaning.scope import Labels
from mathgen.reading.noun_phrases import always, measured
from mathgen.reading.part_frames import Known
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.judged import IsFair, JudgeClaim
from mathgen.trials.scope import Measure


def _fraction(measure: Measure, first: Labels, second: Labels) -> GreaterFraction:
    return GreaterFraction(first, second, measure)


def _part(sign: str, part: Number, whole: tuple[Number | None, Labels], measure: Measure) -> AgainstPart:
    number, colors = whole
    return AgainstPart(">" if sign == ">" else "<", part, colors, number, measure)


def _together(number: Number, known: Known, colors: Labels, measure: Measure) -> PartTogether:
    if known.counted not in (None, "set_up") or isinstance(known.colors, tuple):
        raise Clash
    return PartTogether(number, colors, known.number, measure)


def _last(number: Number, colors: Labels, measure: Measure) -> tuple[LastOne]:
    return (LastOne(number, colors, measured(measure, "down", "standing")),)


def _says(statement: Statement) -> Claims:
    return (Claimed(statement),)


RULES: tuple[Rule, ...] = (
    rule("claim", "a greater fraction of the? <things> than of the? <things> <fell>", GreaterFraction),
    rule("claim", "the fraction <that_outcome> was greater for <things> than for <things>", _fraction),
    rule("over_or_under", "more than", always(">")),
    rule("over_or_under", "less than", always("<")),
    rule("claim", "<over_or_under> NUM <whole> <fell>", _part),
    rule("claim", "<multiple> <things> as <things> <fell>", TimesAsMany),
    rule("claim", "more <things> <fell> than <things> together", MoreThanBoth),
    rule("fact", "someone (says|writes|thinks) that <claim>", _says),
    rule("fact", "one claim is that <claim>", _says),
    rule("ask", "is (this|the) claim (true|right)", always(JudgeClaim())),
    rule("ask", "is that right", always(JudgeClaim())),
    rule("ask", "do the results support this claim", always(JudgeClaim())),
    rule("claim", "NUM <set> (was|were) <sort_things> <that_outcome>", _together),
    rule("claim", "<sort_things> <that_outcome> (was|were) NUM <set>", lambda colors, m, n, known: _together(n, known, colors, m)),
    rule("fact", "someone adds these fractions and gets NUM", lambda number: _says(PartTogether(number))),
    rule("went", "increased", always(1)),
    rule("went", "decreased", always(-1)),
    rule("claim", "the number of <things> <that_outcome> <went> by NUM", lambda c, m, sign, number: ChangedBy(sign, number, c, m)),
    rule(
        "claim",
        "the change from TRIALS to TRIALS was (a|an) <change> of NUM",
        lambda first, last, sign, number: ChangedBy(sign, number, trials=(first, last)),
    ),
    rule("fact", "suppose the last of the NUM <things> <fell>", _last),
    rule("claim", "the estimated probability that the next <thing> will <be_done> is NUM", NextOne),
    rule("claim", "NUM is the estimated probability that the next <thing> will <be_done>", lambda chance, c, m: NextOne(c, m, chance)),
    rule("fact", "<going_by> , one claim is that <claim>", lambda _, claim: _says(claim)),
    rule("claim", "<who> had the (stronger|better) result in these trials", Stronger),
    rule("claim", "<who> did better in these trials", Stronger),
    rule("claim", "<who> did better than <who> in these trials", Stronger),
    rule("fair_by", "the fractions <that_outcome>", lambda m: IsFair("fraction", measured(m, "down", "standing"))),
    rule("fair_by", "the means", always(IsFair("mean"))),
    rule("fair_by", "the <things> <that_outcome> per trial", lambda c, m: IsFair("per trial", m, c)),
    rule("ask", "going by <fair_by> , is this claim fair", lambda question: question),
    rule("ask", "based on <fair_by> , is this claim fair", lambda question: question),
    rule("ask", "do <fair_by> support this claim", lambda question: question),
    rule("fact", "put these numbers in a two-way table", always(())),
    rule("fact", "make a two-way table of these numbers", always(())),
    rule("fact", "show these results in a two-way table", always(())),
    rule("ask", "do you agree", always(JudgeClaim())),
    rule("fact", "tell why", always((Explain(),))),
)
