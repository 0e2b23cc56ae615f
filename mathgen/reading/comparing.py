"""Two counts side by side: how many more, how many times as many, which is greatest, and by what percent one changed."""

from __future__ import annotations

from mathgen.asks.expression import Choice, Op, Quantity, Value
from mathgen.reading.asked import ANY, NAME, PERCENT, WHOLE, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.scope import Np
from mathgen.reading.mentions import DIMENSIONS, Dimension
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Told
from mathgen.reading.wanted.counts import Change, Difference, Most, Multiple, PercentMore
from mathgen.scenario.naming import trial_name
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Label


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
    """The groups, trials or colors that were told of as two to be compared; () where none were, or one alone."""
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
    Difference: difference,
    Multiple: multiple,
    Most: most,
    Change: change,
    PercentMore: percent_more,
}
