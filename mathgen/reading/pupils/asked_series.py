"""Means and medians, and which group, trial or color has the most, or passes a test."""

from __future__ import annotations

from collections.abc import Sequence
from typing import cast

from mathgen.reading.chart import Clash
from mathgen.reading.pupils.bags import EMPTY, Bag, only
from mathgen.reading.pupils.regions import find, gather, has, names_something, without
from mathgen.reading.pupils.span import Span
from mathgen.reading.pupils.wish import Wish
from mathgen.reading.tokens import NotRead, Number

BY = {"WHOGROUP": "groups", "WHICHTRIAL": "trials", "WHICHCOLOR": "colors", "WHICH": "", "HOWGROUPS": "groups", "HOWTRIALS": "trials"}
_SIGNS = {"MOST": 1, "LEAST": -1, "MORE": 1, "FEWER": -1, "GREATER": 1, "SMALLER": -1}
_NOISE = ("WHATIS", "NUMBER", "HOWMANY")


def statistic(spans: Sequence[Span], name: str) -> list[Wish]:
    """ "The mean ... per trial", "the median of the six groups' totals"."""
    if has(spans, "GREATER", "MORE"):
        return _mean_difference(spans, name)
    left = without(spans, "MEAN", "MEDIAN", "RANGE", *_NOISE)
    bag = gather([span for span in left if span.kind != "and"] if not has(left, "either") else left)
    of_groups = any(span.value == "groups" for span in left)
    if has(left, "TOTALS") and isinstance(bag.groups, tuple) and len(bag.groups) == 1 and bag.trials is None and bag.each is None:
        bag = bag._replace(each="trials")  # "the Kites' scores": one for each trial
    return [_series_wish(name, bag, of_groups)]


def _series_wish(name: str, bag: Bag, of_groups: bool) -> Wish:
    sizes = {part for part, _ in bag.sizes}
    by = bag.each or ""
    if not by and (of_groups or "groups" in sizes):
        by = "groups"
        if "trials" in sizes and not bag.total:
            raise NotRead(f"The {name} of which numbers: of the trials, or of the groups?")
    elif (not by and (bag.trials == "all" or "trials" in sizes)) or (
        not by and isinstance(bag.trials, tuple) and len(bag.trials) > 1 and isinstance(bag.groups, tuple) and len(bag.groups) == 1
    ):
        by = "trials"
    elif not by and isinstance(bag.groups, tuple) and len(bag.groups) > 2 and isinstance(bag.trials, tuple) and len(bag.trials) == 1:
        by = "groups"
    elif not by and isinstance(bag.groups, tuple) and len(bag.groups) == 1 and bag.trials is None and (bag.measure or bag.got):
        by = "trials"
    elif not by and bag.groups is None and isinstance(bag.trials, tuple) and len(bag.trials) == 1 and bag.measure and not bag.total:
        by = "groups"  # in one trial there is nothing else to take the mean of
    if bag.number is not None:
        raise NotRead(f"What should I do with the {bag.number.text}?")
    return Wish(name, (bag._replace(each=None, had=bag.had and bag.measure is None),), by=by)


def _mean_difference(spans: Sequence[Span], name: str) -> list[Wish]:
    at = find(spans, "than")
    if at is None or name != "mean":
        raise Clash
    one, other = (gather(without(side, "MEAN", "GREATER", "MORE", *_NOISE, "HOWMUCH")) for side in (spans[:at], spans[at + 1 :]))
    return [Wish("mean difference", (one, other))]


def which(spans: Sequence[Span]) -> list[Wish]:
    """ "Which group knocked down the most ...", "who got no ..."."""
    by = next(BY[span.kind] for span in spans if span.kind in BY)
    counted = has(spans, "HOWGROUPS", "HOWTRIALS")
    rest = [span for span in without(spans, *BY, "WHATIS") if span.kind != "IWEYOU"]
    if sum(span.kind in BY for span in spans) != 1:
        raise NotRead("There are two questions. Please ask one at a time.")
    either = find(rest, "either")
    rate = has(rest, "FRACTION", "PERCENT", "PROPORTION", "DECIMAL")
    signs = [span.kind for span in rest if span.kind in _SIGNS]
    if by == "trials" and either is None:
        rest = _numbers_told(rest)
        either = find(rest, "either")
    tested = _test(rest, counted)
    if tested is not None:
        kept, test, number = tested
        if not by:
            raise Clash
        return [Wish("how many labels" if counted else "pick", (gather(kept),), by=by, test=test, number=number)]
    if counted or len(signs) != 1:
        raise Clash
    [word] = signs
    left = without(rest, "TIED", "FRACTION", "PERCENT", "PROPORTION", *_NOISE, word)
    labels: tuple[object, ...] = ()
    if either is not None:
        name, labels = cast(tuple[str, tuple[object, ...]], rest[either].value)
        if by and by != name:
            raise Clash
        by = name
        left = without(left, "either")
    elif not by:
        pair = _either_told(left)
        if pair is None:
            raise NotRead("Which of what? Name those I should choose from.")
        by, labels, left = pair
    if word in ("MORE", "FEWER", "GREATER", "SMALLER"):
        left = _than_anyone(left, bool(labels), word)
    bag = gather(left)
    if word in ("GREATER", "SMALLER") and not rate and not (bag.total or has(rest, "NUMBER", "TOTALS")):
        raise Clash
    if by == "groups" and bag.groups == "all" and not labels:
        bag = bag._replace(groups=None)
    if bag.each == "groups" and by == "groups":
        bag = bag._replace(each=None)
    return [Wish("most rate" if rate else "most", (bag,), sign=_SIGNS[word], by=by, labels=labels)]  # type: ignore[arg-type]


def _numbers_told(spans: Sequence[Span]) -> list[Span]:
    """ "Which trial ..., 1 or 2": two labels without their noun."""
    for place in range(len(spans) - 2):
        first, word, last = spans[place : place + 3]
        if first.kind == last.kind == "number" and word.kind == "or":
            assert isinstance(first.value, Number)
            assert isinstance(last.value, Number)
            if first.value.value.is_integer and last.value.value.is_integer:
                labels = (int(first.value.value), int(last.value.value))
                return [*spans[:place], Span("either", value=("trials", labels)), *spans[place + 3 :]]
    return list(spans)


def _than_anyone(spans: Sequence[Span], chosen: bool, word: str) -> list[Span]:
    left = without(spans, "than", "ANYONE")
    if has(spans, "than") != has(spans, "ANYONE"):
        raise NotRead("Than what? Please say it another way.")
    if not chosen and not has(spans, "ANYONE") and word in ("MORE", "FEWER"):
        raise NotRead("More than what? Say what I should choose from.")
    return left


def _either_told(spans: Sequence[Span]) -> tuple[str, tuple[object, ...], list[Span]] | None:
    """ "The Owls and the Herons: which had more"."""
    for place, span in enumerate(spans):
        for part in ("groups", "trials", "colors"):
            labels = getattr(span.bag, part)
            if span.kind == "bag" and isinstance(labels, tuple) and len(labels) == 2 and span.bag == only(EMPTY, part, labels):
                return part, labels, [*spans[:place], *spans[place + 1 :]]
    return None


def _test(rest: Sequence[Span], counted: bool) -> tuple[list[Span], str, Number | None] | None:
    """What a label has to pass: none, all, a number exactly, at least, more or fewer."""
    if has(rest, "MOST", "GREATER", "SMALLER", "ANYONE", "either"):
        return None
    kept = without(rest, "exactly", "only")
    place = next(
        (at for at, span in enumerate(rest) if span.kind == "LEAST" and at + 1 < len(rest) and _number(rest[at + 1]) is not None), None
    )
    if place is not None:
        return _tested(rest, place, place + 1, "at least")
    than = find(rest, "than")
    if has(rest, "LEAST"):
        return None
    if than is not None and has(rest, "MORE", "FEWER"):
        sign = find(rest, "MORE", "FEWER")
        assert sign is not None
        if than + 1 < len(rest) and _number(rest[than + 1]) is not None and than == sign + 1:
            found = _tested(rest, than, than + 1, "more" if rest[sign].kind == "MORE" else "fewer")
            return without(found[0], "MORE", "FEWER"), found[1], found[2]
        return None
    if has(rest, "MORE", "FEWER"):
        return None
    nots = [span for span in rest if span.value == "negated"]
    if has(rest, "no"):
        return without(kept, "no"), "none", None
    if nots:
        if any("any" in span.before for span in rest):
            return _turned(kept), "none", None
        if any("all" in span.before or span.bag.every for span in rest) or has(rest, "all"):
            return [span._replace(bag=span.bag._replace(every=False)) for span in _turned(without(kept, "all"))], "not all", None
        return None
    numbered = [at for at, span in enumerate(rest) if _number(span) is not None]
    if len(numbered) == 1:
        found = _tested(rest, None, numbered[0], "equal")
        return without(found[0], "exactly", "only"), "equal", found[2]
    if (any(span.bag.every or "all" in span.before for span in rest if span.bag.item or span.bag.colors) or has(rest, "all")) and any(
        span.bag.measure == "down" for span in rest
    ):
        return without(kept, "all"), "all", None
    return None


def _number(span: Span) -> Number | None:
    if span.kind == "number":
        assert isinstance(span.value, Number)
        return span.value
    return span.bag.number if span.kind == "bag" else None


def _tested(rest: Sequence[Span], word: int | None, place: int, test: str) -> tuple[list[Span], str, Number | None]:
    span = rest[place]
    number = _number(span)
    kept = [] if span.kind == "number" else [span._replace(bag=span.bag._replace(number=None))]
    made = [*rest[:place], *kept, *rest[place + 1 :]]
    if word is not None:
        made = [*rest[:word], *rest[word + 1 : place], *kept, *rest[place + 1 :]]
    if any(_number(other) is not None for other in made):
        raise Clash
    return made, test, number


def _turned(spans: Sequence[Span]) -> list[Span]:
    """The verb as it is without its "not"."""
    return [
        span._replace(bag=span.bag._replace(measure="down" if span.bag.measure == "standing" else "standing"))
        if span.value == "negated"
        else span
        for span in spans
    ]


def greatest(spans: Sequence[Span]) -> list[Wish]:
    """ "What is the greatest number of pins any group knocked down in trial 1": the number, not the name."""
    word = next(span for span in spans if span.kind in ("MOST", "LEAST"))
    bag = gather(without(spans, "MOST", "LEAST", "HOWMANY", *_NOISE))
    any_group = any("any" in span.before for span in spans)
    by = bag.each or ("groups" if any_group and bag.groups == "all" else "")
    if by not in ("groups", "trials") or not names_something(spans):
        raise Clash
    return [Wish("greatest", (bag._replace(each=None),), sign=_SIGNS[word.kind], by=by)]
