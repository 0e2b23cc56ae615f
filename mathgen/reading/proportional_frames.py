"""Rules for sentences about proportional scores: told by a sentence, an equation or a line through the origin, and asked."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims, at
from mathgen.reading.meaning import Growing, Labels, Proportional, ScoreIs
from mathgen.reading.meaning import Np as Place
from mathgen.reading.noun_phrases import always, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted import Constant, Growth
from mathgen.trials.scope import Measure


def _proportional(colors: Labels, measure: Measure) -> Claims:
    return (Proportional(measured(measure, "down", "standing"), what(colors)),)


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


RULES: tuple[Rule, ...] = (
    rule("fact", "a score is proportional to the number of <things> <that_outcome>", _proportional),
    rule("fact", "the equation LETTER = kx gives the score LETTER for LETTER <things> <that_outcome>", _with_k),
    rule("fact", "a line through the origin shows the score for each number of <things> <that_outcome>", _proportional),
    rule("fact", "<when> , the line goes through <point>", at),
    rule("fact", "the score of <who> was WHOLE", lambda who, n: (ScoreIs(Place(who), n),)),
    rule("fact", "the equation LETTER = TERM gives the points LETTER for LETTER <things> <that_outcome>", _growing),
    rule(
        "fact",
        "for LETTER <things> <that_outcome> , the number of points LETTER follows the equation LETTER = TERM",
        lambda d, c, m, again, p, term: _growing(p, term, again, d, c, m),
    ),
    rule("ask", "what is the constant of proportionality", always(Constant())),
    rule("ask", "what is the value of LETTER", _constant_k),
    rule("ask", "how much greater is LETTER for TRIALS than for TRIALS", lambda p, last, first: Growth(p, first, last)),
    rule("ask", "by how much did LETTER grow from TRIALS to TRIALS", Growth),
)
