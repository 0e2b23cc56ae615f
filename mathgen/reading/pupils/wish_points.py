"""Points for pins, where the words say what a pin is worth."""

from __future__ import annotations

from mathgen.asks.expression import Choice, Expr, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.reading.pupils.bags import Bag, only
from mathgen.reading.pupils.plan import Plan
from mathgen.reading.pupils.talk import Ask, Dimension, False_, Talk, same_left_out
from mathgen.reading.pupils.wish import Wish
from mathgen.scenario.naming import listed
from mathgen.trials.scope import Label


def scored(talk: Talk, wish: Wish, bag: Bag) -> Expr:
    """Points for the pins of a bag; every color counted needs its worth."""
    if not wish.worth:
        raise Ask("The table does not say how many points a pin is worth. How many is it?")
    bag = talk.filled(bag)
    if bag.number is not None:
        raise Ask(f"What should I do with the {bag.number.text}?")
    if bag.measure == "set_up":
        raise Ask("Do you get points for pins knocked down?")
    terms: list[Expr] = []
    priced: list[Label] = []
    for of, number in wish.worth:
        if not number.value.is_integer or of.groups or of.trials or of.number:
            raise Ask("How many points is each pin worth?")
        labels = talk.labels("colors", of)
        if set(labels) & set(priced):
            raise Ask("How many points is each color worth?")
        priced.extend(labels)
        counted = [label for label in labels if label in talk.labels("colors", bag)]
        if not counted:
            raise Ask("You tell what a color is worth, but ask about another color.")
        measure = of.measure or bag.measure or "down"
        here = talk.scope(bag._replace(colors=tuple(counted), item=False, number=None, measure=measure))
        terms.append(Op("*", (Quantity(measure, here), Stated(int(number.value), "points"))))
    wanted = (wish.test,) if wish.test else talk.labels("colors", bag)
    if set(wanted) - set(priced):
        missing = [str(label) for label in talk.labels("colors", bag) if label not in priced]
        raise Ask(f"How many points are {listed(missing)} {talk.scenario.items} worth?")
    return terms[0] if len(terms) == 1 else Op("+", tuple(terms))


def points(talk: Talk, wish: Wish) -> Plan:
    """How many points."""
    return Plan(Value(scored(talk, wish, wish.bags[0])), Demand("whole"), "points")


def points_difference(talk: Talk, wish: Wish) -> Plan:
    """How many more points."""
    a, b = wish.bags
    same_left_out(a, b)
    if b.trials is None:
        b = b._replace(trials=a.trials)
    elif a.trials is None:
        a = a._replace(trials=b.trials)
    one, two = (scored(talk, wish, bag._replace(had=False)) for bag in (a, b))
    if wish.sign < 0:
        one, two = two, one
    if talk.size(one) <= talk.size(two):
        raise False_("There are not more points, but fewer.")
    return Plan(Value(Op("-", (one, two))), Demand("whole"), "difference")


def points_most(talk: Talk, wish: Wish) -> Plan:
    """Which group or trial has the most points, or the fewest."""
    by: Dimension = "groups" if wish.by == "groups" else "trials"
    bag = talk.filled(wish.bags[0])
    if getattr(bag, by) not in (None, "all") or (by == "trials" and bag.groups is None):
        raise Ask("Which ones should I choose from?")
    labels, bag = talk.chosen_from(by, bag)
    exprs = tuple(scored(talk, wish, only(bag, by, (label,))) for label in labels)
    return Plan(Choice(tuple(map(str, labels)), exprs, wish.sign > 0), Demand("name"), "most", by)
