"""Means and medians, and which group, trial or color has the most, or passes a test."""

from __future__ import annotations

from typing import Literal

from mathgen.asks.expression import Choice, Expr, Op, Ordered, Quantity, Stat, Value
from mathgen.exact.demand import Demand
from mathgen.reading.pupils.bags import EMPTY, Bag, only
from mathgen.reading.pupils.plan import Picked, Plan
from mathgen.reading.pupils.talk import SINGLE, Ask, Dimension, False_, Talk
from mathgen.reading.pupils.wish import Wish
from mathgen.scenario.naming import group_name, listed


def series_of(talk: Talk, bag: Bag, by: Dimension, own: bool = False) -> tuple[Quantity, ...]:
    """One count for each label; ``own`` for a group's own trials only, and not those that it missed."""
    bag = talk.filled(bag)
    measure = talk.measure(bag, "down")
    if bag.number is not None:
        raise Ask("Which numbers do you mean?")
    labels = talk.labels(by, bag)
    found = []
    for label in labels:
        one = only(bag, by, (label,))._replace(sizes=tuple(size for size in bag.sizes if size[0] != by))
        scope = talk.scope(one)
        if talk.counts.cells(scope) or (talk.counts.missing(scope) and not own):
            found.append(Quantity(measure, scope))
    if len(found) < 2:
        raise Ask("I need at least two numbers for that.")
    return tuple(found)


_OF = {"mean": "", "median": "", "range": "of the "}


def statistic(talk: Talk, wish: Wish, name: Literal["mean", "median", "range"]) -> Plan:
    """The mean, the median or the range of a series."""
    bag = wish.bags[0]
    by = wish.by
    if not by and bag == EMPTY and talk.said.trials == "all" and talk.said.measure is not None:
        by, bag = "trials", bag._replace(they=True)  # "Order the Owls' trials. What is the median?"
    if by not in ("groups", "trials"):
        if isinstance(bag.groups, tuple) and len(bag.groups) == 1 and bag.trials is None:
            who, scenario = group_name(str(bag.groups[0]), talk.scenario), talk.scenario
            painted = f"{listed(list(map(str, bag.colors)))} " if isinstance(bag.colors, tuple) else ""
            counted = f"number of {painted}{scenario.items} that {who} {scenario.past[bag.measure or 'down']} per {scenario.trial}"
            raise Ask(f"The {name} of which numbers? Of their {scenario.trials}, you can ask: What is the {name} {_OF[name]}{counted}?")
        raise Ask(f"The {name} of which numbers: of the trials, or of the groups?")
    if by == "trials" and bag.groups is None and talk.said.groups is None:
        raise Ask(f"The {name} of the class's trials, or of the trials of one group? Name the group.")
    if by == "trials" and (isinstance(bag.trials, tuple) and len(bag.trials) == 1):
        raise Ask(f"One trial has no {name} for each trial. Which numbers do you mean?")
    if by == "groups" and isinstance(bag.groups, tuple) and len(bag.groups) == 1:
        raise Ask(f"One group has no {name} for each group. Which numbers do you mean?")
    # "The mean for the Owls": of the trials they took, and what they missed is said; "in all 3 trials" asks for more.
    named = bag.trials is not None or wish.number is not None or any(part == "trials" for part, _ in bag.sizes)
    groups = bag.groups or talk.said.groups
    own = by == "trials" and not named and isinstance(groups, tuple) and len(groups) == 1
    if by == "groups" and bag.groups is not None:
        bag = bag._replace(groups=None if bag.groups == "all" else bag.groups)
    if by == "trials" and bag.trials == "all":
        bag = bag._replace(trials=None)
    series = series_of(talk, bag, by, own)  # type: ignore[arg-type]
    for part, number in (*bag.sizes, *([(by, wish.number)] if wish.number is not None else [])):
        if part == by and number.value != len(series):
            raise False_(f"There are {len(series)} {by}, not {number.text}.")
    missed = talk.counts.missing(series[0].scope._replace(trials=None)) if own else []
    return Plan(Value(Stat(name, series)), Demand("any"), name, missed=tuple(missed))


def mean(talk: Talk, wish: Wish) -> Plan:
    """The mean."""
    return statistic(talk, wish, "mean")


def median(talk: Talk, wish: Wish) -> Plan:
    """The median."""
    return statistic(talk, wish, "median")


def spread(talk: Talk, wish: Wish) -> Plan:
    """The range."""
    return statistic(talk, wish, "range")


def choices(talk: Talk, wish: Wish) -> tuple[tuple[str, ...], tuple[Quantity, ...]]:
    """The labels to choose from, and their counts."""
    by: Dimension = wish.by  # type: ignore[assignment]
    bag = talk.filled(wish.bags[0])
    own = getattr(bag, by)
    if own is not None and own != "all" and not wish.labels:
        raise Ask(f"Which {SINGLE[by]}s should I choose from?")
    if bag.number is not None:
        raise Ask("I do not know what to do with the number in your question.")
    if own is not None and wish.labels:
        raise Ask("Which ones should I choose from?")
    measure = talk.measure(bag, "down" if bag.got or (bag.had and not bag.item and by != "colors") else None)
    if measure == "set_up":
        raise Ask("Do you mean knocked down, or left standing?")
    if by == "groups":
        bag = bag._replace(their=False)
    names, found = [], []
    if wish.labels and any(part == by for part, _ in bag.without):
        raise Ask("Which ones should I choose from?")
    labels, bag = talk.chosen_from(by, bag)
    for label in wish.labels or labels:
        scope = talk.scope(only(bag, by, (label,)))
        if not talk.counts.cells(scope) and not talk.counts.missing(scope):
            continue  # no such pins were set up
        names.append(str(label))
        found.append(Quantity(measure, scope))
    return tuple(names), tuple(found)


def most(talk: Talk, wish: Wish) -> Plan:
    """Which has the most or the fewest."""
    if wish.by == "colors" and wish.bags[0].colors is None and wish.bags[0].item:
        wish = wish._replace(bags=(wish.bags[0]._replace(item=False),))
    names, found = choices(talk, wish)
    return Plan(Choice(names, found, wish.sign > 0), Demand("name"), "most", wish.by)


def most_rate(talk: Talk, wish: Wish) -> Plan:
    """Which had the greatest or smallest part."""
    if wish.by == "colors" and wish.bags[0].colors is None and wish.bags[0].item:
        wish = wish._replace(bags=(wish.bags[0]._replace(item=False),))
    names, found = choices(talk, wish)
    rates = tuple(Op("/", (part, Quantity("set_up", part.scope))) for part in found)
    return Plan(Choice(names, rates, wish.sign > 0), Demand("name"), "most rate", wish.by)


def pick(talk: Talk, wish: Wish) -> Plan:
    """Those that pass a test."""
    names, found = choices(talk, wish)
    exprs: tuple[Expr, ...] = found
    number = 0
    test = wish.test
    if test == "all":
        exprs = tuple(Quantity("standing", part.scope) for part in found)
    elif test == "not all":
        exprs, test = tuple(Quantity("standing", part.scope) for part in found), "at least"
        number = 1
    elif wish.number is not None:
        if not wish.number.value.is_integer:
            raise Ask("Pins are counted in whole numbers.")
        number = int(wish.number.value)
    return Plan(Picked(names, exprs, "equal" if test in ("none", "all") else test, number), Demand("name"), "pick", wish.by)


def how_many_labels(talk: Talk, wish: Wish) -> Plan:
    """How many pass a test."""
    made = pick(talk, wish)
    assert isinstance(made.goal, Picked)
    return made._replace(goal=made.goal._replace(counted=True), demand=Demand("whole"))


def greatest(talk: Talk, wish: Wish) -> Plan:
    """The greatest or the smallest of a series, as a number."""
    bag = wish.bags[0]
    if wish.by == "groups" and bag.groups == "all":
        bag = bag._replace(groups=None)
    several = wish.by == "trials" and isinstance(bag.trials, tuple) and len(bag.trials) > 1
    open_ = getattr(bag, wish.by) not in (None, "all") and not several
    if open_ or (wish.by == "trials" and bag.groups is None and talk.said.groups is None):
        raise Ask("The greatest of which numbers?")
    series = series_of(talk, bag, wish.by)  # type: ignore[arg-type]
    return Plan(Value(Ordered(series, len(series) - 1 if wish.sign > 0 else 0)), Demand("whole"), "count")
