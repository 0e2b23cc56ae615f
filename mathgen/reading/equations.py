"""Equations with a letter and expressions with brackets: whether they say what the story says."""

from __future__ import annotations

from mathgen.asks.expression import Expr, Op, Quantity, Same, Stated, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.reading import points, scoring
from mathgen.reading.asked import TRUTH, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.letters import LetterEquation, LetterFor, TheExpression, ToChooseFrom
from mathgen.reading.meaning.scope import Np
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Fact, Takers, Told, settled
from mathgen.reading.wanted.counts import HowMany
from mathgen.reading.wanted.letters import HowManyPoints, RightExpression, WhatIsLetter, WhichRecords
from mathgen.reading.wanted.rates import PointsOfOne
from mathgen.scenario.words import Scenario


def letter_equation(told: Told, claim: LetterEquation) -> None:
    """Keep an equation.

    Raises:
        NotRead: there are two.
    """
    if told.equation is not None:
        raise NotRead("two equations are told of")
    told.equation = claim
    told.open["equation"] = "the equation"


def letter_for(told: Told, claim: LetterFor) -> None:
    """Keep what a letter stands for.

    Raises:
        NotRead: it is told twice.
    """
    if told.letter is not None:
        raise NotRead(f"what {claim.letter} stands for is told twice")
    told.letter = claim
    told.open["letter"] = f"what {claim.letter} stands for"


def the_expression(told: Told, claim: TheExpression) -> None:
    """Keep an expression.

    Raises:
        NotRead: there are two.
    """
    if told.expression is not None:
        raise NotRead("two expressions are told of")
    told.expression = claim
    told.open["expression"] = "the expression"


def what_is_letter(question: WhatIsLetter, told: Told, scenario: Scenario) -> Asked:
    """The number that a letter stands for: the story's own question, where the equation says the same."""
    wanted, equation = question.asked, told.equation
    if question.equation is not None:
        if equation is not None:
            raise NotRead("two equations are told of")
        equation = question.equation
    if wanted is None and told.letter is not None:
        assert isinstance(told.letter.asked, HowMany | PointsOfOne)  # the grammar makes no other
        wanted = told.letter.asked
    if wanted is None or equation is None or {question.letter} != {one.letter for one in (equation, told.letter) if one is not None}:
        raise NotRead(f"it is not said what {question.letter} stands for")
    if isinstance(wanted, HowMany):
        wanted = wanted._replace(np=_settled(told, wanted.np))
        asked = scoring.how_many(wanted, told, scenario)
    else:
        asked = points.points_of_one(wanted, told, scenario)
    goal = asked.goal
    assert isinstance(goal, Value)  # neither question asks for a name
    expr = goal.expr
    symbol = "*" if equation.product is None else "/"
    numbers = [number.value for number in (equation.product, equation.factor, equation.other) if number is not None]
    if not isinstance(expr, Op) or expr.symbol != symbol or [evaluate(arg, told.counts) for arg in expr.args] != numbers:
        raise NotRead("the equation does not say what the story says")
    return asked._replace(uses=(*asked.uses, "equation", "letter"))


def _settled(told: Told, np: Np) -> Np:
    """The phrase where "pins" can mean only one thing: those of the color that the story speaks of."""
    return settled(told, np)[0]


def points_by_expression(question: HowManyPoints, told: Told, scenario: Scenario) -> Asked:
    """How many points, where an expression shows the way to them: it must come to as many, with the numbers in the story's order.

    Raises:
        NotRead: it does not, or none is told of, or two are.
    """
    asked = points.how_many_points(question, told, scenario)
    found = [one for one in (told.expression, question.expression) if one is not None]
    if not found and not question.by_expression:
        return asked
    if len(found) != 1:
        raise NotRead("no expression is told of" if not found else "two expressions are told of")
    [expression] = found
    a, b, each = (number.value for number in expression.numbers)
    goal = asked.goal
    assert isinstance(goal, Value)
    counts = [fact.text for fact in told.facts if isinstance(fact.expr, Quantity)]
    first, second, third = (number.text for number in expression.numbers)
    in_order = {first, second} <= set(counts) and (expression.symbol == "-" or counts.index(first) < counts.index(second))
    in_order = in_order and third == told.scoring.each[0].number.text
    if not in_order or (a + b if expression.symbol == "+" else a - b) * each != evaluate(goal.expr, told.counts):
        raise NotRead("the expression does not say what the story says")
    return asked._replace(uses=(*asked.uses, "expression"))


def to_choose_from(told: Told, claim: ToChooseFrom) -> None:
    """Keep the expressions to choose from.

    Raises:
        NotRead: told twice.
    """
    if told.to_choose_from is not None:
        raise NotRead("it is said twice between which expressions to choose")
    told.to_choose_from = claim
    told.open["to choose from"] = "the expressions"


def right_expression(question: RightExpression, told: Told, scenario: Scenario) -> Asked:
    """Whether an expression comes to the points, its numbers those of the story in the story's order."""
    asked, known = _points_story(question.np, told, scenario)
    assert isinstance(asked.goal, Value)
    shown = _as_shown(question.expression.built, question.expression.numbers, known)
    return asked._replace(kind="expression", goal=Truth(asked.goal.expr, "=", shown), demand=TRUTH)


def which_records(question: WhichRecords, told: Told, scenario: Scenario) -> Asked:
    """Which of some expressions comes to the points: what it gives is compared, nothing is worked out."""
    if told.to_choose_from is None:
        raise NotRead("it is not said between which expressions to choose")
    asked, known = _points_story(question.np, told, scenario)
    assert isinstance(asked.goal, Value)
    options = told.to_choose_from.options
    exprs = tuple(_as_shown(built, numbers, known) for built, numbers in options)
    first = known[0].expr
    assert isinstance(first, Quantity)
    target = asked.goal.expr
    if told.scoring.bonus is not None:
        target = Op("+", (target, known[2].expr))
    goal = Same(tuple(_written_out(*option) for option in options), exprs, target, first)
    return asked._replace(kind="expression", goal=goal, demand=Demand("expression"), uses=(*asked.uses, "to choose from", "bonus"))


def _points_story(np: Np, told: Told, scenario: Scenario) -> tuple[Asked, list[Fact]]:
    """The points in all, and the three numbers that they are made of: two counts, or a count and a bonus, and the points for each.

    Raises:
        NotRead: the same number stands for two things.
    """
    asked = points.how_many_points(HowManyPoints(np), told, scenario)
    counts = [fact for fact in told.facts if isinstance(fact.expr, Quantity)]
    known = [*counts, *(fact for fact in told.facts if fact.expr in asked.stated())]
    if told.scoring.bonus is not None:
        known += [fact for fact in told.facts if isinstance(fact.expr, Stated) and fact.expr.meaning == scoring.BONUS]
    if len(counts) + (told.scoring.bonus is not None) != 2 or len({fact.text for fact in known}) != len(known) or len(known) != 3:
        raise NotRead("it is not clear what the numbers of the expression stand for")
    return asked, known


def _as_shown(built: str, numbers: tuple[Number, ...], known: list[Fact]) -> Expr:
    """An expression with what its numbers stand for.

    Raises:
        NotRead: it has other numbers than the story, or in another order.
    """
    a, b, c = (fact.text for fact in known)
    if isinstance(known[1].expr, Quantity):  # two counts, then the points for each
        order = {"a × b + c × d": [a, c, b, c], "a × b + c": [a, c, b]}.get(built, [a, b, c])
    else:  # a count, the points for each, and the bonus
        order = {"(a + b) × c": [a, c, b]}.get(built, [a, b, c])
    if [number.text for number in numbers] != order:
        raise NotRead("the expression has other numbers than the story")
    named = {fact.text: fact.expr for fact in known}
    one, two, three, *_ = (named[text] for text in order)
    shown: dict[str, Expr] = {
        "(a + b) × c": Op("*", (Op("+", (one, two)), three)),
        "a × (b + c)": Op("*", (one, Op("+", (two, three)))),
        "a + b × c": Op("+", (one, Op("*", (two, three)))),
        "a × b + c × d": Op("+", (Op("*", (one, two)), Op("*", (three, two)))),
        "a × b + c": Op("+", (Op("*", (one, two)), three)),
    }
    return shown[built]


def _written_out(built: str, numbers: tuple[Number, ...]) -> str:
    """An expression as the words have it."""
    texts = iter(number.text for number in numbers)
    return "".join(next(texts) if sign.isalpha() else sign for sign in built)


ASKED: Answers = {
    WhichRecords: which_records,
    RightExpression: right_expression,
    HowManyPoints: points_by_expression,
    WhatIsLetter: what_is_letter,
}


TAKEN: Takers = {
    ToChooseFrom: to_choose_from,
    LetterEquation: letter_equation,
    LetterFor: letter_for,
    TheExpression: the_expression,
}
