"""Rules for sentences in which a letter is left as a multiple of itself, or held against a limit."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.scope import Labels
from mathgen.reading.meaning.sets import LeftIs, LetterAhead, Limit, OneTerm, Reduced, ResultLimit
from mathgen.reading.noun_phrases import always, measured, what
from mathgen.reading.wanted.sets import HowManyFit, TimesLetter
from mathgen.trials.scope import Measure


def _left(measure: Measure, written: Reduced, colors: Labels = None) -> Claims:
    return (LeftIs(measured(measure, "down", "standing"), written, colors),)


def _left_of(letter: str, colors: Labels, measure: Measure, written: Reduced) -> Claims:
    return (LetterAhead(letter, what(colors)), *_left(measure, written))


RULES: tuple[Rule, ...] = (
    # what is left, as a multiple
    rule("multiple_left", "LETTER − TERM", lambda letter, term: Reduced(letter, *term)),
    rule("fact", "NEXT , <who> will SETB LETTER <things>", lambda _, who, __, letter, c: (LetterAhead(letter, what(c, who)),)),
    rule(
        "fact",
        "let LETTER be the number of <things> <who> will SETB NEXT",
        lambda letter, c, who, _, __: (LetterAhead(letter, what(c, who)),),
    ),
    rule("fact", "at the same rate , <multiple_left> <things> would <be_done>", lambda written, c, m: _left(m, written, c)),
    rule("fact", "at the same rate , the number <that_outcome> would be <multiple_left>", _left),
    rule(
        "fact",
        "at the same rate for LETTER <things> NEXT , the number <that_outcome> would be <multiple_left>",
        lambda letter, c, _, m, written: _left_of(letter, c, m, written),
    ),
    rule("fact", "the expression <multiple_left> can be written as one term", lambda written: (OneTerm(written),)),
    rule("ask", "what number times LETTER is the same as <multiple_left>", TimesLetter),
    rule("ask", "by what number is LETTER multiplied to give <multiple_left>", TimesLetter),
    rule("ask", "what is the coefficient of LETTER in that term", TimesLetter),
    # results held against a limit
    rule("limit", "LETTER > WHOLE", lambda letter, n: Limit(letter, ">", n)),
    rule("limit", "LETTER < WHOLE", lambda letter, n: Limit(letter, "<", n)),
    rule("meet", "reach the goal", always("goal")),
    rule("meet", "call for one more try", always("try")),
    rule("meets", "reaches the goal", always("goal")),
    rule("meets", "calls for one more try", always("try")),
    rule(
        "fact",
        "a result of LETTER <things> <meets> where <limit>",
        lambda letter, c, means, limit: (ResultLimit(letter, c, limit, means),),
    ),
    rule(
        "fact",
        "the inequality <limit> tells which numbers LETTER of <things> <meet>",
        lambda limit, letter, c, means: (ResultLimit(letter, c, limit, means),),
    ),
    rule(
        "fact",
        "let LETTER be the number of <things> <that_outcome> <per>",
        lambda letter, c, m, by: (ResultLimit(letter, c, None, "", measured(m, "down", "standing"), by),),
    ),
    rule("ask", "how many of these results <meet>", lambda means: HowManyFit(None, means)),
    rule("ask", "for how many of these numbers is <limit> true", HowManyFit),
    rule("ask", "how many of the results make the inequality <limit> true", HowManyFit),
)
