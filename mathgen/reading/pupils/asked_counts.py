"""How many; how many more or fewer; how many times as many; how far up or down."""

from __future__ import annotations

from collections.abc import Sequence

from mathgen.exact.demand import Demand
from mathgen.reading.chart import Clash
from mathgen.reading.pupils.bags import DIMENSIONS, EMPTY, Bag, only, plus
from mathgen.reading.pupils.regions import find, gather, has, names_something, without
from mathgen.reading.pupils.span import Span
from mathgen.reading.pupils.wish import Wish
from mathgen.reading.tokens import NotRead, Number
from mathgen.trials.scope import Label

SIGNS = {"MORE": 1, "FEWER": -1, "AHEAD": 1, "BEHIND": -1, "GREATER": 1, "SMALLER": -1}
TURNS = {"WENTUP": 1, "WENTDOWN": -1, "CHANGED": 0}
_ASKS = ("HOWMANY", "HOWMUCH", "WHATIS", "NUMBER")


def count(spans: Sequence[Span]) -> list[Wish]:
    """ "How many ..."; where the words say of which set, also "how many of them were red"."""
    at = find(spans, "HOWMANY")
    start = 0 if at is None else at + 1
    if at is not None and start < len(spans) and spans[start].bag.groups and not spans[start].before & {"of", "for"}:
        following = spans[start + 1].bag if start + 1 < len(spans) else EMPTY
        if not (following.item or following.colors):
            raise Clash  # "how many Owls ..."
    rest = without(_there_were(_ranged(spans)), "HOWMANY")
    if not names_something(rest):
        return [Wish("count", (EMPTY,))]
    if len([span for span in rest if span.kind == "bag"]) == 1 and any(span.bag.left for span in rest):
        raise NotRead("Which ones do you mean: left standing, of whose pins, in which trial?")
    try:
        return [Wish("count", (gather(rest),))]
    except Clash:
        return [_share_count(spans, start)]


def _there_were(spans: Sequence[Span]) -> list[Span]:
    """ "How many were there to knock down": those set up."""
    made = list(spans)
    if has(spans, "there") or any("there" in span.before for span in spans):
        for place, span in enumerate(spans):
            if place and span.value == "verb" and span.bag == Bag(measure="down") and spans[place - 1].kind == "to":
                made[place] = span._replace(bag=Bag(measure="set_up"))
    return made


def _ranged(spans: Sequence[Span]) -> list[Span]:
    """ "From trial 1 to trial 3" where nothing changes: those trials and the ones between."""
    return [span._replace(kind="bag") if span.kind == "change" and span.text == "from" else span for span in spans]


def _share_count(spans: Sequence[Span], start: int) -> Wish:
    before, after = without(spans[: max(start - 1, 0)], *_ASKS), list(spans[start:])
    for place, span in reversed(list(enumerate(after))):
        if span.kind == "be" and place and after[place - 1].kind != "that" and names_something(after[place + 1 :]):
            whole, part = gather([*before, *after[:place]]), gather(after[place + 1 :], union=True)
            break
    else:
        whole, part = gather(before), gather(after)
    if (
        part.colors is None
        or part._replace(colors=None, item=False, measure=None, they=False, every=False) != EMPTY
        or whole.colors is not None
    ):
        raise Clash
    if whole.measure is None or part.measure not in (None, whole.measure):
        raise Clash
    return Wish("share count", (whole._replace(item=False), part))


def _sides(spans: Sequence[Span], context: Sequence[Span] = ()) -> tuple[Bag, Bag]:
    """What stands on both sides of "than", with bare trial numbers taken for trials."""
    at = find(spans, "than", "AHEAD", "BEHIND")
    assert at is not None  # the callers look
    asks = find(spans, "HOWMANY", "HOWMUCH", start=at)
    if asks is None:
        left, right = [*context, *spans[:at]], list(spans[at + 1 :])
    else:  # "than the Wrens, how many more did ..."
        left, right = [*context, *spans[:at], *spans[asks:]], list(spans[at + 1 : asks])
    drop = ("HOWMANY", "HOWMUCH", *SIGNS, "BEAT")
    one = gather(without(left, *drop))
    kept = without(right, *drop)
    if len(kept) == 1 and kept[0].kind == "number" and isinstance(one.trials, tuple):
        number = kept[0].value
        assert isinstance(number, Number)
        if not number.value.is_integer:
            raise Clash
        return one, Bag(trials=(int(number.value),))
    return one, gather(kept)


def difference(spans: Sequence[Span]) -> list[Wish]:
    """ "How many more ... than ...", or with the two that are compared named before."""
    sign = next(SIGNS[span.kind] for span in spans if span.kind in SIGNS)
    if sum(span.kind in SIGNS for span in spans) > 1 + has(spans, "AHEAD", "BEHIND"):
        raise Clash
    if has(spans, "than", "AHEAD", "BEHIND"):
        return [Wish("difference", _sides(spans), sign=sign)]
    asks = find(spans, "HOWMANY", "HOWMUCH") or 0
    change = find(spans, "change")
    if change is not None:
        bag = gather(without(spans, "HOWMANY", "HOWMUCH", "change", "went", *SIGNS, *TURNS))
        turns = [TURNS[span.kind] for span in spans if span.kind in TURNS]
        if turns and turns[0] not in (0, sign):
            raise Clash
        return [Wish("rise", (bag,), sign=sign, labels=spans[change].value)]  # type: ignore[arg-type]
    after = gather(without(spans[asks:], "HOWMANY", "HOWMUCH", *SIGNS))
    before = gather(without(spans[:asks], *_ASKS))
    if names_something(spans[:asks]):
        for part in DIMENSIONS:
            two = getattr(before, part)
            one = getattr(after, part)
            if isinstance(two, tuple) and len(two) == 2 and isinstance(one, tuple) and len(one) == 1 and one[0] in two:
                [other] = [label for label in two if label != one[0]]
                shared = only(before, part, None)
                first = plus(after, shared)
                return [Wish("difference", (first, only(first, part, (other,))), sign=sign)]
        after = plus(before, after)
    return [Wish("difference told", (after,), sign=sign)]


def beaten(spans: Sequence[Span]) -> list[Wish]:
    """ "By how many did the Owls beat the Herons"."""
    at = find(spans, "BEAT")
    assert at is not None  # the caller looks
    first = gather(without(spans[:at], "HOWMANY", "HOWMUCH"))
    second = gather(without(spans[at + 1 :], "HOWMANY", "HOWMUCH"))
    if first.groups is None or second.groups is None:
        raise Clash
    return [Wish("difference", (first._replace(got=first.measure is None), second))]


def apart(spans: Sequence[Span]) -> list[Wish]:
    """ "What is the difference between ..."."""
    at = find(spans, "DIFF")
    assert at is not None  # the caller looks
    before = without(spans[:at], *_ASKS)
    after = [span._replace(bag=plus(span.bag, Bag(total=True))) if span.kind == "TOTALS" else span for span in spans[at + 1 :]]
    if has(after, "FRACTION"):
        parted = find(after, "and")
        if parted is None or sum(span.kind == "FRACTION" for span in after) != 2:
            raise Clash
        one = gather(without([*before, *after[:parted]], "FRACTION"))
        return [Wish("fractions apart", (one, gather(without(after[parted + 1 :], "FRACTION"))))]
    change = find(after, "change")
    if change is not None and not has(after, "and"):
        bag = gather([*before, *without(after, "change")])
        return [Wish("apart", (plus(bag, Bag(trials=after[change].value)),))]  # type: ignore[arg-type]
    for place, span in enumerate(after):
        if span.kind == "and":
            return [Wish("apart", (gather([*before, *after[:place]]), gather(after[place + 1 :])))]
    return [Wish("apart", (gather([*before, *after]),))]


def times(spans: Sequence[Span]) -> list[Wish]:
    """ "How many times as many ... as ..."."""
    at = find(spans, "HOWTIMES")
    assert at is not None  # the caller looks
    before, after = without(spans[:at], "WHATIS"), list(spans[at + 1 :])
    if has(spans, *SIGNS):
        raise Clash  # "3 times more" is said of two different numbers
    if after and after[0].kind == "as":
        second = find(after, "as", start=1)
        if second is None:
            raise Clash
        return [Wish("times", (gather([*before, *after[1:second]]), gather(after[second + 1 :])))]
    turned = find(after, "be")
    if after and after[0].kind == "NUMBER" and turned is not None and not names_something(before):
        return [Wish("times", (gather(after[turned + 1 :]), gather(after[:turned])))]
    if before and before[-1].kind == "be" and turned is None and not has(after, "as"):
        return [Wish("times", (gather(before), gather(after)))]
    raise Clash


def rise(spans: Sequence[Span], percent: bool) -> list[Wish]:
    """ "How much did ... go up from trial 1 to trial 2", as a count or as a percent."""
    turns = [TURNS[span.kind] for span in spans if span.kind in TURNS]
    change = find(spans, "change")
    kind, demand = ("percent rise", Demand("percent")) if percent else ("rise", None)
    left = without(spans, "change", "went", "HOWMANY", "HOWMUCH", "PERCENT", *TURNS)
    labels: tuple[Label, ...] = () if change is None else spans[change].value  # type: ignore[assignment]
    bag: Bag
    if change is None:
        whole = _both_ways(left)
        if whole is not None:
            bag, labels = whole
        else:
            bag = gather(without(left, "than"))
            trials = bag.trials
            if isinstance(trials, tuple) and len(trials) == 2:
                bag, labels = bag._replace(trials=None), trials
    else:
        bag = gather(left)
    if len(set(turns)) != 1:
        raise Clash
    return [Wish(kind, (bag._replace(got=False, had=False),), demand, turns[0], labels=labels)]


def _both_ways(spans: Sequence[Span]) -> tuple[Bag, tuple[Label, ...]] | None:
    """ "From the Otters' trial 1 to the Otters' trial 2": the same group with two trials."""
    at = find(spans, "to")
    if at is None:
        return None
    one, other = gather(spans[:at]), gather(spans[at + 1 :])
    first, last = one.trials, other.trials
    if not (isinstance(first, tuple) and isinstance(last, tuple) and len(first) == len(last) == 1):
        raise Clash
    return plus(one._replace(trials=None), other._replace(trials=None)), (*first, *last)


def minus(spans: Sequence[Span]) -> list[Wish]:
    """ "... minus ...", "take away ... from ..."."""
    at = find(spans, "MINUS")
    assert at is not None  # the caller looks
    before, after = without(spans[:at], "HOWMANY"), without(spans[at + 1 :], "HOWMANY")
    if names_something(before):
        left = [span for span in before if span.kind != "and"] if before[-1].kind == "and" else before
        return [Wish("minus", (gather(left), gather(after)))]
    for place, span in enumerate(after):
        if place and "from" in span.before and names_something(after[:place]):
            return [Wish("minus", (gather(after[place:]), gather(after[:place])))]
        if span.kind == "prep" and span.text.casefold() == "from":
            return [Wish("minus", (gather(after[place + 1 :]), gather(after[:place])))]
    raise Clash


def half(spans: Sequence[Span]) -> list[Wish]:
    """ "What is half of ..."."""
    return [Wish("half", (gather(without(spans, "HALF")),))]


def needed(spans: Sequence[Span]) -> list[Wish]:
    """ "How many more would the Herons have needed to catch up with the Owls"; "... to have 20"."""
    at = find(spans, "NEED")
    assert at is not None  # the caller looks
    drop = ("HOWMANY", "NEED", "MORE", "CATCH", "to")
    catch = find(spans, "CATCH", start=at)
    number = find(spans, "number", start=at)
    if catch is not None and number is None:
        behind = gather(without(spans[:catch], *drop))
        target = gather(without(spans[catch + 1 :], *drop))
        if behind.groups is None or target.groups is None or behind.groups == target.groups:
            raise Clash
        behind = behind._replace(had=False)
        if behind.measure is None and target.measure is None:
            behind, target = behind._replace(measure="down"), target._replace(measure="down")  # nothing else is to be caught up with
        return [Wish("difference", (target, behind))]
    if number is None or not has(spans, "MORE"):
        raise Clash
    bag = gather(without([*spans[:number], *spans[number + 1 :]], *drop))
    return [Wish("short of", (bag,), number=spans[number].value)]  # type: ignore[arg-type]
