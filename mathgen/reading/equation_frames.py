"""Rules for equations with a letter and expressions with brackets, as they stand beside a story."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.facts import Claims, of
from mathgen.reading.meaning.counts import Count
from mathgen.reading.meaning.letters import LetterEquation, LetterFor, TheExpression, ToChooseFrom
from mathgen.reading.meaning.rates import PointsEach, SamePoints, ScoreIs
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.noun_phrases import Counted, joined, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.counts import HowMany
from mathgen.reading.wanted.letters import AnyExpression, HowManyPoints, RightExpression, WhatIsLetter, WhichRecords
from mathgen.reading.wanted.rates import PointsOfOne
from mathgen.trials.scope import Label, Measure


def _letter(colors: Labels, measure: Measure, who: Labels = None, when: Labels = None) -> HowMany:
    return HowMany(measure, what(colors, who, when))


def _worth_n(measure: Measure, color: Labels, letter: str, total: Number) -> Claims:
    np = what(color)
    return (ScoreIs(np, total), SamePoints(measure, np), LetterFor(letter, PointsOfOne(measure, np)))


def _two_colors(one: Label, other: Label, measure: Measure, number: Number) -> Claims:
    return (PointsEach(measure, what(joined(one, (other,))), number),)


def _each_alike(measure: Measure, thing: Counted) -> Claims:
    np = what(thing.colors)
    return (Count(measured(measure, "down", "standing"), np, thing.number), SamePoints(measure, np))


RULES: tuple[Rule, ...] = (
    # an equation with a letter: what is multiplied, the product, or None for the letter
    rule("product", "LETTER × WHOLE = WHOLE", LetterEquation),
    rule("product", "WHOLE × LETTER = WHOLE", lambda k, x, product: LetterEquation(x, k, product)),
    rule("product", "WHOLE = WHOLE × LETTER", lambda product, k, x: LetterEquation(x, k, product)),
    rule("product", "LETTER = WHOLE × WHOLE", lambda x, k, other: LetterEquation(x, k, None, other)),
    rule("fact", "the equation is <product>", lambda equation: (equation,)),
    rule("fact", "use the equation <product>", lambda equation: (equation,)),
    rule("fact", "in <product> , LETTER is <stands_for>", lambda equation, x, asked: (equation, LetterFor(x, asked))),
    rule("stands_for", "the number of <things> <that_outcome>", _letter),
    rule("stands_for", "<of_whom_n>", lambda asked: asked),
    rule("of_whom_n", "the number of <things> <who> <outcome> <when>?", lambda colors, who, m, when: _letter(colors, m, who, when)),
    rule("stands_for", "the number of points for each <thing> <that_outcome>?", lambda color, m: PointsOfOne(m, what(color))),
    rule("fact", "let LETTER be <of_whom_n>", lambda x, asked: (LetterFor(x, asked),)),
    rule("fact", "each <thing> <that_outcome> was worth LETTER points , WHOLE points <in_all>", lambda c, m, x, n, _: _worth_n(m, c, x, n)),
    rule("ask", "what is LETTER , <stands_for>", WhatIsLetter),
    rule("ask", "which number is LETTER", lambda x: WhatIsLetter(x, None)),
    rule("ask", "in <product> , which number is LETTER", lambda equation, x: WhatIsLetter(x, None, equation)),
    rule("fact", "<who> <past> <counted> , each worth the same number of points", lambda who, m, thing: of(who, _each_alike(m, thing))),
    # brackets: "(()" is the sign ( itself
    rule("bracketed", "(() WHOLE + WHOLE ) × WHOLE", lambda a, b, k: TheExpression("+", (a, b, k))),
    rule("bracketed", "(() WHOLE − WHOLE ) × WHOLE", lambda a, b, k: TheExpression("-", (a, b, k))),
    rule("expression", "(() WHOLE + WHOLE ) × WHOLE", lambda *numbers: AnyExpression("(a + b) × c", numbers)),
    rule("expression", "WHOLE × (() WHOLE + WHOLE )", lambda *numbers: AnyExpression("a × (b + c)", numbers)),
    rule("expression", "WHOLE + WHOLE × WHOLE", lambda *numbers: AnyExpression("a + b × c", numbers)),
    rule("expression", "WHOLE × WHOLE + WHOLE × WHOLE", lambda *numbers: AnyExpression("a × b + c × d", numbers)),
    rule("expression", "WHOLE × WHOLE + WHOLE", lambda *numbers: AnyExpression("a × b + c", numbers)),
    rule("ask", "does <expression> give the number of points <who> earned", lambda one, who: RightExpression(what(None, who), one)),
    rule("ask", "is <expression> a right expression for the points", lambda one: RightExpression(Np(), one)),
    rule("ask", "is the total number of points <expression>", lambda one: RightExpression(Np(), one)),
    rule("expressions", "<expression> , <expression> , and <expression>", lambda *shown: (ToChooseFrom(tuple(map(tuple, shown))),)),
    rule("fact", "look at <expressions>", lambda claims: claims),
    rule("ask", "which one gives all the points", lambda: WhichRecords(Np())),
    rule("ask", "which expression? gives all? the points", lambda: WhichRecords(Np())),
    rule("ask", "which expression is right for the points", lambda: WhichRecords(Np())),
    rule("ask", "which expression tells the number of points", lambda: WhichRecords(Np())),
    rule("fact", "use the expression <bracketed>", lambda expression: (expression,)),
    rule("fact", "the expression <bracketed> gives the total number of points lost?", lambda expression: (expression,)),
    rule(
        "ask",
        "what is <bracketed> , the number of points <who> (earned|lost) <for_things>?",
        lambda expression, who, colors: HowManyPoints(what(colors, who), expression=expression),
    ),
    rule("ask", "how many lost? points does the expression give for <who>", lambda who: HowManyPoints(what(None, who), by_expression=True)),
    rule("ask", "what number does the expression give", lambda: HowManyPoints(Np(), by_expression=True)),
    rule(
        "fact",
        "each COLOR ITEM and each COLOR ITEM <that_outcome> (earns|earned) WHOLE points",
        lambda a, _, b, __, m, n: _two_colors(a, b, m, n),
    ),
    rule("fact", "each COLOR or COLOR ITEM <that_outcome> is worth WHOLE points", lambda a, b, _, m, n: _two_colors(a, b, m, n)),
)
