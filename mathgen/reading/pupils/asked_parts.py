"""What part of a set: fractions, percents, decimals and chances; and ratios."""

from __future__ import annotations

from collections.abc import Sequence

from mathgen.exact.demand import Demand
from mathgen.reading.chart import Clash
from mathgen.reading.pupils.bags import EMPTY, Bag, only, plus
from mathgen.reading.pupils.regions import find, gather, has, infinitive, names_something, without
from mathgen.reading.pupils.span import FORMS, Span
from mathgen.reading.pupils.wish import Wish
from mathgen.reading.tokens import NotRead

HEADS = (*FORMS, "CHANCE", "HOWMUCH")


def demand_of(spans: Sequence[Span]) -> Demand:
    """The form that the words ask for; "a decimal for the fraction" is a decimal."""
    forms = {FORMS[span.kind] for span in spans if span.kind in FORMS} - {Demand("any")}
    if len(forms) > 1:
        raise NotRead("You ask for two forms. Which one do you want?")
    return next(iter(forms), Demand("any"))


def part(spans: Sequence[Span]) -> list[Wish]:
    """ "What fraction of ...", in any order."""
    turned = find(spans, "as a part of")
    if turned is not None:
        return [_out_of(without(spans[:turned], "WHATIS"), spans[turned + 1 :], FORMS[str(spans[turned].value)])]
    demand = demand_of(spans)
    at = find(spans, *HEADS, "HOWMANY")
    assert at is not None  # the caller looks
    before = without(spans[:at], "WHATIS", "HOWMANY")
    after = without(spans[at + 1 :], "WHATIS", "HOWMANY", "NUMBER", *HEADS)
    if has(before, "PICK"):
        return [_picked(before, after, demand)]
    if has(after, "outof") and (first := find(after, "outof")) is not None and names_something(after[:first]):
        return [_out_of([*before, *after[:first]], after[first + 1 :], demand)]
    whole = gather(without(before, "IF"), union=True) if names_something(before) else EMPTY
    of_before = has(before, "outof") or any("of" in span.before or "from" in span.before for span in before if span.kind == "bag")
    return _of_whole(whole, of_before, after, demand)


def _of_whole(whole: Bag, named: bool, after: Sequence[Span], demand: Demand) -> list[Wish]:
    """The whole told first, then the part; or all in one."""
    place = _predicate(after)
    if place is None:
        if not named and whole.measure is not None and after and "of" in after[0].before:
            return [Wish("part", (plus(whole, gather(after, union=True)),), demand)]  # "they knocked down what fraction of their red pins"
        if named and whole.measure in ("down", "standing") and after and "of" in after[0].before:
            raise NotRead("What part of which pins do you mean?")  # "of the pins they knocked down, what fraction of red pins"
        if whole.measure is not None and has(after, "bag") and whole.measure != "set_up":
            part_bag = gather(after, union=True)
            return [_shared(whole, part_bag, demand, True)]
        rest = gather(after, union=True)
        if named and whole.they:
            raise Clash
        return [Wish("part", (plus(whole, rest),), demand)]
    subject = gather(after[:place], union=True)
    if (
        any(span.kind == "that" or "that" in span.before for span in after[place + 1 :])
        and any(span.bag.colors for span in after[place + 1 :])
        and "set_up" not in (subject.measure, whole.measure)
    ):
        raise NotRead("What part of which pins do you mean?")  # "of the pins were red that the Owls knocked down"
    said = gather(after[place + 1 :], union=True)
    alone = subject._replace(they=False, had=False) == EMPTY and (subject.they or not after[:place] or not names_something(after[:place]))
    if alone and whole == EMPTY:
        return [Wish("share told", (said,), demand)]
    try:
        whole = whole if alone else plus(whole, subject._replace(they=subject.they and whole == EMPTY))
    except Clash:
        raise NotRead("What part of which pins do you mean?") from None
    by_group = after[place].kind == "CAMEFROM" or any("by" in span.before or "from" in span.before for span in after[place + 1 :])
    return [_shared(whole, said, demand, by_group)]


def _predicate(spans: Sequence[Span]) -> int | None:
    """The "were" of "were red", "were knocked down in trial 1", but not that of "that were set up"."""
    for place in range(len(spans) - 1, -1, -1):
        span = spans[place]
        if span.kind == "CAMEFROM":
            return place
        if span.kind == "be" and (not place or spans[place - 1].kind != "that") and names_something(spans[place + 1 :]):
            return place
    return None


def _shared(whole: Bag, said: Bag, demand: Demand, by_group: bool) -> Wish:
    """The wish where something is said of a whole: of which color, in which trial, by whom, or what became of it."""
    if said.colors is not None:
        if whole.colors is not None:
            raise NotRead("A part of which color do you mean?")
        placed = {name: getattr(said, name) for name in ("groups", "trials") if getattr(said, name) is not None}
        if placed and (whole.groups is not None or whole.trials is not None):
            raise NotRead("Say first of which pins you want a part: whose, and from which trial.")
        if placed:
            whole = plus(whole, EMPTY._replace(**placed, sizes=said.sizes))
            said = said._replace(groups=None, trials=None, sizes=())
        if whole.measure is None and said.measure is not None:
            whole = whole._replace(measure="set_up", total=True)
        return Wish("share", (whole._replace(item=False), said._replace(they=False, item=False)), demand)
    if said.measure is not None and whole.measure in (None, "set_up"):
        if said.groups is not None and whole.groups is None and by_group and (whole.measure == "set_up" or whole.every):
            raise NotRead("Say first of which pins you want a part: whose, and from which trial.")
        return Wish("part", (plus(whole._replace(got=False), said._replace(they=False)),), demand)
    if said.got and said.measure is None and whole.measure in (None, "set_up"):
        return Wish("part", (plus(whole._replace(measure=None), said),), demand)
    return Wish("share", (whole, said._replace(they=False)), demand)


def _picked(before: Sequence[Span], after: Sequence[Span], demand: Demand) -> Wish:
    """ "If I pick one of the pins ... at random, what is the chance that it was gold?"."""
    at = find(before, "PICK")
    assert at is not None  # the caller looks
    ahead = without(before[:at], "IF", "IWEYOU")
    whole = gather([*ahead, *without(before[at + 1 :], "RANDOM", "one", "IWEYOU")])
    place = _predicate(after)
    said = gather(after if place is None else [*after[:place], *after[place + 1 :]], union=True)
    if whole.measure is None:
        raise NotRead("Do you pick one of the pins that were set up, or of those knocked down?")
    return Wish("share", (whole._replace(item=False, number=None), said._replace(they=False)), demand)


def _out_of(before: Sequence[Span], after: Sequence[Span], demand: Demand) -> Wish:
    one, other = gather(before, union=True), gather(after, union=True)
    return Wish("out of", (one, other), demand)


def ratio(spans: Sequence[Span]) -> list[Wish]:
    """ "The ratio of ... to ..."."""
    at = find(spans, "RATIO")
    start = 0 if at is None else at
    before = without(spans[:start], "WHATIS")
    after = list(spans if at is None else spans[start + 1 :])
    after = [span for span in after if span.kind not in ("NUMBER", "WHATIS")]
    ways = [place for place, span in enumerate(after) if span.kind == ":" or (span.kind == "to" and not infinitive(after, place))]
    if len(ways) > 1:
        raise Clash
    if ways:
        [place] = ways
        return [Wish("ratio", (gather([*before, *after[:place]]), gather(after[place + 1 :])))]
    place_before = find(before, "to", ":")
    if place_before is not None:
        one, other, shared = gather(before[:place_before]), gather(before[place_before + 1 :]), gather(after)
        if one.colors is not None and other.colors is not None and shared.colors is not None:
            raise NotRead("The ratio of which colors?")
        return [Wish("ratio", (plus(one, shared._replace(item=False)), plus(other, shared._replace(item=False))))]
    return [_listed_ratio([*before, *after])]


def _listed_ratio(spans: Sequence[Span]) -> Wish:
    """ "The ratio of red and blue pins": in the order in which they are named."""
    whole = gather([span for span in spans if span.kind != "and"])
    twos = [name for name in ("groups", "colors") if isinstance(getattr(whole, name), tuple) and len(getattr(whole, name)) == 2]
    if len(twos) != 1:
        raise NotRead("The ratio of what to what?")
    [name] = twos
    one, other = (only(whole, name, (label,)) for label in getattr(whole, name))
    return Wish("ratio", (one, other))
