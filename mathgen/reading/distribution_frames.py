"""Rules for sentences about distributions: two lists compared, mean or median, and what makes a question a statistical one."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.counts import Look, Series
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.meaning.statistics import TwoPlots, Wondered
from mathgen.reading.noun_phrases import always, both_lists, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.statistics import IsStatistical, MeanOrMedian, MeansApart, Overlap, WhichList
from mathgen.trials.scope import Label, Measure

GREATER = ("greater", "smaller", "less")


def _two_trials(
    who: Labels,
    measure: Measure,
    numbers: tuple[Number, ...],
    colors: Labels,
    when: Labels,
    more: tuple[Number, ...],
    others: Labels,
    then: Labels,
) -> Claims:
    if colors != others:
        raise Clash
    return (Series(measure, what(colors, who, when), numbers), Series(measure, what(others, who, then), more))


def _both(first: tuple[Label, ...], second: tuple[Label, ...]) -> tuple[Label, ...]:
    return both_lists(first, second)


RULES: tuple[Rule, ...] = (
    rule("size", "greater", always(True)),
    rule("size", "smaller", always(False)),
    rule("size", "less", always(False)),
    rule("listed_as", "distance from the least number to the greatest", always("range")),
    rule("listed_as", "median", always("median")),
    rule("ask", "which group had the <size> <listed_as>", lambda most, name: WhichList(name, "groups", most)),
    rule("ask", "which trial had the <size> <listed_as>", lambda most, name: WhichList(name, "trials", most)),
    rule("ask", "for which group is the median of these numbers <size>", lambda most: WhichList("median", "groups", most)),
    rule("ask", "for which trial is the median of these numbers <size>", lambda most: WhichList("median", "trials", most)),
    rule(
        "ask",
        "from the least number to the greatest , which group had the <size> distance",
        lambda most: WhichList("range", "groups", most),
    ),
    rule(
        "ask",
        "from the least number to the greatest , which trial had the <size> distance",
        lambda most: WhichList("range", "trials", most),
    ),
    rule("fact", "<who> <past> <numbers> <things> <when> and <numbers> <things> <when>", _two_trials),
    rule(
        "job",
        "see how many <things> each group <outcome> in TRIALS and TRIALS",
        lambda c, m, first, second: (Look(what(c, None, _both(first, second)), "table", None, m),),
    ),
    rule("whose", "<group>", lambda who: MeansApart("groups", Np(who))),
    rule("whose", "TRIALS", lambda when: MeansApart("trials", Np(None, when))),
    rule(
        "ask",
        "the difference of the means is how many times the mean absolute deviation for <whose>",
        lambda question: question,
    ),
    rule(
        "ask",
        "how many times the mean absolute deviation for <whose> is the difference of the means",
        lambda question: question,
    ),
    # overlap
    rule("fact", "make two dot plots over one number line", always((TwoPlots(),))),
    rule("fact", "make a dot plot of each list over one number line", always((TwoPlots(),))),
    rule("fact", "draw both lists as dot plots over the same number line", always((TwoPlots(),))),
    rule("ask", "how long is the stretch between least and greatest that both groups cover", always(Overlap("groups"))),
    rule("ask", "how long is the stretch between least and greatest that both trials cover", always(Overlap("trials"))),
    rule("ask", "from least to greatest , how long is the stretch that both dot plots cover", always(Overlap())),
    rule("ask", "what is the length of the stretch between least and greatest that both lists cover", always(Overlap())),
    # mean or median
    rule("fact", "a number far from the others changes the mean more than the median", always(())),
    rule("fact", "the mean and the median can both tell what is typical", always(())),
    rule(
        "ask",
        "which is <size> , the mean or the median of these numbers of <things>",
        lambda most, c: MeanOrMedian(None, what(c), "", most),
    ),
    rule("ask", "which is <size> for these numbers , the mean or the median", lambda most: MeanOrMedian(None, Np(), "", most)),
    rule("ask", "which is <size> here , the mean or the median", lambda most: MeanOrMedian(None, Np(), "", most)),
    rule(
        "ask",
        "which is <size> , the mean or the median of the numbers of <things> <that_outcome> <per>",
        lambda most, c, m, by: MeanOrMedian(measured(m, "down", "standing"), what(c), by, most),
    ),
    # statistical questions
    rule("wonder", "how many <things> each group <past> <when>", lambda c, m, when: (Wondered(m, what(c, None, when), True),)),
    rule("wonder", "how many <things> <group> <past> <when>", lambda c, who, m, when: (Wondered(m, what(c, who, when)),)),
    rule("fact", "someone asks <wonder>", lambda claims: claims),
    rule("fact", "someone would like to know <wonder>", lambda claims: claims),
    rule("ask", "is that a statistical question", always(IsStatistical())),
)
