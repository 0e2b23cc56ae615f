"""Rules for sentences about spread: deviations, quartiles, box plots, and how many results were written down."""

from __future__ import annotations

from mathgen.exact.demand import Demand
from mathgen.reading.chart import Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.statistics import BoxPlot, MeanWas, Recorded
from mathgen.reading.noun_phrases import always, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.counts import MeanOf
from mathgen.reading.wanted.statistics import BehindMean, BoxPart, HowManyRecorded

ANY = Demand("any")
WHAT = "(what|find) (is|was)?"


def _each_did(groups: Number, trials: Number, kinds: Number | None = None) -> Claims:
    return (Recorded(groups, trials, kinds),)


RULES: tuple[Rule, ...] = (
    rule(
        "fact",
        "the mean number of <things> <that_outcome> per trial was WHOLE",
        lambda colors, m, number: (MeanWas(measured(m, "down", "standing"), what(colors), number),),
    ),
    rule(
        "fact",
        "the mean was WHOLE <things> per trial",
        lambda number, colors: (MeanWas("down", what(colors), number),),
    ),
    rule(
        "fact",
        "<who> <past> a mean of WHOLE <things> per trial",
        lambda who, m, number, colors: (MeanWas(measured(m, "down", "standing"), what(colors, who), number),),
    ),
    rule("ask", "how many trials did <who> have", lambda who: BehindMean(what(None, who))),
    rule("ask", "how many trials were there", always(BehindMean())),
    rule("ask", "what was the number of trials", always(BehindMean())),
    rule("spread", "the mean absolute deviation", always("mean absolute deviation")),
    rule("spread", "the interquartile range", always("interquartile range")),
    rule("ask", f"{WHAT} <spread> of these numbers of <things>", lambda s, c: MeanOf(None, what(c), "", ANY, s)),
    rule(
        "ask",
        f"{WHAT} <spread> of the numbers of <things> <that_outcome>",
        lambda s, c, m: MeanOf(measured(m, "down", "standing"), what(c), "", ANY, s),
    ),
    rule("per", "per group", always("groups")),
    rule("per", "per trial", always("trials")),
    rule(
        "ask",
        f"{WHAT} <spread> of the numbers of <things> <that_outcome> <per>",
        lambda s, c, m, by: MeanOf(measured(m, "down", "standing"), what(c), by, ANY, s),
    ),
    rule("fact", "a single number can tell how much these numbers vary", always(())),
    # box plots
    rule("fact", "(make|draw) a box plot of these numbers of <things>", lambda c: (BoxPlot(what(c)),)),
    rule("fact", "(make|draw) a box plot of the numbers of <things> <that_outcome>", lambda c, m: (BoxPlot(what(c), m),)),
    rule(
        "fact",
        "(make|draw) a box plot of the numbers of <things> <that_outcome> <per>",
        lambda c, m, by: (BoxPlot(what(c), measured(m, "down", "standing"), by),),
    ),
    rule("fact", "draw a box plot that shows how these numbers spread", always((BoxPlot(),))),
    rule("fact", "make a box plot of these numbers over a number line", always((BoxPlot(),))),
    rule("ask", "at what number is the left end of the box", always(BoxPart("lower quartile"))),
    rule("ask", "at what number is the right end of the box", always(BoxPart("upper quartile"))),
    rule("ask", "how long is the box from the lower to the upper quartile", always(BoxPart("interquartile range"))),
    # how many results
    rule("kinds_of_items", "WHOLE kinds of ITEM", lambda number, _: number),
    rule("each_did", "each of WHOLE groups did WHOLE trials", lambda g, t: (g, t)),
    rule("each_did", "there are WHOLE groups , and each group did WHOLE trials", lambda g, t: (g, t)),
    rule("fact", "<each_did>", lambda found: _each_did(*found)),
    rule("fact", "<each_did> with <kinds_of_items>", lambda found, kinds: _each_did(found[0], found[1], kinds)),
    rule("fact", "there were <kinds_of_items> , and <each_did>", lambda kinds, found: _each_did(found[0], found[1], kinds)),
    rule("fact", "one result was written down for each trial of each group", always((Recorded(one_for="trials"),))),
    rule("fact", "one count was written down for each kind in each trial of each group", always((Recorded(one_for="kinds"),))),
    rule("fact", "a table of results has one row for each trial of each group", always((Recorded(one_for="trials"),))),
    rule("fact", "a dot plot has one dot for each trial of each group", always((Recorded(one_for="trials"),))),
    rule("fact", "each row has one count for each of <kinds_of_items>", lambda kinds: (Recorded(None, None, kinds, "kinds"),)),
    rule("ask", "how many results were written down in all", always(HowManyRecorded("trials"))),
    rule("ask", "how many rows of results does the table have", always(HowManyRecorded("trials"))),
    rule("ask", "how many dots does the dot plot have", always(HowManyRecorded("trials"))),
    rule("ask", "how many counts were written down in all", always(HowManyRecorded("kinds"))),
    rule("ask", "how many counts does the table have", always(HowManyRecorded("kinds"))),
)
