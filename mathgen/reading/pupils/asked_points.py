"""What a pin is worth, and how many points that makes."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from mathgen.reading.chart import Clash
from mathgen.reading.pupils.bags import EMPTY, Bag
from mathgen.reading.pupils.regions import find, gather, has, without
from mathgen.reading.pupils.span import Span
from mathgen.reading.pupils.wish import Wish
from mathgen.reading.tokens import NotRead, Number

Price = tuple[Bag, Number]
_LINKS = ("be", "WORTH", "SCORE", "each", "IWEYOU", "that", "POINTS", "do")
_SIGNS = {"MOST": 1, "LEAST": -1, "GREATER": 1, "SMALLER": -1}
_PER = {"for", "per", "a", "an", "each", "every", "all", "any"}


class Priced(NamedTuple):
    """What the pins are worth, and the spans that say something else."""

    prices: tuple[Price, ...]
    rest: list[Span]


def is_of_points(sentences: Sequence[Sequence[Span]]) -> bool:
    """Whether points are spoken of at all."""
    return any(has(spans, "POINTS", "WORTH", "SCORE") for spans in sentences)


def prices(spans: Sequence[Span]) -> Priced:
    """The prices that a sentence tells.

    Raises:
        NotRead: a number that is no price of anything.
    """
    taken: set[int] = set()
    found: list[Price] = []
    for place, span in enumerate(spans):
        if span.kind != "number":
            continue
        number = span.value
        assert isinstance(number, Number)
        unit = _unit_before(spans, place, taken) or _unit_after(spans, place)
        if unit is None:
            raise NotRead(f"What should I do with the {number.text}?")
        places, bag = unit
        if taken & places:
            raise NotRead("How many points is each pin worth?")
        taken |= places | {place}
        found.append((bag, number))
    rest = [span for place, span in enumerate(spans) if place not in taken]
    return Priced(tuple(found), rest)


def _is_unit(span: Span) -> bool:
    bag = span.bag
    return (
        span.kind == "bag"
        and (bag.item or isinstance(bag.colors, tuple))
        and bag._replace(item=False, colors=None, every=False, measure=None) == EMPTY
    )


def _unit_before(spans: Sequence[Span], place: int, taken: set[int]) -> tuple[set[int], Bag] | None:
    """ "A red pin is worth 3 points each"."""
    used: set[int] = set()
    measure = None
    at = place - 1
    while at >= 0 and at not in taken:
        span = spans[at]
        if _is_unit(span):
            unit = span.bag._replace(every=False, measure=span.bag.measure or measure)
            return used | {at} | _tail(spans, place), unit
        if span.kind == "bag" and span.value == "verb" and span.bag.measure is not None and measure is None:
            measure = span.bag.measure
        elif not (span.kind in _LINKS or (span.kind == "bag" and span.value == "verb" and (span.bag.got or span.bag.had)) or span.bag.they):
            return None
        used.add(at)
        at -= 1
    return None


def _unit_after(spans: Sequence[Span], place: int) -> tuple[set[int], Bag] | None:
    """ "You get 3 points for each red pin that falls"."""
    used = _tail(spans, place)
    at = place + 1 + len(used)
    if at >= len(spans) or not _is_unit(spans[at]) or not spans[at].before & _PER:
        return None
    unit, used = spans[at].bag._replace(every=False), used | {at}
    at += 1
    while at < len(spans) and (spans[at].kind in ("that", "IWEYOU", "be") or spans[at].bag.they):
        at += 1
    if (
        at < len(spans)
        and spans[at].value == "verb"
        and spans[at].bag.measure is not None
        and spans[at].bag == Bag(measure=spans[at].bag.measure)
    ):
        unit = unit._replace(measure=spans[at].bag.measure)
        used |= set(range(place + 1, at + 1))
    ahead = place - 1
    while ahead >= 0 and (spans[ahead].kind in ("IWEYOU", "WORTH", "SCORE") or spans[ahead].bag == Bag(got=True) or spans[ahead].bag.they):
        used.add(ahead)
        ahead -= 1
    return used, unit


def _tail(spans: Sequence[Span], place: int) -> set[int]:
    """The "points each" behind a number."""
    at = place + 1
    while at < len(spans) and spans[at].kind in ("POINTS", "each"):
        at += 1
    return set(range(place + 1, at))


def points(spans: Sequence[Span], worth: tuple[Price, ...]) -> list[Wish]:
    """ "How many points ..."."""
    drop = ("HOWMANY", "HOWMUCH", "WHATIS", "POINTS", "SCORE", "NUMBER", "IF", "IWEYOU", "WORTH")
    if has(spans, "WHOGROUP", "WHICHTRIAL"):
        return [_most_points(spans, worth, drop)]
    if has(spans, "MORE"):
        at = find(spans, "than")
        if at is None:
            raise Clash
        one, other = (gather(without(side, *drop, "MORE")) for side in (spans[:at], spans[at + 1 :]))
        return [Wish("points difference", (one, other), worth=worth)]
    left = [span for span in without(spans, *drop) if span.kind != "and"]
    return [Wish("points", (gather(left),), worth=worth)]


def _most_points(spans: Sequence[Span], worth: tuple[Price, ...], drop: tuple[str, ...]) -> Wish:
    """ "Which group scored the most points"."""
    by = {"WHOGROUP": "groups", "WHICHTRIAL": "trials"}
    named = [by[span.kind] for span in spans if span.kind in by]
    signs = [span.kind for span in spans if span.kind in _SIGNS]
    if len(named) != 1 or len(signs) != 1:
        raise Clash
    bag = gather(without(spans, *drop, *by, *_SIGNS))
    return Wish("points most", (bag,), sign=_SIGNS[signs[0]], by=named[0], worth=worth)
