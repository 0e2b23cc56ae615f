"""Proportional scores: what is told of them, and what a question about them comes to."""

from __future__ import annotations

from mathgen.asks.expression import Op, Stated, Value
from mathgen.reading.asked import WHOLE, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning import Growing, Np, Proportional
from mathgen.reading.scoring import EARNS, SCORE
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Told
from mathgen.reading.wanted import Constant, Growth
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


def constant(_: Constant, told: Told, __: Scenario) -> Asked:
    state = told.scoring
    if state.proportional is None or len(state.scores) != 1 or state.each or state.rule or state.line is not None:
        raise NotRead("it is not said what the score is proportional to")
    [score] = state.scores
    count = told.quantity(state.proportional.measure, score.np._replace(colors=state.proportional.np.colors))
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
