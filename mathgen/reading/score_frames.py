"""Rules for sentences about points: what earns them, rules and equations with their letters, and what is asked of them."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims, at, of
from mathgen.reading.meaning.counts import Count, Look
from mathgen.reading.meaning.rates import BonusPoints, EquationIs, LetterIs, PointsEach, RuleIs, ScoreIs, Term, Terms
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.noun_phrases import Tail, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.rates import Score, ValueOf
from mathgen.trials.scope import Measure


def _minus(first: Term, rest: Terms) -> Terms:
    return (first, rest[0]._replace(sign=-1), *rest[1:])


def _letter(letter: str, measure: Measure | None, colors: Labels) -> LetterIs:
    return LetterIs(letter, None if measure is None else measured(measure, "down", "standing"), what(colors))


def _two(first: LetterIs, second: LetterIs) -> Claims:
    if first.letter == second.letter:
        raise Clash
    return (first, second)


def _each(colors: Labels, measure: Measure, number: Number) -> Claims:
    return (PointsEach(measured(measure, "down", "standing"), what(colors), number),)


def _score(number: Number, who: Labels = None, tail: Tail | None = None) -> ScoreIs:
    return ScoreIs(Np(who, None if tail is None else tail.trials), number)


def _at(when: Labels, score: ScoreIs) -> Claims:
    if score.np.trials is not None:
        raise Clash
    return (score._replace(np=score.np._replace(trials=when)),)


def _at_points(claims: Claims, number: Number) -> Claims:
    match claims:
        case (Count() as count,):
            return (count, *_each(count.np.colors, count.measure, number))
    raise Clash


EACH = "for each <thing> <that_outcome>"

TOLD: tuple[Rule, ...] = (
    rule("term", "TERM", lambda term: Term(*term)),
    rule("term", "LETTER", lambda letter: Term(None, letter)),
    rule("term", "WHOLE", lambda number: Term(number, None)),
    rule("terms", "<term>", lambda term: (term,)),
    rule("terms", "<term> + <terms>", lambda term, more: (term, *more)),
    rule("terms", "<term> - <terms>", _minus),
    rule("equation", "<terms> = <terms>", EquationIs),
    # letters
    rule("letter", "LETTER (is|be) the number of <things> <that_outcome>", lambda x, c, m: _letter(x, m, c)),
    rule("letter", "LETTER (is|be) the number <that_outcome>", lambda x, m: _letter(x, m, None)),
    rule("letter", "LETTER (is|be) the number of <things>", lambda x, c: _letter(x, None, c)),
    rule("letters", "<letter>", lambda one: (one,)),
    rule("letters", "<letter> ,? and <letter>", _two),
    rule("for_letters", "LETTER <things> <that_outcome>", lambda x, c, m: (_letter(x, m, c),)),
    rule(
        "for_letters",
        "LETTER <things> <that_outcome> and LETTER <things>? <that_outcome>",
        lambda x, c, m, y, d, n: _two(_letter(x, m, c), _letter(y, n, d)),
    ),
    rule(
        "for_letters",
        "LETTER <things> and LETTER <things> <that_outcome>",
        lambda x, c, y, d, m: _two(_letter(x, m, c), _letter(y, m, d)),
    ),
    rule("fact", "let <letters>", lambda letters: letters),
    rule("fact", "let <letters> , so that <equation>", lambda letters, equation: (*letters, equation)),
    rule("fact", "here <letters>", lambda letters: letters),
    rule("fact", "in the equation <equation> , <letters>", lambda equation, letters: (equation, *letters)),
    rule("fact", "the equation <equation> tells about the points", lambda equation: (equation,)),
    rule(
        "fact",
        "the equation <equation> tells about the <counted>",
        lambda equation, thing: (equation, Look(what(thing.colors), "", thing.number)),
    ),
    # rules
    rule("fact", "the rule <terms> gives a score", lambda terms: (RuleIs(terms),)),
    rule("fact", "the score is <terms> for <for_letters>", lambda terms, letters: (RuleIs(terms), *letters)),
    rule("fact", "the score for <for_letters> is <terms>", lambda letters, terms: (*letters, RuleIs(terms))),
    rule("fact", "the expression <terms> gives the points for <for_letters>", lambda terms, letters: (RuleIs(terms), *letters)),
    # points
    rule(
        "fact",
        "each <thing> <that_outcome> was worth WHOLE points , WHOLE points <in_all>",
        lambda c, m, n, total, _: (*_each(c, m, n), _score(total)),
    ),
    # "a bonus is added" beside "for each" could be read as one for each
    rule("fact", "one bonus of WHOLE points is added at the end", lambda n: (BonusPoints(n),)),
    rule("fact", "<when> , <clause> at WHOLE points each", lambda when, claims, n: at(when, _at_points(claims, n))),
    rule("and_bonus", "<clause> , and then got one bonus of WHOLE points", lambda claims, n: (*claims, BonusPoints(n))),
    rule("and_bonus", "<who> got one bonus of WHOLE points and <vp>", lambda who, n, claims: (*of(who, claims), BonusPoints(n))),
    rule("fact", "<and_bonus>", lambda claims: claims),
    rule("fact", "<when> , <and_bonus>", at),
    rule("fact", "of these , WHOLE points were a bonus", lambda n: (BonusPoints(n),)),
    rule("fact", f"the other points were WHOLE points {EACH}", lambda n, c, m: _each(c, m, n)),
    rule("earned", "<who> earned WHOLE points <tail>?", lambda who, n, tail: _score(n, who, tail)),
    rule("earned", "<who> had a score of WHOLE", lambda who, n: _score(n, who)),
    rule("fact", "<earned>", lambda score: (score,)),
    rule("fact", "<when> , <earned>", lambda when, score: _at(when, score)),
    rule("fact", "<when> , <earned> , with the bonus", lambda when, score: _at(when, score)),
    rule("fact", f"<earned> , WHOLE points {EACH}", lambda score, n, c, m: (score, *_each(c, m, n))),
    rule("fact", f"<when> , <earned> , WHOLE points {EACH}", lambda when, score, n, c, m: (_at(when, score)[0], *_each(c, m, n))),
    # counts that are letters, and those beside them
    rule("fact", "of these , <passive>", lambda claims: claims),
    rule("fact", "<when> , <who> <outcome> LETTER <things>", lambda when, who, m, x, c: (LetterIs(x, m, what(c, who, when)),)),
    rule(
        "fact",
        "then LETTER <things> <fell> , and WHOLE <things> <fell>",
        lambda x, c, m, n, d, k: (_letter(x, m, c), Count(measured(k, "down", "standing"), what(d), n)),
    ),
)


ASKED: tuple[Rule, ...] = (
    rule("ask", "what is the score of <who>", lambda who: Score(Np(who))),
    rule("ask", "what score did <who> earn", lambda who: Score(Np(who))),
    rule("ask", "what is the value of <terms>", ValueOf),
    rule("ask", "which number does LETTER stand for", lambda letter: ValueOf((Term(None, letter),))),
    rule("ask", "what number is LETTER", lambda letter: ValueOf((Term(None, letter),))),
)

RULES: tuple[Rule, ...] = (*TOLD, *ASKED)
