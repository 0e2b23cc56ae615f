"""Rules for sentences in which a letter stands for a count, and for expressions to choose from."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.facts import Claims, at, of
from mathgen.reading.meaning.counts import Count
from mathgen.reading.meaning.letters import Bracket, ExpressionsAre, LetterCount, NextLetter, SumTimes, Written
from mathgen.reading.meaning.rates import PointsEach
from mathgen.reading.meaning.scope import Labels
from mathgen.reading.noun_phrases import Counted, always, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.letters import WhichExpression, WhichInequality
from mathgen.trials.scope import Measure


def _counted(letter: str, measure: Measure, who: Labels = None, when: Labels = None, colors: Labels = None) -> Claims:
    return (LetterCount(letter, measured(measure, "down", "standing"), what(colors, who, when)),)


def _two(sign: str, a: Written, b: Written) -> Written:
    return Written(sign, (a, b))


def _set_and_letter(when: Labels, who: Labels, set_up: Measure, thing: Counted, down: Measure, letter: str) -> Claims:
    measured(set_up, "set_up")
    return at(when, of(who, (Count(set_up, what(thing.colors), thing.number), *_counted(letter, down, None, None, thing.colors))))


def _earns(colors: Labels, measure: Measure, points: Number, bracket: Bracket) -> Claims:
    return (PointsEach(measured(measure, "down", "standing"), what(colors), points), SumTimes(bracket))


def _at_points(points: Number, colors: Labels, bracket: Bracket) -> Claims:
    return (PointsEach("down", what(colors), points), SumTimes(bracket))


def _next(letter: str, measure: Measure, who: Labels, colors: Labels, trials: Labels) -> Claims:
    return (NextLetter(letter, measured(measure, "down"), what(colors, who, trials)),)


def _any(letter: str, measure: Measure) -> WhichExpression:
    return WhichExpression("rest", measured(measure, "down", "standing"), None, letter)


def _which(kind: str, colors: Labels, measure: Measure) -> WhichExpression:
    return WhichExpression(kind, measured(measure, "down", "standing"), colors)


RULES: tuple[Rule, ...] = (
    # expressions, as they are written
    rule("atom", "WHOLE", lambda n: Written("number", (n,))),
    rule("atom", "LETTER", lambda letter: Written("letter", (letter,))),
    rule("atom", "TERM", lambda term: Written("term", term)),
    rule("product", "<atom>", lambda one: one),
    rule("product", "WHOLE × WHOLE", lambda a, b: _two("×", Written("number", (a,)), Written("number", (b,)))),
    rule("written", "<product>", lambda one: one),
    rule("written", "<product> + <product>", lambda a, b: _two("+", a, b)),
    rule("written", "<product> − <product>", lambda a, b: _two("−", a, b)),
    rule("options", "<written> , <written> ,? and <written>", lambda *options: options),
    rule("fact", "here are the expressions <options>", lambda options: (ExpressionsAre(options),)),
    rule("fact", "look at the expressions <options>", lambda options: (ExpressionsAre(options),)),
    rule("fact", "one of the expressions <options> fits this story", lambda options: (ExpressionsAre(options),)),
    rule("bracket", "WHOLE (() WHOLE + LETTER )", Bracket),
    # what the letter stands for
    rule("fact", "then <who> <past> LETTER <things>", lambda who, m, letter, c: _counted(letter, m, who, None, c)),
    rule("fact", "<when> , <who> <past> LETTER <things>", lambda when, who, m, letter, c: _counted(letter, m, who, when, c)),
    rule("fact", "suppose <who> <past> LETTER <things> <when>", lambda who, m, letter, c, when: _counted(letter, m, who, when, c)),
    rule("fact", "let LETTER be the number of <things> <that_outcome>", lambda letter, c, m: _counted(letter, m, None, None, c)),
    rule("fact", "let LETTER be the number of <things> <who> <past> <when>", lambda x, c, who, m, when: _counted(x, m, who, when, c)),
    rule("fact", "<when> , <who> <past> <counted> and <past> LETTER", _set_and_letter),
    rule("fact", "each <thing> <that_outcome> earns WHOLE points , and <bracket> gives the points in all", _earns),
    rule("fact", "at WHOLE points for each <thing> , the total is <bracket>", _at_points),
    # inequalities
    rule("bound", "WHOLE", lambda n: Written("number", (n,))),
    rule("bound", "LETTER", lambda letter: Written("letter", (letter,))),
    rule("unequal", "<bound> > <bound>", lambda a, b: _two(">", a, b)),
    rule("unequals", "<unequal> , <unequal> ,? and <unequal>", lambda *options: options),
    rule("fact", "here are the inequalities <unequals>", lambda options: (ExpressionsAre(options),)),
    rule("fact", "look at the inequalities <unequals>", lambda options: (ExpressionsAre(options),)),
    rule("fact", "one of the inequalities <unequals> fits this goal", lambda options: (ExpressionsAre(options),)),
    rule(
        "fact",
        "NEXT , <who> would like to <outcome_base> LETTER <things> , more than in TRIALS",
        lambda _, who, m, letter, colors, trials: _next(letter, m, who, colors, trials),
    ),
    rule(
        "fact",
        "to reach the goal NEXT , LETTER <things> must <be_done> , more than in TRIALS",
        lambda _, letter, colors, m, trials: _next(letter, m, None, colors, trials),
    ),
    rule(
        "fact",
        "a goal is reached NEXT with LETTER <things> <that_outcome> , more than in TRIALS",
        lambda _, letter, colors, m, trials: _next(letter, m, None, colors, trials),
    ),
    rule("ask", "which of these inequalities tells the goal", always(WhichInequality())),
    rule("ask", "which inequality must be true for LETTER", WhichInequality),
    rule("ask", "which inequality tells all the numbers LETTER that reach the goal", WhichInequality),
    # which expression
    rule("ask", "which of these expressions gives the number of <things> <that_outcome>", lambda c, m: _which("rest", c, m)),
    rule("ask", "which expression tells how many <things> <fell>", lambda c, m: _which("rest", c, m)),
    rule("ask", "for any number LETTER , which expression gives the number <that_outcome>", _any),
    rule(
        "ask",
        "which of these expressions gives the number of <things> <that_outcome> in both trials",
        lambda c, m: _which("total", c, m),
    ),
    rule("ask", "which expression tells how many <things> <fell> in both trials", lambda c, m: _which("total", c, m)),
    rule("ask", "which expression gives the total of <things> <that_outcome> in both trials", lambda c, m: _which("total", c, m)),
    rule(
        "ask",
        "which of these expressions shows <bracket> trial by trial",
        lambda bracket: WhichExpression("same", None, None, None, bracket),
    ),
    rule("ask", "which expression adds the points of each trial", always(WhichExpression("same"))),
    rule("ask", "which expression shows that total trial by trial", always(WhichExpression("same"))),
)
