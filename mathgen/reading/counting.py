"""How many there were: counts that are asked for, from the table, from a comparison, or as what is left of a whole."""

from __future__ import annotations

from typing import Literal

from mathgen.asks.expression import Expr, Op, Quantity, Value
from mathgen.reading.asked import WHOLE, Answers, Asked, check_whole
from mathgen.reading.mentions import DIMENSIONS
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Comparison, Told
from mathgen.reading.wanted.counts import HowMany, HowManyOfTotal
from mathgen.scenario.words import Scenario


def how_many(question: HowMany, told: Told, _: Scenario) -> Asked:
    """A count asked for: as the table has it, as what is left of a whole, or by the comparison that leads to it.

    Raises:
        NotRead: what is told does not lead to it.
    """
    told.mentions.merged = False
    scope = told.scope(question.np, question.total)
    check_whole(told, scope, question.whole)
    quantity = Quantity(question.measure, scope)
    rest = _looked_up(told, quantity) if told.mentions.merged else ()
    if told.mentions.merged and not rest:
        covered(told, quantity)
    apart = _taken_apart(told, quantity)
    if apart is not None:
        return apart
    fitting = [c for c in enumerate(told.comparisons, 1) if quantity in (c[1].first, c[1].other)]
    if not told.comparisons:
        return Asked("count", Value(quantity), WHOLE, (quantity,), looked_at=rest)
    if len(told.comparisons) > 1 or len(fitting) != 1:
        raise NotRead("what is told does not lead to what is asked")
    number, comparison = fitting[0]
    return Asked("count", Value(_solved(comparison, quantity)), WHOLE, (quantity,), (f"comparison {number}",), quantity)


def how_many_of_total(question: HowManyOfTotal, told: Told, scenario: Scenario) -> Asked:
    """Of a total, how many were of one color."""
    total = told.total
    if total is None:
        raise NotRead(f"no total of {question.whole.text} is told of")
    if isinstance(question.colors, tuple) and set(question.colors) != set(total.scope.colors or told.mentions.every("colors")):
        raise NotRead("the total is of other colors")
    told.referred(total, question.whole)
    return how_many(HowMany(total.measure, question.np), told, scenario)


def _taken_apart(told: Told, asked_for: Quantity) -> Asked | None:
    """A part asked for, where the whole is told: the whole without the other parts, told or to be read in the table."""
    cells = told.counts.cells
    part = set(cells(asked_for.scope))
    counts = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity) and fact.expr.measure == asked_for.measure]
    wholes = [count for count in counts if part < set(cells(count.scope))]
    if len(wholes) != 1 or told.comparisons:
        return None
    whole = wholes[0]
    rest = set(cells(whole.scope)) - part
    others = tuple(count for count in counts if count != whole and rest >= set(cells(count.scope)))
    if not others:
        others = _the_rest(told, whole, asked_for)
    found = [cell for other in others for cell in cells(other.scope)]
    if len(found) != len(rest) or set(found) != rest:
        raise NotRead("what is told does not lead to what is asked")
    return Asked("count", Value(Op("-", (whole, *others))), WHOLE, (asked_for,), (), asked_for, looked_at=others)


def _the_rest(told: Told, whole: Quantity, part: Quantity) -> tuple[Quantity, ...]:
    every = {name: getattr(whole.scope, name) or told.mentions.every(name) for name in DIMENSIONS}
    own = {name: getattr(part.scope, name) or told.mentions.every(name) for name in DIMENSIONS}
    unlike = [name for name in DIMENSIONS if every[name] != own[name]]
    if len(unlike) != 1 or not any(look.source for look in told.seen):
        return ()
    left = {**every, unlike[0]: tuple(label for label in every[unlike[0]] if label not in own[unlike[0]])}
    return (Quantity(part.measure, told.mentions.scope(left["groups"], left["trials"], left["colors"])),)


def _looked_up(told: Told, whole: Quantity) -> tuple[Quantity, ...]:
    """What the table or graph tells of a total, where the words tell the one other part; () where they tell more or nothing.

    "Before Trial 3, the Owls knocked down 8 pins. Use the results table for Trial 3. How many pins ... in all?"
    """
    counts = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity)]
    if len(counts) != 1 or counts[0].measure != whole.measure:
        return ()
    return _the_rest(told, whole, counts[0]) if set(told.counts.cells(counts[0].scope)) < set(told.counts.cells(whole.scope)) else ()


def covered(told: Told, quantity: Quantity) -> None:
    """What was told piece by piece and is asked for together must be all that is asked for.

    "The Owls knocked down 8 pins in Trial 1. The Wrens knocked down 7 pins in Trial 2." Together these are two counts, and not
    those of both groups in both trials.
    """
    counts = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity) and fact.expr.measure != "set_up"]
    pieces = [count for count in counts if count.measure == quantity.measure] or counts
    cells = [cell for piece in pieces for cell in told.counts.cells(piece.scope)]
    if pieces and sorted(map(str, cells)) != sorted(map(str, told.counts.cells(quantity.scope))):
        raise NotRead("the counts that are told are not all that is asked for")


def _solved(comparison: Comparison, unknown: Quantity) -> Expr:
    first, other, stated, symbol = comparison
    if unknown == first:
        return Op(symbol, (stated, other) if symbol == "*" else (other, stated))
    back: dict[str, Literal["+", "-", "/"]] = {"+": "-", "-": "+", "*": "/"}
    return Op(back[symbol], (first, stated))


ASKED: Answers = {
    HowManyOfTotal: how_many_of_total,
}
