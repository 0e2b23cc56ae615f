"""Rules for scatter plots of spaces and pins knocked down, and for a line close to the points."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.meaning.lengths import LineCloseBy, ScatterPlot
from mathgen.reading.meaning.scope import Labels
from mathgen.reading.noun_phrases import what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.lengths import LineChange, OffLine, Predicted
from mathgen.trials.scope import Measure


def _falls(y: str, start: Number, term: tuple[Number, str]) -> LineCloseBy:
    return LineCloseBy(y, start, term[0], term[1], "-")


def _rises(y: str, start: Number, term: tuple[Number, str]) -> LineCloseBy:
    return LineCloseBy(y, start, term[0], term[1], "+")


def _shown(x: str, y: str, colors: Labels, measure: Measure) -> tuple[ScatterPlot]:
    if x == y or measure != "down":
        raise Clash
    return (ScatterPlot(x, y, what(colors)),)


def _predicted(colors: Labels, number: Number) -> Predicted:
    return Predicted(number, what(colors))


RULES: tuple[Rule, ...] = (
    rule("line", "LETTER = WHOLE - TERM", _falls),
    rule("line", "LETTER = WHOLE + TERM", _rises),
    rule("fact", "a scatter plot shows the space LETTER in inches and the number LETTER of <things> <that_outcome>", _shown),
    rule(
        "fact",
        "let LETTER be the inches between ITEM and LETTER the number of <things> <that_outcome>",
        lambda x, _, y, c, m: _shown(x, y, c, m),
    ),
    rule(
        "fact",
        "a point of a scatter plot tells the inches LETTER between ITEM and the number LETTER of <things> <that_outcome>",
        lambda x, _, y, c, m: _shown(x, y, c, m),
    ),
    rule("fact", "the line <line> is close to the points", lambda line: (line,)),
    rule("fact", "the line <line> is close to the points of a scatter plot", lambda line: (line,)),
    rule("fact", "the line <line> fits the points", lambda line: (line,)),
    rule("ask", "how many <things> does the line predict for a space of WHOLE inches", _predicted),
    rule("ask", "how many <things> does the line predict where the ITEM are WHOLE inches apart", lambda c, _, n: _predicted(c, n)),
    rule("ask", "for a space of WHOLE inches , how many <things> does the line predict", lambda n, c: _predicted(c, n)),
    rule("ask", "how many <sign> <things> did <who> DOWNB than the line predicts", lambda s, c, who, m: OffLine(m, what(c, who), s)),
    rule(
        "ask",
        "how many <sign> <things> does the line predict when the space is WHOLE inches wider",
        lambda s, c, n: LineChange(s, n, what(c)),
    ),
    rule(
        "ask",
        "how many <sign> <things> does the line predict for WHOLE more inches between ITEM",
        lambda s, c, n, _: LineChange(s, n, what(c)),
    ),
    rule(
        "ask",
        "when the ITEM are WHOLE inches farther apart , how many <sign> <things> does the line predict",
        lambda _, n, s, c: LineChange(s, n, what(c)),
    ),
)
