"""Points for each pin, and equal racks: what is told of them, and what is asked."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stated, Value
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.counting import covered
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.rates import Classes, OneSet, SamePoints, SameRacks
from mathgen.reading.meaning.scope import Labels, Mark, Np
from mathgen.reading.scoring import EARNS, SCORE, score
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.letters import HowManyPoints
from mathgen.reading.wanted.rates import OfClasses, OneRack, PointsOfOne, Score
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Measure, Scope


def same_points(told: Told, claim: SamePoints) -> None:
    """Keep that each pin earned as many points.

    Raises:
        NotRead: it is told twice.
    """
    if told.same_points is not None:
        raise NotRead("the same is said twice")
    told.same_points = claim
    told.open["same points"] = "that each earned the same"


def same_racks(told: Told, claim: SameRacks) -> None:
    """Keep that each trial had as many set up.

    Raises:
        NotRead: it is told twice.
    """
    if told.same_racks is not None:
        raise NotRead("the same is said twice")
    told.same_racks = claim
    told.open["same racks"] = "that each had the same"
    if claim.number is not None:
        told.open["sets"] = "how many sets there were"


def one_set(told: Told, _: OneSet) -> None:
    """Keep that each trial had one of the sets told of.

    Raises:
        NotRead: no sets were told of.
    """
    if told.same_racks is None or "one set" in told.open:
        raise NotRead("no sets are told of")
    told.open["one set"] = "that each trial had one set"


def how_many_points(question: HowManyPoints, told: Told, scenario: Scenario) -> Asked:
    """How many points, at so many for each, or by a rule told before."""
    if told.scoring.rule:
        return score(Score(question.np), told, scenario)
    if len(told.scoring.each) != 1:
        raise NotRead("it is not said how many points each earns")
    [claim] = told.scoring.each
    if claim.sign < 0 or question.measure not in (None, claim.measure):
        raise NotRead("it is said how many points others earn")
    quantity = scored(told, claim.measure, (question.np, claim.np))
    if question.whole is not None:
        told.referred(quantity, question.whole)
    return Asked("points", Value(Op("*", (quantity, Stated(int(claim.number.value), EARNS)))), WHOLE, (quantity,), ("points each 1",))


def points_of_one(question: PointsOfOne, told: Told, _: Scenario) -> Asked:
    """How many points one earned, where each earned as many."""
    same, scores = told.same_points, told.scoring.scores
    if same is None or len(scores) != 1:
        raise NotRead("it is not said that each earned the same")
    measures = {measure for measure in (question.measure, same.measure) if measure is not None}
    if not measures and told.last_count is not None:
        measures = {told.last_count.measure}
    if len(measures) != 1:
        raise NotRead("others earned the same")
    quantity = scored(told, measures.pop(), (question.np, scores[0].np, same.np))
    if same.whole is not None:
        told.referred(quantity, same.whole)
    goal = Op("/", (Stated(int(scores[0].number.value), SCORE), quantity))
    return Asked("points", Value(goal), WHOLE, (quantity,), ("score 1", "same points"))


def classes(told: Told, claim: Classes) -> None:
    """Keep how many classes had the same result.

    Raises:
        NotRead: it is told twice.
    """
    if told.classes is not None:
        raise NotRead("classes are told of twice")
    told.classes = claim
    told.open["classes"] = f"{claim.number.text} classes"
    told.facts.append(Fact(Stated(int(claim.number.value), "classes"), claim.number.text))


def of_classes(question: OfClasses, told: Told, _: Scenario) -> Asked:
    claim = told.classes
    if claim is None or question.number != claim.number or question.measure != claim.measure:
        raise NotRead("nothing says how many classes had the same")
    quantity = Quantity(claim.measure, told.scope(Np(Mark("all"), None, _one((question.np, claim.np), "colors"))))
    covered(told, quantity)
    if not any(fact.expr == quantity for fact in told.facts):
        raise NotRead("it is not said what each class had")
    return Asked("count", Value(Op("*", (Stated(int(claim.number.value), "classes"), quantity))), WHOLE, (quantity,), ("classes",))


def one_rack(question: OneRack, told: Told, _: Scenario) -> Asked:
    claim = told.same_racks
    if claim is None:
        raise NotRead("nothing says that each trial had the same")
    told.mentions.merged = False
    scope = told.scope(question.np)
    whole = Quantity("set_up", scope)
    covered_set_up = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity) and fact.expr.measure == "set_up"]
    if covered_set_up != [whole] or _fitting(told, (question.np, claim.np)) not in (None, scope.colors):
        raise NotRead("what is told does not lead to what is asked")
    trials = scope.trials or told.mentions.every("trials")
    racks = [evaluate(Quantity("set_up", scope._replace(trials=told.mentions.scope((), (t,), ()).trials)), told.counts) for t in trials]
    if len(trials) < 2 or len(set(racks)) != 1:
        raise NotRead("the trials did not have the same")
    if claim.number is not None and claim.number.value != len(trials):
        raise NotRead(f"there are {len(trials)} trials, not {claim.number.text}")
    uses = ("same racks", "sets", "one set")
    return Asked("count", Value(Op("/", (whole, Stated(len(trials), "trials")))), WHOLE, (whole,), uses)


def scored(told: Told, measure: Measure, nps: tuple[Np, ...]) -> Quantity:
    """The pins that earned points: of the colors that all sentences name, of the group and the trials that any of them names.

    Raises:
        NotRead: the sentences name different ones, or what was counted before is not all of these.
    """
    told.mentions.merged = False
    scope = told.scope(Np(_one(nps, "groups"), _one(nps, "trials"), _one(nps, "colors")))
    quantity = Quantity(measure, scope)
    covered(told, quantity)
    return quantity


def _one(nps: tuple[Np, ...], part: str) -> Labels:
    """What the phrases name, where they name the same."""
    found: list[Labels] = [labels for np in nps if (labels := getattr(np, part)) is not None]
    if any(one != found[0] for one in found):
        raise NotRead("points are told of others than those asked about")
    return found[0] if found else None


def _fitting(told: Told, nps: tuple[Np, ...]) -> tuple[str, ...] | None:
    colors = _one(nps, "colors")
    return Scope(*told.mentions.scope((), (), colors)).colors if isinstance(colors, tuple) else None


ASKED: Answers = {
    PointsOfOne: points_of_one,
    OneRack: one_rack,
    OfClasses: of_classes,
}


TAKEN: Takers = {
    SamePoints: same_points,
    SameRacks: same_racks,
    OneSet: one_set,
    Classes: classes,
}
