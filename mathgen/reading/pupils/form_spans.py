"""Spans that say the form of an answer: "as a percent", "to the nearest tenth"."""

from __future__ import annotations

from mathgen.exact.demand import Demand
from mathgen.reading.pupils.sentence import Sentence
from mathgen.reading.pupils.span import FORMS, Span
from mathgen.reading.tokens import Number


def form(said: Sentence, place: int) -> tuple[int, list[Span]] | None:
    """The form named from a place on: the place after it and its span, or None."""
    at = said.skip(place, "rounded", "round")
    if said.has(at, "SIMPLEST"):
        return at + 1, [Span("form", value=Demand("simplest"))]
    if said.has(at, "as") and said.has(at + 1, *FORMS) and said.has(at + 2, "of"):
        return at + 3, [Span("as a part of", value=next(kind for kind in FORMS if said.has(at + 1, kind)))]
    if said.has(at, "as") and said.has(at + 1, *FORMS, "MIXED") and not said.has(at + 1, "HOWMANY"):
        kind = next(kind for kind in (*FORMS, "MIXED") if said.has(at + 1, kind))
        if said.has(at + 2, "SIMPLEST"):
            return at + 3, [Span("form", value=Demand("simplest"))]
        return at + 2, [Span("form", value=FORMS.get(kind, Demand("mixed")))]
    if said.has(at, "MIXED"):
        return at + 1, [Span("form", value=Demand("mixed"))]
    if not said.has(at, "to"):
        return None
    at = said.skip(at + 1, "the")
    if said.has(at, "nearest"):
        at = said.skip(at + 1, "whole")
        if said.has(at, "NUMBER", "ITEM"):
            return at + 1, [Span("form", value=Demand("decimal", 0))]
        if said.has(at, "PERCENT"):
            return at + 1, [Span("form", value=Demand("percent", 0))]
        places = 1 if said.has(at, "tenth") else 2 if said.has(at, "hundredth") else None
        if places is not None:
            of_percent = said.has(at + 1, "of") and said.has(at + 2, "PERCENT")
            return at + (3 if of_percent else 1), [Span("form", value=Demand("percent" if of_percent else "decimal", places))]
    if said.has(at, "NUM") and said.has(at + 1, "DECIMAL", "place", "places"):
        number = said.value(at, "NUM")
        assert isinstance(number, Number)  # a token of that kind holds one
        if number.value.is_integer and 0 < number.value < 7:
            return said.skip(at + 1, "DECIMAL", "place", "places"), [Span("form", value=Demand("decimal", int(number.value)))]
    return None
