"""Spans that say who: one group, several of them, each of them, or the class."""

from __future__ import annotations

from mathgen.reading.pupils.bags import Bag
from mathgen.reading.pupils.sentence import Sentence
from mathgen.reading.pupils.span import Span
from mathgen.reading.tokens import NotRead


def people_at(said: Sentence, place: int, words: frozenset[str]) -> tuple[int, Span] | None:
    """The groups named at a place: the place after them and their span, or None.

    Raises:
        NotRead: one group is named twice.
    """
    if said.has(place, "CLASS"):
        return place + 1, Span("bag", Bag(groups="all"))
    if said.has(place, "EACHGROUP"):
        return place + 1, Span("bag", Bag(each="groups"))
    if said.has(place, "THATGROUP"):
        return place + 1, Span("bag", Bag(that_group=True))
    if said.has(place, "NUM") and said.has(place + 1, "groups", "group"):
        number = said.value(place, "NUM")
        end = place + 2
        each = "groups" if said.has(end, "TOTALS") else None
        return end + bool(each), Span("bag", Bag(groups="all", sizes=(("groups", number),), each=each), value="groups")  # type: ignore[arg-type]
    if said.has(place, "NUM") and said.has(place + 1, "of"):
        at = said.skip(place + 2, "the", "their", "its")
        who = at + 1 if said.has(at, "GROUP", "CLASS") else at
        if said.has(who, "TRIALWORD") and not said.has(who + 1, "LABEL"):
            number = said.value(place, "NUM")
            groups = None if who == at else "all" if said.has(at, "CLASS") else (said.value(at, "GROUP"),)
            return who + 1, Span("bag", Bag(groups=groups, trials="all", sizes=(("trials", number),)))  # type: ignore[arg-type]
    if said.has(place, "group") and said.has(place + 1, "TOTALS"):
        return place + 2, Span("bag", Bag(groups="all", each="groups"))
    at = place + 1 if said.has(place, "group") and said.has(place + 1, "GROUP") else place
    if said.has(at, "GROUP"):
        return _group_list(said, at)
    if said.has(place, "groups", "GROUPS"):
        each = "groups" if said.has(place + 1, "TOTALS") else None
        return place + 1 + bool(each), Span("bag", Bag(groups="all", each=each), value="groups")
    return None


def _group_list(said: Sentence, place: int) -> tuple[int, Span]:
    labels = [said.value(place, "GROUP")]
    place += 1
    joined = ""
    while True:
        at = place
        word = next((word for word in ("and", "or") if said.has(at, word)), "")
        at = said.skip(at + bool(word), "the", "both", "group", "by", "for")
        if not said.has(at, "GROUP") or (not word and not _groups_on(said, at)) or (joined and word and word != joined):
            break
        labels.append(said.value(at, "GROUP"))
        place, joined = at + 1, word or joined
    names = tuple(str(label) for label in labels)
    if len(set(names)) < len(names):
        raise NotRead("You name one group twice. Which groups do you mean?")
    if joined == "or":
        return place, Span("either", value=("groups", names))
    place = said.skip(place, "group") if said.has(place, "group") else place
    return place, Span("bag", Bag(groups=names))


def _groups_on(said: Sentence, place: int) -> bool:
    while said.has(place, "GROUP", "the"):
        place += 1
    return said.has(place, "and", "or") and said.has(said.skip(place + 1, "the", "group"), "GROUP")
