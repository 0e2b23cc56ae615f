"""Rules for sentences about dot plots and histograms that pupils make, and what is asked of their dots and bars."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.meaning.statistics import Bars, PlotToMake
from mathgen.reading.noun_phrases import always, measured, what
from mathgen.reading.wanted.statistics import Dots, InBar

RULES: tuple[Rule, ...] = (
    rule("plot_kind", "a dot plot", always("dots")),
    rule("plot_kind", "a histogram", always("histogram")),
    rule("fact", "(draw|make) <plot_kind> of these numbers", lambda kind: (PlotToMake(kind),)),
    rule("fact", "make a dot plot with one dot for each number", always((PlotToMake("dots"),))),
    rule("fact", "draw one dot for each number over a number line", always((PlotToMake("dots"),))),
    rule(
        "fact",
        "(draw|make) <plot_kind> of the numbers of <things> <that_outcome> <per>",
        lambda kind, c, m, by: (PlotToMake(kind, what(c), measured(m, "down", "standing"), by),),
    ),
    rule("fact", "make a histogram", always((PlotToMake("histogram"),))),
    rule("run", "WHOLE to WHOLE", lambda low, high: (low, high)),
    rule("runs", "<run> , <more_runs>", lambda first, rest: (first, *rest)),
    rule("more_runs", "<run> ,? and <run>", lambda one, other: (one, other)),
    rule("more_runs", "<run> , <more_runs>", lambda first, rest: (first, *rest)),
    rule("fact", "(make|use) bars for <runs>", lambda runs: (Bars(runs),)),
    rule("fact", "draw a histogram with bars for <runs>", lambda runs: (PlotToMake("histogram"), Bars(runs))),
    rule("side", "are stacked over the number", always("=")),
    rule("side", "stand for numbers greater than", always(">")),
    rule("side", "stand for numbers less than", always("<")),
    rule("ask", "how many dots <side> WHOLE", Dots),
    rule("ask", "how many dots of the plot <side> WHOLE", Dots),
    rule("ask", "how many of the dots <side> WHOLE", Dots),
    rule("ask", "how many of the numbers are in the bar for WHOLE to WHOLE", InBar),
    rule("ask", "how many numbers does the bar for WHOLE to WHOLE show", InBar),
    rule("ask", "how many of these numbers belong in the bar for WHOLE to WHOLE", InBar),
)
