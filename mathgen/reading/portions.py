"""A part of a set that is told, and all the others of that set."""

from __future__ import annotations

from mathgen.asks.expression import Expr, Op, Quantity
from mathgen.exact.parse import written
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.counts import AllTheOthers, Portion
from mathgen.reading.meaning.scope import Labels, Mark
from mathgen.reading.mentions import DIMENSIONS
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Takers, Told, settled


def portion(told: Told, claim: Portion) -> None:
    colors_before = list(told.mentions.before["colors"])
    choices = settled(told, claim.np)
    scopes = [told.scope(np) for np in choices]
    if len(choices) > 1:
        told.mentions.before["colors"] = colors_before
    fitting = []
    for scope in scopes:
        part, whole = Quantity(claim.measure, scope), Quantity("set_up", scope)
        counted = written(claim.part.text).form == "whole"
        expr: Expr = part if counted else Op("/", (part, whole))
        if evaluate(expr, told.counts) == claim.part.value and (claim.whole is None or evaluate(whole, told.counts) == claim.whole.value):
            fitting.append((expr, whole, scope))
    if not fitting:
        raise NotRead(f"the table does not say {claim.part.text}")
    if len(fitting) > 1:
        raise NotRead("it is not said which color")
    expr, whole, scope = fitting[0]
    told.said(expr, claim.part)
    if claim.whole is not None:
        told.referred(whole, claim.whole)
    told.last_portion = (claim.measure, scope)


def all_the_others(told: Told, claim: AllTheOthers) -> None:
    if told.last_portion is None or {told.last_portion[0], claim.measure} != {"down", "standing"}:
        raise NotRead('nothing says what "the other" are other than')
    scope = told.last_portion[1]
    for part in DIMENSIONS:
        labels: Labels = getattr(claim.np, part)
        if labels is None or (part == "colors" and isinstance(labels, Mark)):
            continue
        every = told.mentions.every(part)
        if set(told.mentions.resolve(part, labels)) != set(getattr(scope, part) or every):
            raise NotRead(f'"the other" are of other {part}')


TAKEN: Takers = {
    Portion: portion,
    AllTheOthers: all_the_others,
}
