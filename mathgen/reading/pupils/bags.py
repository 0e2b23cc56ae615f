"""What some words of a pupil name, in any order: whose pins, from which trials, of which colors, and what became of them."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.reading.chart import Clash
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure

Every = Literal["all"]
Some = tuple[Label, ...] | Every | None


class Bag(NamedTuple):
    """The parts of a scope that some words name, each at most once; None is what they do not name."""

    groups: Some = None
    trials: Some = None
    colors: Some = None
    measure: Measure | None = None
    of_set_up: bool = False  # "the pins set up ... that fell": the whole is named, too
    item: bool = False  # "pins"
    every: bool = False  # "all the pins"
    got: bool = False  # "get": by itself it means knocked down
    had: bool = False
    left: bool = False  # "left", which needs "standing" or "up"
    up: bool = False
    total: bool = False
    number: Number | None = None  # "12 gold pins"
    they: bool = False
    their: bool = False
    that_group: bool = False  # "that group", which was told of before
    that_trial: bool = False
    each: str | None = None  # "per trial"
    sizes: tuple[tuple[str, Number], ...] = ()  # "all 3 trials"
    without: tuple[tuple[str, tuple[Label, ...]], ...] = ()  # "except trial 2"


_ONCE = ("groups", "trials", "colors", "number")
_FLAGS = ("of_set_up", "item", "every", "got", "had", "left", "up", "total", "they", "their", "that_group", "that_trial")
EMPTY = Bag()
DIMENSIONS: tuple[Literal["groups", "trials", "colors"], ...] = ("groups", "trials", "colors")


def plus(one: Bag, other: Bag) -> Bag:
    """Both together.

    Raises:
        Clash: they name the same part, and not the same of it.
    """
    made = one._asdict()
    for name in _ONCE:
        mine, theirs = getattr(one, name), getattr(other, name)
        if mine is not None and theirs is not None and mine != theirs:
            raise Clash
        made[name] = theirs if mine is None else mine
    made["measure"], both = _measures(one.measure, other.measure)
    for all_pins, painted in ((one, other), (other, one)):
        if all_pins.item and not painted.item and painted.colors not in (None, "all", all_pins.colors) and all_pins.colors != "all":
            raise Clash  # "pins ... red": of all pins, how many were red
    for name in _FLAGS:
        made[name] = getattr(one, name) or getattr(other, name)
    made["of_set_up"] = made["of_set_up"] or both
    if one.each is not None and other.each is not None and one.each != other.each:
        made["each"] = "groups and trials"
    else:
        made["each"] = one.each or other.each
    made["sizes"] = tuple(dict.fromkeys((*one.sizes, *other.sizes)))
    made["without"] = (*one.without, *other.without)
    return Bag(**made)


def _measures(one: Measure | None, other: Measure | None) -> tuple[Measure | None, bool]:
    if one is None or other is None or one == other:
        return one or other, False
    if "set_up" not in (one, other):
        raise Clash
    return (other if one == "set_up" else one), True


def verb(bag: Bag) -> Bag:
    """The bag with "left ... up" and the like taken together.

    Raises:
        Clash: "left" or "up" stands alone or with another verb.
    """
    if not (bag.left or bag.up):
        return bag
    if bag.measure == "standing" or (bag.measure in (None, "set_up") and bag.left):
        return bag._replace(left=False, up=False, measure="standing", of_set_up=bag.of_set_up or bag.measure == "set_up")
    if bag.up and bag.got and bag.measure == "down":
        return bag._replace(up=False)
    raise Clash


def bare(bag: Bag) -> bool:
    """Whether the bag names nothing at all but "pins" and "they"."""
    return bag._replace(item=False, they=False, every=False, their=False, got=False, had=False, total=False) == EMPTY


def flagged(name: str) -> Bag:
    """A bag that holds one flag."""
    return Bag(**{name: True})  # type: ignore[arg-type]


def only(bag: Bag, part: str, labels: Some) -> Bag:
    """The bag with other labels in one part."""
    made = bag._asdict()
    made[part] = labels
    return Bag(**made)
