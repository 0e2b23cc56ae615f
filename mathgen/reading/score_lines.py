"""Scores that grow by so many points: two groups that become level, the line through two scores, a goal reached or passed."""

from __future__ import annotations

from mathgen.asks.expression import Expr, Op, Quantity, Stated, Value
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.meaning.rates import GoalScore, OneLine, StartingScores
from mathgen.reading.meaning.scope import Labels, Mark, Np
from mathgen.reading.scoring import EARNS, SCORE
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.rates import FewestNeeded, LevelWith, OfLine
from mathgen.scenario.words import Scenario

GOAL = "goal in points"


def starting_scores(told: Told, claim: StartingScores) -> None:
    """Keep that counts are scores already, or lead to them.

    Raises:
        NotRead: both.
    """
    if told.scoring.starting:
        raise NotRead("it is said twice what the scores are so far")
    told.scoring.starting, told.scoring.at_rates = True, claim.at_rates
    told.open["starting scores"] = "the starting scores"


def one_line(told: Told, claim: OneLine) -> None:
    """Keep that all scores lie on one line."""
    if told.scoring.line is not None:
        raise NotRead("two lines are told of")
    told.scoring.line = claim
    told.open["line"] = "the line"
    told.mentions.resolve("colors", claim.np.colors)


def goal_score(told: Told, claim: GoalScore) -> None:
    """Keep the score that is wanted."""
    if told.scoring.goal is not None:
        raise NotRead("two goals are told of")
    told.scoring.goal = claim
    told.facts.append(Fact(Stated(int(claim.number.value), GOAL), claim.number.text))
    told.open["goal score"] = claim.number.text
    for part in ("groups", "trials"):
        labels = getattr(claim.np, part)
        if labels is not None:
            told.mentions.resolve(part, labels)


def _count_of(told: Told, group: Labels, measure: str, np: Np) -> Quantity:
    return told.quantity(measure, np._replace(groups=group))  # type: ignore[arg-type]


def level_with(question: LevelWith, told: Told, _: Scenario) -> Asked:
    state = told.scoring
    if not state.starting or len(state.each) != 2 or state.scores or state.rule:
        raise NotRead("it is not said how both scores start and grow")
    first = state.each[0]
    colors = told.scope(Np(first.np.groups, None, question.np.colors)).colors
    for one in state.each:
        if one.measure != question.measure or told.scope(Np(one.np.groups, None, one.np.colors)).colors != colors:
            raise NotRead("the points are for something else")
    a, b = (_count_of(told, one.np.groups, question.measure, question.np) for one in state.each)
    if a == b:
        raise NotRead("something is compared with itself")
    p, q = (Stated(int(one.number.value), EARNS) for one in state.each)
    scores: tuple[Expr, Expr] = (Op("*", (p, a)), Op("*", (q, b))) if state.at_rates else (a, b)
    goal = Op("/", (Op("-", scores), Op("-", (q, p))))
    return Asked("level", Value(goal), WHOLE, (a, b), ("starting scores", "points each 1", "points each 2"))


def of_line(question: OfLine, told: Told, _: Scenario) -> Asked:
    state = told.scoring
    if state.line is None or len(state.scores) != 2 or state.each or state.rule:
        raise NotRead("it is not said which line is meant")
    line = state.line
    if question.np is not None and question.np.colors != line.np.colors:
        raise NotRead("the line is about something else")
    a, b = (told.quantity(line.measure, one.np._replace(colors=line.np.colors)) for one in state.scores)
    if a == b:
        raise NotRead("two scores are told for one count")
    t, u = (Stated(int(one.number.value), SCORE) for one in state.scores)
    slope = Op("/", (Op("-", (t, u)), Op("-", (a, b))))
    goal: Expr = slope if question.part == "slope" else Op("-", (t, Op("*", (slope, a))))
    return Asked("line", Value(goal), WHOLE, (a, b), ("line", "score 1", "score 2"))


def fewest_needed(question: FewestNeeded, told: Told, _: Scenario) -> Asked:
    state = told.scoring
    if state.goal is None or len(state.each) != 1 or state.scores or state.rule or state.bonus is not None:
        raise NotRead("it is not said what is to be reached")
    [each] = state.each
    have = told.quantity(question.measure, question.np)
    place = Np(have.scope.groups or Mark("all"), have.scope.trials or Mark("all"))
    if told.quantity(each.measure, place._replace(colors=each.np.colors)) != have:
        raise NotRead("the points are for something else")
    if state.goal.np.groups is not None and told.scope(state.goal.np).groups != have.scope.groups:
        raise NotRead("the goal is somebody else's")
    p, wish = Stated(int(each.number.value), EARNS), Stated(int(state.goal.number.value), GOAL)
    more: Expr = Op("/", (Op("-", (wish, Op("*", (p, have)))), p))
    if state.goal.passes:
        more = Op("+", (more, Stated(1, "whole")))
    return Asked("goal", Value(more), WHOLE, (have,), ("goal score", "points each 1"))


ASKED: Answers = {
    LevelWith: level_with,
    OfLine: of_line,
    FewestNeeded: fewest_needed,
}


TAKEN: Takers = {
    StartingScores: starting_scores,
    OneLine: one_line,
    GoalScore: goal_score,
}
