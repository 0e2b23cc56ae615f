"""Rules for sentences about scores that grow by so many points: two kinds that earn, two groups on one line, goals for a score."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims, at, of
from mathgen.reading.meaning.counts import Count, Look
from mathgen.reading.meaning.rates import EquationIs, GoalScore, LetterIs, OneLine, PointsEach, ScoreIs, StartingScores
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.noun_phrases import Counted, Tail, always, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.rates import FewestNeeded, LevelWith, OfLine
from mathgen.trials.scope import Measure


def _each(colors: Labels, measure: Measure, number: Number, sign: int = 1, who: Labels = None) -> PointsEach:
    return PointsEach(measured(measure, "down", "standing"), what(colors, who), number, sign)


def _of_two_groups(colors: Labels, measure: Measure, rates: tuple[tuple[Labels, Number], tuple[Labels, Number]]) -> Claims:
    (who, n), (other, m) = rates
    if who == other:
        raise Clash
    return (_each(colors, measure, n, 1, who), _each(colors, measure, m, 1, other))


def _at_rates(colors: Labels, measure: Measure, rates: tuple[tuple[Labels, Number], tuple[Labels, Number]]) -> Claims:
    return (StartingScores(what(colors), True), *_of_two_groups(colors, measured(measure, "down", "standing"), rates))


def _goal(above: tuple[Number, bool], trials: Labels, who: Labels = None) -> Claims:
    number, passes = above
    return (GoalScore(Np(who, trials), number, passes),)


def _for_a_score(who: Labels, measure: Measure, thing: Counted, number: Number) -> Claims:
    return of(who, (Count(measured(measure, "down", "standing"), what(thing.colors), thing.number), ScoreIs(Np(), number)))


def _point(thing: Number, score: Number, who: Labels) -> Claims:
    return (Count("down", Np(who), thing), ScoreIs(Np(who), score))


def _letters(who: Labels, measure: Measure, x: str, c: Labels, y: str, d: Labels) -> Claims:
    if x == y:
        raise Clash
    return (LetterIs(x, measured(measure, "down"), what(c, who)), LetterIs(y, measure, what(d, who)))


def _there_were(thing: Counted, measure: Measure, tail: Tail | None, equation: EquationIs) -> Claims:
    return (Count(measured(measure, "down"), what(thing.colors, None, None if tail is None else tail.trials), thing.number), equation)


def _level(colors: Labels, measure: Measure, scores: Number) -> LevelWith:
    if scores.value != 2:
        raise Clash
    return LevelWith(measured(measure, "down"), what(colors))


TOLD: tuple[Rule, ...] = (
    # two kinds
    rule("fact", "each <thing> <that_outcome> takes away WHOLE points", lambda c, m, n: (_each(c, m, n, -1),)),
    rule("fact", "the score for these <things> was WHOLE", lambda c, n: (ScoreIs(Np(None, None, c), n),)),
    rule(
        "fact",
        "<when> , <who> earned WHOLE points for <counted> <that_outcome> <in_all>?",
        lambda when, who, n, thing, m, _: at(when, of(who, (Count(m, what(thing.colors), thing.number), ScoreIs(Np(), n)))),
    ),
    rule(
        "fact",
        "the rule for the score is WHOLE points for each <thing> and WHOLE points for each <thing>",
        lambda n, c, m, d: (_each(c, "down", n), _each(d, "down", m)),
    ),
    rule(
        "fact",
        "the rule for the score is WHOLE points for each <thing> <that_outcome> , less WHOLE points for each <thing> <that_outcome>",
        lambda n, c, m, k, d, o: (_each(c, m, n), _each(d, o, k, -1)),
    ),
    rule(
        "fact",
        "<when> , <who> <outcome> LETTER <things> and LETTER <things>",
        lambda when, who, m, x, c, y, d: at(when, _letters(who, m, x, c, y, d)),
    ),
    rule("fact", "there were <counted> <that_outcome> <tail>? , so that <equation>", _there_were),
    rule(
        "fact",
        "then LETTER <things> <fell> and LETTER <things> <fell> , so that <equation>",
        lambda x, c, m, y, d, k, equation: (LetterIs(x, m, what(c)), LetterIs(y, k, what(d)), equation),
    ),
    rule("fact", "the points earned make a second equation , <equation>", lambda equation: (equation,)),
    # two groups
    rule("fact", "each of these <things> earned a point", lambda c: (StartingScores(what(c)),)),
    rule("fact", "each of the <things> <that_outcome> earned a point", lambda c, m: (StartingScores(what(c)),)),
    rule("fact", "these numbers are the starting scores", always((StartingScores(Np()),))),
    rule("two_rates", "WHOLE points for <who> and WHOLE points for <who>", lambda n, who, m, other: ((who, n), (other, m))),
    rule("fact", "each <thing> <that_outcome> earns <two_rates>", _at_rates),
    rule("fact", "the rule for each <thing> <that_outcome> is <two_rates>", _at_rates),
    rule("fact", "NEXT , each <thing> will earn <two_rates>", lambda _, c, rates: _of_two_groups(c, "down", rates)),
    rule(
        "fact",
        "then <who> will earn WHOLE points and <who> will earn WHOLE points for each <thing>",
        lambda who, n, other, m, c: _of_two_groups(c, "down", ((who, n), (other, m))),
    ),
    rule("job", "compare <group> and <group> <when>", lambda a, b, when: (Look(Np((*a, *b), when), "table"),)),
    # one line
    rule(
        "fact",
        "each score is the same start value plus the same number of points for each <thing> <that_outcome>",
        lambda c, m: (OneLine(measured(m, "down", "standing"), what(c)),),
    ),
    rule("fact", "a line shows the score for each number of <things> <that_outcome>", lambda c, m: (OneLine(m, what(c)),)),
    rule("fact", "<who> <outcome> <counted> for a score of WHOLE", _for_a_score),
    rule("fact", "<when> , <who> <outcome> <counted> for a score of WHOLE", lambda t, w, m, c, n: at(t, _for_a_score(w, m, c, n))),
    rule("point", "(() WHOLE , WHOLE ()) for <who>", _point),
    rule("its_point", "the point for <who> was (() WHOLE , WHOLE ())", lambda who, n, score: _point(n, score, who)),
    rule("fact", "<when> , <its_point> , and <its_point>", lambda when, one, other: at(when, (*one, *other))),
    rule("fact", "both points are on the line", always(())),
    rule(
        "fact",
        "the point for <trials> is (() WHOLE , WHOLE ()) on the line for <who>",
        lambda when, n, score, who: at(when, _point(n, score, who)),
    ),
    rule("fact", "on the line for <who> , the point is (() WHOLE , WHOLE ())", lambda who, n, score: _point(n, score, who)),
    rule(
        "fact",
        "the score of <who> was WHOLE , and the score of <who> was WHOLE",
        lambda who, n, other, m: (ScoreIs(Np(who), n), ScoreIs(Np(other), m)),
    ),
    # a goal
    rule("above", "more than WHOLE", lambda n: (n, True)),
    rule("above", "at least WHOLE", lambda n: (n, False)),
    rule("with_one_more", "for <trials> and one extra trial", lambda trials: trials),
    rule("fact", "the goal is a total score of <above> <with_one_more>", lambda above, trials: _goal(above, trials)),
    rule("fact", "<who> would like a total score of <above> <with_one_more>", lambda who, above, trials: _goal(above, trials, who)),
    rule("fact", "the score is WHOLE points for each <thing> <that_outcome>", lambda n, c, m: (_each(c, m, n),)),
)

ASKED: tuple[Rule, ...] = (
    rule(
        "ask",
        "how many more? <things> NEXT? , the same number for each group , make the WHOLE total scores equal",
        lambda c, _, two: _level(c, "down", two),
    ),
    rule("ask", "how many points does each <thing> earn", lambda c: OfLine("slope", what(c))),
    rule("ask", "what is the slope of the line", always(OfLine("slope"))),
    rule("ask", "what is the start value", always(OfLine("start"))),
    rule("ask", "what is the y-intercept of the line", always(OfLine("start"))),
    rule(
        "ask",
        "what is the (least|smallest) number of <things> <who> must <outcome_base> in the extra trial",
        lambda c, who, m: FewestNeeded(m, what(c, who)),
    ),
)

RULES: tuple[Rule, ...] = (*TOLD, *ASKED)
