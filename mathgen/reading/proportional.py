"""Proportional scores: what is told of them, and what a question about them comes to."""

from __future__ import annotations

from mathgen.asks.expression import Choice, Op, Quantity, Stated, Truth, Value
from mathgen.reading.asked import NAME, TRUTH, WHOLE, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.rates import Grid, Growing, Proportional, ScoreGrew
from mathgen.reading.meaning.scope import Mark, Np
from mathgen.reading.scoring import EARNS, SCORE
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.rates import Constant, Growth, InProportion, ScoreWanted, SlopesApart, Steeper
from mathgen.scenario.words import Scenario


def proportional(told: Told, claim: Proportional) -> None:
    """Keep that a score is proportional to a count."""
    if told.scoring.proportional is not None:
        raise NotRead("it is said twice what a score is proportional to")
    told.scoring.proportional = claim
    told.open["proportional"] = "what a score is proportional to"
    told.mentions.resolve("colors", claim.np.colors)


def growing(told: Told, claim: Growing) -> None:
    """Keep the equation by which points grow with a count."""
    if told.scoring.growing is not None:
        raise NotRead("there are two equations")
    told.scoring.growing = claim
    told.facts.append(Fact(Stated(int(claim.number.value), EARNS), claim.number.text))
    told.open["growing"] = "the equation"
    told.mentions.resolve("colors", claim.np.colors)


def grid(told: Told, claim: Grid) -> None:
    """Keep what the points on a grid show."""
    if told.scoring.grid is not None:
        raise NotRead("two grids are told of")
    told.scoring.grid = claim
    told.open["grid"] = "the grid"
    told.mentions.resolve("colors", claim.np.colors)


def score_grew(told: Told, claim: ScoreGrew) -> None:
    """Keep by how much a score grew.

    Raises:
        NotRead: told twice.
    """
    if told.scoring.grew is not None:
        raise NotRead("it is said twice how much the score grew")
    told.scoring.grew = claim
    told.facts.append(Fact(Stated(int(claim.number.value), "points more"), claim.number.text))
    told.open["grew"] = claim.number.text
    if claim.np.groups is not None:
        told.mentions.resolve("groups", claim.np.groups)


def _from_growth(claim: Proportional, grew: ScoreGrew, told: Told) -> Asked:
    """The constant, from what the score and the count grew by."""
    if claim.each or told.scoring.scores:
        raise NotRead("it is not said what the score is proportional to")
    if grew.trials is None:
        counts = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity)]
    else:
        counts = [told.quantity(claim.measure, Np(grew.np.groups, trial, claim.np.colors)) for trial in grew.trials]
    if len(counts) != 2 or counts[0].scope._replace(trials=None) != counts[1].scope._replace(trials=None):
        raise NotRead("it is not said from which number to which the score grew")
    if any(one != told.quantity(claim.measure, Np(*one.scope[:2], claim.np.colors)) for one in counts):
        raise NotRead("the score is proportional to something else")
    run = Op("-", (counts[1], counts[0]))
    if evaluate(run, told.counts) <= 0:
        raise NotRead("the count did not grow")
    goal = Op("/", (Stated(int(grew.number.value), "points more"), run))
    return Asked("line", Value(goal), WHOLE, tuple(counts), ("proportional", "grew"))


def constant(_: Constant, told: Told, __: Scenario) -> Asked:
    state = told.scoring
    claim = state.proportional
    if claim is not None and state.grew is not None:
        return _from_growth(claim, state.grew, told)
    if claim is None or claim.each or len(state.scores) != 1 or state.each or state.rule or state.line is not None:
        raise NotRead("it is not said what the score is proportional to")
    [score] = state.scores
    count = told.quantity(claim.measure, score.np._replace(colors=claim.np.colors))
    goal = Op("/", (Stated(int(score.number.value), SCORE), count))
    return Asked("line", Value(goal), WHOLE, (count,), ("proportional", "score 1"))


def growth(question: Growth, told: Told, _: Scenario) -> Asked:
    claim = told.scoring.growing
    if claim is None or claim.letter != question.letter:
        raise NotRead("it is not said what grows")
    first, last = (told.quantity(claim.measure, Np(None, when, claim.np.colors)) for when in (question.first, question.last))
    goal = Op("*", (Stated(int(claim.number.value), EARNS), Op("-", (last, first))))
    if evaluate(goal, told.counts) <= 0:
        raise NotRead(f"{question.letter} did not grow")
    return Asked("line", Value(goal), WHOLE, (first, last), ("growing",))


def _rates(told: Told, about: Proportional | Grid) -> tuple[list[Op], list[Quantity]]:
    """The scores of two groups, each over the count that earned it.

    Raises:
        NotRead: other than two scores are told, they are those of one group, or other points are told of besides.
    """
    state = told.scoring
    if len(state.scores) != 2 or state.each or state.rule or state.line is not None or state.bonus is not None:
        raise NotRead("two scores have to be told of")
    counts = [told.quantity(about.measure, score.np._replace(colors=about.np.colors)) for score in state.scores]
    first, second = (count.scope for count in counts)
    if first.groups == second.groups or first._replace(groups=None) != second._replace(groups=None):
        raise NotRead("the scores have to be those of two groups in the same trials")
    return [Op("/", (Stated(int(score.number.value), SCORE), count)) for score, count in zip(state.scores, counts, strict=True)], counts


def steeper(question: Steeper, told: Told, _: Scenario) -> Asked:
    claim = told.scoring.proportional
    if claim is None or not claim.each:
        raise NotRead("each group has to have a line of its own")
    rates, counts = _rates(told, claim)
    if question.np is not None:
        colors = question.np.colors
        if any(told.quantity(claim.measure, score.np._replace(colors=colors)) not in counts for score in told.scoring.scores):
            raise NotRead("the graph is about something else")
    names = tuple(label for count in counts for label in count.scope.groups or ())
    if len(names) != 2:
        raise NotRead("it is not said which groups are compared")
    return Asked("line", Choice(names, tuple(rates)), NAME, tuple(counts), ("proportional", "score 1", "score 2"))


def in_proportion(question: InProportion, told: Told, _: Scenario) -> Asked:
    state = told.scoring
    if state.proportional is not None or (question.measure is None) != (state.grid is not None):
        raise NotRead("it is not said what the scores are held against")
    about = state.grid or Grid(question.measure or "down", question.np or Np())
    (left, right), counts = _rates(told, about)
    return Asked("line", Truth(left, "=", right), TRUTH, tuple(counts), ("grid", "score 1", "score 2"))


def score_wanted(question: ScoreWanted, told: Told, _: Scenario) -> Asked:
    state = told.scoring
    if len(state.scores) != 1 or state.each or state.rule or state.line is not None or state.proportional is not None:
        raise NotRead("one score has to be told of")
    if question.on_line != (state.grid is not None):
        raise NotRead("it is not said what the scores are held against")
    [score] = state.scores
    told_of = {fact.expr.measure for fact in told.facts if isinstance(fact.expr, Quantity)}
    measures = ({question.measure} if question.measure else set()) | ({state.grid.measure} if state.grid else told_of)
    if len(measures) != 1:
        raise NotRead("it is not said what earned the score")
    [measure] = measures
    colors = state.grid.np.colors if state.grid else question.colors
    one, other = (told.quantity(measure, np._replace(colors=colors)) for np in (score.np, question.np))
    if one.scope.groups == other.scope.groups or one.scope._replace(groups=None) != other.scope._replace(groups=None):
        raise NotRead("the scores have to be those of two groups in the same trials")
    goal = Op("*", (Op("/", (Stated(int(score.number.value), SCORE), one)), other))
    return Asked("line", Value(goal), WHOLE, (one, other), ("grid", "score 1"))


def slopes_apart(question: SlopesApart, told: Told, _: Scenario) -> Asked:
    claim = told.scoring.proportional
    if claim is None or not claim.each:
        raise NotRead("each group has to have a line of its own")
    rates, counts = _rates(told, claim)
    of_group = {count.scope.groups: rate for count, rate in zip(counts, rates, strict=True)}
    own = [told.scope(np._replace(trials=Mark("all"), colors=Mark("all"))).groups for np in (question.np, question.other)]
    if set(own) != set(of_group):
        raise NotRead("it is not said which groups are compared")
    goal = Op("-", tuple(of_group[groups] for groups in own))
    if evaluate(goal, told.counts) <= 0:
        raise NotRead("that slope is not the greater one")
    return Asked("line", Value(goal), WHOLE, tuple(counts), ("proportional", "score 1", "score 2"))


ASKED: Answers = {
    Constant: constant,
    Growth: growth,
    Steeper: steeper,
    InProportion: in_proportion,
    ScoreWanted: score_wanted,
    SlopesApart: slopes_apart,
}


TAKEN: Takers = {
    Proportional: proportional,
    Growing: growing,
    Grid: grid,
    ScoreGrew: score_grew,
}
