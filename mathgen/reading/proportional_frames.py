"""Rules for sentences about proportional scores: told by a sentence, an equation or a line through the origin, and asked."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims, at
from mathgen.reading.meaning.counts import Count
from mathgen.reading.meaning.rates import Grid, Growing, OneLine, Proportional, ScoreGrew, ScoreIs
from mathgen.reading.meaning.scope import Labels
from mathgen.reading.meaning.scope import Np as Place
from mathgen.reading.noun_phrases import always, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.rates import Constant, Growth, InProportion, OfLine, ScoreWanted, SlopesApart, Steeper
from mathgen.trials.scope import Label, Measure


def _proportional(colors: Labels, measure: Measure) -> Claims:
    return (Proportional(measured(measure, "down", "standing"), what(colors)),)


def _of_each(colors: Labels, measure: Measure) -> Claims:
    return (Proportional(measured(measure, "down", "standing"), what(colors), True),)


def _grid(colors: Labels, measure: Measure) -> Claims:
    return (Grid(measured(measure, "down", "standing"), what(colors)),)


def _with_k(y: str, again: str, x: str, colors: Labels, measure: Measure) -> Claims:
    if y != again or (y, x) != ("y", "x"):
        raise Clash
    return _proportional(colors, measure)


def _growing(p: str, term: tuple[Number, str], again: str, d: str, colors: Labels, measure: Measure) -> Claims:
    number, letter = term
    if p != again or letter != d or p == d:
        raise Clash
    return (Growing(measured(measure, "down", "standing"), what(colors), number, p),)


def _constant_k(letter: str) -> Constant:
    if letter != "k":
        raise Clash
    return Constant()


def _y_grew(first: tuple[Label, ...], last: tuple[Label, ...], letter: str, number: Number) -> Claims:
    if letter != "y":
        raise Clash
    return (ScoreGrew(number, (first, last)),)


def _points_for(p: str, d: str, colors: Labels, measure: Measure) -> Claims:
    if (p, d) != ("p", "d"):
        raise Clash
    return (OneLine(measured(measure, "down", "standing"), what(colors)),)


def _one_more(p: str, d: str) -> OfLine:
    if (p, d) != ("p", "d"):
        raise Clash
    return OfLine("slope")


def _apart(one: Labels, other: Labels) -> SlopesApart:
    return SlopesApart(Place(one), Place(other))


def _where_greater(d: str) -> OfLine:
    return _one_more("p", d)


RULES: tuple[Rule, ...] = (
    rule(
        "fact",
        "from TRIALS to TRIALS , the score of <who> grew by WHOLE",
        lambda first, last, who, number: (ScoreGrew(number, (first, last), Place(who)),),
    ),
    rule("fact", "from TRIALS to TRIALS , LETTER grew by WHOLE", _y_grew),
    rule("fact", "between these numbers , the line rises by WHOLE", lambda number: (ScoreGrew(number),)),
    rule(
        "fact",
        "let LETTER <things> <that_outcome> earn LETTER points , each the same number",
        lambda d, colors, m, p: _points_for(p, d, colors, m),
    ),
    rule("fact", "the graph of the points LETTER for LETTER <things> <that_outcome> is a line", _points_for),
    rule(
        "of_trial",
        "(() WHOLE , WHOLE ()) for TRIALS",
        lambda n, score, when: (Count("down", Place(None, when), n), ScoreIs(Place(None, when), score)),
    ),
    rule("fact", "the line goes through <of_trial> and <of_trial>", lambda one, other: one + other),
    rule("fact", "<when> , the point is <point>", at),
    rule(
        "fact",
        "the score was WHOLE <when> and WHOLE <when>",
        lambda n, when, m, then: (ScoreIs(Place(None, when), n), ScoreIs(Place(None, then), m)),
    ),
    rule("ask", "how much does LETTER grow each time LETTER grows by one", _one_more),
    rule("ask", "how much higher is the line where LETTER is one greater", _where_greater),
    rule(
        "ask",
        "what score for <group> makes both scores proportional to the numbers of <things>",
        lambda who, colors: ScoreWanted(Place(who), colors),
    ),
    rule(
        "ask",
        "what score for <group> makes both scores proportional to the numbers of <things> <that_outcome>",
        lambda who, colors, m: ScoreWanted(Place(who), colors, measured(m, "down", "standing")),
    ),
    rule(
        "ask",
        "what score puts the point for <group> on the same line through the origin",
        lambda who: ScoreWanted(Place(who), None, None, True),
    ),
    *(
        rule("ask", f"how much greater is the {name} for <group> than for <group>", _apart)
        for name in ("slope of the line", "slope of the graph", "unit rate of points")
    ),
    rule("fact", "a score is proportional to the number of <things> <that_outcome>", _proportional),
    rule("fact", "the equation LETTER = kx gives the score LETTER for LETTER <things> <that_outcome>", _with_k),
    rule("fact", "a line through the origin shows the score for each number of <things> <that_outcome>", _proportional),
    rule("fact", "for each group , a score is proportional to the number of <things> <that_outcome>", _of_each),
    rule("fact", "for each group , a line through the origin shows the score for each number of <things> <that_outcome>", _of_each),
    rule("fact", "each point on a grid shows a number of <things> <that_outcome> and a score", _grid),
    rule("fact", "<when> , the point is <point> and <point>", lambda when, one, other: at(when, (*one, *other))),
    rule("fact", "the score of <who> was WHOLE", lambda who, n: (ScoreIs(Place(who), n),)),
    rule("fact", "the equation LETTER = TERM gives the points LETTER for LETTER <things> <that_outcome>", _growing),
    rule(
        "fact",
        "for LETTER <things> <that_outcome> , the number of points LETTER follows the equation LETTER = TERM",
        lambda d, c, m, again, p, term: _growing(p, term, again, d, c, m),
    ),
    rule("ask", "what is the constant of proportionality", always(Constant())),
    rule("ask", "what is the value of LETTER", _constant_k),
    rule("ask", "which group has the steeper line", always(Steeper())),
    rule("ask", "which group has the steeper graph of the score against the number of <things>", lambda c: Steeper(what(c))),
    rule(
        "ask",
        "are these scores proportional to the numbers of <things> <that_outcome>",
        lambda c, m: InProportion(measured(m, "down", "standing"), what(c)),
    ),
    rule("ask", "do both points lie on one line through the origin", always(InProportion())),
    rule("ask", "how much greater is LETTER for TRIALS than for TRIALS", lambda p, last, first: Growth(p, first, last)),
    rule("ask", "by how much did LETTER grow from TRIALS to TRIALS", Growth),
)
