"""Rules for sentences about dot plots and histograms that pupils make, and what is asked of their dots and bars."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.meaning import BarFrom, PlotToMake
from mathgen.reading.noun_phrases import always, measured, what
from mathgen.reading.wanted import Dots, InBar

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
    rule("fact", "(draw|make) a histogram with a bar from WHOLE to WHOLE", lambda low, high: (PlotToMake("histogram"), BarFrom(low, high))),
    rule("side", "above", always("=")),
    rule("side", "for numbers greater than", always(">")),
    rule("side", "for numbers less than", always("<")),
    rule("ask", "how many dots stand <side> WHOLE", Dots),
    rule("ask", "how many dots of the plot stand <side> WHOLE", Dots),
    rule("ask", "how many of the dots stand <side> WHOLE", Dots),
    rule("ask", "how many of the numbers are in the bar from WHOLE to WHOLE", InBar),
    rule("ask", "how many numbers does the bar from WHOLE to WHOLE show", InBar),
    rule("ask", "how many of these numbers are in this bar", always(InBar())),
)
