"""Equal boxes of two colors and totals that two groups both reach: what is told of them, and what is asked."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Value
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.meaning.scope import Np
from mathgen.reading.meaning.sets import BoxesAlike, PutInBoxes, Repeated
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Takers, Told
from mathgen.reading.wanted.sets import GreatestBoxes, LeastBoth
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Measure


def put_in_boxes(told: Told, claim: PutInBoxes) -> None:
    """Keep what is put in boxes.

    Raises:
        NotRead: two things are.
    """
    if told.put_in_boxes is not None:
        raise NotRead("two things are put in boxes")
    told.put_in_boxes = claim
    told.open["boxes"] = "putting in boxes"


def boxes_alike(told: Told, claim: BoxesAlike) -> None:
    """Keep that the boxes are alike.

    Raises:
        NotRead: nothing is put in such boxes, or that is told twice.
    """
    if told.put_in_boxes is None or told.put_in_boxes.box != claim.box or told.boxes_alike is not None:
        raise NotRead("it is not said what is put in the boxes")
    told.boxes_alike = claim
    told.open["alike"] = "that the boxes are alike"


def repeated(told: Told, claim: Repeated) -> None:
    """Keep that each group goes on as it did.

    Raises:
        NotRead: told twice.
    """
    if told.repeated is not None:
        raise NotRead("it is told twice how each group goes on")
    told.repeated = claim
    told.open["repeated"] = "the same result again"


def _counted(told: Told) -> list[Quantity]:
    return [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity)]


def _measure(told: Told, said: Measure | None) -> Measure:
    found = {one.measure for one in _counted(told)} | ({said} if said else set())
    if len(found) != 1:
        raise NotRead("it is not said what is counted")
    [measure] = found
    return measure


def greatest_boxes(question: GreatestBoxes, told: Told, _: Scenario) -> Asked:
    put, alike = told.put_in_boxes, told.boxes_alike
    if put is None or alike is None or put.box != question.box:
        raise NotRead("it is not said what is in each box")
    counted = _counted(told)
    said = put.np.colors if isinstance(put.np.colors, tuple) else ()
    colors = tuple(color for one in counted for color in one.scope.colors or ()) or said
    if len(colors) != 2 or (said and set(said) != set(colors)):
        raise NotRead("two kinds have to be put in the boxes")
    measure = _measure(told, put.measure)
    both = tuple(told.quantity(measure, Np(None, None, (color,))) for color in colors)
    if counted and set(counted) != set(both):
        raise NotRead("other pins are told of than are put in the boxes")
    return Asked("common", Value(Op("gcf", both)), WHOLE, both, ("boxes", "alike"))


def least_both(question: LeastBoth, told: Told, _: Scenario) -> Asked:
    if told.repeated is None:
        raise NotRead("it is not said how each group goes on")
    both = tuple(_counted(told))
    if not both:
        np = Np(None, None, question.colors)
        measure = _measure(told, question.measure)
        both = tuple(told.quantity(measure, np._replace(groups=(group,))) for group in told.mentions.named("groups"))
    elif question.measure is not None or told.quantity(both[0].measure, Np(*both[0].scope[:2], question.colors)) != both[0]:
        raise NotRead("the numbers are told twice, or they are of other colors")
    if len(both) != 2 or len({one.scope._replace(groups=None) for one in both}) != 1 or both[0].scope == both[1].scope:
        raise NotRead("the numbers of two groups are needed")
    trials = both[0].scope.trials or told.mentions.every("trials")
    if len(trials) != 1 or told.repeated.trials not in ((), trials):
        raise NotRead("the numbers of one trial are needed, and every trial goes like that one")
    return Asked("common", Value(Op("lcm", both)), WHOLE, both, ("repeated",))


ASKED: Answers = {
    GreatestBoxes: greatest_boxes,
    LeastBoth: least_both,
}


TAKEN: Takers = {
    PutInBoxes: put_in_boxes,
    BoxesAlike: boxes_alike,
    Repeated: repeated,
}
