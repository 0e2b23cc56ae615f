"""From questions about parts of a set to what has to be worked out."""

from __future__ import annotations

from mathgen.asks.expression import Choice, Op, Quantity, Ratio, Value
from mathgen.reading.asked import NAME, Answers, Asked, check_whole
from mathgen.reading.comparing import pair_of
from mathgen.reading.meaning.scope import Mark
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Told
from mathgen.reading.wanted.counts import Part
from mathgen.reading.wanted.parts import ColorPart, RatioOf, Which
from mathgen.scenario.naming import trial_name
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Label


def part(question: Part, told: Told, _: Scenario) -> Asked:
    scope = told.scope(question.np)
    check_whole(told, scope, question.whole)
    part, whole = Quantity(question.measure, scope), Quantity("set_up", scope)
    return Asked("part", Value(Op("/", (part, whole))), question.demand, (part, whole))


def which(question: Which, told: Told, scenario: Scenario) -> Asked:
    np, by = question.np, question.by
    labels: tuple[Label, ...] = getattr(np, by) or ()
    if not labels:
        labels = pair_of(told, by) or told.mentions.named(by)
    if len(labels) < 2:
        raise NotRead("it is not said which are compared")
    parts = []
    for label in labels:
        scope = told.scope(np._replace(**{by: (label,)}))
        check_whole(told, scope, question.whole)
        parts.append(Quantity(question.measure, scope))
    names = tuple(trial_name(label, scenario) if by == "trials" else str(label) for label in labels)
    goal = Choice(names, tuple(Op("/", (part, Quantity("set_up", part.scope))) for part in parts), question.greater)
    return Asked("which", goal, NAME, tuple(parts), sign=1 if question.greater else -1)


def ratio(question: RatioOf, told: Told, _: Scenario) -> Asked:
    (one, colors), (other, other_colors) = question.first, question.second
    if Mark("bare") in (colors, other_colors) and told.mentions.named("colors") and not told.mentions.all_colors:
        raise NotRead("it is not said which color")
    first = told.quantity(one or other, question.np._replace(colors=colors))
    second = told.quantity(other, question.np._replace(colors=other_colors))
    return Asked("ratio", Ratio(first, second), question.demand, (first, second))


def color_part(question: ColorPart, told: Told, _: Scenario) -> Asked:
    whole = told.quantity(question.measure, question.np)
    if question.whole is not None:
        told.referred(whole, question.whole)
    part = told.quantity(question.measure, question.np._replace(colors=question.colors))
    asked_colors, all_colors = set(part.scope.colors or ()), set(whole.scope.colors or told.mentions.every("colors"))
    if not asked_colors or not asked_colors < all_colors:
        raise NotRead("the part asked for is no part of the whole")
    return Asked("color part", Value(Op("/", (part, whole))), question.demand, (part, whole))


ASKED: Answers = {
    Which: which,
    RatioOf: ratio,
    ColorPart: color_part,
}
