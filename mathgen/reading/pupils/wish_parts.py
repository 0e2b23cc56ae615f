"""Parts of a set and ratios, as pupils ask for them."""

from __future__ import annotations

from mathgen.asks.expression import Expr, Op, Quantity, Ratio, Value
from mathgen.exact.demand import Demand
from mathgen.reading.chart import Clash
from mathgen.reading.pupils.bags import DIMENSIONS, EMPTY, Bag, only, plus
from mathgen.reading.pupils.plan import Plan
from mathgen.reading.pupils.talk import Ask, False_, Talk, TwoMeanings, same_left_out
from mathgen.reading.pupils.wish import Wish
from mathgen.scenario.naming import group_name, listed


def part_of(talk: Talk, wish: Wish) -> Plan:
    """Which part of the pins set up."""
    bag = talk.filled(wish.bags[0])
    if bag.measure is None and not bag.got and talk.said.measure is not None and not bag.had:
        bag = bag._replace(measure=talk.said.measure)
    if bag.they and wish.bags[0].colors is not None and talk.said.measure is not None:
        raise Ask("What part of which pins do you mean?")
    if not talk.spoken and not (bag.item or bag.colors or bag.number or bag.they or bag.every):
        raise Ask("A part of which pins do you mean: of all the pins, or of one color?")
    _whose_is_clear(talk, wish)
    part = talk.quantity(bag)
    if part.measure == "set_up":
        raise Ask("Of those set up, do you mean the part knocked down, or left standing?")
    return fraction_of(talk, part, Quantity("set_up", part.scope), wish.demand)


def _whose_is_clear(talk: Talk, wish: Wish) -> None:
    """Hold "what fraction of all the pins did the Owls knock down" to one meaning: of all that the Owls set up, or that the class did.

    With trials, or where the words say "set up", it is said of the group's own.

    Raises:
        TwoMeanings: it can be both.
    """
    bag, groups = wish.bags[0], wish.bags[0].groups
    measure = bag.measure or ("down" if bag.got else None)
    every = bag.every and bag.number is None and not bag.their and not bag.they and not bag.of_set_up and not bag.sizes
    some_groups = isinstance(groups, tuple) and len(groups) < len(talk.table.groups)
    if not every or not some_groups or measure not in ("down", "standing") or (bag.trials or talk.said.trials) is not None:
        return
    scenario, form = talk.scenario, {"percent": "percent", "decimal": "decimal part"}.get((wish.demand or Demand()).form, "fraction")
    who, set_up, done = listed([group_name(str(one), scenario) for one in groups or ()]), scenario.past["set_up"], scenario.past[measure]
    things = f"{listed(list(map(str, bag.colors)))} {scenario.items}" if isinstance(bag.colors, tuple) else scenario.items
    raise TwoMeanings(
        f"Of all those that {who} {set_up}, or of all the class's?"
        f" You can ask: What {form} of the {things} that {who} {set_up} were {done}?"
        f" Or: What {form} of the {things} that the class {done} were {done} by {who}?"
    )


def fraction_of(talk: Talk, part: Quantity, whole: Quantity, demand: Demand | None) -> Plan:
    """A part over its whole."""
    if talk.size(whole) == 0:
        raise False_("There are none of them, so there is no part of them.")
    return Plan(Value(Op("/", (part, whole))), demand or Demand(), "part")


def share(talk: Talk, wish: Wish) -> Plan:
    """What part of one set is in another: the part is what both sets of words name."""
    of, part = wish.bags
    if part.number is not None or part.each or part.without or of.each:
        raise Ask("I do not understand the part that you ask for.")
    if of.they:
        if of._replace(they=False) != EMPTY:
            raise Ask("Which ones do you mean?")
        if not talk.spoken:
            raise Ask("Which ones do you mean?")
        of = talk.said
    of = talk.filled(of._replace(they=False)) if talk.spoken else of
    if part.they:
        raise Ask("Which ones do you mean?")
    number, of = of.number, of._replace(number=None)
    whole = talk.quantity(of, whole=True)
    if number is not None and number.value != talk.size(whole):
        raise False_(f"You say {number.text}, but the table says {talk.size(whole)}.")
    if part.colors is None and part.groups is None and part.trials is None:
        # "of the red pins that were set up, what fraction were knocked down"
        if whole.measure != "set_up" or part.measure in (None, "set_up"):
            raise Ask("The part and the whole do not fit together. What part of which pins do you mean?")
        return fraction_of(talk, Quantity(part.measure, whole.scope), whole, wish.demand)
    placed = part.groups is not None or part.trials is not None
    if placed and (part.colors is not None or whole.measure == "set_up"):
        raise Ask("Say first of which pins you want a part: whose, and from which trial.")
    made = of._asdict()
    for name in DIMENSIONS:
        mine = getattr(part, name)
        if mine is None:
            continue
        every = set(talk.labels(name, of))
        if isinstance(mine, str) or not set(mine) < every:
            raise Ask("The part you name is not a part of the whole you name. What part of which pins do you mean?")
        made[name] = mine
    if part.measure not in (None, whole.measure) and whole.measure != "set_up":
        raise Ask("A pin that was knocked down is not left standing. Which do you mean?")
    if whole.measure == "set_up" and part.measure is None and not part.got and part.groups is None:
        made["measure"] = "set_up"
    else:
        made["measure"] = part.measure or whole.measure
    made["number"] = None
    return fraction_of(talk, talk.quantity(Bag(**made), whole=True), whole, wish.demand)


def part_or_share(talk: Talk, wish: Wish) -> Plan:
    """ "Of the pins ..., what fraction ...": which of the two is meant shows in the verbs."""
    of, part = wish.bags
    if of.measure is None:
        try:
            return part_of(talk, wish._replace(bags=(plus(of, part),)))
        except Clash as err:
            raise Ask("Please say it another way.") from err
    if of.measure == "set_up" and part.groups is None and part.trials is None and part.colors is None:
        return share(talk, wish)
    if part.groups is not None and part.measure is not None and of.measure == "set_up" and of.groups is None:
        return part_of(talk, wish._replace(bags=(part._replace(colors=of.colors, item=of.item, trials=part.trials or of.trials),)))
    raise Ask("Please say it another way: what part of which pins?")


def share_told(talk: Talk, wish: Wish) -> Plan:
    """What part of those spoken of before."""
    part = wish.bags[0]
    if talk.said.measure is None:
        return part_of(talk, wish)
    if part.they and part._replace(their=False, item=False, they=False) == EMPTY:
        return part_of(talk, wish._replace(bags=(talk.said,)))
    return share(talk, wish._replace(bags=(talk.said, part)))


def share_count(talk: Talk, wish: Wish) -> Plan:
    """How many of one set are in another."""
    goal = share(talk, wish).goal
    assert isinstance(goal, Value)  # a share is a part over its whole
    assert isinstance(goal.expr, Op)
    return Plan(Value(goal.expr.args[0]), Demand("whole"), "count")


def out_of(talk: Talk, wish: Wish) -> Plan:
    """One count out of another that holds it."""
    a, b = wish.bags
    same_left_out(a, b)
    if b.measure != "set_up" and b.measure is not None and b.measure != a.measure:
        raise Ask("What part of which pins do you mean?")
    a = talk.filled(a)
    for name in ("groups", "trials"):  # "the blue pins that fell, out of all the pins of trial 3": those of trial 3
        if getattr(a, name) is None:
            a = only(a, name, getattr(b, name))
    part = talk.quantity(a)
    full = {name: getattr(a, name) if getattr(b, name) is None else getattr(b, name) for name in DIMENSIONS}
    if b.item and b.colors is None and a.colors is not None:
        full["colors"] = None
    whole_bag = talk.filled(b._replace(**full))
    whole = Quantity(talk.measure(whole_bag, "set_up"), talk.scope(whole_bag))
    if b.number is not None:
        talk.check_whole(b.number, whole.scope)
    cells = talk.counts.cells
    if not set(cells(part.scope)) <= set(cells(whole.scope)) or part == whole:
        raise Ask("What part of which pins do you mean?")
    return fraction_of(talk, part, whole, wish.demand)


def fractions_apart(talk: Talk, wish: Wish) -> Plan:
    """The difference of two fractions of sets of one size."""
    a, b = wish.bags
    first, second = talk.pair(a, b)
    parts: list[Expr] = [Op("/", (q, Quantity("set_up", q.scope))) for q in (first, second)]
    if talk.counts.total("set_up", first.scope) != talk.counts.total("set_up", second.scope):
        raise Ask("These are fractions of sets of different sizes. Ask for each fraction alone.")
    if talk.size(parts[0]) < talk.size(parts[1]):
        parts.reverse()
    return Plan(Value(Op("-", tuple(parts))), Demand("any"), "difference")


def ratio(talk: Talk, wish: Wish) -> Plan:
    """The ratio of two counts, in order."""
    a, b = wish.bags
    if {a.measure, b.measure, talk.said.measure} <= {None} and not (a.got or b.got or (a.total and b.total)):
        raise Ask("The ratio of what to what? Say knocked down, left standing or set up.")
    first, second = talk.pair(a, b)
    if talk.size(first) == 0 and talk.size(second) == 0:
        raise False_("Both numbers are 0, so there is no ratio.")
    return Plan(Ratio(first, second), Demand("ratio"), "ratio")


def ratio_of(talk: Talk, wish: Wish) -> Plan:
    """ "Blue to red ratio of ..."."""
    if wish.bags[0].colors is not None:
        raise Ask("The ratio of which colors?")
    one, other = (wish.bags[0]._replace(colors=(label,), item=False) for label in wish.labels)
    return ratio(talk, wish._replace(bags=(one, other)))
