"""A letter for a count: what is told of it, and which of the expressions fits the story."""

from __future__ import annotations

from mathgen.asks.expression import Expr, Op, Quantity, Same, Stated, Unknown
from mathgen.exact.demand import Demand
from mathgen.reading.asked import Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.letters import Bracket, ExpressionsAre, LetterCount, NextLetter, SumTimes, Written
from mathgen.reading.meaning.scope import Np
from mathgen.reading.scoring import EARNS
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Takers, Told
from mathgen.reading.wanted.letters import WhichExpression, WhichInequality
from mathgen.scenario.words import Scenario

_SIGNS = {"+": "+", "−": "-", "×": "*", ">": "-"}  # a > b is held against others as a - b, which is above 0


def letter_count(told: Told, claim: LetterCount) -> None:
    """Keep which count a letter stands for.

    Raises:
        NotRead: a letter stands for a count already.
    """
    if told.letter_count is not None:
        raise NotRead("two letters stand for counts")
    told.letter_count = claim
    told.open["letter"] = claim.letter
    for part in ("groups", "trials"):
        labels = getattr(claim.np, part)
        if isinstance(labels, tuple):
            told.mentions.note(part, labels)


def sum_times(told: Told, claim: SumTimes) -> None:
    """Keep the expression that the points are told by.

    Raises:
        NotRead: there are two.
    """
    if told.bracket is not None:
        raise NotRead("two expressions are told of")
    told.bracket = claim.bracket
    told.open["bracket"] = "the expression"


def expressions_are(told: Told, claim: ExpressionsAre) -> None:
    """Keep the expressions to choose from.

    Raises:
        NotRead: told twice.
    """
    if told.expressions is not None:
        raise NotRead("it is said twice between which expressions to choose")
    told.expressions = claim
    told.open["expressions"] = "the expressions"


def next_letter(told: Told, claim: NextLetter) -> None:
    """Keep which number of a next time a letter stands for.

    Raises:
        NotRead: two letters stand for numbers.
    """
    if told.next_letter is not None or told.letter_count is not None:
        raise NotRead("two letters stand for numbers")
    told.next_letter = claim
    told.open["letter"] = claim.letter
    if claim.np.groups is not None:
        told.mentions.resolve("groups", claim.np.groups)


def _text(option: Written) -> str:
    if option.sign == "term":
        number, letter = option.parts
        return f"{number.text}{letter}"
    if option.sign in ("number", "letter"):
        [one] = option.parts
        return one.text if isinstance(one, Number) else str(one)
    return f" {option.sign} ".join(map(_text, option.parts))


def _expr(option: Written, letter: str, known: dict[int, Expr]) -> Expr:
    if option.sign in _SIGNS:
        return Op(_SIGNS[option.sign], tuple(_expr(part, letter, known) for part in option.parts))  # type: ignore[arg-type]
    if option.sign == "letter":
        if option.parts[0] != letter:
            raise NotRead(f"it is not said what {option.parts[0]} stands for")
        return Unknown(letter)
    number = option.parts[0]
    found = known.get(int(number.value))
    if found is None:
        raise NotRead(f"it is not said what {number.text} is")
    if option.sign == "number":
        return found
    return Op("*", (found, _expr(Written("letter", option.parts[1:]), letter, known)))


def which_expression(question: WhichExpression, told: Told, _: Scenario) -> Asked:
    claim = told.letter_count
    if claim is None or told.expressions is None or question.letter not in (None, claim.letter):
        raise NotRead("it is not said what the letter stands for, or between which expressions to choose")
    letter = Unknown(claim.letter)
    counted = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity)]
    looked = [told.quantity(look.measure, look.np) for look in told.seen if look.measure is not None]
    if len(counted) + len(looked) != 1:
        raise NotRead("one count has to be told beside the letter")
    [known] = counted or looked
    own = told.scope(claim.np)
    numbers: dict[int, Expr] = {int(evaluate(known, told.counts)): known}
    uses: tuple[str, ...] = ("letter", "expressions")
    if question.kind == "rest":
        if known != Quantity("set_up", own) or question.measure in (None, claim.measure):
            raise NotRead("the expression is for something else than the rest")
        if question.colors is not None and told.scope(Np(own.groups, own.trials, question.colors)) != own:
            raise NotRead("the question is about other colors")
        target: Expr = Op("-", (known, letter))
    else:
        every = told.mentions.every("trials")
        trials = (known.scope.trials or every, own.trials or every)
        if known.measure != claim.measure or known.scope._replace(trials=None) != own._replace(trials=None):
            raise NotRead("the letter stands for something else")
        if any(len(one) != 1 for one in trials) or trials[0] == trials[1]:
            raise NotRead("two trials have to be told of")
        target = Op("+", (known, letter))
    if question.kind == "total":
        if question.measure != claim.measure or told.scope(Np(own.groups, own.trials, question.colors)) != own:
            raise NotRead("the question is about something else")
    elif question.kind == "same":
        target, points = _in_points(question.bracket, told, known, target, claim)
        if points.number in numbers:
            raise NotRead("it is not clear which number is which")
        numbers[points.number] = points
        uses = ("letter", "expressions", "bracket", "points each 1")
    options = tuple(_expr(option, claim.letter, numbers) for option in told.expressions.options)
    goal = Same(tuple(map(_text, told.expressions.options)), options, target, Quantity(claim.measure, own))
    return Asked("expression", goal, Demand("expression"), (known,), uses)


def _in_points(bracket: Bracket | None, told: Told, known: Quantity, total: Expr, claim: LetterCount) -> tuple[Expr, Stated]:
    """The points in all, as the words write them: so many for each of both counts."""
    written = bracket or told.bracket
    state = told.scoring
    if written is None or len(state.each) != 1 or state.scores or state.rule or (bracket is not None and told.bracket is not None):
        raise NotRead("it is not said what the points are")
    [each] = state.each
    if each.measure != claim.measure or told.scope(Np(known.scope.groups, known.scope.trials, each.np.colors)) != known.scope:
        raise NotRead("the points are for something else")
    told_by = (written.points.value, written.known.value, written.letter)
    if told_by != (each.number.value, evaluate(known, told.counts), claim.letter):
        raise NotRead("the expression does not say the points in all")
    points = Stated(int(each.number.value), EARNS)
    return Op("*", (points, total)), points


def which_inequality(question: WhichInequality, told: Told, _: Scenario) -> Asked:
    claim = told.next_letter
    if claim is None or told.expressions is None or question.letter not in (None, claim.letter):
        raise NotRead("it is not said what the letter stands for, or between which inequalities to choose")
    down = told.quantity(claim.measure, claim.np)
    whole = Quantity("set_up", down.scope)
    counted = {fact.expr for fact in told.facts if isinstance(fact.expr, Quantity)}
    numbers: dict[int, Expr] = {int(evaluate(one, told.counts)): one for one in (down, whole)}
    if counted != {down, whole} or len(numbers) != 2:
        raise NotRead("the goal is for something else than what is told")
    options = tuple(_expr(option, claim.letter, numbers) for option in told.expressions.options)
    goal = Same(tuple(map(_text, told.expressions.options)), options, Op("-", (Unknown(claim.letter), down)), down)
    return Asked("expression", goal, Demand("expression"), (down, whole), ("letter", "expressions"))


ASKED: Answers = {
    WhichInequality: which_inequality,
    WhichExpression: which_expression,
}


TAKEN: Takers = {
    LetterCount: letter_count,
    SumTimes: sum_times,
    ExpressionsAre: expressions_are,
    NextLetter: next_letter,
}
