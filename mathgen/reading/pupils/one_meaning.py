"""Words that children use for two different things, or for nothing that has a value: these are asked about."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from mathgen.reading.pupils.asked_counts import TURNS
from mathgen.reading.pupils.bags import EMPTY
from mathgen.reading.pupils.span import FORMS, Span
from mathgen.reading.tokens import NotRead


def one_meaning(spans: Sequence[Span]) -> None:
    """Words that children use for two different things, or for nothing that has a value.

    Raises:
        NotRead: one of them is here.
    """
    kinds = {span.kind for span in spans}
    total = any(span.bag.total for span in spans)
    groups = [span for span in spans if isinstance(span.bag.groups, tuple) and len(span.bag.groups) == 2]
    if "HOWMANY" in kinds and not total and any("both" in span.before for span in groups):
        raise NotRead("Do you mean the two groups together, or each of the two?")
    if {"HOWMANY", "PERCENT"} <= kinds and kinds & set(TURNS):
        raise NotRead("Do you mean the percent by which a number of pins changed? Then say: by what percent did the number of ...")
    if kinds & set(FORMS) and any("for" in span.before and span.bag.colors and not span.bag.item for span in spans):
        raise NotRead("A part of which pins do you mean: of the pins of that color that were set up?")
    things = [span for span in spans if span.bag.item or span.bag.colors]
    if "CHANCE" in kinds and any("all" in span.before and "of" not in span.before for span in things):
        raise NotRead("The chance that one pin falls, or that all of them fall in one trial?")
    if kinds & {*FORMS, "CHANCE"} and _of_trials(spans):
        raise NotRead("I can tell a part of the pins, but not of the trials.")
    if _of_people(spans) and "be" not in kinds:
        raise NotRead("I can tell a part of the pins, but not of the people in a group.")
    if "HALF" in kinds and not kinds & {"WHATIS", "HOWMANY", "HOWMUCH"} and any(span.value == "verb" for span in spans):
        raise NotRead("Do you tell me that it is half, or do you ask for half of it?")
    if kinds & set(FORMS) and _of_a_total(spans):
        raise NotRead("A part of that total, or of the pins that were set up? Please say: of the pins knocked down in all trials.")
    if kinds & set(FORMS) and any(span.bag.total and "sum" in span.text.casefold().split() for span in spans):
        raise NotRead("Parts of different sets have no sum. Do you mean what part of all these pins?")
    if total and "FRACTIONS" in kinds:
        raise NotRead("Fractions of different sets have no total. Do you mean what fraction of all these pins?")


def _of_people(spans: Sequence[Span]) -> bool:
    """ "What percent of the class knocked down red pins"."""
    triples = zip(spans, spans[1:], spans[2:], strict=False)
    return any(
        one.kind in FORMS and "of" in who.before and who.bag.groups is not None and verb.value == "verb" for one, who, verb in triples
    )


def _of_trials(spans: Sequence[Span]) -> bool:
    """ "What fraction of the trials", "in what percent of their trials"."""
    return any(
        one.kind in FORMS and "of" in other.before and other.bag.trials == "all" and other.bag.groups is None
        for one, other in pairwise(spans)
    )


def _of_a_total(spans: Sequence[Span]) -> bool:
    """ "What percent of the Owls' total did they knock down in trial 2": of a count, while it sounds like one of the pins set up."""
    for place, (owner, total) in enumerate(pairwise(spans)):
        following = spans[place + 2].bag if place + 2 < len(spans) else EMPTY
        if owner.bag.groups and "of" in owner.before and total.bag.total and not (following.item or following.colors):
            return any(span.bag.measure in ("down", "standing") or span.bag.got for span in spans[place + 2 :])
    return False
