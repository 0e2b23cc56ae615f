"""Counts asked for, compared and followed from trial to trial."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stat, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.reading.pupils.bags import DIMENSIONS, EMPTY, only
from mathgen.reading.pupils.plan import Plan
from mathgen.reading.pupils.talk import Ask, Dimension, False_, Talk, same_left_out
from mathgen.reading.pupils.wish import Wish
from mathgen.reading.pupils.wish_series import series_of


def count(talk: Talk, wish: Wish) -> Plan:
    """How many."""
    bag = wish.bags[0]
    if bag.item and bag.measure is None and talk.said.measure in ("down", "standing") and bag.got:
        bag = bag._replace(measure="down")
    if bag == EMPTY and talk.said.measure is None:
        raise Ask("What should I count? Say whose pins, and whether knocked down or left standing.")
    return Plan(Value(talk.quantity(bag)), Demand("whole"), "count")


def half(talk: Talk, wish: Wish) -> Plan:
    """Half of a count."""
    return Plan(Value(Op("/", (talk.quantity(wish.bags[0]), Stated(2, "half")))), Demand("any"), "half")


def difference(talk: Talk, wish: Wish) -> Plan:
    """How many more or fewer, both named."""
    return less(talk, *talk.pair(*wish.bags), wish.sign)


def less(talk: Talk, first: Quantity, second: Quantity, sign: int) -> Plan:
    """One count less another, where it is true that there are more (sign 1) or fewer (-1)."""
    big, small = (first, second) if sign > 0 else (second, first)
    if (first.measure == "set_up") != (second.measure == "set_up"):
        raise Ask("Do you mean the pins left standing?")
    if talk.size(big) <= talk.size(small):
        same = talk.size(big) == talk.size(small)
        both = f"{talk.size(first)} and {talk.size(second)}"
        if same:
            raise False_(f"They are the same: {both}. The difference is 0.")
        raise False_(f"There are not {'more' if sign > 0 else 'fewer'}, but {'fewer' if sign > 0 else 'more'}: {both}.")
    return Plan(Value(Op("-", (big, small))), Demand("whole"), "difference")


def difference_told(talk: Talk, wish: Wish) -> Plan:
    """How many more, where the two that are compared were told before."""
    bag = wish.bags[0]
    if talk.compared is None:
        if talk.went:
            first = talk.quantity(bag._replace(trials=talk.went[1:]))
            return less(talk, first, talk.quantity(bag._replace(trials=talk.went[:1])), wish.sign)
        raise Ask(f"{'More' if wish.sign > 0 else 'Fewer'} than what? Say who or what I should compare with.")
    first, second = talk.compared
    if talk.told and bag.trials is not None and first.scope.trials != bag.trials == second.scope.trials:
        first, second = second, first  # "8 in trial 1 and 10 in trial 2. How many more in trial 2?"
    if bag.they and isinstance(talk.said.groups, tuple):
        bag = bag._replace(they=False)
    if bag.each or bag.number or bag.without or bag.they:
        raise Ask("Please ask that in one sentence.")
    if bag.measure not in (None, first.measure, second.measure) or (bag.trials is not None and bag.trials != first.scope.trials):
        raise Ask("Which two should I compare?")
    sign = talk.sign if wish.sign == 0 else wish.sign
    if bag.groups is None and bag.colors is None and sign != talk.sign and not (talk.told and bag.trials is not None):
        raise Ask("More or fewer than what?")
    if bag.groups is not None and first.scope.groups != bag.groups:
        first, second = second, first
        if first.scope.groups != bag.groups:
            raise Ask("Which two should I compare?")
    if bag.colors is not None and bag.colors not in (first.scope.colors, second.scope.colors):
        raise Ask("Which two should I compare?")
    return less(talk, first, second, sign)


def apart(talk: Talk, wish: Wish) -> Plan:
    """The difference, whichever is greater."""
    if len(wish.bags) == 2:
        first, second = talk.pair(*wish.bags)
    else:
        bag = wish.bags[0]
        twos: list[Dimension] = [part for part in DIMENSIONS if isinstance(getattr(bag, part), tuple) and len(getattr(bag, part)) == 2]
        if len(twos) != 1:
            raise Ask("The difference between which two?")
        part = twos[0]
        first, second = (talk.quantity(only(bag, part, (label,))) for label in getattr(bag, part))
    if talk.size(first) < talk.size(second):
        first, second = second, first
    return Plan(Value(Op("-", (first, second))), Demand("whole"), "difference")


def short_of(talk: Talk, wish: Wish) -> Plan:
    """How many more it takes to have a number of them."""
    have = talk.quantity(wish.bags[0], "down" if wish.bags[0].groups is not None else None)
    assert wish.number is not None  # the words that ask for this name it
    if have.measure != "down" or not wish.number.value.is_integer or wish.number.value <= talk.size(have):
        raise Ask(f"There are {talk.size(have)} already. What do you want to know?")
    return Plan(Value(Op("-", (Stated(int(wish.number.value), "goal"), have))), Demand("whole"), "difference")


def minus(talk: Talk, wish: Wish) -> Plan:
    """One count taken from another."""
    return less(talk, *talk.pair(*wish.bags), 1)


def mean_difference(talk: Talk, wish: Wish) -> Plan:
    """How much greater one mean is."""
    a, b = wish.bags
    same_left_out(a, b)
    each = a.each or b.each
    if each is None:
        raise Ask("The mean for each what: each trial, or each group?")
    measure = a.measure or b.measure or "down"
    stats = [Stat("mean", series_of(talk, bag._replace(each=None, measure=measure), "trials")) for bag in (a, b)]
    if each != "trials" or talk.size(stats[0]) <= talk.size(stats[1]):
        raise False_("The first mean is not the bigger one.")
    return Plan(Value(Op("-", tuple(stats))), Demand("any"), "difference")


def truth(talk: Talk, wish: Wish) -> Plan:
    """A yes or no question: asked back."""
    raise Ask("That is a yes or no question. Ask me how many, and see for yourself.")


def times(talk: Talk, wish: Wish) -> Plan:
    """How many times as many."""
    if all(bag.measure is None and not bag.had and bag.groups is not None and bag.trials is not None for bag in wish.bags):
        wish = wish._replace(bags=tuple(bag._replace(measure="down") for bag in wish.bags))
    first, second = talk.pair(*wish.bags)
    if talk.size(second) == 0:
        raise False_("One of the two numbers is 0, and nothing can be so many times as many as 0.")
    return Plan(Value(Op("/", (first, second))), Demand("any"), "times")


def ends(talk: Talk, wish: Wish) -> tuple[Quantity, Quantity]:
    """The counts of the earlier and the later trial."""
    labels = wish.labels or talk.went
    if labels == ("first", "last"):
        labels = (talk.table.trials[0], talk.table.trials[-1])
    if len(labels) != 2:
        raise Ask("From which trial to which trial?")
    bag = wish.bags[0]
    if bag.groups is None and talk.said.groups is None:
        raise Ask("Whose change do you mean? Name the group, or say the whole class.")
    if bag.trials is not None or talk.said.trials is not None:
        raise Ask("From which trial to which trial?")
    order = talk.table.trials.index
    if order(labels[0]) >= order(labels[1]):
        raise Ask("Which of the two trials came first?")
    before, after = (talk.quantity(bag._replace(trials=(label,), had=False), "down") for label in labels)
    return before, after


def rise(talk: Talk, wish: Wish) -> Plan:
    """How much a count changed, with the sign that the words claim."""
    before, after = ends(talk, wish)
    if wish.sign == 0:
        if talk.size(after) < talk.size(before):
            return less(talk, before, after, 1)
        return Plan(Value(Op("-", (after, before))), Demand("whole"), "difference")
    if (talk.size(after) - talk.size(before)) * wish.sign <= 0:
        raise False_(f"The count did not go {'up' if wish.sign > 0 else 'down'}: first {talk.size(before)}, then {talk.size(after)}.")
    return less(talk, after, before, wish.sign)


def percent_rise(talk: Talk, wish: Wish) -> Plan:
    """By what percent a count changed."""
    before, after = ends(talk, wish)
    wish = wish._replace(sign=wish.sign or 1)  # a percent of change is plain where the count rose
    if (talk.size(after) - talk.size(before)) * wish.sign <= 0:
        raise False_(f"The count did not go {'up' if wish.sign > 0 else 'down'}: first {talk.size(before)}, then {talk.size(after)}.")
    if talk.size(before) == 0:
        raise False_("The first number is 0, and there is no percent of 0.")
    change = Op("-", (after, before) if wish.sign > 0 else (before, after))
    return Plan(Value(Op("/", (change, before))), Demand("percent"), "percent change")


def percent_rise_told(talk: Talk, wish: Wish) -> Plan:
    """The same, with the trials told before."""
    return percent_rise(talk, wish)
