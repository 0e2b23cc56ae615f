"""Counts that are told: one by one, with their total, for each trial, or several in a row."""

from __future__ import annotations

from typing import Literal

from mathgen.asks.expression import Op, Quantity, Stated
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.counts import Count, EachTrial, Series, Some, TheseWere, TotalWas, TrialCount
from mathgen.reading.meaning.scope import Mark, Np
from mathgen.reading.mentions import DIMENSIONS, Dimension
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.trials.scope import Label


def count(told: Told, claim: Count) -> None:
    for scope in told.scopes(claim.np):
        told.last_count = Quantity(claim.measure, scope)
        told.said(told.last_count, claim.number)


def some(told: Told, claim: Some) -> None:
    if told.last_count is None or told.last_count.measure != claim.measure:
        raise NotRead("it is not said what some are added to")
    told.scope(claim.np)


def these_were(told: Told, claim: TheseWere) -> None:
    last = told.last_count
    if last is None:
        raise NotRead('it is not said what "these" are')
    if set(claim.colors) != set(last.scope.colors or told.mentions.every("colors")) or len(set(claim.colors)) < len(claim.colors):
        raise NotRead('"these" are of other colors')
    for color, number in zip(claim.colors, claim.numbers, strict=False):  # the last color has no number
        told.said(Quantity(last.measure, last.scope._replace(colors=told.mentions.scope((), (), (str(color),)).colors)), number)
        told.mentions.note("colors", (color,))


def total_was(told: Told, claim: TotalWas) -> None:
    if told.total is not None:
        raise NotRead("it is not said what the total is of")
    if claim.np.groups is not None or claim.np.trials is not None:
        told.total = _with_another(told, claim.np)
    elif told.last_count is None:
        raise NotRead("it is not said what the total is of")
    else:
        if isinstance(claim.np.colors, tuple):
            told.mentions.note("colors", claim.np.colors)
        scope = told.last_count.scope
        trials, groups = scope.trials or told.mentions.every("trials"), scope.groups or told.mentions.every("groups")
        colors = told.mentions.named("colors")
        if isinstance(claim.colors, tuple) and set(claim.colors) != set(colors):
            raise NotRead("the total is of other colors")
        told.total = Quantity(told.last_count.measure, told.mentions.scope(groups, trials, colors))
    told.said(told.total, claim.number)


def _with_another(told: Told, np: Np) -> Quantity:
    """All that was counted before, or looked at in the graph, with another group or trial: "With the Herons, the total was 9 pins".

    Raises:
        NotRead: that group or trial was counted before, or what was counted before differs in something else.
    """
    part: Dimension = "groups" if np.groups is not None else "trials"
    added = getattr(np, part)
    counts = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity)]
    if not counts and any(look.source == "graph" for look in told.seen):
        counts = [told.quantity("down", Np(colors=np.colors))]
    before = {label for count in counts for label in getattr(count.scope, part) or told.mentions.every(part)}
    alike = {count._replace(scope=count.scope._replace(**{part: None})) for count in counts}
    if not isinstance(added, tuple) or before & set(added) or len(alike) != 1:
        raise NotRead("it is not said what the total is of")
    told.mentions.note(part, added)
    [(measure, scope)] = alike
    found = {name: getattr(scope, name) or told.mentions.every(name) for name in DIMENSIONS}
    if isinstance(np.colors, tuple) and set(np.colors) != set(found["colors"]):
        raise NotRead("the total is of other colors")
    found[part] = told.mentions.ordered(part, (*before, *added))
    return Quantity(measure, told.mentions.scope(found["groups"], found["trials"], found["colors"]))


def each_trial(told: Told, claim: EachTrial) -> None:
    mark = claim.np.trials
    assert isinstance(mark, Mark)  # the grammar makes no other
    before = [len(told.mentions.before["trials"])]
    trials = told.mentions.resolve("trials", mark)
    if mark.of is None and mark.count is None and before == [0]:
        told.mentions.before["trials"].clear()  # "for each trial" alone names none
    whole = told.scope(claim.np._replace(trials=trials))
    for trial in trials:
        part = whole._replace(trials=told.mentions.scope((), (trial,), ()).trials)
        if evaluate(Quantity(claim.measure, part), told.counts) != claim.number.value:
            raise NotRead(f"the table does not say {claim.number.text} for each trial")
    told.facts.append(Fact(Op("/", (Quantity(claim.measure, whole), Stated(len(trials), "trials"))), claim.number.text))
    if mark.of is None and mark.count is None and before == [0]:
        told.mentions.before["trials"].clear()
    if claim.total is not None:
        told.said(Quantity(claim.measure, whole), claim.total)


def trial_count(told: Told, claim: TrialCount) -> None:
    every = told.mentions.every("trials")
    if claim.number.value != len(every):
        raise NotRead(f"the table has {len(every)} trials, not {claim.number.text}")
    told.mentions.note("trials", every)
    told.facts.append(Fact(Stated(len(every), "trials"), claim.number.text))


def series(told: Told, claim: Series) -> None:
    np, size = claim.np, len(claim.numbers)
    groups = told.mentions.resolve("groups", np.groups)
    trials = told.mentions.resolve("trials", np.trials)
    over: Literal["groups", "trials"]
    if len(groups) == size and (len(trials) != size or (len(groups) > 1 and isinstance(np.groups, tuple))):
        over, labels = "groups", groups
    elif len(trials) == size:
        over, labels = "trials", trials
    else:
        raise NotRead(f"it is not clear what the {size} numbers belong to")
    made = []
    for label, number in zip(labels, claim.numbers, strict=True):
        quantity = told.quantity(claim.measure, Np(groups, trials, np.colors)._replace(**{over: (label,)}))
        told.said(quantity, number)
        made.append(quantity)
    _forget_parts(told, over, labels)
    told.series = tuple(made)
    told.lists.append(told.series)


def _forget_parts(told: Told, over: Literal["groups", "trials"], labels: tuple[Label, ...]) -> None:
    """One by one the labels of a series are no mentions of their own."""
    before = told.mentions.before[over]
    told.mentions.before[over] = [
        kept for kept in before if kept == labels or not (len(kept) == 1 and kept[0] in labels and labels in before)
    ]


TAKEN: Takers = {
    Count: count,
    Some: some,
    TheseWere: these_were,
    TotalWas: total_was,
    EachTrial: each_trial,
    TrialCount: trial_count,
    Series: series,
}
