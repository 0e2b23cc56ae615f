"""Chance: what is told of a random pick or of choices to be made, and what is asked of them."""

from __future__ import annotations

from mathgen.asks.expression import Expr, Op, Quantity, Stated, Value
from mathgen.reading.asked import ANY, WHOLE, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.chance import Choices, PickOne, Picks
from mathgen.reading.meaning.scope import Mark, Np
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.chance import NextIs, Pairs, Picked, TimesPicked
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Label


def pick_one(told: Told, claim: PickOne) -> None:
    """Keep from which pins one is picked: from all those that were told of, or that are to be counted in the table.

    Raises:
        NotRead: two picks, or it is not said from which.
    """
    if told.picked is not None:
        raise NotRead("two picks are told of")
    counts = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity)]
    if counts:
        places = {(count.measure, *count.scope[:2]) for count in counts}
        colors = [color for count in counts for color in count.scope.colors or told.mentions.every("colors")]
        if len(places) != 1 or len(set(colors)) < len(colors) or len(counts) != len(told.facts):
            raise NotRead("it is not said which pins one is picked from")
        first = counts[0]
        found = told.mentions.scope((), (), tuple(dict.fromkeys(colors))).colors
        told.picked = Quantity(first.measure, first.scope._replace(colors=found))
    elif claim.measure is not None:
        told.picked = told.quantity(claim.measure, Np(None, None, claim.colors))
    else:
        looks = [look for look in told.seen if look.measure is not None]
        if len(looks) != 1:
            raise NotRead("it is not said which pins one is picked from")
        [look] = looks
        told.picked = told.quantity(look.measure or "down", look.np)
    if claim.measure not in (None, told.picked.measure):
        raise NotRead("one is picked from other pins than those told of")
    if len(told.picked.scope.trials or told.mentions.every("trials")) > 1:
        raise NotRead("the same pins stand again in each trial: they are not picked from twice")
    told.open["pick"] = "the pick"


def _of_color(whole: Quantity, color: Label, negated: bool, told: Told) -> tuple[Expr, Quantity]:
    """The part of a whole that is (or is not) of a color, over the whole."""
    every = whole.scope.colors or told.mentions.every("colors")
    if color not in every or len(every) < 2:
        raise NotRead("the color asked for is no part of the whole")
    part = Quantity(whole.measure, whole.scope._replace(colors=(str(color),)))
    return Op("/", (Op("-", (whole, part)) if negated else part, whole)), part


def picked(question: Picked, told: Told, _: Scenario) -> Asked:
    if told.picked is None:
        raise NotRead("it is not said what is picked from")
    expr, part = _of_color(told.picked, question.color, question.negated, told)
    return Asked("chance", Value(expr), ANY, (part, told.picked), ("pick",))


def next_is(question: NextIs, told: Told, _: Scenario) -> Asked:
    whole = told.quantity(question.measure, Np(None, None, Mark("all")))
    expr, part = _of_color(whole, question.color, question.negated, told)
    return Asked("chance", Value(expr), ANY, (part, whole))


def choices(told: Told, claim: Choices) -> None:
    """Keep among how many one is chosen.

    Raises:
        NotRead: told twice, or the table has another number of them, or it is of something that was not told.
    """
    if claim.of and claim.of not in [sort for sort, _ in told.choices]:
        raise NotRead(f"it is not said among which {claim.of} one is chosen")
    if not claim.sort:
        return
    if any(sort == claim.sort for sort, _ in told.choices):
        raise NotRead("the same choice is told of twice")
    told.open[f"choice of {claim.sort}"] = "a choice"
    if claim.number is None:
        told.choices.append((claim.sort, 0))
        return
    every = told.mentions.every("groups" if claim.sort == "groups" else "trials" if claim.sort == "trials" else "colors")
    if claim.number.value != len(every):
        raise NotRead(f"the table has {len(every)} {claim.sort}, not {claim.number.text}")
    told.choices.append((claim.sort, len(every)))
    told.facts.append(Fact(Stated(len(every), claim.sort), claim.number.text))


def pairs(question: Pairs, told: Told, _: Scenario) -> Asked:
    found = dict(told.choices)
    same = question.first == question.second
    first, second = question.first, "again" if same else question.second
    left = ("left",) if same and "left" in found else ()  # the first one is not put back
    if set(found) != {first, second, *left}:
        raise NotRead("it is not said between what to choose")
    one = Stated(found[first], first)
    other: Expr = one if same else Stated(found[second], second)
    if left:
        other = Op("-", (one, Stated(1, "whole")))
    goal = Op("*", (one, other))
    assert evaluate(goal, told.counts) > 0  # a table has groups, trials and kinds
    return Asked("pairs", Value(goal), WHOLE, (), tuple(f"choice of {sort}" for sort in (first, second, *left)))


def picks(told: Told, claim: Picks) -> None:
    """Keep how many times the pick is made.

    Raises:
        NotRead: it is told twice, or nothing is picked.
    """
    if told.picks is not None or told.picked is None:
        raise NotRead("it is not said what is done so many times")
    told.picks = claim
    told.facts.append(Fact(Stated(int(claim.number.value), "picks"), claim.number.text))
    told.open["picks"] = claim.number.text


def times_picked(question: TimesPicked, told: Told, scenario: Scenario) -> Asked:
    """How many of so many picks should be of a color, each of the pins equally likely."""
    if told.picks is None:
        raise NotRead("it is not said how many picks are made")
    asked = picked(Picked(question.color, False), told, scenario)
    assert isinstance(asked.goal, Value)
    goal = Value(Op("*", (asked.goal.expr, Stated(int(told.picks.number.value), "picks"))))
    return asked._replace(kind="picks", goal=goal, demand=WHOLE, uses=(*asked.uses, "picks"))


ASKED: Answers = {
    TimesPicked: times_picked,
    Picked: picked,
    NextIs: next_is,
    Pairs: pairs,
}


TAKEN: Takers = {
    PickOne: pick_one,
    Choices: choices,
    Picks: picks,
}
