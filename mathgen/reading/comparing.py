"""From questions that count or compare to what has to be worked out."""

from __future__ import annotations

from typing import Literal

from mathgen.asks.expression import Choice, Expr, Op, Quantity, Value
from mathgen.reading.asked import ANY, NAME, PERCENT, WHOLE, Answers, Asked, check_whole
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.scope import Np
from mathgen.reading.mentions import DIMENSIONS, Dimension
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Comparison, Told
from mathgen.reading.wanted.counts import Change, Difference, HowMany, HowManyOfTotal, Most, Multiple, PercentMore
from mathgen.scenario.naming import trial_name
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Label


def how_many(question: HowMany, told: Told, _: Scenario) -> Asked:
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


def _two(question: Difference | Multiple, told: Told) -> tuple[Quantity, Quantity]:
    """What is compared with what: named in the question, or one of the two that were to be compared."""
    np, other = question.np, question.other
    if other is None:
        part = _varied(told, np)
        pair = pair_of(told, part)
        own = getattr(np, part)
        rest = [label for label in pair if label not in own]
        if len(pair) != 2 or len(own) != 1 or len(rest) != 1:
            raise NotRead("it is not said what is compared with what")
        other = Np()._replace(**{part: (rest[0],)})
    filled = {part: getattr(np, part) if getattr(other, part) is None else getattr(other, part) for part in DIMENSIONS}
    first = told.quantity(question.measure, np)
    second = told.quantity(question.measure, Np(**filled))
    if first == second:
        raise NotRead("something is compared with itself")
    return first, second


def _varied(told: Told, np: Np) -> Dimension:
    """The part in which the two that are compared differ: the one that the question spells out and that was told of twice."""
    fitting: list[Dimension] = []
    for part in DIMENSIONS:
        own = getattr(np, part)
        if isinstance(own, tuple) and len(own) == 1 and len(pair_of(told, part)) == 2 and own[0] in pair_of(told, part):
            fitting.append(part)
    if len(fitting) != 1:
        raise NotRead("it is not said what is compared with what")
    return fitting[0]


def pair_of(told: Told, part: Dimension) -> tuple[Label, ...]:
    if told.pair is not None:
        first, second = getattr(told.pair.first, part), getattr(told.pair.second, part)
        if isinstance(first, tuple) and isinstance(second, tuple) and first != second:
            return (*first, *second)
        if isinstance(first, tuple) or isinstance(second, tuple):
            return ()
    named = told.mentions.before[part]
    return told.mentions.named(part) if len(named) >= 2 or (named and len(named[0]) == 2) else ()


def difference(question: Difference, told: Told, _: Scenario) -> Asked:
    first, second = _two(question, told)
    if question.bars and told.graph != "bar" and not any(look.source == "graph" for look in told.seen):
        raise NotRead("there is no graph to look at")
    goal = Op("-", (first, second) if question.sign > 0 else (second, first))
    if evaluate(goal, told.counts) <= 0:
        raise NotRead(f"there are not {'more' if question.sign > 0 else 'fewer'}")
    return Asked("difference", Value(goal), WHOLE, (first, second), ("graph",), sign=question.sign)


def multiple(question: Multiple, told: Told, _: Scenario) -> Asked:
    first, second = _two(question, told)
    goal = Op("/", (first, second))
    demand = WHOLE if evaluate(goal, told.counts).is_integer else ANY
    return Asked("times", Value(goal), demand, (first, second))


def most(question: Most, told: Told, scenario: Scenario) -> Asked:
    np, by = question.np, question.by
    labels = told.mentions.named(by) or told.mentions.every(by)
    if question.two:
        told_of = {fact.expr.measure for fact in told.facts if isinstance(fact.expr, Quantity)} or {"down"}  # a graph shows those
        if len(labels) != 2:
            raise NotRead("it is not said which two are compared")
        if told_of != {question.measure}:
            raise NotRead("what is told is not what is asked for")
    parts = tuple(told.quantity(question.measure, np._replace(**{by: (label,)})) for label in labels)
    names = tuple(trial_name(label, scenario) if by == "trials" else str(label) for label in labels)
    return Asked("most", Choice(names, parts, question.most), NAME, parts, sign=1 if question.most else -1)


def change(question: Change, told: Told, _: Scenario | None = None) -> Asked:
    first, last = question.first, question.last
    if first is None or last is None:
        # From the earlier to the later, whichever is told first.
        order = told.mentions.every("trials").index
        pair = sorted(told.mentions.before["trials"], key=lambda labels: order(labels[0]))
        if len(pair) == 1 and len(pair[0]) == 2:
            pair = [pair[0][:1], pair[0][1:]]
        if len(pair) != 2 or order(pair[0][-1]) >= order(pair[1][0]):
            raise NotRead("it is not said from which trial to which")
        first, last = pair
    if first == last or not isinstance(first, tuple) or not isinstance(last, tuple) or len(first) != len(last):
        raise NotRead("it is not said from which trial to which")
    if (
        told.pair is not None
        and isinstance(told.pair.first.trials, tuple)
        and (told.pair.first.trials, told.pair.second.trials) != (first, last)
    ):
        raise NotRead("two pairs of trials are told of")
    before = told.quantity(question.measure, question.np._replace(trials=first))
    after = told.quantity(question.measure, question.np._replace(trials=last))
    change = Op("-", (after, before) if question.sign > 0 else (before, after))
    if evaluate(change, told.counts) <= 0:
        raise NotRead(f"the count did not {'increase' if question.sign > 0 else 'decrease'}")
    return Asked("change", Value(Op("/", (change, before))), PERCENT, (before, after), sign=question.sign)


def percent_more(question: PercentMore, told: Told, _: Scenario) -> Asked:
    first, base = _two(Difference(*question), told)
    change = Op("-", (first, base) if question.sign > 0 else (base, first))
    if evaluate(change, told.counts) <= 0:
        raise NotRead(f"there are not {'more' if question.sign > 0 else 'fewer'}")
    return Asked("change", Value(Op("/", (change, base))), PERCENT, (first, base), sign=question.sign)


ASKED: Answers = {
    HowManyOfTotal: how_many_of_total,
    Difference: difference,
    Multiple: multiple,
    Most: most,
    Change: change,
    PercentMore: percent_more,
}
