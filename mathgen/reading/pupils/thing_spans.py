"""Spans that say which pins: of which colors, how many of them, fallen or standing."""

from __future__ import annotations

from mathgen.reading.pupils.bags import Bag
from mathgen.reading.pupils.sentence import THEIR, Sentence
from mathgen.reading.pupils.span import Span
from mathgen.reading.tokens import NotRead


def things_at(said: Sentence, place: int, words: frozenset[str]) -> tuple[int, Span] | None:
    """The pins named at a place, behind the words that lead them in: the place after them and their span, or None.

    Raises:
        NotRead: one color is named twice.
    """
    start, number, measure = place, None, None
    their = bool(words & THEIR) or "there" in words
    every = "all" in words or "every" in words
    if said.has(place, "ANYCOLOR"):
        return place + 1, Span("bag", Bag(colors="all"))
    if said.has(place, "NUM") and said.has(said.led_in(place + 1)[0], "COLOR", "ITEM", "ones", "one", "VERB"):
        # "the 12 pins", "2 of the pins"
        number = said.value(place, "NUM")
        place += 1
        if said.has(place, "of"):
            return None
    if said.has(place, "VERB", "FELLDOWN") and said.has(place + 1, "COLOR", "ITEM", "ones"):
        # "Knocked down red pins" is a verb and its things; "fallen pins" and "standing pins" have a word before them.
        value = "down" if said.has(place, "FELLDOWN") else said.value(place, "VERB")
        if said.has(place, "FELLDOWN") or value == "standing":
            measure, place = value, place + 1
    if said.has(place, "COLOR"):
        return _color_list(said, place, start, number, measure, their, words)
    if said.has(place, "ITEM"):
        bag = Bag(item=True, number=number, measure=measure, their=their, every=every)  # type: ignore[arg-type]
        return place + 1, Span("bag", bag)
    if said.has(place, "ones", "theirs"):
        return place + 1, Span("bag", Bag(number=number, measure=measure, their=their))  # type: ignore[arg-type]
    if number is not None or measure is not None:
        return None
    if said.has(place, "color", "colors") and not words:
        return None
    return None


def _color_list(
    said: Sentence, place: int, start: int, number: object, measure: object, their: bool, words: frozenset[str]
) -> tuple[int, Span]:
    labels = [said.value(place, "COLOR")]
    place = _noun(said, place + 1)
    joined = ""
    while True:
        word = next((word for word in ("and", "or") if said.has(place, word)), "")
        at = said.skip(place + bool(word), "the", "of", "their")
        if not said.has(at, "COLOR") or (not word and not _colors_on(said, at)) or (joined and word and word != joined):
            break
        labels.append(said.value(at, "COLOR"))
        place, joined = _noun(said, at + 1), word or joined
    names = tuple(str(label) for label in labels)
    if len(set(names)) < len(names):
        raise NotRead("You name one color twice. Which colors do you mean?")
    if joined == "or":
        return place, Span("either", value=("colors", names))
    bag = Bag(colors=names, number=number, measure=measure, their=their, every="all" in words)  # type: ignore[arg-type]
    return place, Span("bag", bag, value=names)


def _noun(said: Sentence, place: int) -> int:
    return place + 1 if said.has(place, "ITEM", "ones", "one", "set", "color") and not said.has(place + 1, "SETUP") else place


def _colors_on(said: Sentence, place: int) -> bool:
    while said.has(place, "COLOR", "the", "ITEM"):
        place += 1
    return said.has(place, "and", "or") and said.has(said.skip(place + 1, "the"), "COLOR")
