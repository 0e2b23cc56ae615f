"""Points, rules and equations: what is told of them, and what a question about them comes to."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.asks.expression import Expr, Op, Quantity, Stated, Value
from mathgen.reading import counting
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.rates import BonusPoints, EquationIs, LetterIs, PointsEach, RuleIs, ScoreIs, Term, Terms
from mathgen.reading.meaning.scope import Mark, Np
from mathgen.reading.mentions import DIMENSIONS
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.counts import HowMany
from mathgen.reading.wanted.rates import Score, ValueOf
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Label

Sign = Literal["+", "-"]
EARNS, LOSES, BONUS, SCORE = "points for each", "points lost for each", "bonus points", "points in all"


def rule_is(told: Told, claim: RuleIs) -> None:
    """Keep a rule with letters.

    Raises:
        NotRead: there are two rules, or a letter stands in it twice.
    """
    letters = [term.letter for term in claim.terms if term.letter is not None]
    if told.scoring.rule or len(set(letters)) < len(letters) or not letters:
        raise NotRead("it is not clear which rule is meant")
    told.scoring.rule = claim.terms
    told.open["rule"] = "the rule"
    for term in claim.terms:
        if term.number is not None:
            told.facts.append(Fact(_stated(term), term.number.text))


def equation_is(told: Told, claim: EquationIs) -> None:
    """Keep an equation; whether it is that of the story is seen when the question is known.

    Raises:
        NotRead: there are three.
    """
    if len(told.scoring.equations) == 2:
        raise NotRead("there are three equations")
    told.scoring.equations.append(claim)
    told.open[f"equation {len(told.scoring.equations)}"] = "the equation"


def letter_is(told: Told, claim: LetterIs) -> None:
    """Keep what a letter stands for.

    Raises:
        NotRead: it stands for two things, or it is not said what is counted.
    """
    letters = told.scoring.letters
    measure = claim.measure or (letters[-1].measure if letters else None)
    if measure is None or claim.letter in [one.letter for one in letters]:
        raise NotRead(f"it is not clear what {claim.letter} stands for")
    letters.append(claim._replace(measure=measure))
    told.open[f"letter {claim.letter}"] = claim.letter
    _named(told, claim.np)


def points_each(told: Told, claim: PointsEach) -> None:
    """Keep what each of some things earns.

    Raises:
        NotRead: there are two numbers for one thing.
    """
    if any((one.measure, one.np) == (claim.measure, claim.np) for one in told.scoring.each):
        raise NotRead("it is said twice what earns points")
    told.scoring.each.append(claim)
    told.facts.append(Fact(Stated(int(claim.number.value), EARNS if claim.sign > 0 else LOSES), claim.number.text))
    told.open[f"points each {len(told.scoring.each)}"] = claim.number.text
    _named(told, claim.np)


def bonus_points(told: Told, claim: BonusPoints) -> None:
    """Keep a bonus.

    Raises:
        NotRead: there are two.
    """
    if told.scoring.bonus is not None:
        raise NotRead("there are two bonuses")
    told.scoring.bonus = claim.number
    told.facts.append(Fact(Stated(int(claim.number.value), BONUS), claim.number.text))
    told.open["bonus"] = claim.number.text


def score_is(told: Told, claim: ScoreIs) -> None:
    """Keep what was earned."""
    told.scoring.scores.append(claim)
    told.facts.append(Fact(Stated(int(claim.number.value), SCORE), claim.number.text))
    told.open[f"score {len(told.scoring.scores)}"] = claim.number.text
    _named(told, claim.np)


def _named(told: Told, np: Np) -> None:
    for part in DIMENSIONS:
        labels = getattr(np, part)
        if isinstance(labels, tuple) or (isinstance(labels, Mark) and part != "colors"):
            told.mentions.resolve(part, labels)


def _stated(term: Term) -> Stated:
    assert term.number is not None  # asked for terms with a number only
    return Stated(int(term.number.value), BONUS if term.letter is None else EARNS if term.sign > 0 else LOSES)


def _letters(told: Told, np: Np = Np()) -> dict[str, Quantity]:  # noqa: B008 - frozen, so shared safely
    """What each letter stands for; whose and when come from the question where the letter's own words leave it out."""
    found = {}
    for one in told.scoring.letters:
        assert one.measure is not None  # told with every letter that is kept
        own = Np(*(mine if mine is not None else other for mine, other in zip(one.np, np, strict=True)))
        found[one.letter] = told.quantity(one.measure, own)
    return found


def _evaluated(told: Told, terms: Terms, np: Np) -> Asked:
    """A rule worked out for the results it is about: every letter of it told of, none left over."""
    letters = _letters(told, np)
    if [term.letter for term in terms if term.letter is not None] != list(letters):
        raise NotRead("it is not said what the letters stand for")
    whole: Expr | None = None
    for term in terms:
        expr: Expr = Stated(1, EARNS) if term.number is None else _stated(term)
        if term.letter is not None:
            expr = letters[term.letter] if term.number is None else Op("*", (expr, letters[term.letter]))
        sign: Sign = "+" if term.sign > 0 else "-"
        whole = expr if whole is None else Op(sign, (whole, expr))
    assert whole is not None  # a rule has at least one term
    uses = ("rule", *(f"letter {letter}" for letter in letters))
    return Asked("score", Value(whole), WHOLE, tuple(letters.values()), uses)


def score(question: Score, told: Told, _: Scenario) -> Asked:
    if not told.scoring.rule:
        raise NotRead("no rule for a score is told of")
    return _evaluated(told, told.scoring.rule, question.np)


def value_of(question: ValueOf, told: Told, _: Scenario) -> Asked:
    first = question.terms[0]
    if len(question.terms) == 1 and first.number is None and first.letter is not None:
        letters = _letters(told)
        if list(letters) != [first.letter]:
            raise NotRead(f"it is not said what {first.letter} stands for")
        return _solved(told, letters[first.letter], first.letter)
    if told.scoring.rule:
        raise NotRead("there are two rules")
    rule_is(told, RuleIs(question.terms))
    return _evaluated(told, question.terms, Np())


def how_many(question: HowMany, told: Told, scenario: Scenario) -> Asked:
    """A count asked for: from the points that it earned, where points are told of."""
    if not told.scoring.scores and len(told.scoring.equations) < 2:
        return counting.how_many(question, told, scenario)
    letters = told.scoring.letters
    return _solved(told, told.quantity(question.measure, question.np), letters[0].letter if len(letters) == 1 else None)


def _solved(told: Told, unknown: Quantity, letter: str | None) -> Asked:
    """The one count that an equation of the story leaves unknown.

    Raises:
        NotRead: the story has no such equation, or another one is told.
    """
    uses = [f"letter {letter}"] if letter is not None else []
    if letter is not None and _letters(told)[letter] != unknown:
        raise NotRead(f"{letter} stands for something else")
    if len(told.scoring.each) == 2 or len(told.scoring.letters) == 2:
        return _of_two(told, unknown)
    if told.scoring.scores:
        left, right, goal = _of_points(told, unknown, letter)
        uses += ["rule"] if told.scoring.rule else ["points each 1"]
        uses += ["bonus", "score 1"]
    else:
        left, right, goal = _of_all(told, unknown)
    if told.scoring.equations:
        equation = told.scoring.equations[0]
        uses.append("equation 1")
        if letter is None or _shape(equation.left, letter) != left or _shape(equation.right, letter) != right:
            raise NotRead("the equation is not that of the story")
    return Asked("equation", Value(goal), WHOLE, (unknown,), tuple(uses), unknown)


Shape = tuple[tuple[int, bool], ...]  # each term's number, with its sign, and whether it goes with the letter


def _shape(terms: Terms, letter: str) -> Shape:
    if any(term.letter not in (None, letter) for term in terms):
        raise NotRead("there is another letter in the equation")
    return tuple(((1 if term.number is None else int(term.number.value)) * term.sign, term.letter is not None) for term in terms)


def _of_points(told: Told, unknown: Quantity, letter: str | None) -> tuple[Shape, Shape, Expr]:
    """px + q = r: points for each, a bonus, and what was earned."""
    each, bonus = _each_and_bonus(told, unknown, letter)
    if len(told.scoring.scores) != 1:
        raise NotRead("it is not said whose points are meant")
    [claim] = told.scoring.scores
    if isinstance(claim.np.colors, tuple) and told.mentions.scope((), (), claim.np.colors).colors != unknown.scope.colors:
        raise NotRead("the points are those of other colors")
    if told.scope(claim.np._replace(colors=unknown.scope.colors or told.mentions.every("colors"))) != unknown.scope:
        raise NotRead("the points are those of something else")
    total: Expr = Stated(int(claim.number.value), SCORE)
    p = int(each.value)
    left: Shape = ((p, True),) if bonus is None else ((p, True), (int(bonus.value), False))
    rest = total if bonus is None else Op("-", (total, Stated(int(bonus.value), BONUS)))
    return left, ((int(claim.number.value), False),), Op("/", (rest, Stated(p, EARNS)))


def _each_and_bonus(told: Told, unknown: Quantity, letter: str | None) -> tuple[Number, Number | None]:
    state = told.scoring
    if state.rule:
        by_letter = {term.letter: term for term in state.rule}
        each, bonus = by_letter.get(letter), by_letter.get(None)
        plain = [term for term in state.rule if term.sign > 0 and term.number is not None]
        if state.each or state.bonus or letter is None or each is None or each.number is None or len(plain) != len(by_letter) > 2:
            raise NotRead("the rule is not clear")
        if len(plain) != len(state.rule) or set(by_letter) - {letter, None}:
            raise NotRead("the rule is not clear")
        return each.number, None if bonus is None else bonus.number
    if len(state.each) != 1:
        raise NotRead("it is not said what earns points")
    [claim] = state.each
    if told.quantity(claim.measure, Np(unknown.scope.groups, unknown.scope.trials, claim.np.colors)) != unknown:
        raise NotRead("the points are for something else")
    return claim.number, state.bonus


def _of_all(told: Told, unknown: Quantity) -> tuple[Shape, Shape, Expr]:
    """x + p = q: what was knocked down and what was left standing are all that was set up."""
    whole = unknown._replace(measure="set_up")
    rest = unknown._replace(measure="standing" if unknown.measure == "down" else "down")
    counts = {fact.expr for fact in told.facts}
    if not told.scoring.equations or unknown.measure == "set_up" or not {whole, rest} <= counts:
        raise NotRead("no equation follows from what is told")
    n, k = int(evaluate(whole, told.counts)), int(evaluate(rest, told.counts))
    return ((1, True), (k, False)), ((n, False),), Op("-", (whole, rest))


class _Kind(NamedTuple):
    """One of two kinds of things: how many, and what each earns (or, below 0, loses)."""

    things: Quantity
    each: int
    letter: str | None


def _of_two(told: Told, unknown: Quantity) -> Asked:
    """x + y = n and px + qy = r: how many of one kind, from how many of both and what both earned."""
    state = told.scoring
    kinds, total, uses = _kinds_by_equations(told, unknown) if state.letters else _kinds_by_points(told, unknown)
    own = [kind for kind in kinds if kind.things == unknown]
    if len(own) != 1:
        raise NotRead("the points are for something else")
    [other] = [kind for kind in kinds if kind.things != unknown]
    both = _both(told, unknown, other.things)
    if both not in {fact.expr for fact in told.facts}:
        raise NotRead("it is not said how many there were of both")
    gap = Op("-", (Stated(total, SCORE), Op("*", (Stated(other.each, EARNS), both))))
    goal = Op("/", (gap, Stated(own[0].each - other.each, EARNS)))
    return Asked("equation", Value(goal), WHOLE, (unknown, other.things), uses, unknown)


def _both(told: Told, one: Quantity, other: Quantity) -> Quantity:
    """All of two kinds: of two colors, or knocked down and left standing."""
    if one.scope == other.scope and {one.measure, other.measure} == {"down", "standing"}:
        return Quantity("set_up", one.scope)
    if one.measure != other.measure or one.scope[:2] != other.scope[:2] or not one.scope.colors or not other.scope.colors:
        raise NotRead("the two do not go together")
    groups, trials = (getattr(one.scope, part) or told.mentions.every(part) for part in ("groups", "trials"))
    return Quantity(one.measure, told.mentions.scope(groups, trials, (*one.scope.colors, *other.scope.colors)))


def _kinds_by_points(told: Told, unknown: Quantity) -> tuple[list[_Kind], int, tuple[str, ...]]:
    state = told.scoring
    if len(state.scores) != 1 or state.bonus is not None or state.rule or state.equations:
        raise NotRead("it is not said what was earned")
    [score] = state.scores
    place = unknown.scope._replace(colors=None)
    if told.scope(score.np._replace(colors=told.mentions.every("colors"))) != place:
        raise NotRead("the points are those of something else")
    kinds = [
        _Kind(told.quantity(one.measure, Np(*_place(told, unknown), one.np.colors)), one.sign * int(one.number.value), None)
        for one in state.each
    ]
    told_of = score.np.colors
    if isinstance(told_of, tuple) and set(told_of) != {color for kind in kinds for color in kind.things.scope.colors or ()}:
        raise NotRead("the points are those of other colors")
    return kinds, int(score.number.value), ("points each 1", "points each 2", "score 1")


def _place(told: Told, one: Quantity) -> tuple[tuple[Label, ...], tuple[Label, ...]]:
    return one.scope.groups or told.mentions.every("groups"), one.scope.trials or told.mentions.every("trials")


def _kinds_by_equations(told: Told, unknown: Quantity) -> tuple[list[_Kind], int, tuple[str, ...]]:
    """Two equations in two letters: the first says how many there were, the second what was earned."""
    state = told.scoring
    if len(state.equations) != 2 or len(state.letters) != 2 or state.each or state.scores:
        raise NotRead("there are not two equations")
    letters = _letters(told, Np(*_place(told, unknown)))
    (first, n), (second, r) = ((one.left, one.right) for one in state.equations)
    one, other = letters.values()
    if [term.letter for term in first] != list(letters) or [(term.sign, term.number) for term in first] != [(1, None), (1, None)]:
        raise NotRead("the first equation is not that of the story")
    both = _both(told, one, other)
    if not _alone(n) or n[0].number.value != evaluate(both, told.counts):  # type: ignore[union-attr]
        raise NotRead("the first equation is not that of the story")
    if [term.letter for term in second] != list(letters) or not _alone(r) or any(term.number is None for term in second):
        raise NotRead("the second equation is not clear")
    kinds = []
    for term, count in zip(second, letters.values(), strict=True):
        assert term.number is not None  # seen just above
        told.facts.append(Fact(_stated(term), term.number.text))
        kinds.append(_Kind(count, term.sign * int(term.number.value), term.letter))
    [end] = r
    assert end.number is not None  # a term alone without letter is a number
    told.facts.append(Fact(Stated(int(end.number.value), SCORE), end.number.text))
    return kinds, int(end.number.value), ("equation 1", "equation 2", *(f"letter {letter}" for letter in letters))


def _alone(terms: Terms) -> bool:
    return len(terms) == 1 and terms[0].letter is None


ASKED: Answers = {
    Score: score,
    ValueOf: value_of,
}


TAKEN: Takers = {
    RuleIs: rule_is,
    EquationIs: equation_is,
    LetterIs: letter_is,
    PointsEach: points_each,
    BonusPoints: bonus_points,
    ScoreIs: score_is,
}
